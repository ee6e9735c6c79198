namespace Refinish.Substrates;

/// <summary>The yes-or-no facts of a <see cref="Survey"/>, for conditions of a rule.</summary>
public enum SurveyFact
{
    /// <summary>See <see cref="Survey.PreviouslyRefinished"/>.</summary>
    PreviouslyRefinished,

    /// <summary>See <see cref="Survey.LeadSuspected"/>.</summary>
    LeadSuspected,

    /// <summary>See <see cref="Survey.CertifiedForLead"/>.</summary>
    CertifiedForLead,

    /// <summary>See <see cref="Survey.AsbestosSuspected"/>.</summary>
    AsbestosSuspected,

    /// <summary>See <see cref="Survey.CertifiedForAsbestos"/>.</summary>
    CertifiedForAsbestos,

    /// <summary>See <see cref="Survey.NoPermittedStrippingRoute"/>.</summary>
    NoPermittedStrippingRoute,

    /// <summary>See <see cref="Survey.LeakCannotBeStopped"/>.</summary>
    LeakCannotBeStopped,

    /// <summary>See <see cref="Survey.SubstrateWet"/>.</summary>
    SubstrateWet,

    /// <summary>See <see cref="Survey.SwollenOrDelaminated"/>.</summary>
    SwollenOrDelaminated,

    /// <summary>See <see cref="Survey.StainsBleed"/>.</summary>
    StainsBleed,

    /// <summary>See <see cref="Survey.CuttingOrFoodContactExpected"/>.</summary>
    CuttingOrFoodContactExpected,

    /// <summary>See <see cref="Survey.NoExhaustPath"/>.</summary>
    NoExhaustPath,

    /// <summary>See <see cref="Survey.FlameCannotBeShutOff"/>.</summary>
    FlameCannotBeShutOff,

    /// <summary>See <see cref="Survey.SensitiveOccupantsCannotLeave"/>.</summary>
    SensitiveOccupantsCannotLeave,

    /// <summary>See <see cref="Survey.CureTimeRefused"/>.</summary>
    CureTimeRefused,
}
