"""Inputs of the three whole jobs, and for each room the work with its hours, its minutes on the clock, and its coats.

The inputs are those of InventedJobs.cs; products, hours and prices are the library's invented generic ones, typed in again.
"""
from collections import defaultdict
from math import ceil, log, pi

from whole_jobs_shapes import bullnose_counter, recessed_tub, tiled_walls, vessel_cap

US_GALLON, FOOT = 3.785411784e-3, 0.3048

# Solvents: g/mol, g/mL, lower flammable limit as a volume share.
XYLENE, PMA, MEK = (106.17, 0.864, 0.009), (132.16, 0.968, 0.015), (72.11, 0.805, 0.014)
BUAC, IPA = (116.16, 0.882, 0.017), (60.10, 0.785, 0.020)
LIMONENE, BENZYL = (136.23, 0.842, 0.007), (108.14, 1.045, 0.0099)

PRIMER = dict(
    id="epoxy-primer", vs=0.45, parts=[(2, 1400, 0.668), (1, 980, 0.472)], reducer=("epoxy-reducer", 860, 0.0), cure=dict(
        induction=15, pot=240, touch=45, opens=60, closes=1440, water=1440), solvents=[(XYLENE, 0.35), (PMA, 0.35), (MEK, 0.30)], nco=0.0)
TOPCOAT = dict(
    id="acrylic-urethane-topcoat", vs=0.48, parts=[(4, 1200, 0.573), (1, 1050, 0.75)], reducer=("urethane-reducer", 880, 0.0005), cure=dict(
        induction=0, pot=150, touch=60, opens=20, closes=960, water=1440), solvents=[(BUAC, 0.60), (XYLENE, 0.25), (PMA, 0.15)], nco=0.135)
COATS = [PRIMER, TOPCOAT, TOPCOAT, TOPCOAT]
FILM, THIN, TE, LANDED, RESIDUE, HOSE = 30e-6, 0.10, 0.60, 0.25, 0.08, 15e-6
GUN = 160e-6 * 0.45  # m³ a minute with the trigger pulled 45 % of the time
CUP, MARK, SMALLEST, MIX, POT_SHARE = 600, 5, 50, 5, 0.7
SILANE = dict(id="silane-promoter", rate=100e3, flash=15, open=120, solvents=[(IPA, 1.0)])
PLASTIC = dict(id="plastic-promoter", rate=60e3, flash=10, open=60, solvents=[(XYLENE, 0.60), (BUAC, 0.40)])

# Chemicals of the preparation: g/mL, part that is solvent, minutes of time constant, minutes after the work until it is taken off.
CHEMICALS = {
    "silicone-remover": dict(op="remove-silicone", density=0.86, part=0.90, solvent=LIMONENE, tau=240, dwell=0),
    "stripper": dict(op="lay-on-stripper", density=1.05, part=0.45, solvent=BENZYL, tau=2880, dwell=240),
    "descaler": dict(op="descale", part=0),
    "degreaser": dict(op="degrease", part=0),
    "alcohol-wipe": dict(op="tack", density=0.93, part=0.35, solvent=IPA, tau=2),
}

# Minutes of one person, least, likely, most: for each fixture and for a tub of 2.6 m²; or per piece. Repairs in hours per unit of the defect.
EACH = {"descale": (3, 4, 6), "degrease": (4, 5, 7), "key": (12, 15, 25), "tack": (4, 5, 6), "promote": (3, 3, 4), "primer": (4, 5, 6),
        "topcoat": (3, 4, 5), "lay-on-stripper": (4, 5, 6), "wipe-again": (2, 3, 4)}
AREA = {"descale": ("L-22", 6, 8, 14), "degrease": ("L-20", 11, 13, 20), "key": ("L-21", 20, 27, 50), "tack": ("L-40", 8, 10, 14),
        "promote": ("L-41", 3, 3, 4), "primer": ("L-50", 5, 6, 8), "topcoat": ("L-51", 4, 5, 7),
        "lay-on-stripper": ("L-23", 8, 10, 18), "wipe-again": ("L-24", 4, 6, 8)}
PIECE = {"travel": ("L-01", 45, 60, 120), "set-up": ("L-10", 20, 27, 45), "clear": ("L-11", 12, 18, 35), "mask": ("L-12", 12, 18, 30),
         "sand-filler": ("L-30", 10, 15, 20), "broadcast": ("L-52", 3, 6, 9), "clean-gun": ("L-53", 6, 9, 15),
         "demask": ("L-60", 10, 15, 20), "fit-trim": ("L-62", 12, 18, 30), "caulk": ("L-61", 15, 20, 30), "inspect": ("L-63", 6, 10, 15)}
PIECE = {k: (v[0], *(m / 60 for m in v[1:])) for k, v in PIECE.items()}
REPAIR = {"chip": ("L-31", .06, .08, .15), "large chip": ("L-44", .1, .15, .3), "rust": ("L-33", .2, .25, .4), "strip": ("L-35", .4, .54,
    .9),
          "silicone": ("L-36", .07, .1, .2), "grout": ("L-37", .1, .15, .3), "burn": ("L-39", .15, .25, .4)}
