"""For each room of a whole job the work, with its hours, its minutes on the clock, and its coats."""
from collections import defaultdict
from math import ceil, log, pi

from whole_jobs_inputs import (
    AREA, CHEMICALS, COATS, CUP, EACH, FILM, FOOT, GUN, HOSE, MARK, MIX, ORDER, PIECE, POT_SHARE, PRIMER, REPAIR, RESIDUE, SILANE,
    SMALLEST, TE, THIN, US_GALLON)


def pert(row):
    return (row[1] + 4 * row[2] + row[3]) / 6


def surface(op, area, count):
    """Hours by area and by fixture."""
    return (pert(AREA[op]) / 2.6 * area + pert((None, *EACH[op])) * count) / 60


def whole(minutes):
    return ceil(minutes - 1e-5)


def rate(celsius):
    return 2 ** ((celsius - 25) / 10)


def hollow(defect):
    """Millilitres: a cap of a sphere; a disc ground or cut out with 12 mm (rust, 0.3 mm deep) or 5 mm (burn, 1 mm deep) of margin."""
    kind, size = defect[0], defect[1] if len(defect) > 1 else 0
    if "chip" in kind:
        return pi * defect[2] * (3 * (size / 2) ** 2 + defect[2] ** 2) / 6 / 1000
    return {"rust": pi * (size / 2 + 12) ** 2 * 0.3, "burn": pi * (size / 2 + 5) ** 2 * 1.0}.get(kind, 0) / 1000


def needs_for(defect, area):
    """Litres of what a defect takes beside filler."""
    yard = {"rust": ("spot-primer", lambda: 5e-6 + pi * ((defect[1] / 2 + 12) / 1000) ** 2 / (150 * FOOT ** 2) * US_GALLON),
            "strip": ("stripper", lambda: area / (100 / 1.5 * FOOT ** 2) * US_GALLON),
            "silicone": ("silicone-remover", lambda: 20e-6 + defect[1] * 0.01 / 200), "grout": ("grout",
                lambda: 30e-6 + defect[1] * 0.01 / 400)}
    return [(yard[defect[0]][0], yard[defect[0]][1]())] if defect[0] in yard else []


