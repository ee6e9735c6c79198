using System;
using System.Collections.Generic;
using System.Globalization;
using System.Text.Json;
using static Refinish.Json.Shapes.Scalars;

namespace Refinish.Json.Shapes;

/// <summary>Results, which are written and compared but never read: to twelve figures, in the unit of the trade.</summary>
internal static class Results
{
    public static Shape<MeasuredAmount> Amount { get; } = new AmountShape();

    public static Shape<double> Area { get; } = new ResultShape("area", Measure.Area);

    public static Shape<double> Edge { get; } = new ResultShape("length", Measure.Distance);

    public static Shape<double> Film { get; } = new ResultShape("film thickness", Measure.Film);

    public static Shape<double> Liquid { get; } = new ResultShape("volume", Measure.Liquid);

    public static Shape<double> Capacity { get; } = new ResultShape("capacity", Measure.Capacity);

    public static Shape<double> Mass { get; } = new ResultShape("mass", Measure.Mass);

    public static Shape<double> Minutes { get; } = new ResultShape("time in minutes", Measure.Minutes);

    public static Shape<double> Hours { get; } = new ResultShape("time in hours", Measure.Hours);

    public static Shape<double> Percent { get; } = new ResultShape("share", Measure.Percent);

    public static Shape<double> PartsPerMillion { get; } = new ResultShape("concentration by volume", Measure.PartsPerMillion);

    public static Shape<double> Concentration { get; } = new ResultShape("concentration by mass", Measure.MassConcentration);

    public static Shape<double> Temperature { get; } = new ResultShape("temperature", Measure.Temperature);

    public static Shape<double> TemperatureDifference { get; } = new ResultShape("temperature difference", Measure.TemperatureDifference);

    public static Shape<double> SpreadingRate { get; } = new ResultShape("spreading rate", Measure.SpreadingRate);

    public static Shape<double> Airflow { get; } = new ResultShape("airflow", Measure.Airflow);

    public static Shape<double> SoundLevel { get; } = new ResultShape("sound level", Measure.SoundLevel);

    public static Shape<double> Angle { get; } = new ResultShape("angle", Measure.Angle);

    /// <summary>A number without a unit.</summary>
    public static Shape<double> Number { get; } = new NumberShape();

    /// <summary>A number with what it measures, where there is one.</summary>
    public static MeasuredAmount? Of(double? si, Measure measure) => si is double given ? new MeasuredAmount(given, measure) : null;

    public static Shape<IReadOnlyList<string>> Sentences { get; } = CommonShapes.List(Scalars.Text);

    /// <summary>A sentence in the units of the document.</summary>
    public static Shape<Func<DisplayUnits, string>> Sentence { get; } = new SentenceShape();

    /// <summary>Cautions by their codes, beside what they are about.</summary>
    public static Shape<IReadOnlyList<Caution>> CautionCodes { get; } = CommonShapes.List(new CodeShape());

    /// <summary>A value held against a limit. It says how far off, and cannot be judged where either is not known.</summary>
    public static FieldsShape<LimitComparison> Comparison { get; } = new Fields<LimitComparison>("limitComparison")
        .Show("subject", Text, it => it.Subject)
        .Show("outcome", new WordShape<ComparisonOutcome>(), it => it.Outcome)
        .Show("isAboutAtLimit", YesNo, it => it.IsAboutAtLimit)
        .Show("value", Amount.OrNull(), it => it.Value)
        .Show("sense", new WordShape<LimitSense>(), it => it.Sense)
        .Show("limit", Amount.OrNull(), it => it.Limit)
        .Show("margin", Amount.OrNull(), it => it.Margin)
        .Show("remedy", Text.OrNull(), it => it.Remedy)
        .Show("whose", Text.OrNull(), it => it.Whose)
        .Show("source", CommonShapes.Source, it => it.Source)
        .AsResults();

    public static Shape<IReadOnlyList<LimitComparison>> Comparisons { get; } = CommonShapes.List<LimitComparison>(Comparison);

    /// <summary>To the twelve figures that are written.</summary>
    public static double Rounded(double value) =>
        double.Parse(value.ToString("E11", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);

    private static void Write(Utf8JsonWriter json, double si, Measure measure, Writing to, bool isItem = false) =>
        json.WriteQuantity(Rounded(measure.Shown(si, to.Units)), measure.Symbol(to.Units) is { Length: > 0 } symbol ? symbol : "1", isItem);

    private abstract class Written<T> : Shape<T>
    {
        public override Outcome Read(JsonElement json, Reading reading, out T value) =>
            throw new NotSupportedException("Results are not read.");
    }

    private sealed class AmountShape : Written<MeasuredAmount>, IQuantityShape
    {
        public string Name => "amount";

        public IEnumerable<string> Spellings => [];

        public override void Write(Utf8JsonWriter json, MeasuredAmount value, Writing to) => Results.Write(json, value.Si, value.Measure, to);
    }

    private sealed class ResultShape(string name, Measure measure) : Written<double>, IQuantityShape
    {
        public string Name => "calculated " + name;

        public IEnumerable<string> Spellings =>
            new HashSet<string> { measure.Symbol(DisplayUnits.Si), measure.Symbol(DisplayUnits.UsCustomary) };

        public override void Write(Utf8JsonWriter json, double value, Writing to) => Results.Write(json, value, measure, to);

        public override void WriteItem(Utf8JsonWriter json, double value, Writing to) => Results.Write(json, value, measure, to, true);
    }

    private sealed class SentenceShape : Written<Func<DisplayUnits, string>>, IScalarShape
    {
        public string Keywords => "\"type\": \"string\"";

        public override void Write(Utf8JsonWriter json, Func<DisplayUnits, string> value, Writing to) =>
            json.WriteStringValue(value(to.Units));
    }

    private sealed class CodeShape : Written<Caution>, IScalarShape
    {
        public string Keywords => "\"type\": \"string\"";

        public override void Write(Utf8JsonWriter json, Caution value, Writing to) => json.WriteStringValue(value.Code);
    }

    private sealed class NumberShape : Written<double>, IScalarShape
    {
        public string Keywords => "\"type\": \"number\"";

        public override void Write(Utf8JsonWriter json, double value, Writing to) => json.WriteNumberValue(Rounded(value));
    }
}
