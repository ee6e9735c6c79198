namespace Refinish.Fixtures;

/// <summary>What a fixture takes of the floor, in m and m²: the longest side, the side square to it, and the area.</summary>
internal readonly record struct Footprint(double Length, double Width, double Area)
{
    public static Footprint Of(double length, double width) => new(length, width, length * width);
}
