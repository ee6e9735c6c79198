using System;
using System.Collections.Generic;
using System.Globalization;
using System.IO;
using System.Linq;
using System.Reflection;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Refinish.Air;
using Refinish.Coatings;
using Refinish.Coverage;
using Refinish.Films;
using Refinish.Fixtures;
using Refinish.Tests.House;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Fixtures;

/// <summary>The tables of the measurement records: what stands in a row holds for the property, its guard and its documentation.</summary>
public class InputTableTests
{
    // Flows that are zero or something a fan can move.
    private static readonly string[] MayBeNone = [nameof(Exhaust.LabelFlow), nameof(Room.Infiltration)];

    private static readonly Dictionary<string, object> Records = Tapes.Every()
        .Select(fixture => fixture.GetType().GetProperty("Measurements")?.GetValue(fixture)).OfType<object>()
        .Append(ApplicationLosses.Generic)
        .Append(new SprayGun { FluidRate = VolumeFlow.FromMillilitersPerMinute(300), TransferEfficiency = Ratio.FromPercent(65) })
        .Append(new Room { Length = Length.FromMeters(3), Width = Length.FromMeters(2.5), Height = Length.FromMeters(2.5) })
        .Append(new Exhaust { LabelFlow = VolumeFlow.FromCubicMetersPerHour(250) })
        .Append(GenericCatalogue.EpoxyPrimer.Parts[0].Component)
        .GroupBy(record => record.GetType().Name).ToDictionary(group => group.Key, group => group.First());

    private static readonly Type[] Kinds =
    [
        typeof(Length), typeof(Angle), typeof(Ratio), typeof(Volume), typeof(VolumeFlow), typeof(double), typeof(int), typeof(Temperature),
        typeof(Pressure), typeof(Density), typeof(MolarMass), typeof(DynamicViscosity), typeof(TimeSpan),
    ];

    public static TheoryData<string> Names => [.. Records.Keys];

    [Fact]
    [Evidence(Basis.Contract, "every record of measurements, and every other that has a table, is tested below")]
    public void Every_record_with_a_table_is_here() => Assert.Empty(
        typeof(IFixture).Assembly.GetExportedTypes()
            .Where(type => type.Name.EndsWith("Measurements", StringComparison.Ordinal)
                || (type.GetProperty("Inputs") is { PropertyType.IsGenericType: true } inputs && inputs.GetMethod!.IsStatic))
            .Select(type => type.Name).Except(Records.Keys));

    [Theory]
    [MemberData(nameof(Names))]
    [Evidence(Basis.Contract, "every number that can be set is in the table, in order, and is required there where the compiler requires it")]
    public void The_table_has_every_number_of_the_record(string name)
    {
        object record = Records[name];
        PropertyInfo[] numbers = [.. Numbers(record.GetType())];
        InputTable table = TableOf(record);
        Assert.Equal(numbers.Select(property => property.Name), table.Select(input => input.Name));
        Assert.All(numbers, property =>
        {
            InputField input = table[property.Name];
            Assert.Equal(IsRequired(property), input.IsRequired);
            Assert.Equal(property.PropertyType == typeof(int), input.IsWhole);
            Assert.Equal(Nullable.GetUnderlyingType(property.PropertyType) is not null, input.MayBeUnknown);
            Assert.True(input.Least < input.Greatest && input.Meaning.Length > 4 && input.IsGreatestAllowed);
        });
        Assert.Equal(string.Join(", ", numbers.Select(property => property.Name)), table.ToString());
    }

