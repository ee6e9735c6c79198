namespace Refinish.Coatings;

/// <summary>In which form a coating goes on.</summary>
public enum CoatingForm
{
    /// <summary>A liquid that is sprayed, brushed or wiped.</summary>
    Liquid,

    /// <summary>
    /// A powder that melts in an oven. No system with one is planned: a fixture that is coated where it stands is in no oven.
    /// </summary>
    Powder,
}
