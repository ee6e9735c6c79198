using System;
using System.Globalization;
using System.Linq;
using Refinish.Air;
using Refinish.Coatings;
using Refinish.Tests.Support;
using UnitsNet;
using Xunit;

namespace Refinish.Tests.Air;

public class AirInputsTests
{
    [Fact]
    [Evidence(Basis.Independent, "by hand: 8 × 5 × 8 ft is 320 ft³; 250 cfm · 60 % / 3 is 50 cfm")]
    public void Room_and_fan_follow_by_hand()
    {
        Room room = new() { Length = Length.FromFeet(8), Width = Length.FromFeet(5), Height = Length.FromFeet(8) };
        Numbers.Close(320, room.Volume.CubicFeet);
        Numbers.Close(40, room.FloorArea.SquareFeet);
        Exhaust fan = new() { LabelFlow = VolumeFlow.FromCubicFeetPerMinute(250) };
        Numbers.Close(150, fan.EffectiveFlow.CubicFeetPerMinute);
        Numbers.Close(50, fan.FreshAirFlow.CubicFeetPerMinute);
        Numbers.CanBeWritten(room.Workings());
        Numbers.CanBeWritten(fan.Workings());
        Assert.Equal(Rooms.Of(10), new Room { Length = Length.FromMillimeters(2000), Width = Length.FromCentimeters(200), Height = Length.FromMeters(2.5) });
    }

    [Fact]
    [Evidence(Basis.Independent, "by hand: 500 mL at 30 % solids hold 350 mL of volatiles; half butyl acetate 0.882 and half acetone 0.791 by mass has 1/(0.5/0.882 + 0.5/0.791) g/mL")]
    public void Volatile_mass_follows_by_hand()
    {
        SolventShare[] shares = [Rooms.Share(Solvents.ButylAcetate, 50), Rooms.Share(Solvents.Acetone, 50)];
        double expected = 350 / ((0.5 / 0.882) + (0.5 / 0.791));
        Numbers.Close(expected, SolventEmission.VolatileMassOf(Volume.FromMilliliters(500), Ratio.FromPercent(30), shares).Grams);
        Numbers.Refuses("reducedSolids", () => SolventEmission.VolatileMassOf(Volume.FromMilliliters(500), Ratio.FromPercent(100), shares));
        Numbers.Refuses("sprayedReduced", () => SolventEmission.VolatileMassOf(Volume.Zero, Ratio.FromPercent(30), shares));
        Assert.Throws<ArgumentException>(() => SolventEmission.VolatileMassOf(Volume.FromMilliliters(500), Ratio.FromPercent(30), []));
    }

    [Fact]
    [Evidence(Basis.Identity, "shares rounded to 99.95 % still release the whole mass")]
    public void Rounded_shares_lose_nothing()
    {
        AirStudy study = Rooms.Study(Rooms.Bathroom, Rooms.Fan(100, 2), Rooms.Coat(0, 6, 100, 0.4, 15, Rooms.Share(Solvents.Acetone, 49.95), Rooms.Share(Solvents.Xylene, 50)));
        Numbers.Close(100, study.Substances.Sum(air => air.Released.Grams));
    }

    [Fact]
    [Evidence(Basis.Contract, "every caution names who decides and a source, and none says that something is safe")]
    public void Cautions_name_who_decides()
    {
        Caution[] cautions = [.. Cautions.ForSpraying, .. Cautions.ForIsocyanates];
        Assert.True(cautions.Distinct().Count() >= 12);
        foreach (Caution caution in cautions)
        {
            Assert.False(string.IsNullOrWhiteSpace(caution.DecidedBy));
            Assert.DoesNotContain(" is safe", caution.Sentence, StringComparison.OrdinalIgnoreCase);
        }
    }

    [Fact]
    [Evidence(Basis.Contract, "text does not depend on the culture")]
    public void Text_is_invariant()
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        try
        {
            AirStudy study = Rooms.Study(Rooms.Bathroom, Rooms.Fan(150, 2), Rooms.Coat(0, 6.5, 164, 0.4, 15));
            string invariant = Text(study);
            foreach (string culture in new[] { "de-DE", "tr-TR", "ar-SA" })
            {
                CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
                Assert.Equal(invariant, Text(study));
            }
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }

        static string Text(AirStudy study) =>
            study + "\n" + study.Room + "\n" + study.Exhaust + "\n" + study.Emissions[0] + "\n" + study.Substances[0] + "\n"
            + string.Join("\n", study.Exposure) + "\n" + study.BalanceAt(Solvents.ButylAcetate, TimeSpan.FromMinutes(10)) + "\n"
            + string.Join("\n", PublishedLimits.All) + string.Join("\n", LegalFacts.All) + string.Join("\n", RespiratorClass.All)
            + study.Workings().ToPlainText(DisplayUnits.UsCustomary) + study.Workings().ToLatex(DisplayUnits.Si)
            + new DilutionAir(Volume.FromLiters(1.5), Solvents.Xylene);
    }
}