class Room:
    """One room of a job: what is done in it, in order, with hours by labour standard and minutes on the clock.

    Fixtures with new grout are abraded and filled apart, since the grout dries for a day; from the last dust on the room goes together.
    """

    def __init__(self, name, data, difficulty, starts, out):
        self.name, self.data, self.k, self.starts, self.out = name, data, difficulty, starts, out
        self.fixtures = sorted(data["fixtures"], key=lambda f: f["id"])
        for f in self.fixtures:
            f["m2"] = f["area"]()
            out(f"area/{f['id']}", f["m2"], "m²", "mesh or elementary")
        # gives: what evaporates in an operation, as item, grams of solvent, solvents.
        self.minutes, self.hours, self.runs, self.needs, self.gives = {}, {}, {}, defaultdict(float), defaultdict(list)
        self.fill()
        self.before, self.parts = [], []
        self.prepare(self.fixtures, ORDER[: ORDER.index("key")], "", self.before)
        self.warm()
        grouted = [f for f in self.fixtures if any(d[0] == "grout" for d in f.get("defects", []))]
        others = [f for f in self.fixtures if f not in grouted]
        self.apart = []
        for fixtures in (others, grouted):
            if fixtures:
                suffix, chain = f"/{fixtures[0]['id']}" if fixtures is grouted and others else "", []
                self.prepare(fixtures, ORDER[ORDER.index("key"): ORDER.index("tack")], suffix, chain)
                self.apart.append((fixtures, suffix, chain))
        self.parts.append(Part(self, self.fixtures, ""))

    def warm(self):
        """On arrival; it goes on by itself."""
        for f in self.fixtures:
            cold = f.get("cold")
            if cold:
                tau = cold["rho"] * cold["wall"] * cold["c"] / 9 / 60
                minutes = tau * log((self.data["air"] - cold["at"]) / (self.data["air"] - cold["to"]))
                self.out(f"warming/{f['id']}", minutes, "min", "lumped; 9 W/(m² K)")
                self.minutes[f"{f['id']}/warm"] = whole(minutes)

    def hardens_at(self, fixtures):
        """Filler hardens at the colder of the room and the fixture as it was warmed."""
        return min([self.data["surface"]] + [f["cold"]["to"] for f in fixtures if "cold" in f])

    def place(self, _):
        """Hours are booked on the room, but for repairs."""
        return self.name

    def add(self, op, parts, chain, place):
        """parts: (standard, hours), or with the place of each. The clock gets whole minutes at the difficulty of the premises."""
        op = f"{self.name}/{op}"
        hours = sum(part[1] for part in parts) * self.k
        self.minutes[op] = whole(hours * 60)
        self.hours[op] = [(part[0], part[1] * self.minutes[op] / 60 / hours, part[2] if len(part) > 2 else place) for part in parts]
        chain.append(op)
        return op

    def fill(self):
        filler = sum(hollow(d) for f in self.fixtures for d in f.get("defects", [])) * 1.25 / (1 - 0.02) / (1 - 0.15)
        if filler:
            self.out(f"filler/{self.name}", filler, "mL", "a quarter over, 2 % shrinkage, 15 % waste")
            self.needs["epoxy-filler"] += filler * 1e-6

    def use(self, op, item, litres):
        """A chemical of the preparation: bought, and its solvent in the air."""
        self.needs[item] += litres
        used = CHEMICALS.get(item, dict(part=0))
        if used["part"]:
            self.gives[op].append((item, litres * 1e6 * used["density"] * used["part"], [(used["solvent"], 1.0)]))

    def prepare(self, fixtures, kinds, suffix, chain):
        defects = [(d, f) for f in fixtures for d in f.get("defects", [])]
        repairs = {"remove-silicone": ["silicone"], "strip": ["strip"], "regrout": ["grout"], "rust": ["rust"],
                   "fill": ["chip", "large chip", "burn"]}
        items = {"remove-silicone": "silicone", "lay-on-stripper": "strip", "regrout": "grout", "rust": "rust"}
        units = {"silicone": lambda d, f: d[1], "grout": lambda d, f: d[1], "strip": lambda d, f: f["m2"]}
        if kinds[0] == "clear":
            self.add("set-up", [(PIECE["set-up"][0], pert(PIECE["set-up"]))], chain, self.place(self.fixtures))
        for kind in kinds:
            op, on = kind + suffix, fixtures
            if kind == "lay-on-stripper":
                on = [f for f in fixtures if ("strip",) in f.get("defects", [])]
            elif kind == "sand-filler":
                on = [f for f in fixtures if any(hollow(d) for d in f.get("defects", []))]
            if kind in repairs:
                parts = [(REPAIR[d[0]][0], pert(REPAIR[d[0]]) * units.get(d[0], lambda *_: 1)(d, f), f["id"]) for d, f in defects
                         if d[0] in repairs[kind]]
            elif kind in AREA:
                parts = [(AREA[kind][0], surface(kind, sum(f["m2"] for f in on), len(on)))] if on else []
            else:
                parts = [(PIECE[kind][0], pert(PIECE[kind]) * len(on))] if on else []
            if not parts:
                continue
            full = self.add(op, parts, chain, self.place(on) if on else self.name)
            for d, f in defects:
                for item, litres in needs_for(d, f["m2"]):
                    if items.get(kind) == d[0]:
                        self.use(full, item, litres)
            for f in fixtures:
                # Acid only on enamel, china and glazed tile, which are the surfaces of the silane too.
                if kind == "descale" and f["promoter"] is SILANE:
                    self.use(full, "descaler", f["m2"] / 5000)
                if kind == "degrease":
                    self.use(full, "degreaser", f["m2"] / 5000)
                if kind == "tack":
                    self.use(full, "alcohol-wipe", f["m2"] / 30000)


class Part:
    """Fixtures of a room that go through together from the last dust on; one promoter and one system in each of these jobs."""

    def __init__(self, room, fixtures, suffix):
        self.room, self.fixtures, self.suffix, self.name = room, fixtures, suffix, room.name
        self.area = sum(f["m2"] for f in fixtures)
        self.promoter = fixtures[0]["promoter"]
        self.has = lambda kind: any(d[0] == kind for f in fixtures for d in f.get("defects", []))
        self.surface = room.hardens_at(fixtures)
        self.chain, self.runs = [], {}
        room.prepare(fixtures, ORDER[ORDER.index("tack"):], suffix, self.chain)
        self.wipe_again()
        self.promote()
        self.coat()
        self.finish()

    def add(self, op, kind, place, times=1):
        return self.room.add(op, [(PIECE[kind][0], pert(PIECE[kind]) * times)], self.chain, place)

    def spread(self, op, kind):
        return self.room.add(op, [(AREA[kind][0], surface(kind, self.area, len(self.fixtures)))], self.chain, self.room.place(self.fixtures))

    def wipe_again(self):
        # Whether a night came between is for the times to show; they hold that it is there when one did.
        op = f"{self.coat_id(1)}/wipe-again"
        self.again = self.spread(op, "wipe-again") if f"{self.name}/{op}" in self.room.starts else None

    def promote(self):
        op = f"promote/{self.promoter['id']}"
        self.wipe = self.spread(op + (self.suffix if f"{self.name}/{op}" in self.room.minutes else ""), "promote")
        litres = self.area / self.promoter["rate"]
        self.room.needs[self.promoter["id"]] += litres
        self.room.gives[self.wipe].append((self.promoter["id"], litres * blend_density(self.promoter["solvents"]) * 1e6,
                                           self.promoter["solvents"]))

    def coat_id(self, number):
        """Coats of one product and number in both parts of a room are told apart by a fixture."""
        alone = len(self.fixtures) == len(self.room.fixtures)
        return f"coat/{number}/{COATS[number - 1]['id']}" + ("" if alone else f"/{self.fixtures[0]['id']}")

    def coat(self):
        for number, product in enumerate(COATS, 1):
            full = f"{self.name}/{self.coat_id(number)}"
            run = Run(self, number, product, full)
            self.runs[full] = self.room.runs[full] = run
            self.chain.append(full)
            grained = [f for f in self.fixtures if f.get("grains") == number]
            if grained:
                self.add(f"broadcast/{number}{self.suffix}", "broadcast", self.room.place(grained))
            clean = f"clean-gun/{number}{self.suffix}"
            if number == len(COATS) or COATS[number] is not product or f"{self.name}/{clean}" in self.room.starts:
                run.clean = self.add(clean, "clean-gun", None)

    def finish(self):
        for kind in ("demask", "fit-trim", "caulk", "inspect"):
            on = [f for f in self.fixtures if kind != "fit-trim" or "drain-trim" in f.get("options", [])]
            if on:
                self.add(kind + self.suffix, kind, self.room.place(on), len(on))


