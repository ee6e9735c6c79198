using System;
using System.Collections.Generic;

namespace Refinish.Json.Shapes;

/// <summary>Puts the fields of an object together, in the order in which they are written.</summary>
internal sealed class Fields<T>(string name)
{
    private readonly List<Field<T>> fields = [];

    /// <summary>A field that has to be there.</summary>
    public Fields<T> With<TField>(string field, Shape<TField> shape, Func<T, TField> get, out Slot<TField> slot)
    {
        slot = SlotOf<TField>(fields.Count);
        fields.Add(new Field<T, TField>(field, shape, true, get, null, default!));
        return this;
    }

    /// <summary>A field of a constructor that has a value of its own when it is left out.</summary>
    public Fields<T> WithOr<TField>(string field, Shape<TField> shape, Func<T, TField> get, TField fallback, out Slot<TField> slot)
    {
        slot = SlotOf<TField>(fields.Count);
        fields.Add(new Field<T, TField>(field, shape, false, get, null, fallback));
        return this;
    }

    /// <summary>A field that may be left out; what it then is, the library alone says.</summary>
    public Fields<T> Optional<TField>(string field, Shape<TField> shape, Func<T, TField> get, Func<T, TField, T> put)
    {
        fields.Add(new Field<T, TField>(field, shape, false, get, put, default!));
        return this;
    }

    /// <summary>A field that may be left out or null, and is not written when it is null.</summary>
    public Fields<T> Maybe<TField>(string field, Shape<TField> shape, Func<T, TField?> get, Func<T, TField, T> put)
        where TField : struct
    {
        fields.Add(new Field<T, TField?>(field, shape.OrNull(), false, get, (made, value) => put(made, value!.Value), null));
        return this;
    }

    /// <inheritdoc cref="Maybe{TField}(string, Shape{TField}, Func{T, TField?}, Func{T, TField, T})"/>
    public Fields<T> MaybeOf<TField>(string field, Shape<TField> shape, Func<T, TField?> get, Func<T, TField, T> put)
        where TField : class
    {
        fields.Add(new Field<T, TField?>(field, shape.OrNull(), false, get, (made, value) => put(made, value!), null));
        return this;
    }

    /// <summary>A result: always written, null where there is none, and read by nobody, because it follows from the job.</summary>
    public Fields<T> Show<TField>(string field, Shape<TField> shape, Func<T, TField> get)
    {
        fields.Add(new Field<T, TField>(field, shape, true, get, null, default!));
        return this;
    }

    /// <summary>Results alone.</summary>
    public FieldsShape<T> AsResults() => new ObjectShape<T>(name, [.. fields], NotRead, null);

    /// <summary>Results alone, of an object that stands beside others in <typeparamref name="T"/>.</summary>
    public FieldsShape<T> AsResultsOf(Type described) => new ObjectShape<T>(name, [.. fields], NotRead, null) { Of = described };

    /// <summary>Fields that are each allowed or refused by themselves.</summary>
    public ObjectShape<T> Making(Func<Values, T> make) => new(name, [.. fields], make, null);

    /// <summary>Fields of which later ones name what earlier ones define.</summary>
    public ObjectShape<T> MakingInOrder(Func<Values, T> make) => new(name, [.. fields], make, null) { IsInOrder = true };

    /// <summary>Fields that bear upon each other: with a stand-in among them a refusal says nothing.</summary>
    public ObjectShape<T> MakingTogether(Func<T> standIn, Func<Values, T> make) => new(name, [.. fields], make, standIn);

    private static T NotRead(Values values) => throw new NotSupportedException("Results are not read.");

    private static Slot<TField> SlotOf<TField>(int index) => values => (TField)values[index]!;
}
