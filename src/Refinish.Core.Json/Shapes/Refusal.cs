using System;
using System.Collections.Generic;
using System.Text;

namespace Refinish.Json.Shapes;

/// <summary>The sentence of a refusal by the library, as a reader of the document needs it.</summary>
internal static class Refusal
{
    /// <summary>The sentence with the names that the fields have in the document.</summary>
    public static string Sentence(ArgumentException refusal, IReadOnlyList<IField> fields)
    {
        StringBuilder sentence = new(Bare(refusal.Message));
        foreach (IField field in fields)
        {
            Rename(sentence, field.Name);

            // A layer refuses what does not go together in its product.
            foreach (IField inner in Inner(field.Shape))
            {
                Rename(sentence, inner.Name);
            }
        }

        return sentence.ToString();
    }

    /// <summary>Notes a rule between fields, or a field that can be left out elsewhere but not here.</summary>
    public static void Note(ArgumentException refusal, IReadOnlyList<IField> fields, Reading reading)
    {
        if (refusal is ArgumentNullException && Find(refusal, fields) is IField field)
        {
            reading.FaultAt(field.Name, JsonFaultKind.Missing, "The field is missing, and the rest of this object needs it.");
        }
        else
        {
            reading.Fault(JsonFaultKind.Contradiction, Sentence(refusal, fields));
        }
    }

    public static IField? Find(ArgumentException refusal, IReadOnlyList<IField> fields)
    {
        foreach (IField field in fields)
        {
            if (string.Equals(field.Name, refusal.ParamName, StringComparison.OrdinalIgnoreCase))
            {
                return field;
            }
        }

        return null;
    }

    /// <summary>
    /// Without what the runtime adds about parameter and value, which the sentence names already; with trimmed messages it adds a key
    /// instead.
    /// </summary>
    public static string Bare(string message)
    {
        int end = message.IndexOf(" (Parameter '", StringComparison.Ordinal);
        end = end < 0 ? message.IndexOf(" Arg_ParamName_Name", StringComparison.Ordinal) : end;
        return end < 0 ? message : message[..end];
    }

    private static IReadOnlyList<IField> Inner(Shape shape) => shape switch
    {
        IFieldsShape fields => fields.Fields,
        IHolderShape holder => Inner(holder.Item),
        IReferenceShape reference => Inner(reference.Whole),
        IThroughShape through => Inner(through.Inner),
        _ => [],
    };

    private static void Rename(StringBuilder sentence, string to)
    {
        string name = char.ToUpperInvariant(to[0]) + to[1..];
        for (int i = 0; i + name.Length <= sentence.Length; i++)
        {
            bool isWord = (i == 0 || !char.IsLetter(sentence[i - 1]))
                && (i + name.Length == sentence.Length || !char.IsLetter(sentence[i + name.Length]));
            if (isWord && sentence.ToString(i, name.Length) == name)
            {
                sentence.Remove(i, name.Length).Insert(i, to);
            }
        }
    }
}
