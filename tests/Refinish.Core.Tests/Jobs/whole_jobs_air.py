"""The air of a room while coats are sprayed and promoters wiped on: the well-mixed box, each source in closed form, added up over time.

A source gives off a steady part f while it is put on over T minutes and lays the rest down as a film that leaves with the time
constant tau. For the box dm/dt = e(t) - L m the answer is a sum of exponentials; here each source is written as a switched-on ramp
less the same ramp shifted by T, so that one formula holds before and after the end of spraying.
"""
from math import exp

LITRES = 24.45e-3  # m³/mol at 25 °C, the convention of the published limits


def step_response(t, changes, tau, flash):
    """Vapour in the air at t from a unit of coating a minute that goes on for ever from time 0, per minute of spraying."""
    if t <= 0:
        return 0.0
    k = 1 / tau
    steady = (1 - exp(-changes * t)) / changes if changes else t
    lag = t * exp(-k * t) if abs(changes - k) < 1e-9 * k else (exp(-k * t) - exp(-changes * t)) / (changes - k)
    return steady - (1 - flash) * lag


def in_air(t, source, changes):
    """Grams in the air at t."""
    start, minutes, grams, tau, flash = source
    both = step_response(t - start, changes, tau, flash) - step_response(t - start - minutes, changes, tau, flash)
    return grams / minutes * both


def peak(sources, weights, changes):
    """The greatest weighted sum: a fine grid, then thirds of the best stretch."""
    def at(t):
        return sum(w * in_air(t, s, changes) for s, w in zip(sources, weights))

    ends = [s[0] + s[1] for s in sources]
    grid = sorted({e + d for e in ends for d in [i * 0.25 - 30 for i in range(400)]} | set(ends))
    best = max(grid, key=at)
    low, high = best - 0.5, best + 0.5
    for _ in range(80):
        a, b = low + (high - low) / 3, high - (high - low) / 3
        if at(a) < at(b):
            low = a
        else:
            high = b
    return at((low + high) / 2)


def flammable_per_gram(solvents, volume):
    """Share of the lower flammable limit that a gram of the blend makes in the room (Le Chatelier)."""
    return sum(share / molar * LITRES / flammable for (molar, _, flammable, _), share in solvents) / volume


def exposure_per_gram(solvents, volume):
    """Share of the lowest eight-hour limits known that a gram of the blend makes in the room, added up."""
    return sum(share / molar * LITRES / (ppm * 1e-6) for (molar, _, _, ppm), share in solvents) / volume


def flow_for(sources, weights, line, volume, mixing):
    """Flow really moved (m³/min) at which the peak is at the line, by halving."""
    if sum(w * s[2] for s, w in zip(sources, weights)) <= line:
        return 0.0
    low, high = 1e-9, 100.0
    for _ in range(100):
        middle = (low + high) / 2
        if peak(sources, weights, middle) > line:
            low = middle
        else:
            high = middle
    return high * volume * mixing


def steady_flow_for(sources, weights, line, volume, mixing):
    """As if a coat flashed as it is sprayed and spraying never ended, beside the films of the coats before it."""
    most = 0.0
    for begun in sources:
        total = 0.0
        for (start, minutes, grams, tau, flash), w in zip(sources, weights):
            since = begun[0] - start
            if 0 <= since < minutes:
                total += w * grams / minutes
            elif since >= minutes:
                film = grams * (1 - flash) * (1 - exp(-minutes / tau)) / (minutes / tau)
                total += w * film / tau * exp(-(since - minutes) / tau)
        most = max(most, total)
    return most / line * volume * mixing
