using System.Linq;
using Refinish.Tests.Support;
using Xunit;

namespace Refinish.Tests.House;

public class SurfaceRulesTests
{
    /// <summary>What is copied with one value changed although other values are checked against it.</summary>
    private static readonly string[] Allowed =
    [
        "beside a constructor: Refinish.Fixtures.ZonePart.DevelopedFactor",
        "beside a constructor: Refinish.Fixtures.ZonePart.OpeningArea",
        "beside a constructor: Refinish.Fixtures.ZonePart.Source",
        "beside a constructor: Refinish.Fixtures.ZonedFixture.MeasuredArea",
        "beside a constructor: Refinish.Fixtures.ZonedFixture.Mesh",
        "beside a constructor: Refinish.Fixtures.ZonedFixture.WaterCapacity",
    ];

    [Fact]
    [Evidence(Basis.Contract, "no optional parameter, no tuple, no init property beside a constructor that takes the other inputs")]
    public void The_public_surface_keeps_its_rules() =>
        Assert.Equal(string.Join("\n", Allowed), string.Join("\n", SurfaceRules.Offences(typeof(Measure).Assembly)));

    [Fact]
    [Evidence(Basis.Contract, "the rules find what breaks them")]
    public void The_rules_find_what_breaks_them() =>
        Assert.Equal(
            [
                "beside a constructor: Refinish.Tests.House.SurfaceRulesTests+Offender.Other",
                "optional: Refinish.Tests.House.SurfaceRulesTests+Offender.Add(count)",
                "tuple: Refinish.Tests.House.SurfaceRulesTests+Offender.Pairs",
            ],
            SurfaceRules.Offences(typeof(Offender).Assembly).Where(offence => offence.Contains(nameof(Offender))));

    public sealed class Offender(int given)
    {
        public int Given { get; init; } = given;

        public int Other { get; init; }

        public System.Collections.Generic.IReadOnlyList<(int A, int B)[]> Pairs => [[(Given, Other)]];

        public int Add(int count = 1) => Given + count;
    }
}