ORDER = ["clear", "remove-silicone", "strip", "descale", "degrease", "regrout", "key", "rust", "fill", "sand-filler", "tack", "mask"]

TUB = dict(rim=(53, 23.5, 6), floor=(44, 19.5, 5), depth=13.25, head=7, cove=2.5, overall=(60, 30), apron=14.5, drain=2, overflow=3)
BATH = (8 * FOOT) * (5 * FOOT) * (8 * FOOT), 1000 * FOOT ** 3 * 0.6  # m³; m³ a minute really moved
REPLACE = dict(parts=5200, days=9, life=20, refinish=11, rate=0.04, day=40)
JOBS = [
    dict(id="occupied", difficulty=1.15, wages={"first": None, "second": None}, replace=REPLACE, rooms=dict(bath=dict(box=BATH, air=22,
        surface=20, fixtures=[
        dict(id="tub", area=lambda: recessed_tub(TUB)[0], promoter=SILANE, options=["slip-floor", "drain-trim"], grains=3,
             defects=[("chip", 18, 1.2), ("large chip", 30, 2), ("rust", 20), ("silicone", 2.4)])]))),
    dict(id="cold", difficulty=1.0, wages={"ada": 32, "ben": 24}, rooms=dict(bath=dict(box=BATH, air=24, surface=20, fixtures=[
        dict(id="tub", area=lambda: recessed_tub(TUB)[0], promoter=SILANE, defects=[("strip",)], cold=dict(at=12, to=16, wall=6e-3,
            rho=7200, c=530),
             colours=((62, -12, 24), (84, -0.5, 1), (94, -0.5, 2))),
        dict(id="surround", area=lambda: tiled_walls([(30, 60), (60, 60), (30, 60)], 4.25, .125, .0625, [(6, 4)]), promoter=SILANE,
             defects=[("grout", 1.2)])]))),
    dict(id="rental", difficulty=1.0, wages={"first": None, "second": None}, replace=REPLACE, rooms=dict(
        kitchen=dict(box=(30.0, 2400 * 0.6 / 60), air=21, surface=21, fixtures=[
            dict(id="counter", area=lambda: bullnose_counter(96, 72, 25.5, 1.5, 4, .75, [(32, 21)]), promoter=PLASTIC, defects=[("burn",
                20)])]),
        bath=dict(box=BATH, air=23, surface=19, fixtures=[
            dict(id="vessel", area=lambda: vessel_cap(16, 5.5, .5, 3, 1.75), promoter=SILANE, defects=[("chip", 10, 1.0)])]))),
]


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
                lambda: 30e-6 + defect[1] * 0.01 / 100)}
    return [(yard[defect[0]][0], yard[defect[0]][1]())] if defect[0] in yard else []