class Run:
    """One coat: film and each loss, cups, time at the gun and on the clock."""

    def __init__(self, part, number, product, full):
        room, out = part.room, part.room.out
        air = room.data["air"]
        self.op, self.number, self.product, self.clean = full, number, product, None
        self.cure = {k: v / rate(part.surface) for k, v in product["cure"].items()}
        self.cup = {k: v / rate(air) for k, v in product["cure"].items()}
        self.warm = {k: v / rate(max(part.surface, air)) for k, v in product["cure"].items()}
        goes_on = number > 1 and COATS[number - 2] is product and self.cure["opens"] <= self.cup["pot"] * POT_SHARE
        self.film = part.area * FILM * (1 + THIN) / product["vs"]
        self.gun = self.film / TE
        self.hose = 0 if goes_on and not emptied(full, room.starts) else HOSE
        self.total = (self.gun + self.hose) / (1 - RESIDUE)
        self.spray = self.gun / GUN
        self.most = min(CUP, MARK * int((POT_SHARE * self.cup["pot"] - self.cup["induction"] - MIX) * GUN * 1e6 / MARK))
        clock = self.cup["induction"] + MIX * len(cups(self.total * 1e6, self.most)) + self.spray
        name = "primer" if product is PRIMER else "topcoat"
        self.minutes = whole(max(clock, surface(name, part.area, len(part.fixtures)) * room.k * 60))
        room.hours[full] = [(AREA[name][0], self.minutes / 60 / room.k, room.place(part.fixtures))]
        room.minutes[full] = self.minutes
        clings = self.total - self.gun - self.hose
        for key, value in (("film", self.film), ("overspray", self.gun - self.film), ("hose", self.hose), ("clings", clings),
                           ("to mix", self.total)):
            out(f"{key}/{full}", value * 1e6, "mL", "area × film × (1 + R) / VS and each loss")
        out(f"wet film/{full}", FILM * (1 + THIN) / product["vs"] * 1e6, "µm", "DFT (1 + R) / VS")
        out(f"spraying/{full}", self.spray, "min", "volume over mean rate")
        out(f"clock/{full}", self.minutes, "min", "rounded up")
        for key, value in (("touch dry", self.cure["touch"]), ("recoat opens", self.cure["opens"]), ("recoat closes", self.warm["closes"]),
                           ("water", self.cure["water"])):
            out(f"{key}/{full}", value / 60, "h", "doubling for ten kelvins")
        if product["nco"]:
            density = sum(v * rho for v, rho, _ in product["parts"]) / sum(v for v, _, _ in product["parts"])
            mist = 0.1 * (1 - TE) * self.gun / (1 + THIN) * density * product["nco"] / (self.spray * room.data["box"][1] / 3)
            out(f"mist/{full}", mist * 1e6, "mg/m³", "a tenth of the overspray in the air, box at steady state")


def emptied(op, starts):
    """Whether the one gun of the shop was cleaned since the coat before went through it, in whatever room."""
    before = max((t for o, t in starts.items() if is_coat(o) and t < starts[op]), default=None)
    return before is None or any("/clean-gun/" in o and before < t < starts[op] for o, t in starts.items())


def is_coat(op):
    return "/coat/" in op and not op.endswith(("/stand-by", "/wipe-again"))


def blend_density(solvents):
    return 1 / sum(share / density for (_, density, *_), share in solvents)


def cups(need, most):
    """Fewest cups of whole marks that hold the need (mL), at least the smallest that is measured well; as even as marks allow."""
    marks = max(ceil(need / MARK - 1e-9), SMALLEST // MARK)
    number = ceil(marks * MARK / most)
    return [marks // number + (1 if i < marks % number else 0) for i in range(number)]


def voc(product, thin):
    volume = sum(v for v, _, _ in product["parts"])
    volatile = sum(v / volume * rho * (1 - solids) for v, rho, solids in product["parts"]) + thin * product["reducer"][1]
    water = thin * product["reducer"][1] * product["reducer"][2]
    return (volatile - water) / (1 + thin - water / 998.15)
