using System;

namespace Refinish.Json.Shapes;

/// <summary>The sentence of a refusal by the library, as a reader of the document needs it.</summary>
internal static class Refusal
{
    public static string Sentence(ArgumentException refusal)
    {
        // The runtime adds the parameter and the value, which the sentence names already; with trimmed messages it adds a key instead.
        string message = refusal.Message;
        int end = message.IndexOf(" (Parameter '", StringComparison.Ordinal);
        end = end < 0 ? message.IndexOf(" Arg_ParamName_Name", StringComparison.Ordinal) : end;
        return end < 0 ? message : message[..end];
    }

    /// <summary>The same under the name that the field has in the document.</summary>
    public static string Sentence(ArgumentException refusal, string field)
    {
        string sentence = Sentence(refusal);
        return refusal.ParamName is string name && sentence.StartsWith(name + " ", StringComparison.Ordinal) ? field + sentence[name.Length..] : sentence;
    }
}
