using System.Collections.Generic;
using System.Text.Json;

namespace Refinish.Json.Shapes;

/// <summary>
/// How values of one type look in a document. One description drives reading, writing and the published schema, so that they cannot part.
/// </summary>
internal abstract class Shape
{
    /// <summary>Where below the value a refused number stands: a quantity keeps it in its field "value".</summary>
    public virtual string WhereItIsSaid => string.Empty;
}

/// <inheritdoc/>
internal abstract class Shape<T> : Shape
{
    /// <summary>Values that may take the place of a faulty one, so that the other fields of its object can still be checked.</summary>
    public virtual IEnumerable<T> StandIns => [];

    public abstract Outcome Read(JsonElement json, Reading reading, out T value);

    public abstract void Write(Utf8JsonWriter json, T value, Writing to);

    /// <summary>Writes the value as one of a list.</summary>
    public virtual void WriteItem(Utf8JsonWriter json, T value, Writing to) => Write(json, value, to);

    protected static Outcome Nothing(out T value)
    {
        value = default!;
        return Outcome.Nothing;
    }
}
