using Refinish.Films;
using UnitsNet;

namespace Refinish.Samples.WorkedExamples;

internal sealed class OrangePeel : Problem
{
    public override string Floor => "Films";

    public override string Title => "Does orange peel flow out?";

    public override string Question =>
        "A film of 75 µm carries ripples 3 mm apart. Its viscosity is 0.3 Pa·s, its surface tension 28 mN/m. How long until half of a ripple is gone, in the shallow-film formula and at this depth?";

    public override Backing Backing => Backing.WorkedApart;

    public override string Origin =>
        "T = 3 η (λ/2π)⁴/(σ h³), Orchard's formula as published by S. Abbott (Levelling); the numbers of the shallow film were worked by hand. At this depth it is that time over the depth factor 0.9575, by hand 2.7447/0.9575 = 2.8665 s; the factor's formula is from memory. Both hold the viscosity still: in a film that dries it rises meanwhile, so flow takes longer and may stop before the ripple is gone.";

    protected override Solution Work(Given given)
    {
        // shown
        Length wavelength = Length.FromMillimeters(3);
        Length film = Length.FromMicrometers(75);
        DynamicViscosity viscosity = DynamicViscosity.FromPascalSeconds(0.3);
        ForcePerLength surfaceTension = ForcePerLength.FromMillinewtonsPerMeter(28);
        // given
        given.Take(ref wavelength, "from crest to crest");
        given.Take(ref film, "wet film");
        given.Take(ref viscosity, "viscosity at rest");
        given.Take(ref surfaceTension, "surface tension");
        // shown
        Levelling ripple = new() { Wavelength = wavelength, Film = film, Viscosity = viscosity, SurfaceTension = surfaceTension };
        Duration shallow = ripple.ThinHalfTime;
        Duration atDepth = ripple.HalfTime;
        // end
        return new(ripple.Workings(),
        [
            new("shallow film, down to 1/e", Measure.Seconds, ripple.ThinTimeConstant.Seconds, "3.96"),
            new("shallow film, down to a half", Measure.Seconds, shallow.Seconds, "2.745"),
            new("at this depth, down to a half", Measure.Seconds, atDepth.Seconds, "2.8665"),
        ]);
    }
}
