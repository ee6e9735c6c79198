using System.Collections.Generic;
using UnitsNet;

namespace Refinish.Coverage;

/// <summary>
/// Published transfer efficiencies. They disagree, because they depend on the piece and the painter more than on the gun: calibrate
/// from volume used and film found.
/// </summary>
public static class TransferEfficiencies
{
    private const string Federal = "40 CFR 60.313 (read as Wis. Adm. Code NR 440.48)";
    private const string Magazine = "finishing trade magazine, primer on transfer efficiency and tip sizes";

    /// <summary>Air-atomised spray as the federal rule for metal furniture takes it: 25 %.</summary>
    public static TransferEfficiency AirAtomisedRule { get; } = Printed("air-atomised spray", 25, 25, Federal, "table 1");

    /// <summary>Airless spray as the same rule takes it: 25 %.</summary>
    public static TransferEfficiency AirlessRule { get; } = Printed("airless spray", 25, 25, Federal, "table 1");

    /// <summary>Manual electrostatic spray as the same rule takes it: 60 %.</summary>
    public static TransferEfficiency ManualElectrostaticRule { get; } = Printed("manual electrostatic spray", 60, 60, Federal, "table 1");

    /// <summary>Older cup gun with compressed air: 30 %.</summary>
    public static TransferEfficiency CupGun { get; } = Printed("older cup gun with compressed air", 30, 30, Magazine, "conventional");

    /// <summary>High-volume low-pressure gun: 50 to 60 %.</summary>
    public static TransferEfficiency HighVolumeLowPressure { get; } = Printed("high-volume low-pressure gun", 50, 60, Magazine, "HVLP");

    /// <summary>Airless gun: 40 to 50 %.</summary>
    public static TransferEfficiency Airless { get; } = Printed("airless gun", 40, 50, Magazine, "airless");

    /// <summary>Air-assisted airless gun: 60 to 80 %.</summary>
    public static TransferEfficiency AirAssistedAirless { get; } = Printed("air-assisted airless gun", 60, 80, Magazine, "air-assist airless");

    /// <summary>
    /// The level that a gun has to reach in one air district to count as equal to high-volume low-pressure: 65 %. A requirement, not a
    /// measurement.
    /// </summary>
    public static TransferEfficiency DistrictBenchmark { get; } = Printed("level at which a district accepts a gun", 65, 65, "South Coast air district, Spray equipment transfer efficiency", "benchmark");

    /// <summary>All of them.</summary>
    public static IReadOnlyList<TransferEfficiency> All { get; } = new ValueList<TransferEfficiency>(
        [AirAtomisedRule, AirlessRule, ManualElectrostaticRule, CupGun, HighVolumeLowPressure, Airless, AirAssistedAirless, DistrictBenchmark]);

    private static TransferEfficiency Printed(string method, double low, double high, string document, string section) =>
        new(method, Ratio.FromPercent(low), Ratio.FromPercent(high), Source.Published(document, section));
}
