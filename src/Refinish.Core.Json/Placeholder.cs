namespace Refinish.Json;

internal static class Placeholder;
