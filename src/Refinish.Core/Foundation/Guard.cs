using System;
using System.Collections.Generic;
using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Linq;
using UnitsNet;
using UnitsNet.Units;
using CallerAttribute = System.Runtime.CompilerServices.CallerMemberNameAttribute;
using TextOfAttribute = System.Runtime.CompilerServices.CallerArgumentExpressionAttribute;

namespace Refinish;

/// <summary>
/// The one place where arguments are checked. Every refusal names the parameter, the value with its unit and the allowed range; NaN and the
/// infinities are always refused. The overloads hand back the value in SI. The compiler names the argument: a parameter by the text that is
/// handed in, an input of an init accessor by its property.
/// </summary>
internal static class Guard
{
    private static readonly Enum Radian = AngleUnit.Radian;

    public static double Within(double value, Bounds bounds, [TextOf(nameof(value))] string name = "", [Caller] string member = "") =>
        bounds.Contains(value) ? value : throw Refused(value, bounds, NameOf(name, member), null);

    public static double Within<T>(T value, Bounds bounds, [TextOf(nameof(value))] string name = "", [Caller] string member = "")
        where T : struct, IQuantity
    {
        double si = Si(value);
        return bounds.Contains(si) ? si : throw Refused(si, bounds, NameOf(name, member), value);
    }

    public static double Within(
        TimeSpan value, Bounds bounds, [TextOf(nameof(value))] string name = "", [Caller] string member = "") =>
        Within(value.TotalSeconds, bounds, name, member);

    /// <summary>The time itself once it is within its bounds, so that an accessor can keep it.</summary>
    public static TimeSpan Time(TimeSpan value, Bounds bounds, [TextOf(nameof(value))] string name = "", [Caller] string member = "")
    {
        Within(value, bounds, name, member);
        return value;
    }

    public static TimeSpan? Time(TimeSpan? value, Bounds bounds, [TextOf(nameof(value))] string name = "", [Caller] string member = "") =>
        value is TimeSpan time ? Time(time, bounds, name, member) : null;

    /// <summary>A quantity within its bounds, in the SI unit, so that equal ones are equal whatever unit they were given in.</summary>
    public static Length Checked(Length value, Bounds bounds, [TextOf(nameof(value))] string name = "", [Caller] string member = "") =>
        Length.FromMeters(Within(value, bounds, name, member));

    public static Ratio Checked(Ratio value, Bounds bounds, [TextOf(nameof(value))] string name = "", [Caller] string member = "") =>
        Ratio.FromDecimalFractions(Within(value, bounds, name, member));

    public static Temperature Checked(
        Temperature value, Bounds bounds, [TextOf(nameof(value))] string name = "", [Caller] string member = "") =>
        Temperature.FromKelvins(Within(value, bounds, name, member));

    public static TemperatureDelta Checked(
        TemperatureDelta value, Bounds bounds, [TextOf(nameof(value))] string name = "", [Caller] string member = "") =>
        TemperatureDelta.FromKelvins(Within(value, bounds, name, member));

    public static Volume Checked(Volume value, Bounds bounds, [TextOf(nameof(value))] string name = "", [Caller] string member = "") =>
        Volume.FromCubicMeters(Within(value, bounds, name, member));

    public static Mass Checked(Mass value, Bounds bounds, [TextOf(nameof(value))] string name = "", [Caller] string member = "") =>
        Mass.FromKilograms(Within(value, bounds, name, member));

    public static Area Checked(Area value, Bounds bounds, [TextOf(nameof(value))] string name = "", [Caller] string member = "") =>
        Area.FromSquareMeters(Within(value, bounds, name, member));

    public static Angle Checked(Angle value, Bounds bounds, [TextOf(nameof(value))] string name = "", [Caller] string member = "") =>
        Angle.FromRadians(Within(value, bounds, name, member));

    public static Density Checked(Density value, Bounds bounds, [TextOf(nameof(value))] string name = "", [Caller] string member = "") =>
        Density.FromKilogramsPerCubicMeter(Within(value, bounds, name, member));

    public static DynamicViscosity Checked(
        DynamicViscosity value, Bounds bounds, [TextOf(nameof(value))] string name = "", [Caller] string member = "") =>
        DynamicViscosity.FromPascalSeconds(Within(value, bounds, name, member));

    public static ForcePerLength Checked(
        ForcePerLength value, Bounds bounds, [TextOf(nameof(value))] string name = "", [Caller] string member = "") =>
        ForcePerLength.FromNewtonsPerMeter(Within(value, bounds, name, member));

    public static Pressure Checked(Pressure value, Bounds bounds, [TextOf(nameof(value))] string name = "", [Caller] string member = "") =>
        Pressure.FromPascals(Within(value, bounds, name, member));

