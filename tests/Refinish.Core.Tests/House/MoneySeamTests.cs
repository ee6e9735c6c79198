using System;
using System.Collections.Generic;
using System.IO;
using System.Linq;
using System.Reflection;
using System.Text.RegularExpressions;
using Refinish.Tests.Support;
using Xunit;

namespace Refinish.Tests.House;

public class MoneySeamTests
{
    /// <summary>Methods that cut or round a decimal that is no amount of money, with the reason.</summary>
    private static readonly Dictionary<string, string> NoMoney = new()
    {
        ["PricedLabour.get_Hours"] = "hours, in thousandths",
    };

    [Fact]
    [Evidence(Basis.Contract, "Currency alone rounds decimals; read from the compiled instructions, and every exception is still one")]
    public void Only_a_currency_rounds_a_decimal()
    {
        HashSet<string> found = [.. typeof(Currency).Assembly.GetTypes().SelectMany(IlReferences.Calls)
            .Where(call => Rounds(call.Called)).Select(call => Name(call.By))];
        Assert.Equal(
            new[] { "Currency.Before", "Currency.CoinsDown", "Currency.CoinsUp", "Currency.Fits", "Currency.Round" }
                .Concat(NoMoney.Keys).Order(StringComparer.Ordinal),
            found.Order(StringComparer.Ordinal));
    }

    [Theory]
    [InlineData("src/Refinish.Core.Json")]
    [InlineData("src/Refinish.Core.Pictures")]
    [InlineData("samples")]
    [Evidence(Basis.Contract, "nobody else assumes the decimals of a currency: no rounding of decimals, no cents, no hundredths, by the source text")]
    public void Nobody_else_counts_in_cents(string folder)
    {
        Regex cents = new(@"MidpointRounding|decimal\.(Round|Floor|Ceiling|Truncate)\(|\b0\.0+[15]m\b|[*/] ?10+m\b|:[CN]2\b|""[CN]2""");
        int read = 0;
        foreach (string file in Directory.EnumerateFiles(Path.Combine(ReadmeTests.Root(), folder.Replace('/', Path.DirectorySeparatorChar)), "*.cs", SearchOption.AllDirectories)
            .Where(file => !file.Contains(Path.DirectorySeparatorChar + "obj" + Path.DirectorySeparatorChar, StringComparison.Ordinal)))
        {
            read++;
            Match match = cents.Match(File.ReadAllText(file));
            Assert.False(match.Success, file + ": " + match.Value + "; ask the Currency");
        }

        Assert.True(read > 20);
    }

    private static bool Rounds(MethodBase called) =>
        (called.DeclaringType == typeof(Math) || called.DeclaringType == typeof(decimal))
        && called.Name is "Round" or "Floor" or "Ceiling" or "Truncate"
        && called.GetParameters()[0].ParameterType == typeof(decimal);

    // A lambda counts as the type that it stands in.
    private static string Name(MethodBase method)
    {
        Type type = method.DeclaringType!;
        while (type.IsNested && type.Name[0] == '<')
        {
            type = type.DeclaringType!;
        }

        return type.Name + "." + method.Name;
    }
}
