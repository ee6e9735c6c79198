namespace Refinish.Curing;

internal static class CuringCautions
{
    public static readonly ValueList<Caution> Batch = new(
    [
        new Caution(
            "batch-heats-itself",
            Hazard.FireAndExplosion,
            "A batch in the pot heats itself: the larger and the warmer it is, the shorter it lives, and left over it can smoke. The time here is for the data sheet's own batch size.",
            "the product's data sheet and safety data sheet",
            Source.CommonPractice("exotherm of two-part coatings and fillers in the pot")),
    ]);
}
