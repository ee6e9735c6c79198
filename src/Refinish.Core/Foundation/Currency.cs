using System;
using System.Collections.Generic;
using System.Globalization;
using System.Linq;

namespace Refinish;

/// <summary>
/// A currency by its ISO 4217 code, with the decimals that its amounts have. Every amount of money in this library is rounded to them,
/// once, halves away from zero.
/// </summary>
/// <remarks>
/// Currencies with 0, 2 or 3 decimals are known. The list's two units of account with 4 decimals (CLF, UYW) and the codes without a minor
/// unit (gold, special drawing rights, tests) are refused: nobody is paid in them. ISO 4217 list one, minor units, as of February 2026;
/// withdrawn and newer codes are refused as unknown.
/// </remarks>
/// <example><code>
/// Currency dinar = Currency.Of("KWD");
/// int decimals = dinar.Decimals;          // 3
/// string text = dinar.Text(12.5m);        // "12.500 KWD"
/// </code></example>
public sealed record Currency
{
    /// <summary>What a share of fifteen figures may miss of a coin: a third of 300 is 100.</summary>
    internal const decimal Hair = 0.000001m;

    private static readonly IReadOnlyDictionary<string, Currency> Known = Table();

    private Currency(string code, int decimals)
    {
        Code = code;
        Decimals = decimals;
        SmallestAmount = new decimal(1, 0, 0, false, (byte)decimals);
    }

    /// <summary>Every currency that is known, by code.</summary>
    public static IReadOnlyList<Currency> All { get; } =
        new ValueList<Currency>(Known.Values.OrderBy(currency => currency.Code, StringComparer.Ordinal));

    /// <summary>The three letters of ISO 4217.</summary>
    public string Code { get; }

    /// <summary>Decimals of an amount: 0, 2 or 3.</summary>
    public int Decimals { get; }

    /// <summary>The smallest amount, one minor unit: 1, 0.01 or 0.001.</summary>
    public decimal SmallestAmount { get; }

    /// <summary>Finds a currency.</summary>
    /// <param name="code">Three capital letters of ISO 4217, such as <c>USD</c>.</param>
    /// <returns>The currency.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="code"/> is missing.</exception>
    /// <exception cref="ArgumentException"><paramref name="code"/> is no code of a currency with 0, 2 or 3 decimals.</exception>
    public static Currency Of(string code) => TryOf(code, out Currency? currency)
        ? currency!
        : throw new ArgumentException(
            "code is '" + Guard.NotNull(code)
                + "'; allowed: three capital letters of ISO 4217 for a currency with 0, 2 or 3 decimals, such as USD"
            + (CurrencyCodes.Refused.TryGetValue(code, out string? why) ? "; this one " + why + "." : "."),
            nameof(code));

    /// <summary>Finds a currency, without an exception when there is none.</summary>
    /// <param name="code">Three capital letters of ISO 4217.</param>
    /// <param name="currency">The currency; <see langword="null"/> when the code is not known.</param>
    /// <returns>Whether it is known.</returns>
    public static bool TryOf(string? code, out Currency? currency)
    {
        currency = null;
        return code is not null && Known.TryGetValue(code, out currency);
    }

    /// <summary>An amount rounded to the decimals of the currency, halves away from zero.</summary>
    /// <param name="amount">The amount.</param>
    /// <returns>A multiple of <see cref="SmallestAmount"/>.</returns>
    public decimal Round(decimal amount) => Math.Round(amount, Decimals, MidpointRounding.AwayFromZero);

    /// <summary>Whether an amount has no more decimals than the currency.</summary>
    /// <param name="amount">The amount.</param>
    /// <returns><see langword="true"/> for a multiple of <see cref="SmallestAmount"/>.</returns>
    public bool Fits(decimal amount) => Math.Round(amount, Decimals) == amount;

    /// <summary>An amount as text in the invariant culture, with all decimals of the currency.</summary>
    /// <param name="amount">The amount; it is rounded to the currency.</param>
    /// <returns>Text such as <c>170.36 USD</c> or <c>17036 JPY</c>.</returns>
    public string Text(decimal amount) => Number(amount) + " " + Code;

    /// <summary>A rate, such as a wage or the price of a unit, as text in the invariant culture, without the code.</summary>
    /// <param name="rate">The rate; it is rounded to two decimals more than the currency has.</param>
    /// <returns>All decimals of the currency, and up to two more where the rate has them: <c>36.50</c>, <c>0.0425</c>.</returns>
    public string Rate(decimal rate) => rate.ToString(Format + (Decimals == 0 ? ".##" : "##"), CultureInfo.InvariantCulture);

    /// <summary>The code.</summary>
    /// <returns>Three letters.</returns>
    public override string ToString() => Code;

    /// <summary>An amount as text in the invariant culture, without the code.</summary>
    /// <param name="amount">The amount; it is rounded to the currency.</param>
    /// <returns>Text such as <c>170.36</c>.</returns>
    public string Number(decimal amount) => Round(amount).ToString(Format, CultureInfo.InvariantCulture);

    private string Format => Decimals switch { 0 => "0", 2 => "0.00", _ => "0.000" };

    internal decimal Round(double amount) => Round((decimal)amount);

    /// <summary>The least amount of the currency that is not below an amount.</summary>
    internal decimal RoundUp(decimal amount) => CoinsUp(amount, SmallestAmount) * SmallestAmount;

    /// <summary>
    /// The least amount s of which, after a share of it that is rounded to the currency, the rest is not below a net n of the currency:
    /// s − round(s q) = n in minor units gives s = ⌊(n − ½)/(1 − q)⌋ + 1.
    /// </summary>
    internal decimal Before(decimal share, decimal net) => (Math.Floor(((net / SmallestAmount) - 0.5m) / (1 - share)) + 1) * SmallestAmount;

    /// <summary>How many coins hold an amount.</summary>
    internal static decimal CoinsUp(decimal amount, decimal coin) => Math.Ceiling(amount / coin);

    /// <summary>How many whole coins there are in an amount.</summary>
    internal static decimal CoinsDown(decimal amount, decimal coin) => Math.Floor(amount / coin);

    private static Dictionary<string, Currency> Table() =>
        new[] { (CurrencyCodes.NoDecimals, 0), (CurrencyCodes.TwoDecimals, 2), (CurrencyCodes.ThreeDecimals, 3) }
            .SelectMany(row => row.Item1.Split(' ').Select(code => new Currency(code, row.Item2)))
            .ToDictionary(currency => currency.Code, StringComparer.Ordinal);
}
