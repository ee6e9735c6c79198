"""Invented estimates worked without the library, in decimals and whole minor units. Writes ../Tables/money_by_hand.csv.

The rules, in their order:
  cost of a line      quantity x rate, rounded once; the rate of labour is wage x (1 + burden), rounded once
  marked-up cost      direct cost of the lines without a fixed price + overhead + warranty reserve
  price at margin     marked-up cost / (1 - margin), rounded, + fixed prices; to hold a margin: the least whole amount of net price
                      that leaves it over the whole cost, then the subtotal from which the discount leaves that net price
  subtotal            the price at margin or the minimum charge, whichever is more
  discount            share x subtotal, rounded, or the amount; cut so that the minimum charge is left, unless it may go below
  price of a line     fixed, or its part of (subtotal - fixed prices) in proportion to cost
  tax                 the discount is divided over the priced lines in proportion to price; then rate x the sum of the net prices
                      that the rate applies to, rounded; or rate x each net price, rounded
  payable             the total, rounded to the cash step
Every rounding is to the minor unit, halves away from zero. Dividing is in whole minor units: each line gets the whole part, the units
that are left go to the largest remainders, the earlier line first among equals. Lines stand in the order labour, paid time, materials,
consumables, travel, waste, options, extras.

Overhead by the hour is on worked and on otherwise paid hours. Hours, wages, prices, shares, which categories are taxed, and the county
are invented. Rates that are real:
  Japan, consumption tax 10 % (7.8 % national and 2.2 % local) since 1 October 2019: second-hand, read in tax newsletters
  Switzerland, value added tax, normal rate 8.1 % since 1 January 2024: Federal Tax Administration, page "VAT rates Switzerland"
  Germany, value added tax, 19 % and 7 %: UStG section 12 (1) and (2), second-hand, read in commentaries; what is taxed at 7 % here is
    invented
  Massachusetts, sales tax 6.25 % of the price of tangible personal property: Department of Revenue, Sales and Use Tax guide;
    that state has no county tax: the county's 1.75 % is invented
Rounding of tax once for each rate, on the sum: EN 16931-1, rule BR-CO-17. Python 3, standard library only:

    python3 money_by_hand.py
"""
from decimal import ROUND_CEILING, ROUND_HALF_UP, Decimal
from fractions import Fraction
from pathlib import Path

TABLE = Path(__file__).parent.parent / "Tables" / "money_by_hand.csv"
D = Decimal


