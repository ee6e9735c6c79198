namespace Refinish.Jobs;

/// <summary>Which of two sides there are says what happened.</summary>
internal static class ChangeKinds
{
    public static ChangeKind Of(object? before, object? after) =>
        before is null ? ChangeKind.Added : after is null ? ChangeKind.Removed : ChangeKind.Changed;
}
