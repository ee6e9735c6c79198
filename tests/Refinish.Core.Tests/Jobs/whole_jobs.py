"""Three invented whole jobs from area to price, worked without the library from the formulas of the trade. Writes ../Tables/whole_jobs.csv.

Which operation starts when and by whom is a search and no formula: those rows of the table are "given" (minutes after the
start of the job), are read back from it, and are held against every wait, the gun, the crew, who stands by, and the air that
people without supplied air go back into. Everything else is computed. Python 3, standard library only:

    python3 whole_jobs.py
"""
from collections import defaultdict
from decimal import Decimal, ROUND_HALF_UP
from math import ceil, exp
from pathlib import Path

import whole_jobs_air as air
from whole_jobs_colour import coats_to_hide
from whole_jobs_hold import Times
from whole_jobs_inputs import CHEMICALS, COATS, FILM, JOBS, LANDED, MARK, PIECE, POT_SHARE, TE, THIN
from whole_jobs_work import Room, blend_density, cups, pert, voc

TABLE = Path(__file__).parent.parent / "Tables" / "whole_jobs.csv"
DAY, FILM_TAU, WIPE_TAU, MIXING = 24 * 60, 15.0, 2.0, 3.0
KITS = {"epoxy-primer": [(750, 44), (3000, 149)], "epoxy-reducer": [(500, 9)], "acrylic-urethane-topcoat": [(1250, 92), (5000, 318)],
        "urethane-reducer": [(500, 11)], "silane-promoter": [(250, 38)], "plastic-promoter": [(250, 34)], "epoxy-filler": [(200, 24)],
        "spot-primer": [(100, 13)], "stripper": [(1000, 29)], "silicone-remover": [(250, 16)], "grout": [(500, 7)],
        "descaler": [(1000, 9)], "degreaser": [(1000, 11)], "alcohol-wipe": [(1000, 8)]}
OPTIONS = {"slip-floor": (31, 85), "drain-trim": (42, None)}


def cents(x):
    """To the cent, halves away from zero; what is within the last digits of a half counts as one."""
    return Decimal(f"{x:.14g}" if isinstance(x, float) else x).quantize(Decimal("0.01"), ROUND_HALF_UP)


def thousandths(x):
    """Hours as a line shows them."""
    return Decimal(f"{x:.14g}").quantize(Decimal("0.001"), ROUND_HALF_UP)


def mix(rooms, times, out):
    """Cups in the order of time, each run using what the run before it of the same product left within its pot life."""
    runs, mixed = sorted((run for room in rooms for run in room.runs.values()), key=lambda run: times.start(run.op)), defaultdict(float)
    done = []
    for run in runs:
        until = POT_SHARE * run.cup["pot"]
        served = [d for d in done if d.product is run.product and times.end(run.op) - times.start(d.op) <= until]
        need, left = run.total * 1e6, served[-1].left if served else 0
        left = left if 1 < left < need else 0
        batches = cups(need - left, run.most)
        poured = sum(batches) * MARK
        run.left = poured - (need - left)
        out(f"cups/{run.op}", len(batches), "", "fewest of whole marks")
        out(f"mixed/{run.op}", poured, "mL", "marks × 5 mL, after leftovers")
        out(f"carried/{run.op}", left, "mL", "within 70 % of the pot life")
        product = run.product
        mixed[product["id"]] += poured / (1 + THIN) * 1e-6
        mixed[product["reducer"][0]] += poured * THIN / (1 + THIN) * 1e-6
        done.append(run)
    return mixed