class Case:
    """One estimate: its lines as (item, category, unit, quantity, rate, fixed price of the line or None), then what is asked of it."""

    def __init__(self, name, decimals, lines, *, margin, overhead=(), warranty="0", minimum="0", share=None, amount=None, undercut=False,
                 taxes=(), per_line=False, exempt=(), cash="0", hold=False):
        self.name, self.unit = name, D(1).scaleb(-decimals)
        self.lines = [(i, c, u, D(q), D(r), None if f is None else D(f)) for i, c, u, q, r, f in lines]
        self.margin, self.overhead = D(margin), [(i, u, D(q), D(r)) for i, u, q, r in overhead]
        self.warranty, self.minimum, self.share = D(warranty), D(minimum), None if share is None else D(share)
        self.amount, self.undercut = None if amount is None else D(amount), undercut
        self.taxes, self.per_line, self.exempt = [(c, D(r), on) for c, r, on in taxes], per_line, exempt
        self.cash, self.hold, self.ties = D(cash), hold, 0

    def round(self, value):
        return (value / self.unit).quantize(D(1), ROUND_HALF_UP) * self.unit

    def divide(self, amount, weights):
        """Whole minor units in proportion, largest remainders first."""
        units, whole = int(amount / self.unit), sum(Fraction(w) for w in weights)
        exact = [Fraction(w) * units / whole for w in weights]
        parts = [e.numerator // e.denominator for e in exact]
        rest = [e - p for e, p in zip(exact, parts)]
        order = sorted(range(len(parts)), key=lambda i: (-rest[i], i))
        left = units - sum(parts)
        if 0 < left < len(order) and rest[order[left - 1]] == rest[order[left]]:
            self.ties += 1
        for i in order[:left]:
            parts[i] += 1
        return [p * self.unit for p in parts]

    def discount(self, subtotal):
        wanted = self.round(subtotal * self.share) if self.share is not None else self.amount or D(0)
        return wanted if self.undercut else min(wanted, max(D(0), subtotal - self.minimum))

    def held(self, cost):
        """The subtotal from which the discount leaves the least net price with the margin; only one does, or this stops."""
        net = (cost / (1 - self.margin) / self.unit).quantize(D(1), ROUND_CEILING) * self.unit
        near = self.round(net / (1 - self.share)) - 5 * self.unit
        fits = [s for s in (near + k * self.unit for k in range(11)) if s - self.round(s * self.share) == net]
        assert len(fits) == 1 and (net - self.unit - cost) / (net - self.unit) < self.margin <= (net - cost) / net, (self.name, fits)
        return fits[0]

    def rows(self):
        line_cost = [self.round(q * r) for _, _, _, q, r, _ in self.lines]
        over_cost = [self.round(q * r) for _, _, q, r in self.overhead]
        fixed = sum((f for *_, f in self.lines if f is not None), D(0))
        carried = [c for c, (*_, f) in zip(line_cost, self.lines) if f is None]
        extra = sum(over_cost, D(0)) + self.warranty
        cost = sum(line_cost, D(0)) + extra
        at_margin = self.held(cost) if self.hold else self.round((sum(carried, D(0)) + extra) / (1 - self.margin)) + fixed
        subtotal = max(at_margin, self.minimum)
        shares = iter(self.divide(subtotal - fixed, carried))
        price = [next(shares) if f is None else f for *_, f in self.lines]
        discount = self.discount(subtotal)
        net = [p - d for p, d in zip(price, self.divide(discount, price))]
        for (item, category, unit, quantity, rate, _), c, p in zip(self.lines, line_cost, price):
            yield item, category, unit, quantity, rate, c, p, "+".join(code for code, _, on in self.taxes if category in on)
        for (item, unit, quantity, rate), c in zip(self.overhead, over_cost):
            yield item, "Overhead", unit, quantity, rate, c, D(0)
        if self.warranty:
            yield "warranty", "Warranty", "", "", "", self.warranty, D(0)
        if discount:
            yield "discount", "Discount", "", "", "", D(0), -discount
        results, tax = [], D(0)
        for code, rate, categories in self.taxes:
            bases = [n for n, (_, category, *_) in zip(net, self.lines) if category in categories and n]
            taxed = sum(bases, D(0))
            if code in self.exempt:
                results += [("taxed " + code, taxed), ("tax " + code, D(0)), ("exempt " + code, D(1))]
                continue
            amounts = [self.round(b * rate) for b in bases] if self.per_line else [self.round(taxed * rate)]
            for base, charged in zip(bases if self.per_line else [taxed], amounts):
                yield "tax/" + code, "Tax", "Money", base, rate, D(0), charged
            results += [("taxed " + code, taxed), ("tax " + code, sum(amounts))]
            tax += sum(amounts)
        whole = subtotal - discount
        total = whole + tax
        payable = total if not self.cash else (total / self.cash).quantize(D(1), ROUND_HALF_UP) * self.cash
        assert sum(net) == whole
        for name, value in [("cost", cost)] + ([] if self.hold else [("price at margin", at_margin)]) + [
                ("subtotal", subtotal), ("discount given", discount), ("net", whole), *results, ("tax", tax), ("total", total),
                ("payable", payable), ("profit", whole - cost)]:
            yield "= " + name, "", "", "", "", "", value


SOLD = ("Labour", "Material", "Consumables", "Equipment", "Subcontract", "Travel", "Waste", "Option", "Allowance")
GOODS = ("Material", "Option")
REDUCED = ("Waste", "Allowance")

# Wage 1850.5 x 1.15 = 2128.075, a rate of 2128 an hour.
YEN = Case("yen", 0, [
    ("labour/H-10", "Labour", "Hour", "1.75", "2128", None),
    ("labour/H-20", "Labour", "Hour", "2.5", "2128", None),
    ("labour/H-30", "Labour", "Hour", "0.4", "2128", None),
    ("material/primer/750", "Material", "Kit", "2", "6480", None),
    ("material/topcoat/1000", "Material", "Kit", "3", "2450.5", None),
    ("consumables", "Consumables", "Fixture", "1", "3300", None),
    ("travel", "Travel", "Trip", "2", "1500", None),
    ("waste", "Waste", "Job", "1", "800", None),
    ("option/slip-floor", "Option", "Each", "1", "4200", "12000"),
], margin="0.40", overhead=[("overhead/hours", "Hour", "4.65", "350")], taxes=[("consumption", "0.10", SOLD)])

# Wage 4.2505 x 1.08 = 4.59054, a rate of 4.591 an hour. Two lines of labour cost the same to the fils.
DINAR = Case("dinar", 3, [
    ("labour/H-10", "Labour", "Hour", "1.25", "4.591", None),
    ("labour/H-20", "Labour", "Hour", "3.3", "4.591", None),
    ("labour/H-30", "Labour", "Hour", "1.25", "4.591", None),
    ("paid-time/waiting", "Labour", "Hour", "0.75", "4.591", None),
    ("material/primer/750", "Material", "Kit", "1", "9.875", None),
    ("material/topcoat/1000", "Material", "Kit", "2", "14.2505", None),
    ("consumables", "Consumables", "Fixture", "2", "3.125", None),
    ("travel", "Travel", "Trip", "3", "2.500", None),
    ("waste", "Waste", "Job", "1", "1.250", None),
    ("extra/plumber", "Subcontract", "Job", "1", "18.750", None),
    ("extra/hidden-rust", "Allowance", "Hour", "2.5", "4.591", "17.500"),
], margin="0.35", warranty="1.925", amount="5.250", cash="0.005")

# Wage 38.45 x 1.16 = 44.602, a rate of 44.60 an hour; Bea's 41.30 x 1.16 = 47.908, a rate of 47.91.
FRANC = Case("franc", 2, [
    ("labour/H-10", "Labour", "Hour", "1.5", "44.60", None),
    ("labour/H-20", "Labour", "Hour", "2.75", "47.91", None),
    ("material/primer/750", "Material", "Kit", "1", "62.35", None),
    ("material/topcoat/1000", "Material", "Kit", "2", "88.905", None),
    ("consumables", "Consumables", "Fixture", "1", "27.50", None),
    ("travel", "Travel", "Trip", "2", "35", None),
    ("waste", "Waste", "Job", "1", "18.20", None),
    ("option/slip-floor", "Option", "Each", "1", "14.80", "95"),
    ("option/drain-trim", "Option", "Each", "2", "21.475", None),
], margin="0.42", overhead=[("overhead/hours", "Hour", "4.25", "9.90")], taxes=[("vat", "0.081", SOLD)], cash="0.05")


def us(name, exempt=()):
    """Wage 32 x 1.22 = 39.04 an hour. Sales tax on materials and options."""
    return Case(name, 2, [
        ("labour/H-10", "Labour", "Hour", "1.1", "39.04", None),
        ("labour/H-20", "Labour", "Hour", "3.35", "39.04", None),
        ("paid-time/waiting", "Labour", "Hour", "0.5", "39.04", None),
        ("material/primer/750", "Material", "Kit", "1", "52.35", None),
        ("material/topcoat/1000", "Material", "Kit", "2", "78.99", None),
        ("consumables", "Consumables", "Fixture", "1", "35", None),
        ("travel", "Travel", "Trip", "2", "25", None),
        ("waste", "Waste", "Job", "1", "10", None),
        ("option/slip-floor", "Option", "Each", "1", "6", "75"),
        ("option/drain-trim", "Option", "Each", "1", "40.25", None),
        ("extra/scaffold", "Equipment", "Day", "2", "18.75", None),
        ("extra/plumber", "Subcontract", "Job", "1", "140", "165"),
    ], margin="0.45", overhead=[("overhead/hours", "Hour", "4.95", "6.50")], share="0.075",
        taxes=[("state", "0.0625", GOODS), ("county", "0.0175", GOODS)], exempt=exempt)


def euro(name, per_line):
    """Wage 21.50 x 1.21 = 26.015, a rate of 26.02 an hour."""
    return Case(name, 2, [
        ("labour/H-10", "Labour", "Hour", "1.2", "26.02", None),
        ("labour/H-20", "Labour", "Hour", "2.9", "26.02", None),
        ("labour/H-30", "Labour", "Hour", "0.85", "26.02", None),
        ("material/primer/750", "Material", "Kit", "1", "44.90", None),
        ("material/topcoat/1000", "Material", "Kit", "1", "92.15", None),
        ("consumables", "Consumables", "Fixture", "1", "23.40", None),
        ("travel", "Travel", "Trip", "1", "31.70", None),
        ("waste", "Waste", "Job", "1", "12.60", None),
        ("option/slip-floor", "Option", "Each", "1", "9.85", "69.90"),
        ("extra/plumber", "Subcontract", "Job", "1", "110.35", None),
        ("extra/hidden-rust", "Allowance", "Job", "1", "40", "55.55"),
    ], margin="0.38", amount="18.25", per_line=per_line,
        taxes=[("standard", "0.19", tuple(c for c in SOLD if c not in REDUCED)), ("reduced", "0.07", REDUCED)])


def small(name, minimum, undercut):
    """Wage 30 x 1.22 = 36.60 an hour; a chip, for which the minimum charge decides, or the discount would go below it."""
    return Case(name, 2, [
        ("labour/H-10", "Labour", "Hour", "0.7", "36.60", None),
        ("material/filler/200", "Material", "Kit", "1", "24.15", None),
        ("consumables", "Consumables", "Fixture", "1", "8.50", None),
        ("travel", "Travel", "Trip", "1", "25", None),
        ("waste", "Waste", "Job", "1", "2.75", None),
    ], margin="0.45", overhead=[("overhead/cost", "Money", "86.02", "0.05")], minimum=minimum, amount="30", undercut=undercut,
        taxes=[("sales", "0.0725", ("Material",))])


HELD = Case("held", 2, [
    ("labour/H-10", "Labour", "Hour", "1.1", "39.04", None),
    ("labour/H-20", "Labour", "Hour", "2.65", "39.04", None),
    ("material/primer/750", "Material", "Kit", "1", "52.35", None),
    ("material/topcoat/1000", "Material", "Kit", "1", "78.99", None),
    ("consumables", "Consumables", "Fixture", "1", "35", None),
    ("travel", "Travel", "Trip", "2", "25", None),
    ("waste", "Waste", "Job", "1", "10", None),
    ("option/slip-floor", "Option", "Each", "1", "6", "75"),
], margin="0.45", warranty="11.40", share="0.12", hold=True, taxes=[("sales", "0.0725", GOODS)])

# Marked up by 1.25, most lines end in half a cent: what is left goes by the order of lines alone.
HALVES = Case("halves", 2, [
    ("labour/H-10", "Labour", "Hour", "2", "38.71", None),
    ("labour/H-20", "Labour", "Hour", "3.1", "38.71", None),
    ("material/primer/750", "Material", "Kit", "2", "38.73", None),
    ("material/topcoat/1000", "Material", "Kit", "1", "72.10", None),
    ("consumables", "Consumables", "Fixture", "2", "7.57", None),
    ("travel", "Travel", "Trip", "2", "24.05", None),
    ("waste", "Waste", "Job", "1", "8.58", None),
    ("option/drain-trim", "Option", "Each", "1", "41.26", None),
    ("extra/plumber", "Subcontract", "Job", "1", "90.02", None),
], margin="0.20")

CASES = [YEN, DINAR, FRANC, us("us"), us("us exempt", ("state", "county")), us("us county exempt", ("county",)), euro("euro sum", False),
         euro("euro lines", True), small("minimum kept", "195", False), small("minimum undercut", "195", True),
         small("minimum near", "140", False), HELD, HALVES]


def text(value):
    return f"{value:f}" if isinstance(value, Decimal) else value


def main():
    with TABLE.open("w", newline="\n") as out:
        out.write("# Invented estimates, worked without the library by ../Estimating/money_by_hand.py, which says the rules.\n"
                  "# A row is a line (quantity x rate = cost; price is its part of what the customer pays), or, after \"=\", a result.\n"
                  "# The taxes are those of the category, whether the customer pays them or not.\n"
                  "case,row,category,unit,quantity,rate,cost,price,taxes\n")
        for case in CASES:
            for item, category, unit, quantity, rate, cost, price, *taxed_by in case.rows():
                amounts = [text(a if a == "" or item.startswith("= exempt") else a.quantize(case.unit)) for a in (cost, price)]
                out.write(",".join([case.name, item, category, unit, text(quantity), text(rate), *amounts, *(taxed_by or [""])]) + "\n")
            print(case.name, "- equal remainders that the order of lines settles:", case.ties)


if __name__ == "__main__":
    main()
