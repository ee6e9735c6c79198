using System.Linq;
using System;
using Refinish.Coatings;
using UnitsNet;

namespace Refinish.Samples.WorkedExamples;

internal sealed class FordCup : Problem
{
    public override string Floor => "Coatings";

    public override string Title => "How thick is a coating that drains in 80 seconds?";

    public override string Question =>
        "A Ford cup no. 4 drains in 80 s. What is the viscosity?";

    public override Backing Backing => Backing.Published;

    public override string Origin =>
        "Printed example of a public flow-cup conversion program that names ASTM D1200: 290.7135 mm²/s. It is another program's evaluation of the same line, not a measurement: agreement shows that the line was evaluated alike, not that a cup of yours drains by it.";

    protected override Solution Work(Given given)
    {
        // shown
        TimeSpan time = TimeSpan.FromSeconds(80);
        // given
        given.Take(ref time, "from the first drop to the break of the stream");
        // shown
        KinematicViscosity viscosity = FlowCups.Ford4.ViscosityAt(time);
        // end
        return new(FlowCups.Ford4.Workings(time), [new("viscosity", Measure.KinematicViscosity, viscosity.SquareMetersPerSecond, "290.7135")]);
    }
}
