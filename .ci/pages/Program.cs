using System;
using System.Threading.Tasks;
using Refinish.Pages;

// dotnet run --project .ci/pages -- bath PUBLISHED_WWWROOT SCRATCH_FOLDER
// dotnet run --project .ci/pages -- quote PUBLISHED_FOLDER SCRATCH_FOLDER
try
{
    await (args switch
    {
        ["bath", string folder, string scratch] => BathCheck.Run(folder, scratch),
        ["quote", string folder, string scratch] => QuoteCheck.Run(folder, scratch),
        _ => throw new CheckFailed("usage: bath PUBLISHED_WWWROOT SCRATCH_FOLDER, or quote PUBLISHED_FOLDER SCRATCH_FOLDER"),
    });
    return 0;
}
catch (Exception failed)
{
    Console.Error.WriteLine("FAILED: " + (failed is CheckFailed ? failed.Message : failed));
    return 1;
}
