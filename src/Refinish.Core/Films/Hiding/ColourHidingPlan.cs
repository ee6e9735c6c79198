using System;
using System.Collections.Generic;
using System.Linq;
using Refinish.Coatings;
using Refinish.Colours;
using UnitsNet;

namespace Refinish.Films;

/// <summary>
/// How many coats hide an old strong colour under a new one, told by colour difference: Kubelka–Munk in the three bands of X, Y and Z,
/// until ΔE00 to the full colour is small enough.
/// </summary>
/// <remarks>
/// An abridged calculation: X/Xn, Y/Yn and Z/Zn stand for the reflectances of three broad bands, and one scattering holds for all
/// three. It ranks coats and primers well; with strong narrow-band colours it may be off by a unit or two of ΔE, and a spectral match
/// needs spectra. Surfaces are left out as in <see cref="HidingFilm"/>. The tolerance of 1 is a common reading of "just seen", and
/// invented as a default here.
/// </remarks>
/// <example><code>
/// ColourHidingPlan plan = new()
/// {
///     OldColour = new CieLab(52, -8, 32), NewColour = new CieLab(95, -0.8, 2), Scattering = ReciprocalLength.FromInverseMils(3.5), CoatFilm = Length.FromMils(1.2),
/// };
/// int? coats = plan.CoatsNeeded;
/// </code></example>
public sealed record ColourHidingPlan
{
    private const string Names = "XYZ";

    private readonly double primerScattering = double.NaN;
    private readonly double tolerance = 1;

    /// <summary>The old colour.</summary>
    public required CieLab OldColour { get; init; }

    /// <summary>The new colour where it hides fully.</summary>
    public required CieLab NewColour { get; init; }

    /// <summary>Scattering of the topcoat, from 10⁻⁶ to 100 per µm of dry film.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required ReciprocalLength Scattering
    {
        get;
        init => field = ReciprocalLength.FromInverseMeters(
            Guard.Within(value.InverseMeters, CoatingProduct.Scatterings, nameof(Scattering)));
    }

    /// <summary>Dry film of one coat, from 1 µm to 5 mm.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public required Length CoatFilm { get; init => field = Guard.Checked(value, FlowRanges.Film); }

    /// <summary>Colour of the primer where it hides fully; no primer unless given.</summary>
    public CieLab? PrimerColour { get; init; }

    /// <summary>Scattering of the primer, from 10⁻⁶ to 100 per µm; that of the topcoat unless given.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public ReciprocalLength PrimerScattering
    {
        get => ReciprocalLength.FromInverseMeters(PrimerS);
        init => primerScattering = Guard.Within(value.InverseMeters, CoatingProduct.Scatterings, nameof(PrimerScattering));
    }

    /// <summary>Dry film of the primer in all, 0 to 5 mm.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public Length PrimerFilm { get; init => field = Guard.Checked(value, Bounds.NotNegative(Measure.Film, 5e-3)); }

    /// <summary>Illuminant and observer of the colours; D65 and 2° unless given.</summary>
    /// <exception cref="ArgumentNullException">None is given.</exception>
    public WhitePoint White { get; init => field = Guard.NotNull(value); }
    = WhitePoint.D65;

    /// <summary>Largest ΔE00 to the full colour that counts as hidden, 0.05 to 20; 1 unless given.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public double Tolerance { get => tolerance; init => tolerance = Guard.Within(value, Bounds.Between(0.05, 20, Measure.Number)); }

    /// <summary>Most coats looked at, 1 to 20; 6 unless given.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Outside the range.</exception>
    public int MostCoats { get; init => field = Guard.Count(value, 1, 20); }
    = 6;

    /// <summary>What is seen after one coat, two coats and so on; empty when a colour cannot be that of a surface.</summary>
    public IReadOnlyList<HidingCoat> Coats => Unreal is null ? [.. Enumerable.Range(1, MostCoats).Select(After)] : [];

    /// <summary>The fewest coats that hide; <see langword="null"/> when none up to the most does.</summary>
    public int? CoatsNeeded => Coats.FirstOrDefault(coat => coat.Difference <= tolerance)?.Coats;

