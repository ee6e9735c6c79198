using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Substrates;

namespace Refinish.Estimating;

/// <summary>
/// A generic set of labour standards for one five-foot tub and one person, every figure invented, to be replaced by a shop's own time
/// sheets; and how a standard is found for an operation or a defect.
/// </summary>
/// <example><code>
/// LabourStandard? coat = LabourStandards.For(WorkKind.SprayTopcoat, LabourStandards.Generic);
/// string code = coat!.Code;   // "L-51"
/// </code></example>
public static partial class LabourStandards
{
    private static readonly Dictionary<DefectKind, WorkKind> Mending = new()
    {
        [DefectKind.SiliconeResidue] = WorkKind.RemoveSilicone,
        [DefectKind.PeelingCoat] = WorkKind.Strip,
        [DefectKind.GroutFailure] = WorkKind.Regrout,
        [DefectKind.LooseTiles] = WorkKind.Regrout,
        [DefectKind.RustSpot] = WorkKind.GrindRust,
        [DefectKind.Crazing] = WorkKind.SealCrazing,
        [DefectKind.Liner] = WorkKind.Clear,
    };

    /// <summary>The standard for a kind of work.</summary>
    /// <param name="kind">The kind.</param>
    /// <param name="standards">Standards to look in.</param>
    /// <returns>The one of that kind; <see langword="null"/> when there is none.</returns>
    /// <exception cref="ArgumentException">Two are of that kind, so that one of them would be ignored.</exception>
    /// <exception cref="ArgumentNullException"><paramref name="standards"/> is missing.</exception>
    /// <exception cref="ArgumentOutOfRangeException"><paramref name="kind"/> is not a named value.</exception>
    public static LabourStandard? For(WorkKind kind, IReadOnlyList<LabourStandard> standards)
    {
        Guard.Defined(kind);
        Guard.NotNull(standards);
        LabourStandard? found = null;
        for (int i = 0; i < standards.Count; i++)
        {
            if (standards[i].Work == kind)
            {
                found = found is null ? standards[i] : throw Twins(found, standards[i], nameof(standards));
            }
        }

        return found;
    }

    /// <summary>The standard for mending a defect.</summary>
    /// <param name="defect">The defect.</param>
    /// <param name="standards">Standards to look in.</param>
    /// <returns>
    /// That for the largest size which the defect reaches; <see langword="null"/> when there is none. The generic standards have none for a
    /// hole or a flexing floor: mending what carries the fixture is another trade's work.
    /// </returns>
    /// <exception cref="ArgumentException">Two are for that defect from the same size, so that one of them would be ignored.</exception>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static LabourStandard? ForDefect(Defect defect, IReadOnlyList<LabourStandard> standards)
    {
        Guard.NotNull(defect);
        Guard.NotNull(standards);
        double size = defect.Size;
        LabourStandard? best = null;
        for (int i = 0; i < standards.Count; i++)
        {
            LabourStandard standard = standards[i];
            if (standard.Repairs != defect.Kind || standard.FromMeters > size)
            {
                continue;
            }

            if (best?.FromMeters == standard.FromMeters)
            {
                throw Twins(best, standard, nameof(standards));
            }

            best = best is null || standard.FromMeters > best.FromMeters ? standard : best;
        }

        return best;
    }

    /// <summary>How many units of its labour standard a defect counts for.</summary>
    /// <param name="defect">The defect.</param>
    /// <returns>
    /// Metres of a crack or a joint, square metres of a peeling coat, of pitting or of a liner that comes off, the number of loose tiles or
    /// of a caller's own defect; 1 for any other kind. A caller's own standards have to count alike.
    /// </returns>
    /// <exception cref="ArgumentNullException"><paramref name="defect"/> is missing.</exception>
    public static double UnitsOf(Defect defect) => Guard.NotNull(defect).Units;

    /// <summary>The kind of work that mends a kind of defect.</summary>
    /// <param name="defect">The kind of defect.</param>
    /// <returns>
    /// The kind of work; <see langword="null"/> for a hole and a flexing floor, which are another trade's work, and for a kind of a
    /// caller's own, whose defect says itself what is done. A crack is filled; in sheet that flexes it is reinforced first, which has a
    /// standard of its own (<see cref="ReinforceCrack"/>). A liner comes off while the fixture is cleared.
    /// </returns>
    /// <exception cref="ArgumentNullException"><paramref name="defect"/> is missing.</exception>
    public static WorkKind? WorkOf(DefectKind defect) =>
        Guard.NotNull(defect).IsOwn || defect.IsAnotherTrades ? null
        : Mending.TryGetValue(defect, out WorkKind work) ? work
        : WorkKind.Fill;

