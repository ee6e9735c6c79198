using System;
using System.Collections.Generic;
using System.Linq;
using UnitsNet;

namespace Refinish.Coatings;

/// <content>What follows from the parts, and the rules between them and the rest of the sheet.</content>
public sealed partial record CoatingProduct
{
    // What a sheet rounds away: per cent to one decimal, and volumes that contract a little on mixing.
    private const double Rounding = 1e-3;
    private const double Contraction = 0.02;

    /// <summary>Each part's share of the mixed volume, in the order of the parts.</summary>
    public IReadOnlyList<Ratio> VolumeShares => [.. Enumerable.Range(0, Parts.Count).Select(i => Ratio.FromDecimalFractions(ShareOf(i)))];

    /// <summary>Each part by weight to 100 of the first, in the order of the parts.</summary>
    public IReadOnlyList<double> Per100OfFirst =>
        [.. Parts.Select(part => 100 * part.Parts * DensityOf(part) / (Parts[0].Parts * DensityOf(Parts[0])))];

    /// <summary>The ratio by volume in words: <c>4 : 1</c>, <c>one part</c>.</summary>
    public string MixRatio => Parts.Count == 1 ? "one part" : string.Join(" : ", Parts.Select(part => Figures.Significant(part.Parts, 4)));

    /// <summary>Density of the mixed, unreduced product, volumes additive.</summary>
    public Density MixedDensity
    {
        get
        {
            double density = 0;
            for (int i = 0; i < Parts.Count; i++)
            {
                density += DensityOf(Parts[i]) * ShareOf(i);
            }

            return Density.FromKilogramsPerCubicMeter(density);
        }
    }

    /// <summary>Whether a part of it states water.</summary>
    public bool IsWaterborne => HasCan(static can => can.Water?.DecimalFractions > 0);

    /// <summary>The operation by which its coats harden; <see langword="null"/> when they harden by themselves.</summary>
    internal CoatOperation? Curing => Operations.FirstOrDefault(operation => operation.Cures);

    /// <summary>Part of the mixed volume.</summary>
    internal double ShareOf(int part)
    {
        double sum = 0;
        for (int i = 0; i < Parts.Count; i++)
        {
            sum += Parts[i].Parts;
        }

        return Parts[part].Parts / sum;
    }

    /// <summary>Whether a can holds isocyanate, or the sheet says so of the mix.</summary>
    internal bool HoldsIsocyanate => isocyanateFraction > 0 || HasCan(static can => can.IsocyanateContent is not null);

    /// <summary>Rules between two figures of the data sheet, checked where the product is put to use.</summary>
    internal void CheckConsistency()
    {
        Guard.Rule(Reducer is not null || maximumReducer == 0, nameof(MaximumReducer), maximumReducer, Measure.Percent,
            "0 % when Reducer is null");
        Guard.Rule(minimumReducer <= maximumReducer, nameof(MinimumReducer), minimumReducer, Measure.Percent, "at most MaximumReducer");
        Guard.Rule(minimumDryFilm <= maximumDryFilm, nameof(MinimumDryFilm), minimumDryFilm, Measure.Film, "at most MaximumDryFilm");
        for (int i = 0; i < Parts.Count; i++)
        {
            CheckCan(Parts[i].Component);
            Guard.Rule(
                isocyanateFraction > 0 || Parts[i].Component.IsocyanateContent is null, nameof(IsocyanateFraction), isocyanateFraction,
                Measure.Percent, "more than 0 %, since a part states isocyanate content");
            Guard.Rule(
                Parts[i].Component.Id != Reducer?.Id, nameof(Reducer), i + 1, Measure.Number,
                "an identity that no part has, since what is weighed and left over is found by it");
        }

        if (Reducer is not null)
        {
            CheckCan(Reducer);
        }

        CheckVolatiles();
        CheckOperations();
    }

    private bool HasCan(Func<CoatingComponent, bool> what)
    {
        for (int i = 0; i < Parts.Count; i++)
        {
            if (what(Parts[i].Component))
            {
                return true;
            }
        }

        return false;
    }

    private void CheckOperations()
    {
        int curing = 0;
        for (int i = 0; i < Operations.Count; i++)
        {
            curing += Operations[i].Cures ? 1 : 0;
            Operations[i].CheckConsistency();
        }

        Guard.Rule(curing <= 1, nameof(Operations), curing, Measure.Number, "at most one by which the coat hardens");
    }

    private static void CheckCan(CoatingComponent can)
    {
        double sum = Solids(can, 0) + Fraction(can.Water) + Fraction(can.ExemptCompounds);
        Guard.Rule(
            sum <= 1 + Rounding, nameof(CoatingComponent.MassSolids), sum, Measure.Percent,
            "solids, water and exempt compounds of one can of at most 100 % together");
    }

    private static double DensityOf(MixPart part) => part.Component.Density.KilogramsPerCubicMeter;

    private static double Fraction(Ratio? stated) => stated?.DecimalFractions ?? 0;

    private static double Solids(CoatingComponent can, double unstated) => can.MassSolids?.DecimalFractions ?? unstated;

    // Where solids by mass are not stated, whatever volume is no solids counts as solvent.
    private bool GivesOffSolvent(CoatingComponent can) => can.MassSolids is null
        ? volumeSolids < 1 && Fraction(can.Water) < 1 - Rounding
        : Solids(can, 0) + Fraction(can.Water) < 1 - Rounding;

    private void CheckVolatiles()
    {
        bool solvent = maximumReducer > 0 && Solids(Reducer!, 0) + Fraction(Reducer!.Water) < 1 - Rounding;
        double water = 0;
        for (int i = 0; i < Parts.Count; i++)
        {
            CoatingComponent can = Parts[i].Component;
            solvent |= GivesOffSolvent(can);
            water += ShareOf(i) * DensityOf(Parts[i]) * Fraction(can.Water) / MixedCoating.WaterDensity;
            Guard.Rule(
                volumeSolids < 1 || Solids(can, 1) >= 1 - Rounding, nameof(VolumeSolids), volumeSolids, Measure.Percent,
                "less than 100 %, since a part states less than 100 % solids by mass");
        }

        Guard.Rule(
            solvent == (Solvents.Count > 0), nameof(Solvents), Solvents.Count, Measure.Number,
            solvent ? "at least one, since more than water evaporates" : "none, since nothing but water evaporates");
        Guard.Rule(
            water <= (1 - volumeSolids) * (1 + Contraction), nameof(VolumeSolids), volumeSolids, Measure.Percent,
            "at most what the water of the parts leaves, ", 1 - (water / (1 + Contraction)));
    }
}