    /// <summary>Why it does not hide; <see langword="null"/> when it does.</summary>
    public string? Objection => Unreal ?? (CoatsNeeded is null
        ? "not hidden after " + Figures.Significant(MostCoats) + " coats: ΔE00 " + Figures.Significant(After(MostCoats).Difference!.Value, 3) + ", " + Figures.Significant(tolerance, 3)
            + " wanted; tint the primer towards the topcoat or choose another colour"
        : null);

    private double PrimerS => double.IsNaN(primerScattering) ? Scattering.InverseMeters : primerScattering;

    private string? Unreal =>
        Bands(OldColour) is null ? "the old colour cannot be that of a surface under " + White.Name
        : Bands(NewColour) is null ? "the new colour cannot be that of a surface under " + White.Name
        : PrimerColour is CieLab primer && Bands(primer) is null ? "the primer's colour cannot be that of a surface under " + White.Name
        : null;

    /// <summary>How the coats follow, band by band.</summary>
    /// <returns>
    /// The derivation; each coat's colour and difference are its parts. Without steps when a colour cannot be that of a surface.
    /// </returns>
    public Workings Workings()
    {
        Trace t = new();
        foreach (HidingCoat coat in Coats)
        {
            string n = Figures.Significant(coat.Coats);
            Num[] seen = Seen(coat.Coats, t);
            for (int band = 0; band < 3; band++)
            {
                t.Step("band " + Names[band] + " after " + n, "R_" + Names[band] + n, Measure.Percent, PaintOptics.KubelkaMunk, seen[band]);
            }

            t.Part(Tristimulus(seen).Workings(White));
            t.Part(new ColourDifference(NewColour, coat.Colour!.Value).Workings());
        }

        return t.Workings("Coats that hide a colour");
    }

    /// <summary>The outcome in one line.</summary>
    /// <returns>Text such as <c>hidden after 3 coats: ΔE00 0.42</c>.</returns>
    public override string ToString() => Objection ?? "hidden after " + Figures.Significant(CoatsNeeded!.Value) + (CoatsNeeded == 1 ? " coat: ΔE00 " : " coats: ΔE00 ")
        + Figures.Significant(After(CoatsNeeded!.Value).Difference!.Value, 3);

    private HidingCoat After(int coats)
    {
        Num[] seen = Seen(coats);
        CieLab colour = Tristimulus(seen).ToLab(White);
        double share = HidingKernel.Share(seen[1], Bands(NewColour)![1]).Value;
        return new(coats, seen[1].Value, share, colour.L - NewColour.L, colour, new ColourDifference(NewColour, colour).Ciede2000);
    }

    private Num[] Seen(int coats, Trace? t = null)
    {
        double[] ground = Bands(OldColour)!;
        double[] full = Bands(NewColour)!;
        double[]? primer = PrimerColour is CieLab colour ? Bands(colour) : null;
        Num[] seen = new Num[3];
        for (int band = 0; band < 3; band++)
        {
            Num below = Given("R_old", ground, band, t);
            below = primer is null ? below : Film(Given("R_∞p", primer, band, t), PrimerS, PrimerFilm.Meters, below, t);
            seen[band] = Film(Given("R_∞", full, band, t), Scattering.InverseMeters, coats * CoatFilm.Meters, below, t);
        }

        return seen;
    }

    private CieXyz Tristimulus(Num[] seen) => new(White.X * seen[0].Value, White.Y * seen[1].Value, White.Z * seen[2].Value);

    private static Num Given(string symbol, double[] bands, int band, Trace? t) =>
        t is null ? bands[band] : t.Given(symbol + Names[band], bands[band], Measure.Percent);

    private static Num Film(Num reflectivity, double s, double film, Num below, Trace? t)
    {
        Num ratio = HidingKernel.Ratio(reflectivity);
        Num power = t.Given("S", s, Measure.PerFilm) * t.Given("X", film, Measure.Film);
        return HidingKernel.Over(1 + ratio, HidingKernel.Depth(HidingKernel.B(ratio), power), below);
    }

    // X/Xn, Y/Yn and Z/Zn as reflectances; null when one is not that of a surface.
    private double[]? Bands(CieLab colour)
    {
        if (White.ToXyz(colour) is not CieXyz xyz)
        {
            return null;
        }

        double[] bands = [xyz.X / White.X, xyz.Y / White.Y, xyz.Z / White.Z];
        return bands.All(band => band is > 1e-4 and <= 1) ? bands : null;
    }
}