    /// <summary>The tasks that the defects of a survey add by the generic standards, in the order of the survey.</summary>
    /// <param name="defects">What was found.</param>
    /// <returns>
    /// One task for each defect that has a standard; <see cref="WithoutStandard(IReadOnlyList{Defect})"/> names the others.
    /// </returns>
    /// <exception cref="ArgumentException">An entry is missing.</exception>
    /// <exception cref="ArgumentNullException"><paramref name="defects"/> is missing.</exception>
    public static IReadOnlyList<LabourTask> ForDefects(IReadOnlyList<Defect> defects) => ForDefects(defects, Generic);

    /// <summary>The tasks that the defects of a survey add, in the order of the survey.</summary>
    /// <param name="defects">What was found.</param>
    /// <param name="standards">Standards to look in.</param>
    /// <returns>
    /// One task for each defect that has a standard; <see cref="WithoutStandard(IReadOnlyList{Defect}, IReadOnlyList{LabourStandard})"/>
    /// names the others.
    /// </returns>
    /// <exception cref="ArgumentException">
    /// An entry is missing, two standards have one code, or a rate of one cannot be honoured.
    /// </exception>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static IReadOnlyList<LabourTask> ForDefects(IReadOnlyList<Defect> defects, IReadOnlyList<LabourStandard> standards)
    {
        IReadOnlyList<LabourStandard> all = Checked(standards, nameof(standards));
        List<LabourTask> tasks = [];
        foreach (Defect defect in Guard.List(defects))
        {
            if (ForDefect(defect, all) is LabourStandard standard)
            {
                tasks.Add(StandardFit.Task(standard, defect, tasks));
            }
        }

        return new ValueList<LabourTask>(tasks);
    }

    /// <summary>The defects of a survey for which the generic standards have none.</summary>
    /// <param name="defects">What was found.</param>
    /// <returns>Those that <see cref="ForDefects(IReadOnlyList{Defect})"/> leaves out.</returns>
    /// <exception cref="ArgumentException">An entry is missing.</exception>
    /// <exception cref="ArgumentNullException"><paramref name="defects"/> is missing.</exception>
    public static IReadOnlyList<Defect> WithoutStandard(IReadOnlyList<Defect> defects) => WithoutStandard(defects, Generic);

    /// <summary>The defects of a survey for which no standard is given.</summary>
    /// <param name="defects">What was found.</param>
    /// <param name="standards">Standards to look in.</param>
    /// <returns>Those that <see cref="ForDefects(IReadOnlyList{Defect}, IReadOnlyList{LabourStandard})"/> leaves out.</returns>
    /// <exception cref="ArgumentException">
    /// An entry is missing, two standards have one code, or a rate of one cannot be honoured.
    /// </exception>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    public static IReadOnlyList<Defect> WithoutStandard(IReadOnlyList<Defect> defects, IReadOnlyList<LabourStandard> standards)
    {
        IReadOnlyList<LabourStandard> all = Checked(standards, nameof(standards));
        return new ValueList<Defect>(Guard.List(defects).Where(defect => ForDefect(defect, all) is null));
    }

    /// <summary>The list, if every standard has a code of its own and each of its rates can be honoured.</summary>
    internal static IReadOnlyList<LabourStandard> Checked(IReadOnlyList<LabourStandard> standards, string name)
    {
        if (ReferenceEquals(standards, Generic))
        {
            return standards;
        }

        ValueList<LabourStandard> list = Guard.List(standards, name: name);
        HashSet<string> codes = new(StringComparer.Ordinal);
        foreach (LabourStandard standard in list)
        {
            if (!codes.Add(standard.Code))
            {
                throw new ArgumentException(name + " holds two standards with the code " + standard.Code + "; each needs its own.", name);
            }

            if ((standard.Contradiction() ?? StandardFit.Misfit(standard)) is string fault)
            {
                throw new ArgumentException(name + ": " + standard.Code + " " + fault + ".", name);
            }
        }

        return list;
    }

    /// <summary>The list, if each of its standards is the only one for its work or its defect, so that each would be found.</summary>
    internal static IReadOnlyList<LabourStandard> Distinct(IReadOnlyList<LabourStandard> standards, string name)
    {
        IReadOnlyList<LabourStandard> list = Checked(standards, name);
        for (int i = 0; i < list.Count && !ReferenceEquals(list, Generic); i++)
        {
            LabourStandard one = list[i];
            if (StandardFit.NeverUsed(one) is string reason)
            {
                throw new ArgumentException(name + ": " + one.Code + " " + reason + ".", name);
            }

            if (list.Take(i).FirstOrDefault(other => IsForTheSame(other, one)) is LabourStandard twin)
            {
                throw Twins(twin, one, name);
            }
        }

        return list;
    }

    private static bool IsForTheSame(LabourStandard one, LabourStandard other) =>
        one.Work == other.Work && one.Repairs == other.Repairs && one.FromMeters == other.FromMeters;

    private static ArgumentException Twins(LabourStandard one, LabourStandard other, string name) => new(
        name + ": " + one.Code + " and " + other.Code + " are for the same work, so that the second would never be used. Leave one out.",
        name);
}
