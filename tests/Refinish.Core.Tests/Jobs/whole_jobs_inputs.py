"""Inputs of the three whole jobs: those of InventedJobs.cs; products, hours and waits are the library's invented generic ones, typed in
again.
"""
from whole_jobs_shapes import bullnose_counter, recessed_tub, tiled_walls, vessel_cap

US_GALLON, FOOT = 3.785411784e-3, 0.3048

# Solvents: g/mol, g/mL, lower flammable limit as a volume share, lowest of the eight-hour limits known in ppm (29 CFR 1910.1000 Table Z-1,
# Directive 2000/39/EC, TRGS 900, MAK 2015).
XYLENE, PMA, MEK = (106.17, 0.864, 0.009, 100), (132.16, 0.968, 0.015, 50), (72.11, 0.805, 0.014, 200)
BUAC, IPA = (116.16, 0.882, 0.017, 150), (60.10, 0.785, 0.020, 400)
LIMONENE, BENZYL = (136.23, 0.842, 0.007, 5), (108.14, 1.045, 0.0099, 5)

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

# Chemicals of the preparation: g/mL, part that is solvent, minutes of time constant, minutes after the work until it is taken off, and the
# work that takes it off, during which what is left goes on evaporating.
CHEMICALS = {
    "silicone-remover": dict(op="remove-silicone", density=0.86, part=0.90, solvent=LIMONENE, tau=240, dwell=30),
    "stripper": dict(op="lay-on-stripper", until="strip", density=1.05, part=0.45, solvent=BENZYL, tau=2880, dwell=240),
    "descaler": dict(op="descale", part=0),
    "degreaser": dict(op="degrease", part=0),
    "alcohol-wipe": dict(op="tack", density=0.93, part=0.35, solvent=IPA, tau=2),
}

# Minutes of one person, least, likely, most: for each fixture and for a tub of 2.6 m²; or per piece. Repairs in hours per unit of the
# defect.
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
ORDER = ["clear", "remove-silicone", "lay-on-stripper", "strip", "descale", "degrease", "regrout", "key", "rust", "fill", "sand-filler",
         "tack", "mask"]
GROUT_DRY, SPOT_PRIMER_DRY, SANDABLE = 24 * 60, 30, 90  # minutes; filler at 25 °C

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
