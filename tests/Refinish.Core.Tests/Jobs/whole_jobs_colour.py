"""How many coats hide a colour: Kubelka and Munk's film in the bands X, Y, Z, and CIEDE2000, from the published formulas."""
from math import atan2, cos, degrees, exp, hypot, radians, sin, sqrt

WHITE = (95.047, 100.0, 108.883)


def to_bands(lab):
    fy = (lab[0] + 16) / 116
    return [f ** 3 if f > 6 / 29 else 3 * (6 / 29) ** 2 * (f - 4 / 29) for f in (fy + lab[1] / 500, fy, fy - lab[2] / 200)]


def to_lab(bands):
    x, y, z = [t ** (1 / 3) if t > (6 / 29) ** 3 else t / (3 * (6 / 29) ** 2) + 4 / 29 for t in bands]
    return 116 * y - 16, 500 * (x - y), 200 * (y - z)


def over(below, infinite, power):
    """Reflectance of a film of scattering power S X over a ground, by the reflectivity form of the exponential solution."""
    if infinite >= 1:
        return (below + power * (1 - below)) / (1 + power * (1 - below))
    e = exp(power * (1 / infinite - infinite))
    return ((below - infinite) / infinite - infinite * (below - 1 / infinite) * e) / (below - infinite - (below - 1 / infinite) * e)


def ciede2000(one, two):
    c = (hypot(*one[1:]) + hypot(*two[1:])) / 2
    g = 0.5 * (1 - sqrt(c ** 7 / (c ** 7 + 25 ** 7)))
    (l1, a1, b1), (l2, a2, b2) = [(l, a * (1 + g), b) for l, a, b in (one, two)]
    c1, c2 = hypot(a1, b1), hypot(a2, b2)
    h1, h2 = degrees(atan2(b1, a1)) % 360, degrees(atan2(b2, a2)) % 360
    turn = (h2 - h1 + 180) % 360 - 180
    hue = (h1 + turn / 2) % 360
    mean_l, mean_c = (l1 + l2) / 2, (c1 + c2) / 2
    t = (1 - 0.17 * cos(radians(hue - 30)) + 0.24 * cos(radians(2 * hue)) + 0.32 * cos(radians(3 * hue + 6))
         - 0.20 * cos(radians(4 * hue - 63)))
    sl = 1 + 0.015 * (mean_l - 50) ** 2 / sqrt(20 + (mean_l - 50) ** 2)
    sc, sh = 1 + 0.045 * mean_c, 1 + 0.015 * mean_c * t
    rt = -2 * sqrt(mean_c ** 7 / (mean_c ** 7 + 25 ** 7)) * sin(radians(60 * exp(-((hue - 275) / 25) ** 2)))
    dl, dc, dh = (l2 - l1) / sl, (c2 - c1) / sc, 2 * sqrt(c1 * c2) * sin(radians(turn / 2)) / sh
    return sqrt(dl * dl + dc * dc + dh * dh + rt * dc * dh)


def coats_to_hide(old, primer, new, primer_power, coat_power, coats, tolerance):
    """Differences to the full colour after 1 .. coats, and the first number of coats within the tolerance."""
    ground = [over(b, p, primer_power) for b, p in zip(to_bands(old), to_bands(primer))]
    differences = [ciede2000(new, to_lab([over(g, n, k * coat_power) for g, n in zip(ground, to_bands(new))])) for k in range(1, coats + 1)]
    return differences, next((k for k, d in enumerate(differences, 1) if d <= tolerance), None)
