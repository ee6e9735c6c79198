using System.Collections.Generic;

namespace Refinish.Coatings;

/// <summary>Which cautions a product and the steps of a system bring, apart from spraying.</summary>
internal static class SystemCautions
{
    /// <summary>
    /// What the parts of a product can do to who mixes it; one without isocyanate is taken for an epoxy's, the careful reading.
    /// </summary>
    public static IEnumerable<Caution> OfMixing(CoatingProduct product) =>
        product.IsocyanateFraction.DecimalFractions > 0 ? [Cautions.IsocyanateHardener]
            : product.Parts.Count == 1 ? [] : [Cautions.EpoxyHardener];

    public static IEnumerable<Caution> Of(SystemStep step) => step.Kind switch
    {
        SystemStepKind.Etch => [Cautions.Etchants],
        SystemStepKind.Abrade => [Cautions.Dust],
        SystemStepKind.SlipResistantBroadcast or SystemStepKind.SlipResistantAdditive => [Cautions.SlipGrains],
        _ => [],
    };
}