    public static Speed Checked(Speed value, Bounds bounds, [TextOf(nameof(value))] string name = "", [Caller] string member = "") =>
        Speed.FromMetersPerSecond(Within(value, bounds, name, member));

    public static HeatTransferCoefficient Checked(
        HeatTransferCoefficient value, Bounds bounds, [TextOf(nameof(value))] string name = "", [Caller] string member = "") =>
        HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(Within(value, bounds, name, member));

    public static MolarEnergy Checked(
        MolarEnergy value, Bounds bounds, [TextOf(nameof(value))] string name = "", [Caller] string member = "") =>
        MolarEnergy.FromJoulesPerMole(Within(value, bounds, name, member));

    public static Frequency Checked(
        Frequency value, Bounds bounds, [TextOf(nameof(value))] string name = "", [Caller] string member = "") =>
        Frequency.FromHertz(Within(value, bounds, name, member));

    public static SpecificEntropy Checked(
        SpecificEntropy value, Bounds bounds, [TextOf(nameof(value))] string name = "", [Caller] string member = "") =>
        SpecificEntropy.FromJoulesPerKilogramKelvin(Within(value, bounds, name, member));

    public static decimal Money(
        decimal value, bool zeroAllowed = true, [TextOf(nameof(value))] string name = "", [Caller] string member = "")
    {
        name = NameOf(name, member);
        if (value > 0 || (zeroAllowed && value == 0))
        {
            return value;
        }

        string text = value.ToString(CultureInfo.InvariantCulture);
        throw new ArgumentOutOfRangeException(name, text, name + " is " + text + " (money); allowed: " + (zeroAllowed ? "at least 0." : "more than 0."));
    }

    public static int Count(int value, int minimum, int maximum, [TextOf(nameof(value))] string name = "", [Caller] string member = "") =>
        value >= minimum && value <= maximum
            ? value
            : throw new ArgumentOutOfRangeException(
                NameOf(name, member), value.ToString(CultureInfo.InvariantCulture),
                    Miscounted(value, minimum, maximum, NameOf(name, member)));

    public static T Defined<T>(T value, [TextOf(nameof(value))] string name = "", [Caller] string member = "")
        where T : struct, Enum
    {
#if NETSTANDARD2_0
        bool defined = Enum.IsDefined(typeof(T), value);
#else
        bool defined = Enum.IsDefined(value);
#endif
        return defined
            ? value
            : throw new ArgumentOutOfRangeException(
                NameOf(name, member),
                value.ToString("D"),
                NameOf(name, member) + " is " + value.ToString("D") + "; allowed: the named values of " + typeof(T).Name + ".");
    }

    public static T NotNull<T>([NotNull] T? value, [TextOf(nameof(value))] string name = "", [Caller] string member = "")
        where T : class =>
        value ?? throw new ArgumentNullException(NameOf(name, member));

    /// <summary>A name or a text: not empty, of whole characters, so that it can be stored and read back.</summary>
    public static string Named([NotNull] string? value, [TextOf(nameof(value))] string name = "", [Caller] string member = "")
    {
        name = NameOf(name, member);
        NotNull(value, name);
        return string.IsNullOrWhiteSpace(value) ? throw new ArgumentException(name + " is empty; a name or text is needed.", name)
            : HalfCharacter(value!) is int place
                ? throw new ArgumentException(
                    name + " holds half of a character at place " + (place + 1).ToString(CultureInfo.InvariantCulture)
                        + ", a surrogate without its other half; allowed: whole characters, such as a text that was not cut inside an emoji.",
                    name)
                : value!;
    }

    /// <summary>Where a surrogate stands without its other half; no encoding can write it.</summary>
    private static int? HalfCharacter(string text)
    {
        for (int i = 0; i < text.Length; i++)
        {
            if (char.IsSurrogate(text[i]))
            {
                if (!(i + 1 < text.Length && char.IsSurrogatePair(text[i], text[i + 1])))
                {
                    return i;
                }

                i++;
            }
        }

        return null;
    }

    /// <summary>
    /// An identity: 1 to 100 whole characters, no '/', no control characters, no white space at either end. Longer identities are joined
    /// with '/'.
    /// </summary>
    public static string Id([NotNull] string? value, [TextOf(nameof(value))] string name = "", [Caller] string member = "")
    {
        name = NameOf(name, member);
        NotNull(value, name);
        return value!.Length is > 0 and <= 100 && !char.IsWhiteSpace(value[0]) && !char.IsWhiteSpace(value[value.Length - 1])
            && value.All(static one => one != '/' && !char.IsControl(one)) && HalfCharacter(value) is null
            ? value
            : throw new ArgumentException(
                name + " cannot be an identity; allowed: 1 to 100 whole characters, no '/', no control characters, no white space at either end.",
                name);
    }

