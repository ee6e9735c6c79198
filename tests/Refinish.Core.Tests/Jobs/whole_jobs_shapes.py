"""Areas of the fixtures of whole_jobs.py, in square metres from inches, by adding up small flat pieces or by elementary formulas.

Nothing here is taken from the library: basins are meshed between two rounded rectangles, counters are polygons set in by their
edge profile.
"""
from math import pi, sin, cos, atan2, hypot, tan, sqrt

INCH2 = 0.0254 ** 2


def rounded_rectangle(length, width, radius, shift, n):
    """Points round a rounded rectangle, corner by corner, n to a corner; corresponding points of two such curves belong together."""
    points = []
    for cx, cy, from_angle in ((1, 1, 0), (-1, 1, 90), (-1, -1, 180), (1, -1, 270)):
        for i in range(n + 1):
            angle = (from_angle + 90 * i / n) * pi / 180
            points.append((shift + cx * (length / 2 - radius) + radius * cos(angle), cy * (width / 2 - radius) + radius * sin(angle)))
    return points


def triangle(a, b, c):
    u = [q - p for p, q in zip(a, b)]
    v = [q - p for p, q in zip(a, c)]
    n = (u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0])
    return sqrt(sum(x * x for x in n)) / 2


def polygon(points):
    return abs(sum(x1 * y2 - x2 * y1 for (x1, y1), (x2, y2) in zip(points, points[1:] + points[:1]))) / 2


def recessed_tub(t, n=400):
    """Ruled walls as strips of triangles, floor and mouth as polygons, the cove along the floor line, deck, apron, holes."""
    shift = (t["floor"][0] / 2 + t["head"]) - t["rim"][0] / 2
    bottom = rounded_rectangle(*t["floor"], 0, n)
    top = rounded_rectangle(*t["rim"], -shift, n)
    walls = cove = 0.0
    for i in range(len(top)):
        j = (i + 1) % len(top)
        a, b = (*bottom[i], 0), (*bottom[j], 0)
        c, d = (*top[j], t["depth"]), (*top[i], t["depth"])
        walls += triangle(a, b, c) / 2 + triangle(a, c, d) / 2 + triangle(a, b, d) / 2 + triangle(b, c, d) / 2
        line = hypot(b[0] - a[0], b[1] - a[1])
        if line > 0:
            out = ((b[1] - a[1]) / line, (a[0] - b[0]) / line)
            middle = [(c[k] + d[k] - a[k] - b[k]) / 2 for k in (0, 1)]
            steep = atan2(t["depth"], middle[0] * out[0] + middle[1] * out[1])
            cove -= line * t["cove"] * (2 * tan(steep / 2) - steep)
    length, width = t["overall"]
    deck = length * width - polygon(top)
    holes = pi / 4 * (t["drain"] ** 2 + t["overflow"] ** 2)
    whole = (walls + polygon(bottom) + cove + deck + length * t["apron"] - holes) * INCH2
    floor = (polygon(bottom) + cove / 2 - pi / 4 * t["drain"] ** 2) * INCH2
    return whole, floor


def tiled_walls(walls, tile, joint, recess, openings):
    flat = sum(w * h for w, h in walls) - sum(w * h for w, h in openings)
    module = (tile + joint) ** 2
    faces = module + 4 * tile * recess
    return flat * faces / module * INCH2


def bullnose_counter(a, b, depth, thick, splash, cap, holes):
    """An L: wall a along x, wall b down the right-hand end, all from the walls. Both outer ends open, the front a half round of the
    thickness, mitred; the splash stands on the top, cap thick."""
    r = thick / 2

    def outline(inset):
        x0, x1, y1 = inset, a - depth + inset, -b + inset
        return [(x0, 0), (x0, -depth + inset), (x1, -depth + inset), (x1, y1), (a, y1), (a, 0)]

    before = outline(r)[:4] + [(a - cap, -b + r), (a - cap, -cap)]
    top = polygon([(r, -cap)] + before[1:]) - sum(w * h for w, h in holes)
    edge, n = 0.0, 2000
    for k in range(n):
        angle = pi * (k + 0.5) / n
        p = outline(r * (1 - sin(angle)))
        line = sum(hypot(p[i + 1][0] - p[i][0], p[i + 1][1] - p[i][1]) for i in range(4))
        edge += line * pi * r / n
    back = (a + b - 2 * cap) * splash + polygon([(0, 0), (0, -cap), (a - cap, -cap), (a - cap, -b), (a, -b), (a, 0)]) + 2 * splash * cap
    return (top + edge + back) * INCH2


def vessel_cap(mouth, depth, wall, foot, drain):
    a = mouth / 2
    inside = pi * (a * a + depth * depth)
    outside = pi * ((a + wall) ** 2 + (depth + wall) ** 2)
    rim = pi * ((a + wall) ** 2 - a * a)
    return (inside + outside + rim - pi / 4 * (foot ** 2 + drain ** 2)) * INCH2
