using System.Collections.Generic;
using System.Text.Json.Nodes;
using Refinish.Json.Shapes;

namespace Refinish.Json.Tests;

/// <summary>Goes through a document and its shape together.</summary>
internal static class Walk
{
    /// <summary>Every field that the shape has for an object of the document, with its owner and its path.</summary>
    public static IEnumerable<(JsonObject Owner, IFieldsShape Shape, IField Field, string Path)> Fields(Shape shape, JsonNode? json,
        string path = "$")
    {
        switch (shape, json)
        {
            case (IThroughShape through, _):
                foreach ((JsonObject, IFieldsShape, IField, string) found in Fields(through.Inner, json, path))
                {
                    yield return found;
                }

                break;
            case (IReferenceShape reference, JsonObject):
                foreach ((JsonObject, IFieldsShape, IField, string) found in Fields(reference.Whole, json, path))
                {
                    yield return found;
                }

                break;
            case (IOneOfShape variants, JsonObject owner):
                foreach ((string kind, IFieldsShape fields) in variants.Variants)
                {
                    if ((string?)owner["kind"] == kind)
                    {
                        foreach ((JsonObject, IFieldsShape, IField, string) found in Of(fields, owner, path))
                        {
                            yield return found;
                        }
                    }
                }

                break;
            case (IFieldsShape fields, JsonObject owner):
                foreach ((JsonObject, IFieldsShape, IField, string) found in Of(fields, owner, path))
                {
                    yield return found;
                }

                break;
            case (IHolderShape holder, JsonArray items):
                for (int i = 0; i < items.Count; i++)
                {
                    foreach ((JsonObject, IFieldsShape, IField, string) found in Fields(holder.Item, items[i], path + "[" + i + "]"))
                    {
                        yield return found;
                    }
                }

                break;
            case (IHolderShape holder, not null):
                foreach ((JsonObject, IFieldsShape, IField, string) found in Fields(holder.Item, json, path))
                {
                    yield return found;
                }

                break;
        }
    }

    /// <summary>Every shape that can be reached.</summary>
    public static IEnumerable<Shape> Shapes(Shape root)
    {
        HashSet<Shape> seen = [root];
        Queue<Shape> open = new([root]);
        while (open.TryDequeue(out Shape? shape))
        {
            yield return shape;
            List<Shape> below = [];
            if (shape is IFieldsShape fields)
            {
                foreach (IField field in fields.Fields)
                {
                    below.Add(field.Shape);
                }
            }
            else if (shape is IOneOfShape variants)
            {
                foreach ((_, IFieldsShape variant) in variants.Variants)
                {
                    below.Add((Shape)variant);
                }
            }
            else if (shape is IHolderShape holder)
            {
                below.Add(holder.Item);
            }
            else if (shape is IThroughShape through)
            {
                below.Add(through.Inner);
            }
            else if (shape is IReferenceShape reference)
            {
                below.Add(reference.Whole);
            }

            foreach (Shape next in below)
            {
                if (seen.Add(next))
                {
                    open.Enqueue(next);
                }
            }
        }
    }

    private static IEnumerable<(JsonObject Owner, IFieldsShape Shape, IField Field, string Path)> Of(IFieldsShape shape, JsonObject owner,
        string path)
    {
        foreach (IField field in shape.Fields)
        {
            string at = path + "." + field.Name;
            yield return (owner, shape, field, at);
            foreach ((JsonObject, IFieldsShape, IField, string) found in Fields(field.Shape, owner[field.Name], at))
            {
                yield return found;
            }
        }
    }
}