    [Theory]
    [MemberData(nameof(Names))]
    [Evidence(Basis.Contract, "the ends of the range are accepted, the next number beyond is refused by name, value, unit and range, in the words of Refusal")]
    public void The_guard_is_that_of_the_table(string name)
    {
        object record = Records[name];
        foreach (PropertyInfo property in Numbers(record.GetType()))
        {
            InputField input = TableOf(record)[property.Name];
            foreach (double end in input.IsLeastAllowed ? new[] { input.Least, input.Greatest } : [input.Greatest])
            {
                Assert.Null(Refused(record, property, end, out object changed));
                Assert.Equal(Quantity(property, end), property.GetValue(changed));
                Assert.Null(input.Refusal(end));
            }

            foreach (double beyond in input.IsWhole
                ? [input.Least - 1, input.Greatest + 1]
                : Kind(property) == typeof(double)
                    ? [Next(property, input.Least, -1), Next(property, input.Greatest, 1), 1000, double.NaN, double.PositiveInfinity]
                    : new[] { input.IsLeastAllowed ? Next(property, input.Least, -1) : input.Least, Next(property, input.Greatest, 1), 1e9 })
            {
                ArgumentOutOfRangeException? refusal = Refused(record, property, beyond, out _);
                Assert.True(refusal is not null, name + "." + property.Name + " accepts " + beyond.ToString(CultureInfo.InvariantCulture));
                Assert.Equal(property.Name, refusal!.ParamName);
                Assert.StartsWith(Sentence(input, property, beyond)!, refusal.Message, StringComparison.Ordinal);
                Assert.Contains(
                    MayBeNone.Contains(property.Name) ? input.Measure.Format(0) + ", or at least "
                        : (input.IsLeastAllowed ? "at least " : "more than ") + input.Measure.Format(input.Least) + " and at most ",
                    refusal.Message, StringComparison.Ordinal);
                Assert.Contains(" and at most " + input.Measure.Format(input.Greatest), refusal.Message, StringComparison.Ordinal);
            }
        }
    }

