using System;
using Refinish.Air;
using Refinish.Coatings;
using UnitsNet;

namespace Refinish.Tests.Air;

/// <summary>Rooms, fans and coats for the tests; every number is invented for the test.</summary>
internal static class Rooms
{
    public static Room Bathroom { get; } = Of(9.06);

    /// <summary>A room of exactly this volume.</summary>
    public static Room Of(double cubicMeters) => new() { Length = Length.FromMeters(cubicMeters / 5), Width = Length.FromMeters(2), Height = Length.FromMeters(2.5) };

    /// <summary>A fan that really moves this much.</summary>
    public static Exhaust Fan(double cfm, double mixing) => new()
    {
        LabelFlow = VolumeFlow.FromCubicFeetPerMinute(cfm),
        DeliveredFraction = Ratio.FromPercent(100),
        MixingFactor = mixing,
    };

    public static SolventEmission Coat(double startMinutes, double sprayMinutes, double grams, double flash, double filmMinutes, params SolventShare[] solvents) => new()
    {
        Name = FormattableString.Invariant($"coat at {startMinutes} min"),
        Start = TimeSpan.FromMinutes(startMinutes),
        SprayTime = TimeSpan.FromMinutes(sprayMinutes),
        VolatileMass = Mass.FromGrams(grams),
        Solvents = solvents.Length > 0 ? solvents : [new(Solvents.ButylAcetate, Ratio.FromPercent(100))],
        FlashFraction = Ratio.FromDecimalFractions(flash),
        FilmTimeConstant = TimeSpan.FromMinutes(filmMinutes),
    };

    public static SolventShare Share(Solvent solvent, double percent) => new(solvent, Ratio.FromPercent(percent));

    public static WipeEmission Wipe(double startMinutes, double wipeMinutes, double grams, double evaporationMinutes, params SolventShare[] solvents) => new()
    {
        Name = "wipe",
        Start = TimeSpan.FromMinutes(startMinutes),
        WipeTime = TimeSpan.FromMinutes(wipeMinutes),
        VolatileMass = Mass.FromGrams(grams),
        Solvents = solvents.Length > 0 ? solvents : [new(Solvents.ButylAcetate, Ratio.FromPercent(100))],
        EvaporationTime = TimeSpan.FromMinutes(evaporationMinutes),
    };

    /// <summary>Two to six sprays and wipes that may overlap, some sprays with a slow tail, of three solvents.</summary>
    public static Emission[] Mixed(Random random)
    {
        Emission[] emissions = new Emission[random.Next(2, 7)];
        for (int i = 0; i < emissions.Length; i++)
        {
            double first = 10 + (70 * random.NextDouble());
            double second = (100 - first) * (0.1 + (0.8 * random.NextDouble()));
            SolventShare[] shares = [Share(Solvents.ButylAcetate, first), Share(Solvents.Xylene, second), Share(Solvents.Acetone, 100 - first - second)];
            double start = Math.Round(150 * random.NextDouble(), 2);
            double minutes = Math.Round(0.5 + (15 * random.NextDouble()), 2);
            double grams = 10 + (200 * random.NextDouble());
            double film = 1 + (60 * random.NextDouble());
            emissions[i] = random.Next(3) switch
            {
                0 => Wipe(start, minutes, grams, film / 10, shares),
                1 => Coat(start, minutes, grams, random.NextDouble(), film, shares) with { Tail = new FilmTail(Ratio.FromPercent(5 + (80 * random.NextDouble())), TimeSpan.FromMinutes(30 + (300 * random.NextDouble()))) },
                _ => Coat(start, minutes, grams, random.NextDouble(), film, shares),
            };
        }

        return emissions;
    }

    public static AirStudy Study(Room room, Exhaust fan, params Emission[] emissions) => new(room, fan, emissions, TimeSpan.FromHours(8));

    /// <summary>A solvent made up for a test, whose volume fraction in ppm is its concentration in mg/m³ by the factor given.</summary>
    public static Solvent Solvent(string name, double gramsPerMole, double? lflPercent = 2) => new()
    {
        Name = name,
        CasNumber = name,
        MolarMass = MolarMass.FromGramsPerMole(gramsPerMole),
        Density = Density.FromGramsPerMilliliter(0.9),
        Flammability = lflPercent is double lfl ? Flammability.Between(Ratio.FromPercent(lfl)) : Flammability.Unknown,
        Source = Source.Invented("test"),
    };

    /// <summary>A set made for a test.</summary>
    public static LimitSet Set(params ExposureLimit[] limits) =>
        new() { Id = "test", Name = "limits of a test", Jurisdiction = "nowhere", AsOf = "today", Exposure = limits };

    public static ExposureLimit Limit(string cas, double ppm, string authority = "OSHA PEL", ExposureLimitKind kind = ExposureLimitKind.Twa8h) => new()
    {
        CasNumber = cas,
        Substance = cas,
        Authority = authority,
        Jurisdiction = "test",
        Kind = kind,
        VolumeFraction = Ratio.FromPartsPerMillion(ppm),
        MassConcentration = null,
        AsOf = "test",
        Standing = Standing.Supplied,
        Source = Source.Invented("test"),
    };
}
