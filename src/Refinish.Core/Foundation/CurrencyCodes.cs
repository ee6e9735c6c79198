using System;
using System.Collections.Generic;
using System.Linq;

namespace Refinish;

/// <summary>
/// The codes of ISO 4217 list one by their minor units, as a reprint of 1 February 2026 has them; without BGN, withdrawn in January 2026.
/// </summary>
internal static class CurrencyCodes
{
    public const string NoDecimals = "BIF CLP DJF GNF ISK JPY KMF KRW PYG RWF UGX UYI VND VUV XAF XOF XPF";

    public const string ThreeDecimals = "BHD IQD JOD KWD LYD OMR TND";

    public const string TwoDecimals =
        "AED AFN ALL AMD AOA ARS AUD AWG AZN BAM BBD BDT BMD BND BOB BOV BRL BSD BTN BWP BYN BZD CAD CDF CHE CHF CHW CNY COP COU CRC CUP "
        + "CVE CZK DKK DOP DZD EGP ERN ETB EUR FJD FKP GBP GEL GHS GIP GMD GTQ GYD HKD HNL HTG HUF IDR ILS INR IRR JMD KES KGS KHR KPW "
        + "KYD KZT LAK LBP LKR LRD LSL MAD MDL MGA MKD MMK MNT MOP MRU MUR MVR MWK MXN MXV MYR MZN NAD NGN NIO NOK NPR NZD PAB PEN PGK "
        + "PHP PKR PLN QAR RON RSD RUB SAR SBD SCR SDG SEK SGD SHP SLE SOS SRD SSP STN SVC SYP SZL THB TJS TMT TOP TRY TTD TWD TZS UAH "
        + "USD USN UYU UZS VED VES WST XAD XCD XCG YER ZAR ZMW ZWG";

    public static IReadOnlyDictionary<string, string> Refused { get; } = "XAG XAU XBA XBB XBC XBD XDR XPD XPT XSU XTS XUA XXX".Split(' ')
        .Select(code => (Code: code, Reason: "has no minor unit"))
        .Concat(new (string Code, string Reason)[] { ("CLF", "has four decimals"), ("UYW", "has four decimals") })
        .ToDictionary(row => row.Code, row => row.Reason, StringComparer.Ordinal);
}
