namespace Refinish.Samples.WorkedExamples;

/// <summary>What a problem's answer can be held against.</summary>
internal enum Backing
{
    /// <summary>The answer is printed in a document or on a page that anyone can look up.</summary>
    Published,

    /// <summary>No printed answer is known; it was worked by hand or with another tool, apart from the library.</summary>
    WorkedApart,
}
