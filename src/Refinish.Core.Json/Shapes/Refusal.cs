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
            Rename(sentence, char.ToUpperInvariant(field.Name[0]) + field.Name[1..], field.Name);
        }

        return sentence.ToString();
    }

    /// <summary>Without what the runtime adds about parameter and value, which the sentence names already; with trimmed messages it adds a key instead.</summary>
    public static string Bare(string message)
    {
        int end = message.IndexOf(" (Parameter '", StringComparison.Ordinal);
        end = end < 0 ? message.IndexOf(" Arg_ParamName_Name", StringComparison.Ordinal) : end;
        return end < 0 ? message : message[..end];
    }

    private static void Rename(StringBuilder sentence, string name, string to)
    {
        for (int i = 0; i + name.Length <= sentence.Length; i++)
        {
            bool isWord = (i == 0 || !char.IsLetter(sentence[i - 1])) && (i + name.Length == sentence.Length || !char.IsLetter(sentence[i + name.Length]));
            if (isWord && sentence.ToString(i, name.Length) == name)
            {
                sentence.Remove(i, name.Length).Insert(i, to);
            }
        }
    }
}
