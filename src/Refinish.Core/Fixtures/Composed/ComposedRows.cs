using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish.Fixtures;

/// <summary>Puts the readings of a composed kind together; usual bands in inches, what is allowed in metres.</summary>
internal sealed class ComposedRows(Source sizes)
{
    public static readonly Source Details = Source.Invented("bands of edges, radii, holes and other details of such fixtures");

    private readonly List<InputField> rows = [];

    /// <summary>A length that has to be taken and is more than 0.</summary>
    public ComposedRows Length(string name, string words, double least, double greatest, Source? source = null) =>
        Add(name, words, Bounds.Positive(Measure.Length, Most(greatest)), null, least, greatest, source ?? sizes);

    /// <summary>A length that has to be taken and may be 0.</summary>
    public ComposedRows LengthOrNone(string name, string words, double least, double greatest, Source? source = null) =>
        Add(name, words, Bounds.NotNegative(Measure.Length, Most(greatest)), null, least, greatest, source ?? sizes);

    /// <summary>A length of a part that most do not have: 0 unless it was taken.</summary>
    public ComposedRows Maybe(string name, string words, double least, double greatest) =>
        Add(name, words, Bounds.NotNegative(Measure.Length, Most(greatest)), 0, least, greatest, Details);

    /// <summary>A whole number that has to be taken.</summary>
    public ComposedRows Count(string name, string words, int least, int greatest) => Counted(name, words, least, greatest, null);

    /// <summary>A whole number, 0 unless it was taken.</summary>
    public ComposedRows CountOrNone(string name, string words, int greatest) => Counted(name, words, 0, greatest, 0);

    /// <summary>Developed over plain area, 1 unless it was taken.</summary>
    public ComposedRows Factor(string name, string words, double greatest)
    {
        rows.Add(InputField.Number(name, words, 1, greatest, 1));
        return this;
    }

    public ComposedRows Angle(string name, string words, double degrees)
    {
        rows.Add(InputField.Of(name, words, Bounds.Between(0, degrees * Math.PI / 180, Measure.Angle)));
        return this;
    }

    public IReadOnlyList<InputField> All => rows;

    // Three times what is usual, rounded up to 5 cm: it catches a length typed in a wrong unit of a larger size (invented).
    private static double Most(double inches) => Math.Ceiling(3 * inches * 0.0254 / 0.05) * 0.05;

    private ComposedRows Counted(string name, string words, int least, int greatest, double? otherwise)
    {
        rows.Add(InputField.Count(name, words, least, greatest, otherwise));
        return this;
    }

    private ComposedRows Add(string name, string words, Bounds allowed, double? otherwise, double least, double greatest, Source source)
    {
        rows.Add(InputField.Of(name, words, allowed, otherwise).Usually(least, greatest, source));
        return this;
    }
}
