using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Air;
using Refinish.Coatings;
using Refinish.Jobs;
using Refinish.Pictures.Drawing;

namespace Refinish.Pictures;

/// <summary>
/// What is in the air of each room over the coats: all vapour against its flammable limit, and the substance that comes to most of an
/// exposure limit.
/// </summary>
/// <remarks>
/// Every limit carries its authority and the time it is averaged over. The curve is the moment; the averages that a limit is meant for are
/// listed below it with how far off they are. The picture compares with limits and calls nothing harmless; who decides is said on it.
/// </remarks>
/// <example><code>
/// Room bathroom = new() { Length = Length.FromFeet(8), Width = Length.FromFeet(5), Height = Length.FromFeet(8) };
/// SolventEmission coat = new()
/// {
///     Name = "topcoat", Start = TimeSpan.Zero, SprayTime = TimeSpan.FromMinutes(6), VolatileMass = Mass.FromGrams(164),
///     Solvents = [new(Solvents.ButylAcetate, Ratio.FromPercent(100))], FlashFraction = Ratio.FromPercent(40), FilmTimeConstant = TimeSpan.FromMinutes(15),
/// };
/// AirStudy study = new(bathroom, new Exhaust { LabelFlow = VolumeFlow.FromCubicFeetPerMinute(250) }, [coat], TimeSpan.FromHours(8));
/// string svg = new AirPicture(study).ToSvg();
/// </code></example>
public sealed class AirPicture : Picture
{
    private const string Heading = "Vapour in the room";
    private const string NotStudied = "The air was not studied. That is no all-clear.";
    private readonly IReadOnlyList<RoomVapour> rooms;
    private readonly JobPlan? plan;

    /// <summary>Pictures a study.</summary>
    /// <param name="study">The study.</param>
    /// <exception cref="ArgumentNullException"><paramref name="study"/> is missing.</exception>
    public AirPicture(AirStudy study)
        : this(study, Heading)
    {
    }

    /// <summary>Pictures a study under a title of the caller's.</summary>
    /// <param name="study">The study.</param>
    /// <param name="title">What the picture is of.</param>
    /// <exception cref="ArgumentNullException">An argument is missing.</exception>
    /// <exception cref="ArgumentException"><paramref name="title"/> is empty.</exception>
    public AirPicture(AirStudy study, string title)
        : base(title) =>
        rooms = [new RoomVapour(Given.NotNull(study, nameof(study)))];

    /// <summary>Pictures the air of one room, by the clock.</summary>
    /// <param name="air">The air of the room; where nothing evaporates, the picture says so.</param>
    /// <exception cref="ArgumentNullException"><paramref name="air"/> is missing.</exception>
    public AirPicture(RoomAirPlan air)
        : base(Heading, Given.NotNull(air, nameof(air)).Room.Name) =>
        rooms = [new RoomVapour(air)];

    /// <summary>
    /// Pictures the air of every room of a plan, by the clock, and below what each person breathes over a day through all of them.
    /// </summary>
    /// <param name="plan">The plan; without a schedule, the picture says that the air was not studied.</param>
    /// <exception cref="ArgumentNullException"><paramref name="plan"/> is missing.</exception>
    public AirPicture(JobPlan plan)
        : base(Heading, Given.NotNull(plan, nameof(plan)).Job.Name)
    {
        this.plan = plan;
        rooms = [.. plan.Air.Select(air => new RoomVapour(air))];
    }

    // What a person breathes is the same whichever room it comes from. Days of which the same is to be said are told together.
    private IEnumerable<string> People(DisplayUnits units) => (plan?.Exposure ?? [])
        .SelectMany(day => day.Protection.Select(need => (Day: Clock.ShortDay(day.Day), Sentence: need.Comparison.Sentence(units))))
        .GroupBy(one => one.Sentence, one => one.Day)
        .Select(same => string.Join(", ", same.Distinct()) + ", " + same.Key + ".");

    /// <inheritdoc/>
    public override string Describe(DisplayUnits units)
    {
        string inTheWay = string.Concat(Objections.Of(plan, units, rooms.Count > 0).Select(line => " " + line));
        if (rooms.Count == 0)
        {
            return NotStudied + inTheWay;
        }

        return string.Join(" ", rooms.Select(room => (rooms.Count > 1 ? room.Room!.Name + ": " : string.Empty)
            + (room.Study is null ? "Nothing evaporates that is stated. " : string.Empty)
                + string.Join(" ", (room.Study is null ? [] : room.Fire.Concat(room.Worst.Select(exposure => exposure.Comparison)))
                    .Concat(room.Others)
                    .Select(comparison => comparison.Sentence(units) + ".").Distinct())))
            + string.Concat(People(units).Select(line => " " + line))
            + " " + Cautions.BreathingZone.Sentence + " Decided by: " + Cautions.BreathingZone.DecidedBy + "." + inTheWay;
    }

    private protected override void Draw(Page page)
    {
        page.Warnings(Objections.Of(plan, page.Units, rooms.Count > 0));

        if (rooms.Count == 0)
        {
            page.Paragraph(NotStudied);
            return;
        }

        foreach (RoomVapour room in rooms)
        {
            if (rooms.Count > 1)
            {
                page.Section(room.Room!.Name);
            }

            AirCharts.Draw(page, room);
        }

        string[] people = [.. People(page.Units)];
        if (people.Length > 0)
        {
            page.Section("People, each over a day and through all rooms, without protection");
            page.Warnings(people);
        }

        page.Warnings(rooms.SelectMany(room => room.Cautions).Distinct().Select(caution => caution.ToString()));
    }
}
