using System;
using System.Collections.Generic;
using Refinish.Scheduling;

namespace Refinish.Jobs;

/// <summary>
/// One change of a caller to the list of operations that the rules made: add, replace, move or strike. What breaks an order rule
/// afterwards is objected to.
/// </summary>
/// <example><code>
/// Operation notice = new() { Id = "notice", Kind = WorkKind.Notice, Instruction = "tell the neighbours by letter", Time = TimeSpan.FromMinutes(20) };
/// OperationChange first = OperationChange.Add(notice, null);
/// OperationChange less = OperationChange.Strike("bath-1/clean-gun");
/// </code></example>
public sealed record OperationChange
{
    private OperationChange(OperationChangeKind kind, string? id, Operation? operation, string? after)
    {
        Kind = kind;
        Id = id;
        Operation = operation;
        After = after;
    }

    /// <summary>What is done.</summary>
    public OperationChangeKind Kind { get; }

    /// <summary>Identifier of the operation that is replaced, moved or struck; <see langword="null"/> when one is added.</summary>
    public string? Id { get; }

    /// <summary>The operation that comes in; <see langword="null"/> when none does.</summary>
    public Operation? Operation { get; }

    /// <summary>
    /// Identifier of the operation after which the added or moved one stands; <see langword="null"/> for the beginning of the list.
    /// </summary>
    public string? After { get; }

    /// <summary>Times to keep between the added operation and others, by identifier; none unless given.</summary>
    /// <exception cref="ArgumentException">An entry is missing.</exception>
    public IReadOnlyList<StepLag> Lags { get; init => field = Guard.List(value); } = ValueList<StepLag>.Empty;

    /// <summary>Adds an operation.</summary>
    /// <param name="operation">The operation; its identifier is unique within the job.</param>
    /// <param name="after">Identifier of the operation after which it stands; <see langword="null"/> for the beginning.</param>
    /// <returns>The change.</returns>
    /// <exception cref="ArgumentNullException"><paramref name="operation"/> is missing.</exception>
    public static OperationChange Add(Operation operation, string? after) =>
        new(OperationChangeKind.Add, null, Guard.NotNull(operation), after);

    /// <summary>Puts an operation in the place of another and keeps the waits that name it.</summary>
    /// <param name="id">Identifier of the one that goes.</param>
    /// <param name="operation">The one that comes; it takes the identifier over.</param>
    /// <returns>The change.</returns>
    /// <exception cref="ArgumentException"><paramref name="id"/> is empty.</exception>
    /// <exception cref="ArgumentNullException"><paramref name="operation"/> is missing.</exception>
    public static OperationChange Replace(string id, Operation operation) =>
        new(OperationChangeKind.Replace, Guard.Named(id), Guard.NotNull(operation), null);

    /// <summary>Moves an operation.</summary>
    /// <param name="id">Its identifier.</param>
    /// <param name="after">Identifier of the operation after which it stands; <see langword="null"/> for the beginning.</param>
    /// <returns>The change.</returns>
    /// <exception cref="ArgumentException"><paramref name="id"/> is empty.</exception>
    public static OperationChange Move(string id, string? after) => new(OperationChangeKind.Move, Guard.Named(id), null, after);

    /// <summary>Takes an operation out, with the waits that name it.</summary>
    /// <param name="id">Its identifier.</param>
    /// <returns>The change.</returns>
    /// <exception cref="ArgumentException"><paramref name="id"/> is empty.</exception>
    public static OperationChange Strike(string id) => new(OperationChangeKind.Strike, Guard.Named(id), null, null);

    /// <summary>The kind and the operation.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Kind.ToString("G") + " " + (Id ?? Operation!.Id);
}
