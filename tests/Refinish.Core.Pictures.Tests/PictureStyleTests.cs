using System;
using Xunit;

namespace Refinish.Pictures.Tests;

public class PictureStyleTests
{
    [Theory]
    [InlineData(319)]
    [InlineData(1601)]
    [InlineData(-5)]
    public void A_width_beyond_its_range_is_refused_with_the_range(int width)
    {
        ArgumentOutOfRangeException refusal = Assert.Throws<ArgumentOutOfRangeException>(() => new PictureStyle { Width = width });
        Assert.Equal("Width", refusal.ParamName);
        Assert.Contains("at least 320 and at most 1600", refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Values_without_a_name_are_refused()
    {
        Assert.Equal("Theme", Assert.Throws<ArgumentOutOfRangeException>(() => new PictureStyle { Theme = (PictureTheme)7 }).ParamName);
        Assert.Equal("Units", Assert.Throws<ArgumentOutOfRangeException>(() => new PictureStyle { Units = (DisplayUnits)7 }).ParamName);
    }

    [Fact]
    public void Two_styles_with_the_same_choices_are_equal() =>
        Assert.Equal(new PictureStyle { Width = 360, Theme = PictureTheme.Dark }, new PictureStyle { Theme = PictureTheme.Dark, Width = 360 });

    [Fact]
    public void It_tells_its_choices_in_one_line() => Assert.Equal("360 px, UsCustomary, Dark", new PictureStyle { Width = 360, Theme = PictureTheme.Dark, Units = DisplayUnits.UsCustomary }.ToString());
}