def sources_of(room, times, out=None):
    """What evaporates in a room: start, minutes, grams, time constant, part that flashes; and of what."""
    sources, blends = [], []
    for op, given_off in room.gives.items():
        for item, grams, solvents in given_off:
            used = CHEMICALS.get(item, dict(tau=WIPE_TAU))
            if "dwell" in used:
                # What is taken off again gives off mass over time constant for as long as it lies; what has to be scraped off, until it is.
                off = times.end(f"{room.name}/{used['until']}") if "until" in used else times.end(op) + used["dwell"]
                lies = off - times.start(op)
                sources.append((times.start(op), lies, grams * lies / used["tau"], 1.0, 1.0))
            else:
                sources.append((times.start(op), times.minutes[op], grams, used["tau"], 0.0))
            blends.append(solvents)
    for run in room.runs.values():
        water = THIN * run.product["reducer"][1] * run.product["reducer"][2] / 998.15
        grams = run.gun * (1 - (run.product["vs"] + water) / (1 + THIN)) * blend_density(run.product["solvents"]) * 1e6
        if out:
            out(f"solvent/{run.op}", grams, "g", "what is neither solids nor the reducer's water, at the density of the blend")
        sources.append((times.end(run.op) - run.spray, run.spray, grams, FILM_TAU, 1 - TE + TE * LANDED))
        blends.append(run.product["solvents"])
    return sources, blends


def breathe(room, times, out):
    volume, moved = room.data["box"]
    sources, blends = sources_of(room, times, out)
    weights = [air.flammable_per_gram(blend, volume) for blend in blends]
    exposure = [air.exposure_per_gram(blend, volume) for blend in blends]
    changes = moved / MIXING / volume
    for op in times.unprotected(room):
        # Nobody without supplied air before the air is at a tenth of the flammable limit and at the eight-hour limits.
        for weight, line in ((weights, 0.1), (exposure, 1.0)):
            others = [(w, s) for w, s in zip(weight, sources) if s[0] < times.start(op)]
            assert sum(w * air.in_air(times.start(op), s, changes) for w, s in others) <= line + 1e-6, op
    out(f"peak of the flammable limit/{room.name}", air.peak(sources, weights, changes) * 100, "%", "box, sources added up over time")
    out(f"airflow for a quarter/{room.name}", air.flow_for(sources, weights, 0.25, volume, MIXING) * 60, "m³/h", "halving")
    steady = air.steady_flow_for(sources, weights, 0.25, volume, MIXING)
    out(f"steady airflow for a quarter/{room.name}", steady * 60, "m³/h", "K G / 25 %")


def kits(need, sizes):
    """Cost of the cheapest whole kits (mL) that hold the need, one or two sizes."""
    if len(sizes) == 1:
        return ceil(need / sizes[0][0] - 1e-9) * sizes[0][1]
    (small, low), (large, high) = sizes
    return min(n * high + max(0, ceil((need - n * large) / small - 1e-9)) * low for n in range(ceil(need / large - 1e-9) + 1))


def price(job, rooms, times, mixed, out):
    wages = job["wages"]
    by_line, exact = defaultdict(float), defaultdict(float)
    days = times.days()

    def hours(code, value, person, place=None):
        by_line[code, place, wages[person]] += value
        exact[code] += value

    for person, _ in days:
        hours(PIECE["travel"][0], pert(PIECE["travel"]), person)
    for room in rooms:
        for op, parts in room.hours.items():
            for code, value, place in parts:
                hours(code, value * job["difficulty"], times.people[op][0], place)
    paid = defaultdict(float)
    for op in times.spans:
        if op.endswith("/stand-by"):
            paid["stand-by", wages[times.people[op][0]]] += times.minutes[op] / 60
    for (person, _), (arrives, leaves, worked) in days.items():
        paid["waiting", wages[person]] += (leaves - arrives - worked) / 60
    for code, value in sorted(exact.items()):
        out(f"labour/{code}", value, "h", "mean of least, likely and most")
    for what in ("stand-by", "waiting"):
        out(what, sum(v for (w, _), v in paid.items() if w == what), "h", "given days on site less work")
    # Hours of a line are paid in thousandths.
    booked = [(thousandths(value), wage) for (*_, wage), value in list(by_line.items()) + list(paid.items()) if value > 0]
    labour = sum(cents(h * cents(Decimal(w or 26) * Decimal("1.3"))) for h, w in booked)
    out("labour", labour, "USD", "hours × wage × 1.3")
    needs = defaultdict(float, mixed)
    for room in rooms:
        for item, volume in room.needs.items():
            needs[item] += volume
    for item, volume in sorted(needs.items()):
        out(f"need/{item}", volume * 1e6, "mL", "sum over the job")
        out(f"kits/{item}", kits(volume * 1e6, KITS[item]), "USD", "cheapest whole kits")
    fixtures = [f for room in rooms for f in room.fixtures]
    trips = len({day for _, day in days})
    out("trips", trips, "", "days on site")
    options = [OPTIONS[o] for f in fixtures for o in f.get("options", [])]
    at_margin = sum(cost for cost, fixed in options if fixed is None)
    direct = labour + sum(kits(v * 1e6, KITS[i]) for i, v in needs.items()) + 34 * len(fixtures) + 28 * trips + 18 + at_margin
    reserve = cents((1 - exp(-((5 / 18) ** 2.2))) * 0.8 * 320) * len(fixtures)
    overhead = cents(sum(h for h, _ in booked) * 9)
    sold_apart = sum(fixed for _, fixed in options if fixed is not None)
    cost = direct + reserve + overhead + sum(c for c, fixed in options if fixed is not None)
    marked = cents((direct + reserve + overhead) / Decimal("0.62"))
    net = max(marked + sold_apart, Decimal(390))
    tax = cents(net * Decimal("0.07"))
    for key, value in (("warranty reserve", reserve), ("cost", cost), ("price at margin", marked + sold_apart), ("net", net), ("tax", tax),
        ("total", net + tax)):
        out(key, value, "USD", "in cents, halves away from zero")
    return net + tax


