using System.Collections.Generic;

namespace Refinish.Fixtures;

/// <summary>The number types of a PLY file.</summary>
internal enum PlyType
{
    Int8,
    UInt8,
    Int16,
    UInt16,
    Int32,
    UInt32,
    Single,
    Double,
}

/// <summary>How the numbers of a PLY file are written.</summary>
internal enum PlyOrder
{
    Text,
    LittleEndian,
    BigEndian,
}

/// <summary>One kind of element of a PLY file as its header declares it.</summary>
internal sealed class PlyElement(string name, long count)
{
    public long Count => count;

    public bool IsVertex { get; } = name == "vertex";

    public bool IsFace { get; } = name == "face";

    public List<PlyProperty> Properties { get; } = [];
}

/// <summary>A property: a number, or a list of numbers with the type of its counter.</summary>
internal sealed record PlyProperty(string Name, PlyType Type, PlyType? Counter)
{
    /// <summary>0, 1 or 2 for x, y or z; 3 for anything else.</summary>
    public int Axis { get; } = Name switch { "x" => 0, "y" => 1, "z" => 2, _ => 3 };

    public bool IsCorners { get; } = Name is "vertex_indices" or "vertex_index";
}
