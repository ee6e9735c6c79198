using System;
using System.Linq;
using Refinish.Coatings;

namespace Refinish.Air;

/// <summary>
/// The sum over substances of volume fraction over limit: Le Chatelier's for flammability, the mixture index for exposure.
/// </summary>
/// <param name="study">The room and what is released in it.</param>
/// <param name="limits">Per substance, the limit by volume; infinite where none applies: a vapour that does not burn, or water.</param>
/// <param name="window">The length of the window whose average counts.</param>
/// <param name="over">The time over which its dose is spread.</param>
/// <param name="isFlammability">Whether the limits are lower flammable limits.</param>
internal sealed class AirIndex(AirStudy study, double?[] limits, double window, double over, bool isFlammability)
{
    private const double Horizon = 60 * 86400;

    /// <summary>Whether every substance to which a limit applies has one.</summary>
    public bool IsWhole { get; } = Array.TrueForAll(limits, limit => limit is not null);

    /// <summary>Whether no substance has one.</summary>
    public bool IsEmpty { get; } = Array.TrueForAll(limits, limit => limit is null || double.IsInfinity(limit.Value));

    /// <summary>Per term, the volume of air that its vapour can bring to the limits.</summary>
    public double[] Weights => field ??= [.. Brought(null).Select(weight => weight.Value)];

    public double Peak => PeakMaximum.Value;

    public double? PeakAt => PeakMaximum.At;

    /// <summary>The largest averaged index.</summary>
    public double Average => AverageMaximum.Value;

    private AirMaximum PeakMaximum => field ??= study.Place.Largest(Weights);

    private AirMaximum AverageMaximum => field ??= AverageIn(study.Place);

    public TimeSpan? TimeToFall(double level)
    {
        if (!IsWhole || study.Changes == 0)
        {
            return null;
        }

        double seconds = RoomHistory.TimeToFall(Path(), level * study.RoomVolume, Horizon);
        return double.IsNaN(seconds) ? null : Durations.FromSeconds(seconds);
    }

    public double GreatestFrom(double wait) => RoomHistory.GreatestFrom(Path(), wait) / study.RoomVolume;

    /// <summary>The largest averaged index at a place.</summary>
    public AirMaximum AverageIn(AirPlace place) => place.Largest(Weights, window, over);

    /// <summary>How the average follows, in the room.</summary>
    public Workings Workings(string title, string name, string symbol) => Workings(title, name, symbol, study.Place, AverageMaximum);

    /// <summary>How the average follows, at a place.</summary>
    public Workings Workings(string title, string name, string symbol, AirPlace place, AirMaximum maximum)
    {
        Trace t = new();
        t.Step(name, symbol, Measure.Number, AirStudy.Additive, place.Window(Brought(t), maximum.At, window, over, t));
        return t.Workings(title);
    }

    /// <summary>The weights, with their derivation.</summary>
    public Num[] Brought(Trace? t)
    {
        Num molarVolume = isFlammability
            ? AirKernel.FlammableMolarVolume(study.Room, t)
            : t.Given("V_m", AirKernel.MolarVolume, Measure.MolarVolume);
        Num[] brought = new Num[study.Load.Terms.Length];
        for (int i = 0; i < brought.Length; i++)
        {
            Num air = Brought(i, molarVolume, t);
            brought[i] = t is null ? air : t.Step(
                "air that " + study.Load.Terms[i].Name + " can bring to the limits", "a_" + Figures.Fixed(i + 1, 0), Measure.RoomVolume,
                isFlammability ? AirStudy.LeChatelier : AirStudy.Additive, air);
        }

        return brought;
    }

    // Σ m · V_m / (M · L); substances without a limit are left out.
    private Num Brought(int term, Num molarVolume, Trace? t)
    {
        Num sum = 0;
        for (int j = 0; j < limits.Length; j++)
        {
            Solvent solvent = study.Load.Solvents[j];
            double mass = study.Load.Masses(j)[term];
            if (mass > 0 && limits[j] is double limit && !double.IsInfinity(limit))
            {
                Num most = isFlammability
                    ? t.Given("LFL_", solvent.Name, limit, Measure.Percent)
                    : t.Given("L_", solvent.Name, limit, Measure.PartsPerMillion);
                sum += t.Given("m_", solvent.Name, mass, Measure.Mass) * molarVolume
                    / (t.Given("M_", solvent.Name, solvent.MolarMass.KilogramsPerMole, Measure.MolarMass) * most);
            }
        }

        return sum;
    }

    // Of these very weights, not of the shape that they share.
    private RoomPath Path() => new(study.Shapes.Grid(0), Weights);
}
