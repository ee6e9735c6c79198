namespace Refinish.Json.Shapes;

/// <summary>Takes the value of one field out of the values of its object.</summary>
internal delegate T Slot<out T>(Values values);

/// <summary>The values of one object while it is read.</summary>
internal sealed class Values(int count)
{
    private readonly object?[] values = new object?[count];
    private readonly Outcome[] outcomes = new Outcome[count];

    public bool HasStandIns { get; private set; }

    public object? this[int field] => values[field];

    public Outcome OutcomeOf(int field) => outcomes[field];

    public void Set(int field, object? value, Outcome outcome)
    {
        values[field] = value;
        outcomes[field] = outcome;
        HasStandIns |= outcome == Outcome.StandIn;
    }
}
