using System;
using System.Collections;
using System.Collections.Generic;
using System.Linq;
using Refinish.Estimating;

namespace Refinish.Jobs;

/// <summary>
/// The inputs of two jobs held against each other, part by part; entries of lists by their identity, wherever they stand.
/// </summary>
internal static class JobInputs
{
    private static readonly (string Name, Func<FixtureJob, object?> Part)[] FixtureParts =
    [
        ("name", one => one.Name), ("room", one => one.Room), ("fixture", one => one.Fixture),
        ("survey", one => one.Survey with { Defects = [] }), ("survey.defects", one => one.Survey.Defects), ("zones", one => one.Zones),
        ("share", one => one.Share), ("system", one => one.System), ("gun", one => one.Gun), ("losses", one => one.Losses),
        ("efficiencies", one => one.Efficiencies), ("surface", one => one.Surface), ("weight", one => one.Weight),
        ("wallThickness", one => one.WallThickness), ("oldColour", one => one.OldColour), ("newColour", one => one.NewColour),
    ];

    private static readonly (string Name, Func<SiteRoom, object?> Part)[] RoomParts =
        [("name", one => one.Name), ("room", one => one.Room), ("exhaust", one => one.Exhaust), ("climate", one => one.Climate)];

    private static readonly (string Name, Func<Job, object?> Part)[] JobParts =
    [
        ("id", job => job.Id), ("name", job => job.Name), ("start", job => job.Start), ("days", job => job.Days),
        ("changes", job => new InOrder(job.Changes)), ("stock", job => job.Stock), ("alternatives", job => job.Alternatives),
        ("replacement", job => job.Replacement), ("premises.id", job => job.Premises.Id), ("premises.name", job => job.Premises.Name),
        ("terms.number", job => job.Terms.Number), ("terms.revision", job => job.Terms.Revision), ("terms.issued", job => job.Terms.Issued),
        ("terms.validFor", job => job.Terms.ValidFor), ("terms.discount", job => job.Terms.Discount),
        ("terms.exemption", job => job.Terms.Exemption), ("terms.holdMargin", job => job.Terms.HoldMargin),
        ("terms.payments", job => new InOrder(job.Terms.Payments)), ("terms.pricesShown", job => job.Terms.PricesShown),
        ("premises.difficulty", job => job.Premises.Difficulty), ("premises.quietHours", job => job.Premises.QuietHours),
        ("premises.closed", job => job.Premises.Closed),
    ];

    private static readonly (string Name, Func<Shop, object?> Part)[] ShopParts =
    [
        ("name", shop => shop.Name), ("calendar", shop => shop.Calendar), ("warranty", shop => shop.Warranty),
        ("system", shop => shop.System), ("gun", shop => shop.Gun), ("losses", shop => shop.Losses), ("cups", shop => shop.Cups),
        ("guns", shop => shop.Guns), ("labour", shop => shop.Labour), ("chemicals", shop => shop.Chemicals),
        ("defectMaterials", shop => shop.DefectMaterials), ("survey", shop => shop.Survey), ("filler", shop => shop.Filler),
        ("paid", shop => shop.Paid), ("halfDay", shop => shop.HalfDay), ("standsBy", shop => shop.StandsBy),
        ("prefers", shop => shop.Prefers), ("effort", shop => shop.Effort), ("groutWait", shop => shop.GroutWait),
        ("caulkWait", shop => shop.CaulkWait), ("drainTrimWait", shop => shop.DrainTrimWait),
        ("spotPrimerWait", shop => shop.SpotPrimerWait), ("longestAfterKey", shop => shop.LongestAfterKey),
        ("gunCleaningWithin", shop => shop.GunCleaningWithin),
        ("limits", shop => shop.Limits with { Exposure = [], Voc = [], Slip = [], Noise = [] }),
        ("limits.exposure", shop => shop.Limits.Exposure), ("limits.voc", shop => shop.Limits.Voc),
        ("limits.slip", shop => shop.Limits.Slip), ("limits.noise", shop => shop.Limits.Noise), ("noise", shop => shop.Noise),
        ("airborneFraction", shop => shop.AirborneFraction), ("filmTimeConstant", shop => shop.FilmTimeConstant),
        ("flashOfLanded", shop => shop.FlashOfLanded), ("hidingTolerance", shop => shop.HidingTolerance),
        ("overtime", shop => shop.Overtime), ("depositLimit", shop => shop.DepositLimit),
    ];

