using System.Collections.Generic;
using Refinish.Substrates;
using UnitsNet;

namespace Refinish.Estimating;

/// <summary>What kinds of work and of defects are measured by, and so which rates of a labour standard can be honoured.</summary>
internal static class StandardFit
{
    /// <summary>
    /// A rate that nothing of this work or defect is measured by, as words behind the code; <see langword="null"/> when all fit.
    /// </summary>
    public static string? Misfit(LabourStandard standard)
    {
        bool hasArea = standard.PerSquareMeter.Maximum > 0;
        if (standard.Work is WorkKind kind)
        {
            return hasArea && Counted(kind) is string counted
                ? "has a rate by area, and " + WordsOf(kind) + " is counted in " + counted
                    + ", not measured by area; give it a rate by unit"
                : standard.OncePerVisitFraction > 0 && ComesAlone(kind) is string unit
                    ? "has OncePerVisit, and " + WordsOf(kind) + " comes one " + unit
                        + " at a time, so that there is no second one to take less"
                    : null;
        }

        return standard.Repairs is not DefectKind defect ? null
            : hasArea && !defect.HasArea
                ? "has a rate by area, and a " + defect + " is counted, not measured by area; give it a rate by unit"
            : standard.FromMeters > 0 && !defect.HasSize
                ? "has a FromSize, and a " + defect + " has no size that it goes by, so that nothing would reach it"
            : null;
    }

    /// <summary>
    /// Why no operation of a plan would take its hours, as words behind the code; <see langword="null"/> when some would.
    /// </summary>
    public static string? NeverUsed(LabourStandard standard) => (standard.Work, standard.Repairs) switch
    {
        (null, null) => "names neither a kind of work nor a defect, so that nothing would find it",
        (WorkKind.Warm, _) => "is for warming, which goes on by itself and takes nobody",
        (WorkKind.StandBy, _) => "is for standing by, which takes as long as what is watched and is paid by the clock",
        (_, { IsAnotherTrades: true } defect) =>
            "mends a " + defect + ", which is another trade's work, so that no operation of a plan would use it",
        _ => null,
    };

    /// <summary>The task of mending one defect, after the tasks of others.</summary>
    public static LabourTask Task(LabourStandard standard, Defect defect, IReadOnlyList<LabourTask> before)
    {
        double area = defect.Kind.HasArea && defect is not Liner { ComesOff: false } ? defect.FlatArea : 0;
        return After(new LabourTask { Standard = standard, Area = Area.FromSquareMeters(area), Units = LabourStandards.UnitsOf(defect) },
            before);
    }

    /// <summary>The task with the units that stand before it, where some of its hours are spent once for all of them.</summary>
    public static LabourTask After(LabourTask task, IReadOnlyList<LabourTask> before)
    {
        double units = 0;
        for (int i = 0; i < before.Count && task.Standard.OncePerVisitFraction > 0; i++)
        {
            units += before[i].Standard.Code == task.Standard.Code ? before[i].Units ?? 0 : 0;
        }

        return task.UnitsBefore == units ? task : task with { UnitsBefore = units };
    }

    private static string? Counted(WorkKind kind) => kind switch
    {
        WorkKind.Travel => "trips",
        WorkKind.CleanGun => "guns",
        WorkKind.FitTrim => "sets",
        WorkKind.ReinforceCrack => "metres of crack",
        _ => null,
    };

    private static string? ComesAlone(WorkKind kind) => kind switch
    {
        WorkKind.Travel => "trip",
        WorkKind.CleanGun => "gun",
        WorkKind.SetUp => "room",
        _ => null,
    };

    private static string WordsOf(WorkKind kind) => "the work " + kind.ToString("G");
}
