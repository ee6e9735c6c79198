namespace Refinish.Films;

/// <summary>How coating is spread over the cross-section of a fan.</summary>
public enum FanPatternShape
{
    /// <summary>Evenly over a rectangle: one stroke leaves a flat stripe.</summary>
    Uniform,

    /// <summary>Evenly over an ellipse: one stroke leaves half an ellipse.</summary>
    Elliptical,

    /// <summary>The beta family over an ellipse: one stroke leaves (1 − 4x²/w²)^(b − 1).</summary>
    Beta,

    /// <summary>A normal distribution whose standard deviations are a quarter of width and height.</summary>
    Gaussian,
}
