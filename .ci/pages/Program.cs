using System;
using System.Threading.Tasks;
using Refinish.Pages;

// dotnet run --project .ci/pages -- bath PUBLISHED_WWWROOT SCRATCH_FOLDER
try
{
    await (args switch
    {
        ["bath", string folder, string scratch] => BathCheck.Run(folder, scratch),
        _ => throw new CheckFailed("usage: bath PUBLISHED_WWWROOT SCRATCH_FOLDER"),
    });
    return 0;
}
catch (CheckFailed failed)
{
    Console.Error.WriteLine("FAILED: " + failed.Message);
    return 1;
}
