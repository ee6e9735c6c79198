namespace Refinish.Coatings;

/// <summary>What a product is for in a refinishing system.</summary>
public enum CoatingRole
{
    /// <summary>Wiped on to bond the coating to glass or plastic; no measurable film.</summary>
    AdhesionPromoter,

    /// <summary>Two-part epoxy filler for chips and wear, trowelled and sanded.</summary>
    Filler,

    /// <summary>First sprayed coat.</summary>
    Primer,

    /// <summary>Coloured finish coat.</summary>
    Topcoat,

    /// <summary>Uncoloured coat over the finish.</summary>
    ClearCoat,
}
