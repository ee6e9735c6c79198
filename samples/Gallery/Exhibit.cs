using Refinish.Pictures;

namespace Refinish.Samples.Gallery;

/// <summary>One picture of the gallery: its file, its chapter, the call that makes it.</summary>
internal sealed record Exhibit(string File, string Chapter, string Caption, Picture Picture, DisplayUnits Units = DisplayUnits.Si);
