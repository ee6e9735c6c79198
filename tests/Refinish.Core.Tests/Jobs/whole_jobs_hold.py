"""The given starts and people of a whole job, held against every wait, the gun, the crew and who stands by; and what follows from them."""
from collections import defaultdict

from whole_jobs_air import flammable_per_gram
from whole_jobs_inputs import CHEMICALS, GROUT_DRY, SANDABLE, SPOT_PRIMER_DRY
from whole_jobs_work import is_coat, rate

SHIFT, DAY = 9 * 60, 24 * 60
CLEAN_WITHIN, WET, WIPE_HOLDS = 30, 10, 240
WATCHED = ("lay-on-stripper", "strip", "promote", "coat", "broadcast")


class Times:
    """The given starts and people, and what follows from them: ends, days on site, waits kept."""

    def __init__(self, given, rooms):
        self.minutes = {op: m for room in rooms for op, m in room.minutes.items()}
        self.pieces, self.people = defaultdict(dict), defaultdict(list)
        for (op, piece, person), start in self.read(given):
            self.pieces[op][piece] = start
            if person != "-" and person not in self.people[op]:
                self.people[op].append(person)
        for op in list(self.pieces):
            if op.endswith("/stand-by"):
                self.minutes[op] = self.minutes[op[: -len("/stand-by")]]
        assert set(self.pieces) == set(self.minutes), set(self.pieces) ^ set(self.minutes)
        self.spans = {op: self.cut(op) for op in self.pieces}

    @staticmethod
    def read(given):
        for key, start in given.items():
            op, piece, person = key.split("/", 1)[1].rsplit("/", 2)
            yield (op, int(piece), person), start

    @staticmethod
    def starts_of(given):
        return {op: start for (op, piece, _), start in Times.read(given) if piece == 1}

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

    def unprotected(self, room):
        """Work in the room by people without supplied air."""
        return [op for op in room.minutes if self.people[op] and f"{op}/stand-by" not in self.spans and "/clean-gun/" not in op]

    def hold_people(self):
        """Nobody is in two places, and who stands by is another."""
        for op, spans in self.spans.items():
            for other, more in self.spans.items():
                if other != op and set(self.people[op]) & set(self.people[other]):
                    assert all(b <= c or d <= a for a, b in spans for c, d in more), (op, other)
            if op.endswith("/stand-by"):
                work = op[: -len("/stand-by")]
                assert spans == self.spans[work] and not set(self.people[op]) & set(self.people[work]), op

    def hold_gun(self, rooms):
        """One gun: one use at a time, and cleaned before another product and before a mix sets in it."""
        uses = sorted((op for op in self.spans if not op.endswith("/stand-by") and (is_coat(op) or "/clean-gun/" in op)), key=self.start)
        assert all(self.end(a) <= self.start(b) for a, b in zip(uses, uses[1:]))
        runs = {op: run for room in rooms for op, run in room.runs.items()}
        for op, after in zip(uses, uses[1:]):
            if op in runs and after in runs:
                assert runs[op].product is runs[after].product, after
                assert self.start(after) - self.start(op) <= runs[op].cup["pot"], after
        assert uses[-1] not in runs
        for run in runs.values():
            if run.clean:
                assert 0 <= self.start(run.clean) - self.end(run.op) <= CLEAN_WITHIN, run.op

    def hold(self, room):
        """Every wait of the room, on the given times."""
        for part in room.parts:
            for fixtures, suffix, chain in room.apart:
                whole = [op for op in room.before + chain + part.chain if "/clean-gun/" not in op]
                for op, after in zip(whole, whole[1:]):
                    assert self.start(after) >= self.end(op), after
                self.hold_preparation(room, fixtures, suffix, chain + part.chain)
            self.hold_coats(part)
        for f in room.fixtures:
            if "cold" in f:
                # The heat goes on once the fixture is cleared, and is done before filler or tacking.
                warm, chain = f"{f['id']}/warm", next(chain for fixtures, _, chain in room.apart if f in fixtures)
                needing = [op for op in chain if op.split("/")[1] in ("rust", "fill", "sand-filler")] + [f"{room.name}/tack"]
                assert self.end(f"{room.name}/clear") <= self.start(warm), warm
                assert self.end(warm) <= self.start(needing[0]), warm
        volume = room.data["box"][0]
        for op in room.minutes:
            filled = sum(grams * flammable_per_gram(solvents, volume) for _, grams, solvents in room.gives[op])
            watched = is_coat(op) or op.split("/")[1] in WATCHED and not op.endswith("/wipe-again") or filled >= 0.1
            assert watched == (f"{op}/stand-by" in self.spans), op

    def hold_preparation(self, room, fixtures, suffix, rest):
        name, chain = room.name, room.before + rest

        def has(kind):
            return any(d[0] == kind for f in fixtures for d in f.get("defects", []))

        for item, used in CHEMICALS.items():
            laid = f"{name}/{used['op']}"
            if used.get("dwell") and laid in chain:
                assert self.start(chain[chain.index(laid) + 1]) >= self.end(laid) + used["dwell"], laid
        if has("grout"):
            assert self.start(f"{name}/key{suffix}") >= self.end(f"{name}/regrout") + GROUT_DRY
        rust, fill = f"{name}/rust{suffix}", f"{name}/fill{suffix}"
        if has("rust"):
            assert self.start(chain[chain.index(rust) + 1]) >= self.end(rust) + SPOT_PRIMER_DRY
        sand = f"{name}/sand-filler{suffix}"
        if sand in chain:
            assert self.start(sand) >= self.end(fill if fill in chain else rust) + SANDABLE / rate(room.hardens_at(fixtures)) - 1e-6

    def hold_coats(self, part):
        runs = list(part.runs.values())
        for before, after in zip(runs, runs[1:]):
            assert self.start(after.op) - self.end(before.op) >= before.cure["opens"] - 1e-6, after.op
            first_stroke = self.end(before.op) - before.spray
            assert self.end(after.op) - first_stroke <= before.warm["closes"] + 1e-6, after.op
        first, last = runs[0], runs[-1]
        assert self.start(first.op) - self.end(part.wipe) >= part.promoter["flash"], part.wipe
        assert self.end(first.op) - self.end(part.wipe) <= part.promoter["open"], part.wipe
        keyed = min(self.end(f"{part.name}/key{suffix}") for _, suffix, _ in part.room.apart) // DAY
        if part.again:
            assert self.start(part.wipe) - self.end(part.again) <= WIPE_HOLDS
            keyed = self.end(part.again) // DAY
        assert keyed == self.start(first.op) // DAY, "a night, and nobody wiped again"
        for run in runs:
            grains = f"{part.name}/broadcast/{run.number}{part.suffix}"
            if grains in part.chain:
                assert self.start(grains) - self.end(run.op) <= WET
            finish = f"{part.name}/fit-trim{part.suffix}"
            finish = finish if finish in part.chain else f"{part.name}/caulk{part.suffix}"
            assert self.start(finish) >= self.end(run.op) + run.cure["water"] - 1e-6
        assert self.start(f"{part.name}/demask{part.suffix}") >= self.end(last.op) + last.cure["touch"] - 1e-6
