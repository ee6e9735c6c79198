using System.Collections.Generic;
using Refinish.Coatings;
using Refinish.Colours;
using Refinish.Substrates;
using UnitsNet;

namespace Refinish.Jobs;

/// <summary>What one fixture gets: the verdict, the area, the preparation, the filler and the wipe.</summary>
public sealed record FixturePlan
{
    internal FixturePlan(FixtureJob job, BathroomJob whole)
    {
        Job = job;
        FillerPolicy filler = whole.Filler with { TotalDryFilm = whole.System.TotalDryFilm };
        SurveyPolicy policy = whole.SurveyPolicy with { Filler = filler };
        Verdict = new Verdict(job.Survey, policy);
        SystemObjections = whole.System.ObjectionsFor(job.Survey.Material);
        Preparation = new Preparation(job.Survey, policy);
        Filler = new FillerEstimate(job.Survey.Defects, filler);
        Promoter = whole.System.PromoterFor(job.Survey.Material);
        ColourChange = job.OldColour is CieLab old && job.NewColour is CieLab wanted ? new ColourDifference(old, wanted) : null;
    }

    /// <summary>The fixture as it was measured and surveyed.</summary>
    public FixtureJob Job { get; }

    /// <summary>Whether it may be refinished, with reasons.</summary>
    public Verdict Verdict { get; }

    /// <summary>Why the chosen system may not go on its material; empty when nothing was found against it.</summary>
    public IReadOnlyList<string> SystemObjections { get; }

    /// <summary>Whether the fixture is planned: the verdict allows it and the system suits it.</summary>
    public bool IsPlanned => Verdict.MayBePlanned && SystemObjections.Count == 0;

    /// <summary>Area that gets coated.</summary>
    public Area CoatedArea => Job.Fixture.CoatedArea;

    /// <summary>What is done before the first coat, in order.</summary>
    public Preparation Preparation { get; }

    /// <summary>Filler for the defects.</summary>
    public FillerEstimate Filler { get; }

    /// <summary>The wipe for its material; <see langword="null"/> when the system has none.</summary>
    public AdhesionPromoter? Promoter { get; }

    /// <summary>From the old colour to the new; <see langword="null"/> when one of them is not known.</summary>
    public ColourDifference? ColourChange { get; }

    /// <summary>How area, filler and colour difference follow.</summary>
    /// <returns>The derivation.</returns>
    public Workings Workings()
    {
        List<Workings> parts = [Job.Fixture.Workings()];
        if (Filler.Items.Count > 0)
        {
            parts.Add(Filler.Workings());
        }

        if (ColourChange is not null)
        {
            parts.Add(ColourChange.Workings());
        }

        return new Workings(Job.Name, [], parts);
    }

    /// <summary>Name, verdict and area in one line, in metric units.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Job.Name + ": " + Verdict + "; " + Measure.Area.Format(CoatedArea.SquareMeters, DisplayUnits.Si, 3);
}
