using System.Collections.Generic;

namespace Refinish;

/// <content>Slips and falls, at work and in use.</content>
public static partial class Cautions
{
    /// <summary>A new coat is slippery.</summary>
    public static Caution NewCoatSlip { get; } = new(
        "new-coat-slip",
        Hazard.Slip,
        "A newly coated tub or shower floor is slicker than the worn one, most of all wet and soapy, also where it was textured: whether it gets a slip-resistant floor is for the customer to decide, and no floor is ever called non-slip.",
        "the local building code and the test method it names; the customer, once told; the maker's test report, with its method and criterion",
        Source.CommonPractice("slipping in bathtubs; ASTM F462 for tub floors was withdrawn in July 2016"),
        Audience.Crew | Audience.Customer | Audience.Occupant);

    /// <summary>Wet sheeting during preparation.</summary>
    public static Caution WetSheeting { get; } = new(
        "wet-sheeting",
        Hazard.Slip,
        "During preparation wet sheeting and a wet tub floor are slippery: step in and out with a hand on something that holds, and dry what was spilt.",
        "the employer's safety programme",
        Source.CommonPractice("slips on wet covers and in wet tubs during preparation"),
        Audience.Crew);

    /// <summary>A floor with grains is not a floor on which nobody slips.</summary>
    public static Caution SlipGrains { get; } = new(
        "slip-grains",
        Hazard.Slip,
        "Grains change how a wet floor grips; no number here says by how much, and no floor stops every slip. What counts is a measurement on this surface, wet and soapy, with the method and the criterion named, at handover and again as it wears.",
        "the standard and criterion agreed with the owner, and the local building code",
        Source.Published("ANSI A326.3-2021", "wet dynamic coefficient of friction, at least 0.42 for level interior wet floors, second-hand; it is written for floors, and the bathtub method, ASTM F462, was withdrawn in 2016"),
        Audience.Crew | Audience.Customer);

    /// <summary>A criterion for floors is not a test of a tub.</summary>
    public static Caution NotATubTest { get; } = new(
        "not-a-tub-test",
        Hazard.Slip,
        "This is a criterion for hard floors walked on with shoes, not a test of a bathtub or a shower floor: no figure here means that wet bare feet will not slip.",
        "the owner, with the coating's data sheet, local accessibility rules and a test that fits the use",
        Source.Published("ASTM F462-79 (2007)", "the bathtub test, withdrawn in July 2016 without a successor (catalogue)"),
        Audience.Crew | Audience.Customer);

    /// <summary>Friction changes with use.</summary>
    public static Caution FrictionWears { get; } = new(
        "friction-wears",
        Hazard.Slip,
        "Soap, oil, cleaning and wear change friction: a reading on a new, clean finish does not hold for its life.",
        "the owner's cleaning and inspection",
        Source.CommonPractice("friction is read again when use or cleaning changes"),
        Audience.Customer | Audience.Occupant);

    private static IEnumerable<Caution> Slips => [NewCoatSlip, WetSheeting, SlipGrains, NotATubTest, FrictionWears];
}