    /// <summary>
    /// A registry number, or a name of the caller's for what has none: without white space at its ends, and with the right check digit
    /// where it is made of digits and hyphens.
    /// </summary>
    /// <remarks>
    /// The digits before the last, counted from the right, times 1, 2, 3 …, added up; the check digit is the last of the sum.
    /// </remarks>
    public static string Registry([NotNull] string? value, [TextOf(nameof(value))] string name = "", [Caller] string member = "")
    {
        name = NameOf(name, member);
        string given = Named(value, name);
        bool trimmed = !char.IsWhiteSpace(given[0]) && !char.IsWhiteSpace(given[given.Length - 1]);
        return trimmed && (!given.All(one => one == '-' || (one >= '0' && one <= '9')) || IsRegistryNumber(given))
            ? given
            : throw new ArgumentException(
                name + " is \"" + given
                    + "\"; allowed: a registry number such as 67-64-1, whose last digit checks the others, or a name with a letter in it.",
                name);
    }

    private static bool IsRegistryNumber(string given)
    {
        int length = given.Length;
        if (length < 7 || length > 12 || given[length - 2] != '-' || given[length - 5] != '-' || given.Count(one => one == '-') != 2)
        {
            return false;
        }

        string digits = given.Substring(0, length - 2).Replace("-", string.Empty);
        int sum = digits.Select((digit, place) => (digits.Length - place) * (digit - '0')).Sum();
        return sum % 10 == given[length - 1] - '0';
    }

    /// <summary>A value-equal copy of a list that holds no null.</summary>
    public static ValueList<T> List<T>(
        [NotNull] IEnumerable<T>? items, int atLeast = 0, [TextOf(nameof(items))] string name = "", [Caller] string member = "")
    {
        name = NameOf(name, member);
        NotNull(items, name);
        ValueList<T> list = items as ValueList<T> ?? new(items!);
        for (int i = 0; i < list.Count; i++)
        {
            if (list[i] is null)
            {
                throw new ArgumentException(name + " holds an empty entry.", name);
            }
        }

        return list.Count >= atLeast
            ? list
            : throw new ArgumentException(
                string.Format(CultureInfo.InvariantCulture, "{0} has {1} entries; allowed: at least {2}.", name, list.Count, atLeast),
                name);
    }

    /// <summary>For a rule between two measurements, such as a basin floor that must lie inside its rim.</summary>
    public static void Rule(bool holds, string name, double si, Measure measure, string allowed)
    {
        if (!holds)
        {
            string text = measure.Format(si);
            throw new ArgumentOutOfRangeException(name, text, name + " is " + text + "; allowed: " + allowed + ".");
        }
    }

    /// <summary>The same against another measurement; the sentence is made only when the rule is broken.</summary>
    public static void Rule(bool holds, string name, double si, Measure measure, string relation, double bound)
    {
        if (!holds)
        {
            Rule(false, name, si, measure, relation + measure.Format(bound));
        }
    }

    // In an init accessor the argument is called value; the name of the input is the property's.
    private static string NameOf(string argument, string member) => argument == "value" ? member : argument;

    /// <summary>
    /// −20 °C, −4 °F and 253.15 K differ in the last digit of their kelvins. Kept to 1e-10 K they are one temperature: equal, and within a
    /// limit of −20 °C.
    /// </summary>
    public static double Kelvins(Temperature value) => Math.Round(value.Kelvins, 10);

    // The base units of the units library are those of SI but for angles. Nothing is boxed.
    private static double Si<T>(T value)
        where T : struct, IQuantity
    {
        double si = value.As(typeof(T) == typeof(Angle) ? Radian : value.QuantityInfo.BaseUnitInfo.Value);
        return typeof(T) == typeof(Temperature) ? Math.Round(si, 10) : si;
    }

    public static ArgumentOutOfRangeException Refused(double si, Bounds bounds, string name, IFormattable? given) =>
        new(name, given is null ? bounds.Measure.Format(si) : AsGiven(given), Beyond(si, bounds, name, given));

    /// <summary>The sentence of a refusal; <paramref name="given"/> is the quantity in the unit in which it was entered.</summary>
    public static string Beyond(double si, Bounds bounds, string name, IFormattable? given)
    {
        string value = bounds.Measure.Format(si);
        string asGiven = given is null ? value : AsGiven(given);
        string both = asGiven == value ? value : value + " (given as " + asGiven + ")";
        return name + " is " + both + "; allowed: " + bounds + ".";
    }

    /// <summary>The same for a count.</summary>
    public static string Miscounted(double value, double minimum, double maximum, string name) => string.Format(
        CultureInfo.InvariantCulture, "{0} is {1} (a count); allowed: at least {2} and at most {3}.", name, value, minimum, maximum);

    // The units library groups digits by thousands, we do not; in the invariant culture a comma is nothing else.
    private static string AsGiven(IFormattable given) => given.ToString("g", CultureInfo.InvariantCulture).Replace(",", string.Empty);
}
