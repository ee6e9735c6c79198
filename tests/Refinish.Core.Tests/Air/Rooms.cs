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
    public static Room Of(double cubicMeters) => new(Length.FromMeters(cubicMeters / 5), Length.FromMeters(2), Length.FromMeters(2.5));

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
        Solvents = solvents.Length > 0 ? solvents : [new(GenericSolvents.ButylAcetate, Ratio.FromPercent(100))],
        FlashFraction = Ratio.FromDecimalFractions(flash),
        FilmTimeConstant = TimeSpan.FromMinutes(filmMinutes),
    };

    public static SolventShare Share(Solvent solvent, double percent) => new(solvent, Ratio.FromPercent(percent));

    public static AirStudy Study(Room room, Exhaust fan, params SolventEmission[] coats) => new(room, fan, coats, TimeSpan.FromHours(8));

    /// <summary>A solvent made up for a test, whose volume fraction in ppm is its concentration in mg/m³ by the factor given.</summary>
    public static Solvent Solvent(string name, double gramsPerMole, double? lflPercent = 2) => new()
    {
        Name = name,
        CasNumber = name,
        MolarMass = MolarMass.FromGramsPerMole(gramsPerMole),
        Density = Density.FromGramsPerMilliliter(0.9),
        LowerFlammableLimit = lflPercent is double lfl ? Ratio.FromPercent(lfl) : null,
        Source = Source.Invented("test"),
    };

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
