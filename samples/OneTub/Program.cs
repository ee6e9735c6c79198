// One tub, one quote: `dotnet run --project samples/OneTub`. Shop, house, tub and findings are invented.
using Refinish;
using Refinish.Air;
using Refinish.Climate;
using Refinish.Fixtures;
using Refinish.Jobs;
using Refinish.Substrates;
using UnitsNet;

// The tape.
RecessedBathtub tub = new(new RecessedBathtubMeasurements
{
    RimLength = Length.FromInches(53), RimWidth = Length.FromInches(23.5), RimCornerRadius = Length.FromInches(6),
    FloorLength = Length.FromInches(44), FloorWidth = Length.FromInches(19.5), FloorCornerRadius = Length.FromInches(5),
    Depth = Length.FromInches(13.25), HeadRun = Length.FromInches(7), FootRun = Length.FromInches(2), CoveRadius = Length.FromInches(2.5),
    OverallLength = Length.FromInches(60), OverallWidth = Length.FromInches(30), ApronHeight = Length.FromInches(14.5),
    DrainDiameter = Length.FromInches(2), OverflowDiameter = Length.FromInches(3),
});
Chip chip = new(Length.FromInches(0.5), Length.FromInches(0.05));
Room room = new() { Length = Length.FromFeet(8), Width = Length.FromFeet(6), Height = Length.FromFeet(8) };
Exhaust fan = new() { LabelFlow = VolumeFlow.FromCubicFeetPerMinute(1000) };
RoomClimate climate = RoomClimate.Held(new MoistAir(Temperature.FromDegreesFahrenheit(72), Ratio.FromPercent(48)),
    Temperature.FromDegreesFahrenheit(68));

// What was found, and when work may start: the quote itself is twenty lines.
Survey found = new() { Material = FixtureMaterial.EnamelledCastIron, Defects = [chip], YearBuilt = 1995 };
Job job = new()
{
    Id = "quote-17", Shop = Shop.Generic, Start = new DateTimeOffset(2027, 3, 1, 8, 0, 0, TimeSpan.Zero),
    Premises = new() { Id = "house", Rooms = [new() { Id = "bath", Room = room, Exhaust = fan, Climate = climate }] },
    Fixtures = [new() { Id = "tub", Room = "bath", Fixture = tub, Survey = found }],
};

// What stands in the way comes before the price; null means that it cannot be said.
JobPlan plan = job.Plan();
plan.Objections.ToList().ForEach(objection => Console.WriteLine("STOP       " + objection));
plan.Conditions.ToList().ForEach(condition => Console.WriteLine("FIRST      " + condition));
plan.Doubts.ToList().ForEach(doubt => Console.WriteLine("DOUBT      " + doubt));
plan.Protection.ToList().ForEach(need => Console.WriteLine("BREATHING  " + need));
plan.Air.ToList().ForEach(room => Console.WriteLine("WEAR       at least, since not all can be judged: "
    + (room.Hardest?.InWords() ?? "what the employer's programme names")));
plan.CautionsFor(Audience.Crew).ToList().ForEach(caution => Console.WriteLine("! " + caution));
Console.WriteLine("price      " + (plan.Price?.ToString() ?? "none"));
plan.Schedule?.Visits.ToList().ForEach(visit => Console.WriteLine("visit      " + visit));
plan.Schedule?.Windows.ToList().ForEach(window => Console.WriteLine("window     " + window));
Console.WriteLine("handover   " + (plan.Handover?.ToString() ?? "none"));
plan.CautionsFor(Audience.Customer | Audience.Occupant).ToList().ForEach(caution => Console.WriteLine("at home    " + caution));
