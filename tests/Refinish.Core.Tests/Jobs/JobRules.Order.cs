using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Estimating;
using Refinish.Jobs;
using Refinish.Substrates;

namespace Refinish.Tests.Jobs;

/// <content>The order of the trade, written down here as pairs and read against the times of a schedule, fixture by fixture.</content>
internal static partial class JobRules
{
    // What comes first, what comes after it, and why: common practice, no source, written down apart from the table of the library.
    private static readonly (WorkKind First, WorkKind Then, string Why)[] Order =
    [
        (WorkKind.SetUp, WorkKind.Clear, "floor and exhaust are protected before anything else"),
        (WorkKind.Clear, WorkKind.Descale, "nothing is cleaned under caulk and hardware"),
        (WorkKind.RemoveSilicone, WorkKind.Key, "abrading spreads silicone"),
        (WorkKind.LayOnStripper, WorkKind.Strip, "the stripper has to work first"),
        (WorkKind.Strip, WorkKind.Descale, "what lies under the old coat is what gets cleaned"),
        (WorkKind.Strip, WorkKind.Key, "what lies under the old coat is what gets abraded"),
        (WorkKind.Descale, WorkKind.Degrease, "mineral first, then oil and soap"),
        (WorkKind.Degrease, WorkKind.Key, "abrading rubs grease in"),
        (WorkKind.Regrout, WorkKind.Promote, "grout is coated too"),
        (WorkKind.Key, WorkKind.GrindRust, "rinse water rusts bright metal"),
        (WorkKind.RinseAndDry, WorkKind.GrindRust, "rinse water rusts bright metal"),
        (WorkKind.GrindRust, WorkKind.SpotPrime, "bright metal is primed"),
        (WorkKind.SpotPrime, WorkKind.Fill, "filler on primed metal"),
        (WorkKind.GrindRust, WorkKind.Fill, "filler on primed metal"),
        (WorkKind.Key, WorkKind.Fill, "filler between key and promoter"),
        (WorkKind.Fill, WorkKind.Tack, "filler is sanded and wiped"),
        (WorkKind.Key, WorkKind.Mask, "tape after the last rinse"),
        (WorkKind.RinseAndDry, WorkKind.Mask, "tape after the last rinse"),
        (WorkKind.Strip, WorkKind.Mask, "tape after the last rinse"),
        (WorkKind.Tack, WorkKind.Mask, "tape after the last dust"),
        (WorkKind.Mask, WorkKind.Promote, "tape before the promoter"),
        (WorkKind.WipeAgain, WorkKind.Promote, "wiped before the promoter"),
        (WorkKind.Tack, WorkKind.Promote, "dust off before the promoter"),
        (WorkKind.Warm, WorkKind.Promote, "warm before the promoter"),
        (WorkKind.Warm, WorkKind.Fill, "filler on a warm, dry fixture"),
        (WorkKind.SandFiller, WorkKind.SealCrazing, "the seal is not sanded through"),
        (WorkKind.Promote, WorkKind.SprayPrimer, "promoter under the first coat"),
        (WorkKind.Promote, WorkKind.SprayTopcoat, "promoter under the first coat"),
        (WorkKind.SprayPrimer, WorkKind.SprayTopcoat, "primer under topcoat"),
        (WorkKind.SprayTopcoat, WorkKind.Demask, "tape off after the last coat"),
        (WorkKind.Broadcast, WorkKind.Demask, "tape off after the last coat"),
        (WorkKind.Demask, WorkKind.FitTrim, "trim on the finished coat"),
        (WorkKind.FitTrim, WorkKind.Caulk, "caulk after trim"),
        (WorkKind.Demask, WorkKind.Caulk, "caulk on the finished coat"),
        (WorkKind.Caulk, WorkKind.Inspect, "the inspection is last"),
    ];

    /// <summary>Times of the schedule against the pairs; what each survey demands is there; nothing is etched that must not be.</summary>
    public static string? BreaksTheOrder(Job job)
    {
        JobPlan plan = job.Plan();
        foreach (Procedure procedure in plan.Planned)
        {
            if (MissesWork(procedure) is string missing)
            {
                return missing;
            }
        }

        if (plan.Schedule is not { IsPossible: true } schedule)
        {
            return null;
        }

        foreach (Procedure procedure in plan.Planned)
        {
            string id = procedure.Fixture.Id;
            ScheduledOperation[] own = [.. schedule.Operations.Where(operation => operation.Operation.Fixtures.Contains(id))];
            foreach ((WorkKind first, WorkKind then, string why) in Order)
            {
                ScheduledOperation? late = own.LastOrDefault(operation => operation.Operation.Kind == first);
                ScheduledOperation? early = own.FirstOrDefault(operation => operation.Operation.Kind == then);
                if (late is not null && early is not null && early.Start < late.End)
                {
                    return early.Operation.Id + " starts before " + late.Operation.Id + " ends: " + why;
                }
            }

            if (SleepsUnwiped(own) is string unwiped)
            {
                return unwiped;
            }
        }

        return null;
    }

    // What a survey asks for, read from the survey and not from the procedure's own decision.
    private static string? MissesWork(Procedure procedure)
    {
        Survey survey = procedure.Fixture.Survey;
        WorkKind[] kinds = [.. procedure.Operations.Select(operation => operation.Kind)];
        AdhesionGrade? worst = survey.OldCoatAdhesion
            ?? survey.Defects.OfType<PeelingCoat>().Select(coat => coat.Adhesion).OrderBy(grade => grade ?? AdhesionGrade.Grade5B).FirstOrDefault();
        bool weak = worst < AdhesionGrade.Grade4B;
        bool old = survey.PreviouslyRefinished || survey.OldCoatAdhesion is not null || survey.Defects.Any(defect => defect is PeelingCoat);
        string id = procedure.Fixture.Id;
        bool etches = procedure.Operations.Any(operation => operation.Kind == WorkKind.Key && operation.Instruction.Contains("etch", StringComparison.Ordinal));
        return weak && !(kinds.Contains(WorkKind.LayOnStripper) && kinds.Contains(WorkKind.Strip)) ? id + " is to be stripped and is not"
            : old && !weak && etches ? id + " keeps its old coat and is etched"
            : survey.Defects.Any(defect => defect is RustSpot) && !kinds.Contains(WorkKind.GrindRust) ? id + " keeps its rust"
            : survey.Defects.Any(defect => defect is Chip or Burn or WornPatch or Crack) && !kinds.Contains(WorkKind.Fill) ? id + " keeps its chips"
            : survey.Defects.Count == 0 && kinds.Contains(WorkKind.Fill) ? id + " is filled for nothing"
            : null;
    }

    // A night between abrading and the first coat asks for a wipe on the day of that coat.
    private static string? SleepsUnwiped(ScheduledOperation[] own)
    {
        ScheduledOperation? keyed = own.LastOrDefault(operation => operation.Operation.Kind is WorkKind.Key or WorkKind.RinseAndDry);
        ScheduledOperation? coat = own.FirstOrDefault(operation => operation.Operation.Sprays);
        return keyed is not null && coat is not null && keyed.End.Date < coat.Start.Date
            && !own.Any(operation => operation.Operation.Kind == WorkKind.WipeAgain && operation.Start.Date == coat.Start.Date && operation.End <= coat.Start)
            ? coat.Operation.Id + " goes on the day after " + keyed.Operation.Id + " without a wipe" : null;
    }
}
