using System.Globalization;

namespace Refinish.Samples.BrowserBath;

/// <summary>One line of the form. Its name is that of the library's parameter, so that a refusal finds its way back to the line.</summary>
public sealed class Entry(string name, string label, string help, Measure? measure, string text)
{
    public string Name { get; } = name;

    public string Label { get; } = label;

    public string Help { get; } = help;

    /// <summary>What kind of amount it is; none for a date.</summary>
    public Measure? Measure { get; } = measure;

    public string Text { get; set; } = text;

    public string? Error { get; set; }

    /// <summary>The same amount in the other units; what is no number stays as it was written.</summary>
    public void Convert(DisplayUnits from, DisplayUnits to)
    {
        if (Measure is not null && double.TryParse(Text, NumberStyles.Float, CultureInfo.InvariantCulture, out double number))
        {
            Text = Measure.Shown(Si(number, from), to).ToString("G6", CultureInfo.InvariantCulture);
        }
    }

    /// <summary>A number of this line in the SI base unit of its kind.</summary>
    public double Si(double number, DisplayUnits units)
    {
        double zero = Measure!.Shown(0, units);
        return (number - zero) / (Measure.Shown(1, units) - zero);
    }
}
