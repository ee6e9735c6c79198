namespace Refinish.Inspection;

/// <summary>Pencil hardness from softest to hardest. ASTM D3363 uses 6B to 6H, ISO 15184 9B to 9H (both from memory).</summary>
public enum PencilGrade
{
    /// <summary>9B.</summary>
    Grade9B,

    /// <summary>8B.</summary>
    Grade8B,

    /// <summary>7B.</summary>
    Grade7B,

    /// <summary>6B, the softest of ASTM D3363.</summary>
    Grade6B,

    /// <summary>5B.</summary>
    Grade5B,

    /// <summary>4B.</summary>
    Grade4B,

    /// <summary>3B.</summary>
    Grade3B,

    /// <summary>2B.</summary>
    Grade2B,

    /// <summary>B.</summary>
    GradeB,

    /// <summary>HB.</summary>
    GradeHB,

    /// <summary>F.</summary>
    GradeF,

    /// <summary>H.</summary>
    GradeH,

    /// <summary>2H.</summary>
    Grade2H,

    /// <summary>3H.</summary>
    Grade3H,

    /// <summary>4H.</summary>
    Grade4H,

    /// <summary>5H.</summary>
    Grade5H,

    /// <summary>6H, the hardest of ASTM D3363.</summary>
    Grade6H,

    /// <summary>7H.</summary>
    Grade7H,

    /// <summary>8H.</summary>
    Grade8H,

    /// <summary>9H.</summary>
    Grade9H,
}
