namespace Refinish.Coatings;

/// <summary>In what a slip test reads; the scales do not convert into each other.</summary>
public enum SlipScale
{
    /// <summary>Dynamic coefficient of friction by a tribometer that drags a slider over the floor.</summary>
    DynamicFriction,

    /// <summary>Pendulum test value: how far a swinging slider comes up after it has brushed the floor.</summary>
    PendulumValue,

    /// <summary>Angle of a ramp at which a person on it begins to slip.</summary>
    RampAngle,
}
