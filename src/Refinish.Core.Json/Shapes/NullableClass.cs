namespace Refinish.Json.Shapes;

/// <summary>A shape whose value may also be null.</summary>
internal static class NullableClass
{
    public static Shape<T?> OrNull<T>(this Shape<T> shape)
        where T : class =>
        new OrNullShape<T, T?>(shape, static value => value, static value => value!);
}