class Room:
    """One room of a job: what is done in it, in order, with hours by labour standard and minutes on the clock."""

    def __init__(self, name, data, difficulty, out):
        self.name, self.data, self.k, self.out = name, data, difficulty, out
        self.fixtures = data["fixtures"]
        for f in self.fixtures:
            f["m2"] = f["area"]()
            out(f"area/{f['id']}", f["m2"], "m²", "mesh or elementary")
        self.area = sum(f["m2"] for f in self.fixtures)
        self.minutes, self.hours, self.runs, self.needs = {}, {}, {}, defaultdict(float)
        self.warm()
        self.prepare()
        self.coat()
        self.finish()

    def warm(self):
        self.surface = self.data["surface"]
        for f in self.fixtures:
            cold = f.get("cold")
            if cold:
                tau = cold["rho"] * cold["wall"] * cold["c"] / 9 / 60
                minutes = tau * log((self.data["air"] - cold["at"]) / (self.data["air"] - cold["to"]))
                self.out(f"warming/{f['id']}", minutes, "min", "lumped; 9 W/(m² K)")
                self.minutes[f"{f['id']}/warm"] = whole(minutes)
                self.surface = min(self.surface, cold["to"])

    def add(self, op, parts):
        """parts: (standard, hours). The clock gets whole minutes at the difficulty of the premises."""
        op = f"{self.name}/{op}"
        self.minutes[op] = whole(sum(h for _, h in parts) * self.k * 60)
        paid = self.minutes[op] / (sum(h for _, h in parts) * self.k * 60)
        self.hours[op] = [(code, h * paid) for code, h in parts]
        return op

    def prepare(self):
        defects = [(d, f) for f in self.fixtures for d in f.get("defects", [])]
        count = len(self.fixtures)
        filler = sum(hollow(d) for d, _ in defects) * 1.25 / (1 - 0.02) / (1 - 0.15)
        self.filler = filler * 1e-6
        if filler:
            self.out(f"filler/{self.name}", filler, "mL", "a quarter over, 2 % shrinkage, 15 % waste")
            self.needs["epoxy-filler"] += self.filler
        for d, f in defects:
            for item, volume in needs_for(d, f["m2"]):
                self.needs[item] += volume
        for f in self.fixtures:
            # Acid only on enamel, china and glazed tile, which are the surfaces of the silane too.
            if f["promoter"] is SILANE:
                self.needs["descaler"] += f["m2"] / 5000
            self.needs["degreaser"] += f["m2"] / 5000
            self.needs["alcohol-wipe"] += f["m2"] / 30000
        units = {"silicone": lambda d, f: d[1], "grout": lambda d, f: d[1], "strip": lambda d, f: f["m2"]}
        kinds = {"remove-silicone": ["silicone"], "strip": ["strip"], "regrout": ["grout"], "rust": ["rust"], "fill": ["chip",
            "large chip", "burn"]}
        self.add("set-up", [(PIECE["set-up"][0], pert(PIECE["set-up"]))])
        for op in ORDER:
            if op in kinds:
                parts = [(REPAIR[d[0]][0], pert(REPAIR[d[0]]) * units.get(d[0], lambda *_: 1)(d, f)) for d, f in defects
                    if d[0] in kinds[op]]
                if parts:
                    self.add(op, parts)
            elif op in AREA:
                self.add(op, [(AREA[op][0], surface(op, self.area, count))])
            elif op != "sand-filler" or filler:
                n = sum(any(hollow(d) for d in f.get("defects", [])) for f in self.fixtures) if op == "sand-filler" else count
                self.add(op, [(PIECE[op][0], pert(PIECE[op]) * n)])
        promoter = self.fixtures[0]["promoter"]
        self.wipe = self.add(f"promote/{promoter['id']}", [(AREA["promote"][0], surface("promote", self.area, count))])
        self.needs[promoter["id"]] += self.area / promoter["rate"]
        self.promoter = promoter

    def coat(self):
        for number, product in enumerate(COATS, 1):
            op = f"coat/{number}/{product['id']}"
            cure = {k: v / rate(self.surface) for k, v in product["cure"].items()}
            cup = {k: v / rate(self.data["air"]) for k, v in product["cure"].items()}
            again = number > 1 and COATS[number - 2] is product and cure["opens"] <= cup["pot"] * POT_SHARE
            film = self.area * FILM * (1 + THIN) / product["vs"]
            gun = film / TE
            hose = 0 if again else HOSE
            total = (gun + hose) / (1 - RESIDUE)
            spray = gun / GUN
            most = min(CUP, MARK * int((POT_SHARE * cup["pot"] - cup["induction"] - MIX) * GUN * 1e6 / MARK))
            clock = cup["induction"] + MIX * len(cups(total * 1e6, most)) + spray
            name = "primer" if product is PRIMER else "topcoat"
            labour = surface(name, self.area, len(self.fixtures))
            minutes = whole(max(clock, labour * self.k * 60))
            full = f"{self.name}/{op}"
            self.hours[full] = [(AREA[name][0], minutes / 60 / self.k)]
            self.minutes[full] = minutes
            run = dict(number=number, product=product, film=film, gun=gun, total=total, spray=spray, most=most, cure=cure, cup=cup, op=full,
                       warm={k: v / rate(max(self.surface, self.data["air"])) for k, v in product["cure"].items()})
            self.runs[full] = run
            for key, value in (("film", film), ("overspray", gun - film), ("hose", hose), ("clings", total - gun - hose), ("to mix",
                total)):
                self.out(f"{key}/{full}", value * 1e6, "mL", "area × film × (1 + R) / VS and each loss")
            self.out(f"wet film/{full}", FILM * (1 + THIN) / product["vs"] * 1e6, "µm", "DFT (1 + R) / VS")
            self.out(f"spraying/{full}", spray, "min", "volume over mean rate")
            self.out(f"clock/{full}", minutes, "min", "rounded up")
            for key, value in (("touch dry", cure["touch"]), ("recoat opens", cure["opens"]), ("recoat closes", run["warm"]["closes"]),
                ("water", cure["water"])):
                self.out(f"{key}/{full}", value / 60, "h", "doubling for ten kelvins")
            if product["nco"]:
                density = sum(v * rho for v, rho, _ in product["parts"]) / sum(v for v, _, _ in product["parts"])
                mist = 0.1 * (1 - TE) * gun / (1 + THIN) * density * product["nco"] / (spray * self.data["box"][1] / 3)
                self.out(f"mist/{full}", mist * 1e6, "mg/m³", "a tenth of the overspray in the air, box at steady state")
            if number in [f.get("grains") for f in self.fixtures]:
                self.add(f"broadcast/{number}", [(PIECE["broadcast"][0], pert(PIECE["broadcast"]))])
            if number == len(COATS) or COATS[number] is not product:
                self.add(f"clean-gun/{number}", [(PIECE["clean-gun"][0], pert(PIECE["clean-gun"]))])

    def finish(self):
        for op in ("demask", "fit-trim", "caulk", "inspect"):
            n = sum("drain-trim" in f.get("options", []) for f in self.fixtures) if op == "fit-trim" else len(self.fixtures)
            if n:
                self.add(op, [(PIECE[op][0], pert(PIECE[op]) * n)])


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