    private static readonly (string Name, Func<PriceBook, object?> Part)[] BookParts =
    [
        ("currency", book => book.Currency), ("labourRate", book => book.LabourRate), ("burden", book => book.Burden),
        ("overheadPerHour", book => book.OverheadPerHour), ("overheadOfDirectCost", book => book.OverheadOfDirectCost),
        ("travelPerTrip", book => book.TravelPerTrip), ("disposalPerJob", book => book.DisposalPerJob),
        ("consumablesPerFixture", book => book.ConsumablesPerFixture), ("materials", book => book.Materials),
        ("minimumCharge", book => book.MinimumCharge), ("targetMargin", book => book.TargetMargin), ("taxes", book => book.Taxes),
        ("taxRounding", book => book.TaxRounding), ("hostCodes", book => book.HostCodes), ("cashStep", book => book.CashStep),
    ];

    /// <summary>Every property that is compared, as type and name.</summary>
    internal static string[] Compared { get; } =
    [
        .. JobParts.Select(part => part.Name.StartsWith("premises.", StringComparison.Ordinal) ? part.Name
            : part.Name.StartsWith("terms.", StringComparison.Ordinal) ? "Quote" + part.Name : "Job." + part.Name),
        .. FixtureParts.Select(part => "FixtureJob." + part.Name), .. RoomParts.Select(part => "SiteRoom." + part.Name),
        .. ShopParts.Select(part => "Shop." + part.Name), .. BookParts.Select(part => "PriceBook." + part.Name),
        "Job.Terms", "Job.Fixtures", "Job.Extras", "Job.Premises", "Job.Shop", "FixtureJob.Options", "Premises.Rooms", "SiteRoom.Id",
        "FixtureJob.Id", "Shop.Crew", "Shop.Prices", "PriceBook.Options",
    ];

    public static IReadOnlyList<ValueChange> Between(Job before, Job after)
    {
        List<ValueChange> changes = [];
        Parts("$.", before, after, JobParts, changes);
        Entries("$.fixtures", "id", before.Fixtures, after.Fixtures, fixture => fixture.Id, changes, (path, was, now) =>
        {
            Parts(path + ".", was, now, FixtureParts, changes);
            Entries(path + ".options", "code", was.Options, now.Options, option => option.Code, changes, Whole<FixtureOption>(changes));
        });
        Entries("$.extras", "id", before.Extras, after.Extras, extra => extra.Id, changes, Whole<ExtraItem>(changes));
        Entries("$.premises.rooms", "id", before.Premises.Rooms, after.Premises.Rooms, room => room.Id, changes,
            (path, was, now) => Parts(path + ".", was, now, RoomParts, changes));
        Parts("$.shop.", before.Shop, after.Shop, ShopParts, changes);
        Entries("$.shop.crew", "id", before.Shop.Crew, after.Shop.Crew, worker => worker.Id, changes, Whole<Worker>(changes));
        Parts("$.shop.prices.", before.Shop.Prices, after.Shop.Prices, BookParts, changes);
        Entries("$.shop.prices.options", "code", before.Shop.Prices.Options, after.Shop.Prices.Options, option => option.Code,
            changes, Whole<OptionPrice>(changes));
        return new ValueList<ValueChange>(changes);
    }

    private static Action<string, T, T> Whole<T>(List<ValueChange> changes)
        where T : class => (path, was, now) =>
    {
        if (!was.Equals(now))
        {
            changes.Add(new ValueChange { Path = path });
        }
    };

    private static void Parts<T>(string path, T before, T after, (string Name, Func<T, object?> Part)[] parts, List<ValueChange> changes)
    {
        foreach ((string name, Func<T, object?> part) in parts)
        {
            object? was = part(before);
            object? now = part(after);
            if (!Same(was, now))
            {
                changes.Add(new ValueChange { Path = path + name, Kind = ChangeKinds.Of(was, now) });
            }
        }
    }

    private static void Entries<T>(
        string path, string name, IReadOnlyList<T> before, IReadOnlyList<T> after, Func<T, string> id, List<ValueChange> changes,
            Action<string, T, T> both)
        where T : class
    {
        foreach (Pairs<T>.Pair pair in new Pairs<T>(before, after, id).All)
        {
            string place = path + "[?@." + name + "=='" + pair.Id.Replace("\\", "\\\\").Replace("'", "\\'") + "']";
            if (pair is { Before: T was, After: T now })
            {
                both(place, was, now);
            }
            else
            {
                changes.Add(new ValueChange { Path = place, Kind = pair.Kind });
            }
        }
    }

    // The order of a list says nothing unless it is held in order.
    private static bool Same(object? one, object? other)
    {
        if (one is string || other is string || one is not IEnumerable these || other is not IEnumerable those)
        {
            return Equals(one, other);
        }

        List<object> left = [.. those.Cast<object>()];
        return these.Cast<object>().All(left.Remove) && left.Count == 0;
    }

    /// <summary>A list whose order matters.</summary>
    private sealed class InOrder(object list)
    {
        private readonly object list = list;

        public override bool Equals(object? obj) => obj is InOrder other && list.Equals(other.list);

        public override int GetHashCode() => list.GetHashCode();
    }
}
