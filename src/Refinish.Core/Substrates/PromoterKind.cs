namespace Refinish.Substrates;

/// <summary>What makes the primer hold on a given material.</summary>
public enum PromoterKind
{
    /// <summary>None can be named.</summary>
    None,

    /// <summary>A silane wipe, for enamel, glaze and china.</summary>
    Silane,

    /// <summary>A promoter for plastics that the coating's maker names for this very plastic.</summary>
    Plastic,
}
