namespace Refinish.Json.Shapes;

/// <summary>A shape whose value may also be null.</summary>
internal static class NullableStruct
{
    public static Shape<T?> OrNull<T>(this Shape<T> shape)
        where T : struct =>
        new OrNullShape<T, T?>(shape, static value => value, static value => value!.Value);
}
