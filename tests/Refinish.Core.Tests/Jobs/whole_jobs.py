"""Three invented whole jobs from area to price, worked without the library from the formulas of the trade. Writes ../Tables/whole_jobs.csv.

Which operation starts when and by whom is a search and no formula: those rows of the table are "given" (minutes after the
start of the job), are read back from it, and are held here against every wait. Everything else is computed. Python 3, standard library only:

    python3 whole_jobs.py
"""
from collections import defaultdict
from decimal import Decimal, ROUND_HALF_UP
from math import ceil, exp
from pathlib import Path

import whole_jobs_air as air
from whole_jobs_colour import coats_to_hide
from whole_jobs_work import (
    CHEMICALS, COATS, FILM, JOBS, LANDED, MARK, ORDER, PIECE, POT_SHARE, TE, THIN, Room, cups, pert, rate, voc, whole)

TABLE = Path(__file__).parent.parent / "Tables" / "whole_jobs.csv"
SHIFT, DAY, FILM_TAU, WIPE_TAU, MIXING = 9 * 60, 24 * 60, 15.0, 2.0, 3.0
KITS = {"epoxy-primer": [(750, 44), (3000, 149)], "epoxy-reducer": [(500, 9)], "acrylic-urethane-topcoat": [(1250, 92), (5000, 318)],
        "urethane-reducer": [(500, 11)], "silane-promoter": [(250, 38)], "plastic-promoter": [(250, 34)], "epoxy-filler": [(200, 24)],
        "spot-primer": [(100, 13)], "stripper": [(1000, 29)], "silicone-remover": [(250, 16)], "grout": [(500, 7)],
        "descaler": [(1000, 9)], "degreaser": [(1000, 11)], "alcohol-wipe": [(1000, 8)]}
OPTIONS = {"slip-floor": (31, 85), "drain-trim": (42, None)}


def cents(x):
    """To the cent, halves away from zero; what is within the last digits of a half counts as one."""
    return Decimal(f"{x:.14g}" if isinstance(x, float) else x).quantize(Decimal("0.01"), ROUND_HALF_UP)


