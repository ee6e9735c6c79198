using Refinish.Estimating;

namespace Refinish.Jobs;

/// <summary>Work for which the shop's labour standards give no hours.</summary>
public sealed record LabourGap
{
    internal LabourGap(string about, string code, string sentence)
    {
        About = about;
        Code = code;
        Sentence = sentence;
    }

    /// <summary>Identifier of the fixture, room or job that it is about.</summary>
    public string About { get; }

    /// <summary>The kind of work or of defect.</summary>
    public string Code { get; }

    /// <summary>What is missing, as a sentence.</summary>
    public string Sentence { get; }

    /// <summary>The sentence.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Sentence;

    internal static LabourGap NoStandard(string about, WorkKind kind) =>
        new(about, WorkOrder.Key(kind), "There is no labour standard for the kind of work " + kind.ToString("G") + " (" + WorkOrder.Label(kind) + "), so there is no price.");
}