    [Fact]
    [Evidence(Basis.Contract, "the sentence of a form, typed out")]
    public void A_form_is_told_what_the_record_would_say()
    {
        InputField depth = RecessedBathtubMeasurements.Inputs["Depth"];
        Assert.Equal("Depth is 3378.2 mm (given as 133 in); allowed: at least 100 mm and at most 800 mm.", depth.Refusal(Length.FromInches(133)));
        Assert.Null(depth.Refusal(Length.FromInches(13.3)));
        Assert.Equal("Depth: at least 100 mm and at most 800 mm", depth.ToString());
        Assert.Equal(("depth", Measure.Length, true, null), (depth.Meaning, depth.Measure, depth.IsRequired, depth.Default));
        InputField feet = FreestandingTubMeasurements.Inputs["Feet"];
        Assert.Equal("Feet is 9 (a count); allowed: at least 0 and at most 8.", feet.Refusal(9));
        Assert.Equal("Feet is 2.5; allowed: a whole number.", feet.Refusal(2.5));
        InputField turn = FreestandingTubMeasurements.Inputs["RollTurn"];
        Assert.Equal("RollTurn is 300° (given as 300 °); allowed: at least 90° and at most 270°.", turn.Refusal(Angle.FromDegrees(300)));
        Assert.Contains("Length", Assert.Throws<ArgumentException>(() => turn.Refusal(Length.FromMeters(1))).Message, StringComparison.Ordinal);
        Assert.Contains("Angle", Assert.Throws<ArgumentException>(() => depth.Refusal(Angle.FromDegrees(1))).Message, StringComparison.Ordinal);
        string share = PedestalSinkMeasurements.Inputs["ColumnShare"].Refusal(Ratio.FromPercent(120))!;
        Assert.StartsWith("ColumnShare is 120 %", share, StringComparison.Ordinal);
        Assert.EndsWith("; allowed: at least 0 % and at most 100 %.", share, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => depth.Refusal(Ratio.FromPercent(1)));
        Assert.Contains("Depth", Assert.Throws<ArgumentException>(() => RecessedBathtubMeasurements.Inputs["Deep"]).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(nameof(RecessedBathtubMeasurements), "ApronProfileFactor 1, FloorShift 0, TilingFlangeHeight 0")]
    [InlineData(nameof(FreestandingTubMeasurements), "")]
    [InlineData(nameof(OvalTubMeasurements), "")]
    [InlineData(nameof(CornerTubMeasurements), "FrontBow 0")]
    [InlineData(nameof(PedestalSinkMeasurements), "SkirtProfileFactor 1, ColumnShare 1")]
    [InlineData(nameof(CounterSinkMeasurements), "WallThickness 0, BaseDiameter 0")]
    [InlineData(nameof(ShowerPanMeasurements), "TextureFactor 1, ThresholdWidth 0")]
    [InlineData(nameof(CountertopMeasurements), "EdgeRadius 0")]
    [InlineData(nameof(FlatPanelMeasurements), "")]
    [InlineData(nameof(TiledWallMeasurements), "")]
    [InlineData(nameof(ApplicationLosses), "EdgeOverspray 0, HoldUp 0, Residue 0, ProfileDepth 0, ProfileFill 1, UnusedPot 0")]
    [InlineData(nameof(SprayGun), "TriggerFraction 1")]
    [InlineData(nameof(Room), "AirPressure 101325, Infiltration 0, AirTemperature unknown")]
    [InlineData(nameof(Exhaust), "DeliveredFraction 0.6, MixingFactor 3")]
    [InlineData(nameof(CoatingComponent), "MassSolids unknown, VolumeSolids unknown, Water unknown, ExemptCompounds unknown, "
        + "ExemptDensity unknown, EpoxideEquivalent unknown, AmineHydrogenEquivalent unknown, HydroxylNumber unknown, "
        + "IsocyanateContent unknown, Viscosity unknown, FlashPoint unknown, ShelfLifeOpened unknown")]
    [Evidence(Basis.Contract, "what holds unless it is set, as the documentation of the properties has it, typed out")]
    public void What_is_left_out_is_the_default(string name, string expected)
    {
        object record = Records[name];
        InputTable table = TableOf(record);
        Assert.Equal(
            expected,
            string.Join(", ", table.Where(input => !input.IsRequired).Select(input =>
                input.Name + " " + (input.Default?.ToString(CultureInfo.InvariantCulture) ?? "unknown"))));
        InputValues bare = table.Where(input => input.IsRequired).Aggregate(table.Empty, (made, input) =>
            made.With(input.Name, ValuesOf(record).Value(input.Name)!.Value));
        object made = With(record, bare);
        Assert.All(Numbers(record.GetType()).Where(property => !IsRequired(property)), property =>
            Assert.Equal(table[property.Name].Default is double si ? Quantity(property, si) : null, property.GetValue(made)));
        Assert.All(Numbers(record.GetType()).Where(IsRequired), property => Assert.Equal(property.GetValue(record), property.GetValue(made)));
    }

    [Theory]
    [MemberData(nameof(Names))]
    [Evidence(Basis.Contract, "a summary that states a range, such as 0.3 to 2.5 m, states that of the table")]
    public void The_documentation_states_the_range_of_the_table(string name)
    {
        object record = Records[name];
        int stated = 0;
        foreach (InputField input in TableOf(record))
        {
            string summary = Summary(record.GetType(), input.Name);
            if (Regex.Match(summary, @"(?<=[ ,;])(?:(?<least>−?[\d.]+)(?: ?(?<first>mm|°))? to|more than (?<least>[\d.]+) and at most) (?<most>−?[\d.]+)"
                + @"(?: ?(?<unit>mm|m³/s|m|µm|L/min|L|°C|°|%|kPa|g/mL|g/mol|mg KOH/g))?(?=[;,.: ])") is { Success: true } range)
            {
                string unit = range.Groups["unit"].Value;
                string first = range.Groups["first"].Success ? range.Groups["first"].Value : unit;
                stated++;
                Assert.Equal(input.Least, Si(range.Groups["least"].Value, first), 12);
                Assert.Equal(input.Greatest, Si(range.Groups["most"].Value, unit), 12);
            }
        }

        // A panel's edges go up to its perimeter; the exponents of an oval, the viscosity and the life of a can are told in words.
        Assert.InRange(stated, TableOf(record).Count - 2, TableOf(record).Count);
    }

    [Fact]
    [Evidence(Basis.Identity, "values by name and values by property are the same record; equality is by SI value, whatever the unit")]
    public void A_record_is_made_of_values_by_name()
    {
        RecessedBathtubMeasurements tub = Tapes.FiveFootTub() with { FloorShift = Length.FromInches(-1) };
        RecordInputs<RecessedBathtubMeasurements> inputs = RecessedBathtubMeasurements.Inputs;
        InputValues values = inputs.Aggregate(inputs.Empty, (made, input) => input.Measure.Equals(Measure.Length)
            ? made.With(input.Name, Length.FromInches(inputs.ValuesOf(tub).Value(input.Name)!.Value / 0.0254))
            : made.With(input.Name, inputs.ValuesOf(tub).Value(input.Name)!.Value));
        RecessedBathtubMeasurements copy = new(values);
        Assert.All(inputs, input => Assert.Equal(inputs.ValuesOf(tub).Value(input.Name)!.Value, values.Value(input.Name)!.Value, 12));
        Assert.Equal(tub, new RecessedBathtubMeasurements(inputs.ValuesOf(tub)));
        Assert.Equal(tub.GetHashCode(), new RecessedBathtubMeasurements(inputs.ValuesOf(tub)).GetHashCode());
        Assert.Equal(Tapes.FiveFootTub(), Tapes.FiveFootTub() with { Depth = Length.FromMeters(13.25 * 0.0254) });
        RecessedBathtubMeasurements deeper = tub with { Depth = Length.FromMeters(0.4) };
        Assert.Equal((0.4, tub.RimLength, -0.0254), (deeper.Depth.Meters, deeper.RimLength, deeper.FloorShift.Meters));
        Assert.NotEqual(tub, deeper);
        Assert.Equal(deeper, inputs.With(tub, inputs.ValuesOf(tub).With("Depth", 0.4)));
        Assert.Equal(tub.ToString(), copy.ToString());
    }

    [Fact]
    [Evidence(Basis.Contract, "a form that is not filled in, or that is another's, makes no record")]
    public void A_form_has_to_be_whole()
    {
        InputValues form = ShowerPanMeasurements.Inputs.Empty.With("FloorLength", Length.FromInches(48));
        Assert.Equal(1.2192, form.Value("FloorLength")!.Value, 12);
        Assert.Null(form.Value("FloorWidth"));
        Assert.Equal(1, form.Value("TextureFactor"));
        Assert.Equal(
            "FloorWidth, WallHeight, LedgeWidth, CurbInsideHeight, CurbTopWidth, CurbOutsideHeight, DrainDiameter",
            string.Join(", ", form.Missing.Select(input => input.Name)));
        Assert.Contains("lacks FloorWidth", Assert.Throws<ArgumentException>(() => new ShowerPanMeasurements(form)).Message, StringComparison.Ordinal);
        Assert.Contains("other inputs", Assert.Throws<ArgumentException>(() => new OvalTubMeasurements(form)).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentNullException>(() => new OvalTubMeasurements(null!));
        Assert.StartsWith(
            "FloorLength is 4800 mm", Assert.Throws<ArgumentOutOfRangeException>(() => form.With("FloorLength", 4.8)).Message, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => form.With("Floor", Length.FromMeters(1)));
        Assert.Equal("FloorLength 1219.2 mm, TextureFactor 1, ThresholdWidth 0 mm", form.ToString());
        Assert.Equal(form, ShowerPanMeasurements.Inputs.Empty.With("FloorLength", form.Value("FloorLength")!.Value));
        Assert.NotEqual(form, form.With("ThresholdWidth", Length.FromMillimeters(40)));
    }

    [Fact]
    [Evidence(Basis.Contract, "readings of a composed kind are rows of the same type, refused in the same words")]
    public void A_composed_kind_has_a_table_too()
    {
        InputField length = ComposedKind.WindowSill.Readings["Length"];
        string sentence = length.Refusal(Length.FromMeters(50).Meters)!;
        Assert.StartsWith("Length is 50000 mm; allowed: more than 0 mm and at most ", sentence, StringComparison.Ordinal);
        Assert.StartsWith(sentence, Assert.Throws<ArgumentOutOfRangeException>(() => new ComposedFixture(ComposedKind.WindowSill,
            [new("Length", Length.FromMeters(20)), new("Depth", Length.FromInches(5)), new("EdgeHeight", Length.FromInches(1)), new("OpenEnds", 0)]))
            .Message.Replace("20000", "50000"), StringComparison.Ordinal);
        Assert.False(length.IsLeastAllowed);
    }

#if NETCOREAPP
    [Fact]
    [Evidence(Basis.Contract, "reading a length allocates nothing")]
    public void Reading_a_length_allocates_nothing()
    {
        RecessedBathtubMeasurements tub = Tapes.FiveFootTub();
        double sum = tub.Depth.Meters + tub.TilingFlangeHeight.Meters;
        long before = GC.GetAllocatedBytesForCurrentThread();
        sum += tub.Depth.Meters + tub.TilingFlangeHeight.Meters;
        Assert.Equal(before, GC.GetAllocatedBytesForCurrentThread());
        Assert.Equal(2 * 13.25 * 0.0254, sum, 12);
    }
#endif

    private static IEnumerable<PropertyInfo> Numbers(Type record) => record.GetProperties(BindingFlags.Public | BindingFlags.Instance)
        .Where(property => property.SetMethod is { IsPublic: true } && Kinds.Contains(Kind(property)));

    private static Type Kind(PropertyInfo property) => Nullable.GetUnderlyingType(property.PropertyType) ?? property.PropertyType;

    private static bool IsRequired(PropertyInfo property) =>
        property.CustomAttributes.Any(attribute => attribute.AttributeType.Name == "RequiredMemberAttribute");

    private static InputTable TableOf(object record) => (InputTable)record.GetType().GetProperty("Inputs")!.GetValue(null)!;

    private static InputValues ValuesOf(object record) => (InputValues)Call(record, "ValuesOf", record);

    private static object With(object record, InputValues values) => Call(record, "With", record, values);

    private static object Call(object record, string method, params object[] arguments) =>
        TableOf(record).GetType().GetMethod(method)!.Invoke(TableOf(record), arguments)!;

    // A hydroxyl number is told in milligrams to the gram.
    private static object Quantity(PropertyInfo property, double si) => Kind(property).Name switch
    {
        nameof(Length) => Length.FromMeters(si),
        nameof(Angle) => Angle.FromRadians(si),
        nameof(Ratio) => Ratio.FromDecimalFractions(si),
        nameof(Volume) => Volume.FromCubicMeters(si),
        nameof(VolumeFlow) => VolumeFlow.FromCubicMetersPerSecond(si),
        nameof(Temperature) => Temperature.FromKelvins(si),
        nameof(Pressure) => Pressure.FromPascals(si),
        nameof(Density) => Density.FromKilogramsPerCubicMeter(si),
        nameof(MolarMass) => MolarMass.FromKilogramsPerMole(si),
        nameof(DynamicViscosity) => DynamicViscosity.FromNewtonSecondsPerMeterSquared(si),
        nameof(TimeSpan) => TimeSpan.FromTicks((long)Math.Round(si * TimeSpan.TicksPerSecond)),
        nameof(Int32) => (int)si,
        _ => property.Name == nameof(CoatingComponent.HydroxylNumber) ? si * 1000 : si,
    };

    private static string? Sentence(InputField input, PropertyInfo property, double si) =>
        Quantity(property, si) is IQuantity quantity ? input.Refusal(quantity) : input.Refusal(si);

    private static ArgumentOutOfRangeException? Refused(object record, PropertyInfo property, double si, out object changed)
    {
        changed = record.GetType().GetMethod("<Clone>$")!.Invoke(record, null)!;
        try
        {
            property.SetValue(changed, Quantity(property, si));
            return null;
        }
        catch (TargetInvocationException caught) when (caught.InnerException is ArgumentOutOfRangeException refusal)
        {
            return refusal;
        }
    }

    // Temperatures are kept to 1e-10 K, times to ticks.
    private static double Next(PropertyInfo property, double value, int direction) =>
        Kind(property) == typeof(Temperature) || Kind(property) == typeof(TimeSpan) ? value + (direction * 1e-6)
        : value == 0 ? direction * double.Epsilon
        : BitConverter.Int64BitsToDouble(BitConverter.DoubleToInt64Bits(value) + (direction * Math.Sign(value)));

    private static double Si(string number, string unit)
    {
        double value = double.Parse(number.Replace('−', '-'), CultureInfo.InvariantCulture);
        return unit switch
        {
            "mm" or "L" or "g/mol" or "mg KOH/g" => value / 1e3,
            "L/min" => value / 60e3,
            "µm" => value / 1e6,
            "°" => value * Math.PI / 180,
            "°C" => value + 273.15,
            "%" => value / 100,
            "kPa" or "g/mL" => value * 1e3,
            _ => value,
        };
    }

    private static string Summary(Type record, string property)
    {
        string[] files = Directory.GetFiles(Path.Combine(ReadmeTests.Root(), "src", "Refinish.Core"), record.Name + ".cs", SearchOption.AllDirectories);
        string source = File.ReadAllText(Assert.Single(files)).Replace("\r", string.Empty);
        Match found = Regex.Match(source, @"((?:    ///[^\n]*\n)+)    public (?:required )?[\w.?]+ " + property + @"(?: \{|\n)");
        Assert.True(found.Success, record.Name + "." + property);
        XElement comment = XElement.Parse("<c>" + Regex.Replace(found.Groups[1].Value, @"^ +///", string.Empty, RegexOptions.Multiline) + "</c>");
        return Regex.Replace(comment.Element("summary")!.Value, @"\s+", " ");
    }
}