class Times:
    """The given starts and people, and what follows from them: ends, days on site, waits kept."""

    def __init__(self, given, rooms):
        self.minutes = {op: m for room in rooms for op, m in room.minutes.items()}
        self.pieces = defaultdict(dict)
        self.people = defaultdict(list)
        for key, start in given.items():
            op, piece, person = key.split("/", 1)[1].rsplit("/", 2)
            self.pieces[op][int(piece)] = start
            if person != "-" and person not in self.people[op]:
                self.people[op].append(person)
        for op in list(self.pieces):
            if op.endswith("/stand-by"):
                self.minutes[op] = self.minutes[op[: -len("/stand-by")]]
        assert set(self.pieces) == set(self.minutes), set(self.pieces) ^ set(self.minutes)
        self.spans = {op: self.cut(op) for op in self.pieces}

    def cut(self, op):
        """Pieces of an operation; each but the last goes on to the end of its shift."""
        left, spans = self.minutes[op], []
        for _, start in sorted(self.pieces[op].items()):
            long = left if not self.people[op] else min(left, SHIFT - start % DAY)
            spans.append((start, start + long))
            left -= long
        assert abs(left) < 1e-9, op
        return spans

    def start(self, op):
        return self.spans[op][0][0]

    def end(self, op):
        return self.spans[op][-1][1]

    def days(self):
        """Arrival, leaving and minutes worked by person and day."""
        turns = defaultdict(list)
        for op, spans in self.spans.items():
            for person in self.people[op]:
                for a, b in spans:
                    turns[person, int(a // DAY)].append((a, b))
        return {key: (min(a for a, _ in t), max(b for _, b in t), sum(b - a for a, b in t)) for key, t in turns.items()}

    def hold(self, room):
        """Every wait of the room, on the given times."""
        name = room.name
        for before, after in zip(list(room.runs.values()), list(room.runs.values())[1:]):
            gap = self.start(after["op"]) - self.end(before["op"])
            assert gap >= before["cure"]["opens"] - 1e-6, after["op"]
            first_stroke = self.end(before["op"]) - before["spray"]
            assert self.end(after["op"]) - first_stroke <= before["warm"]["closes"] + 1e-6, after["op"]
        first = next(iter(room.runs))
        wiped = self.start(first) - self.end(room.wipe)
        assert wiped >= room.promoter["flash"] and self.end(first) - self.end(room.wipe) <= room.promoter["open"], name
        last = list(room.runs.values())[-1]
        assert self.start(f"{name}/demask") >= self.end(last["op"]) + last["cure"]["touch"] - 1e-6
        for item, used in CHEMICALS.items():
            if item in room.needs and used.get("dwell"):
                assert self.start(f"{name}/{ORDER[ORDER.index(used['op']) + 1]}") >= self.end(f"{name}/{used['op']}") + used["dwell"]
        if room.filler:
            hard = 90 / rate(room.data["surface"])
            assert self.start(f"{name}/sand-filler") >= self.end(f"{name}/fill") + hard - 1e-6
        for run in room.runs.values():
            assert self.start(f"{name}/caulk") >= self.end(run["op"]) + run["cure"]["water"] - 1e-6


def mix(rooms, times, out):
    """Cups in the order of time, each run using what the run before it of the same product left within its pot life."""
    runs, mixed = sorted((run for room in rooms for run in room.runs.values()), key=lambda run: times.start(run["op"])), defaultdict(float)
    done = []
    for run in runs:
        until = POT_SHARE * run["cup"]["pot"]
        served = [d for d in done if d["product"] is run["product"] and times.end(run["op"]) - times.start(d["op"]) <= until]
        need, left = run["total"] * 1e6, served[-1]["left"] if served else 0
        left = left if 1 < left < need else 0
        batches = cups(need - left, run["most"])
        poured = sum(batches) * MARK
        run["left"] = poured - (need - left)
        out(f"cups/{run['op']}", len(batches), "", "fewest of whole marks")
        out(f"mixed/{run['op']}", poured, "mL", "marks × 5 mL, after leftovers")
        out(f"carried/{run['op']}", left, "mL", "within 70 % of the pot life")
        product = run["product"]
        mixed[product["id"]] += poured / (1 + THIN) * 1e-6
        mixed[product["reducer"][0]] += poured * THIN / (1 + THIN) * 1e-6
        done.append(run)
    return mixed


def breathe(room, times, out):
    volume, moved = room.data["box"]
    wiped = room.area / room.promoter["rate"] * air.blend_density(room.promoter["solvents"]) * 1e6
    sources = [(times.start(room.wipe), times.minutes[room.wipe], wiped, WIPE_TAU, 0.0)]
    blends = [room.promoter["solvents"]]
    for item, used in CHEMICALS.items():
        if item in room.needs and used["part"]:
            op, grams = f"{room.name}/{used['op']}", room.needs[item] * 1e6 * used["density"] * used["part"]
            lies = times.end(op) - times.start(op) + used["dwell"] if "dwell" in used else None
            # What is taken off again gives off mass over time constant while it lies; a wipe all of it, by its film.
            sources.append((times.start(op), times.minutes[op], grams, used["tau"], 0.0) if lies is None
                           else (times.start(op), lies, grams * lies / used["tau"], 1.0, 1.0))
            blends.append([(used["solvent"], 1.0)])
    for run in room.runs.values():
        product = run["product"]
        grams = run["gun"] * (1 - product["vs"] / (1 + THIN)) * air.blend_density(product["solvents"]) * 1e6
        out(f"solvent/{run['op']}", grams, "g", "what is no solids, at the density of the blend")
        sources.append((times.end(run["op"]) - run["spray"], run["spray"], grams, FILM_TAU, 1 - TE + TE * LANDED))
        blends.append(product["solvents"])
    weights = [air.flammable_per_gram(blend, volume) for blend in blends]
    out(f"peak of the flammable limit/{room.name}", air.peak(sources, weights, moved / MIXING / volume) * 100, "%",
        "box, sources added up over time")
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

    def hours(code, value, person):
        by_line[code, person if wages[person] else None] += value
        exact[code] += value

    for person, _ in days:
        hours(PIECE["travel"][0], pert(PIECE["travel"]), person)
    for room in rooms:
        for op, parts in room.hours.items():
            for code, value in parts:
                hours(code, value * job["difficulty"], times.people[op][0])
    paid = defaultdict(float)
    for op in times.spans:
        if op.endswith("/stand-by"):
            paid["stand-by", times.people[op][0] if wages[times.people[op][0]] else None] += times.minutes[op] / 60
    for (person, _), (arrives, leaves, worked) in days.items():
        paid["waiting", person if wages[person] else None] += (leaves - arrives - worked) / 60
    for code, value in sorted(exact.items()):
        out(f"labour/{code}", value, "h", "mean of least, likely and most")
    for what in ("stand-by", "waiting"):
        out(what, sum(v for (w, _), v in paid.items() if w == what), "h", "given days on site less work")
    booked = [(cents(value), person) for (_, person), value in list(by_line.items()) + list(paid.items()) if value > 0]
    labour = sum(cents(h * cents(Decimal(wages[p] if p else 26) * Decimal("1.3"))) for h, p in booked)
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

    rooms = [Room(name, data, job["difficulty"], put) for name, data in job["rooms"].items()]
    times = Times(given, rooms)
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
        caulk = times.end(f"{room.name}/caulk") + DAY
        trim = times.end(f"{room.name}/fit-trim") + DAY if f"{room.name}/fit-trim" in times.spans else caulk
        coats = max(times.end(run["op"]) + run["cure"]["water"] for run in room.runs.values())
        ready.append(max(caulk, trim, coats))
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
