namespace Refinish.Pictures;

internal static class Placeholder;
