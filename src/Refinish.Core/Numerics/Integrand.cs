namespace Refinish.Numerics;

/// <summary>An integrand that is handed the numbers that it needs, by reference: they may be many, and it is called at each point.</summary>
internal delegate TNumber Integrand<TState, TNumber>(in TState state, TNumber x);
