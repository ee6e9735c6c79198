using System;

namespace Refinish.Jobs;

/// <summary>The batch number on the can of one component that was used.</summary>
public sealed record BatchNumber
{
    /// <summary>Records it.</summary>
    /// <param name="product">Identifier of the product, as in the plan.</param>
    /// <param name="component">Identifier of the component: base, hardener or reducer, as in the plan.</param>
    /// <param name="number">What stands on the can.</param>
    /// <exception cref="ArgumentException">A text is empty.</exception>
    public BatchNumber(string product, string component, string number)
    {
        Product = Guard.Named(product);
        Component = Guard.Named(component);
        Number = Guard.Named(number);
    }

    /// <summary>Identifier of the product.</summary>
    public string Product { get; }

    /// <summary>Identifier of the component.</summary>
    public string Component { get; }

    /// <summary>What stands on the can.</summary>
    public string Number { get; }

    /// <summary>The three in one line.</summary>
    /// <returns>One line of text.</returns>
    public override string ToString() => Product + ", " + Component + ": " + Number;
}
