using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Inspection;

/// <summary>
/// A pencil hardness test: from the hardest pencil down, which is the hardest that does not gouge and the hardest that does not
/// scratch.
/// </summary>
/// <remarks>
/// ASTM D3363 (order and 45° from memory): gouge hardness is the hardest pencil that does not cut the film for at least 3 mm, scratch
/// hardness the hardest that does not mar it. A softer pencil that marks where a harder one did not says that the marks were misread or
/// the coating varies: then nothing is told. Two people differ by a grade. It is not a test of cure: a coating reaches it before it is
/// cured through.
/// </remarks>
/// <example><code>
/// PencilTest test = new([new(PencilGrade.Grade3H, PencilMark.Gouge), new(PencilGrade.Grade2H, PencilMark.Scratch), new(PencilGrade.GradeH, PencilMark.None)]);
/// PencilGrade? gouge = test.GougeHardness;         // Grade2H
/// PencilGrade? scratch = test.ScratchHardness;     // GradeH
/// </code></example>
public sealed record PencilTest
{
    private static readonly Source Standard = Source.FromMemory("ASTM D3363, gouge and scratch hardness");

    private readonly ValueList<PencilTrial> marks;

    /// <summary>Takes the marks.</summary>
    /// <param name="marks">Pencils that were tried and what they did, at least one, none twice.</param>
    /// <exception cref="ArgumentException">No pencil is given, or one is given twice.</exception>
    /// <exception cref="ArgumentOutOfRangeException">Not a named value.</exception>
    public PencilTest(IEnumerable<PencilTrial> marks)
    {
        this.marks = new(Guard.List(marks, 1).Select(one =>
            new PencilTrial(Guard.Defined(one.Pencil, nameof(marks)), Guard.Defined(one.Mark, nameof(marks)))).OrderBy(one => one.Pencil));
        if (this.marks.Select(one => one.Pencil).Distinct().Count() != this.marks.Count)
        {
            throw new ArgumentException(nameof(marks) + " has a pencil twice; give each pencil once, with the worst of its marks.", nameof(marks));
        }
    }

    /// <summary>The pencils from softest to hardest and what they did.</summary>
    public IReadOnlyList<PencilTrial> Marks => marks;

    /// <summary>Whether no softer pencil marked worse than a harder one.</summary>
    public bool IsConsistent => Enumerable.Range(1, marks.Count - 1).All(i => marks[i].Mark >= marks[i - 1].Mark);

    /// <summary>The hardest pencil that does not gouge; <see langword="null"/> when all gouge or the marks contradict each other.</summary>
    public PencilGrade? GougeHardness => Hardest(PencilMark.Gouge);

    /// <summary>The hardest pencil that does not scratch; <see langword="null"/> when all do or the marks contradict each other.</summary>
    public PencilGrade? ScratchHardness => Hardest(PencilMark.Scratch);

    /// <summary>Whether the hardness may be higher, since the hardest pencil tried did not gouge.</summary>
    public bool IsOpenUpwards => marks[marks.Count - 1].Mark != PencilMark.Gouge;

    /// <summary>The grade as it stands on the pencil.</summary>
    /// <param name="grade">A named value.</param>
    /// <returns>Text such as <c>2H</c>.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a named value.</exception>
    public static string InWords(PencilGrade grade) => Guard.Defined(grade) switch
    {
        < PencilGrade.GradeB => Figures.Significant(9 - (int)grade) + "B",
        PencilGrade.GradeB => "B",
        PencilGrade.GradeHB => "HB",
        PencilGrade.GradeF => "F",
        PencilGrade.GradeH => "H",
        _ => Figures.Significant((int)grade - (int)PencilGrade.GradeH + 1) + "H",
    };

    /// <summary>The gouge hardness against a least grade.</summary>
    /// <param name="least">Least grade wanted.</param>
    /// <returns>
    /// The comparison, on the order of the grades (9B is 0, HB 9, 9H 19); not to be judged when the marks contradict each other or no
    /// pencil tried settles it.
    /// </returns>
    /// <exception cref="ArgumentOutOfRangeException">Not a named value.</exception>
    public LimitComparison Against(PencilGrade least)
    {
        Guard.Defined(least);

        // The hardness is at least the hardest pencil that left the film whole, and below the softest that cut it. A limit between the
        // two is not settled.
        int? reached = GougeHardness is PencilGrade grade ? (int)grade : null;
        int? missed = IsConsistent ? marks.Where(one => one.Mark == PencilMark.Gouge).Select(one => (int?)one.Pencil).FirstOrDefault() : null;
        double? value = reached >= (int)least ? reached : missed <= (int)least ? reached ?? missed - 1 : null;
        return new("pencil hardness (gouge), place in the order of grades", value, (int)least, LimitSense.AtLeast, Measure.Number, Standard, value is null ? "try the pencils around the least grade" : "more time to cure; check the mix ratio");
    }

    /// <summary>The hardness in one line.</summary>
    /// <returns>Text such as <c>gouge 2H, scratch H</c>.</returns>
    public override string ToString() => IsConsistent
        ? "gouge " + (GougeHardness is PencilGrade gouge ? InWords(gouge) : "below " + InWords(marks[0].Pencil)) + (IsOpenUpwards ? " or harder" : string.Empty)
            + ", scratch " + (ScratchHardness is PencilGrade scratch ? InWords(scratch) : "below " + InWords(marks[0].Pencil))
        : "marks contradict each other";

    private PencilGrade? Hardest(PencilMark from) =>
        IsConsistent ? marks.Where(one => one.Mark < from).Select(one => (PencilGrade?)one.Pencil).LastOrDefault() : null;
}
