namespace Refinish.Inspection;

/// <summary>How a dry film is measured.</summary>
public enum GaugeKind
{
    /// <summary>Magnetic or magnetic induction: coatings on iron and steel.</summary>
    Magnetic,

    /// <summary>Eddy current: coatings on metals that are not magnetic, such as an aluminium witness panel.</summary>
    EddyCurrent,

    /// <summary>Ultrasonic: coatings on anything that carries the sound, with a coupling gel.</summary>
    Ultrasonic,

    /// <summary>A metal panel sprayed along with the fixture and measured in its place.</summary>
    WitnessPanel,
}