def yearly(cost, interest, years):
    return cost * interest / (1 - (1 + interest) ** -years)


def work(job, given, out):
    def put(key, value, unit, how):
        out(job["id"], key, value, unit, how)

    starts = Times.starts_of(given)
    rooms = [Room(name, data, job["difficulty"], starts, put) for name, data in job["rooms"].items()]
    times = Times(given, rooms)
    times.hold_people()
    times.hold_gun(rooms)
    for room in rooms:
        times.hold(room)
        breathe(room, times, put)
        for f in room.fixtures:
            if "colours" in f:
                power = FILM * 1e6 / 25.4
                differences, enough = coats_to_hide(*f["colours"], 2.3 * power, 3.5 * power, 3, 1.0)
                put(f"coats to hide/{f['id']}", enough, "", "Kubelka-Munk in three bands; CIEDE2000")
                for number, difference in enumerate(differences, 1):
                    put(f"difference after {number}/{f['id']}", difference, "ΔE00", "Kubelka-Munk in three bands; CIEDE2000")
    for product in COATS[:2]:
        put(f"voc/{product['id']}", voc(product, THIN), "g/L", "from the cans, less water")
    total = price(job, rooms, times, mix(rooms, times, put), put)
    ready = []
    for room in rooms:
        fixed = [times.end(op) + DAY for op in times.spans if op.startswith((f"{room.name}/caulk", f"{room.name}/fit-trim"))]
        ready.append(max(fixed + [times.end(run.op) + run.cure["water"] for run in room.runs.values()]))
        put(f"water/{room.name}", ready[-1], "min", "slowest of coating, caulk and trim")
    if "replace" in job:
        offer = job["replace"]
        out_of_use = ceil((max(ready) - min(times.start(op) for op in times.spans)) / DAY)
        put("refinishing a year", yearly(float(total) + out_of_use * offer["day"], offer["rate"], offer["refinish"]), "USD",
            "capital recovery")
        put("replacing a year", yearly(offer["parts"] + offer["days"] * offer["day"], offer["rate"], offer["life"]), "USD",
            "capital recovery")


def main():
    given, rows = defaultdict(dict), []
    for line in TABLE.read_text(encoding="utf-8").splitlines():
        if line.endswith(",given"):
            job, key, value, _, _ = line.split(",")
            given[job][key] = float(value)
            rows.append(line)

    def out(name, key, value, unit, how):
        rows.append(f"{name},{key},{float(value):.10g},{unit},{how.replace(',', ';')}")

    for job in JOBS:
        work(job, given[job["id"]], out)
    head = ["# Three invented whole jobs worked by Jobs/whole_jobs.py without the library; starts are given, everything else is computed.",
        "job,key,value,unit,how"]
    TABLE.write_text("\n".join(head + rows) + "\n", encoding="utf-8")


if __name__ == "__main__":
    main()
