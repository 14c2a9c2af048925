"""Works out figures of the demonstration circle from its CSV files, independently of the project's own code: plain Python, the whole
matrix of coancestries, exact binomial limits by bisection over whole-number sums.

    python3 tests/scenario/expected-figures.py FOLDER CROPS.json LOT [LOT ...] > tests/scenario/expected-figures.json

Formulas: coancestry of a group from the contributions of its parents (Cockerham 1967, Genetics 56:89-104; Lindgren & Mullin 1998,
Can. J. For. Res. 28:276-283); Ne = 1/(kappa (1 + F)); limits of a share by Clopper & Pearson 1934, Biometrika 26:404-413.
"""
import csv, json, sys
from fractions import Fraction
from math import comb

folder, crops_file, *wanted = sys.argv[1:]


def rows(name):
    with open(f"{folder}/{name}", newline="", encoding="utf-8") as file:
        return list(csv.DictReader(file))


crops = {crop["key"]: crop for crop in json.load(open(crops_file))}
crop_of = {row["variety"]: crops[row["crop"]] for row in rows("varieties.csv")}
grow_outs = {row["grow_out"]: row for row in rows("grow_outs.csv")}
lots = {row["lot"]: row for row in rows("lots.csv")}
plants = {}
for row in rows("plants.csv"):
    if row["kept"] == "yes" and row["seed_grams"] != "":
        plants.setdefault(row["grow_out"], []).append(float(row["seed_grams"]))


def number(text, default=None):
    return default if text == "" else float(text)


def usual_selfing(crop):
    if crop["matingSystem"] not in ("selfing", "mixed"):
        return 0.0
    return 1 - (crop["outcrossingPctMin"] + crop["outcrossingPctMax"]) / 200


def shares(text):
    parts = [part.split(":") for part in text.split(";")]
    if len(parts) == 1:
        return [(parts[0][0], 1.0)]
    total = sum(float(share) for _, share in parts)
    return [(lot, float(share) / total) for lot, share in parts]


def chances(row, crop):
    """P_MM, P_MF, P_FF, selfing, whether a plant may father its own seed; None where a count is missing."""
    dioecious = crop["matingSystem"] == "dioecious"
    own_pollen = not dioecious and not (crop["selfIncompatible"] or "").startswith("yes")
    pollen = number(row["males_standing"]) if dioecious else number(row["plants_standing"])
    mothers = number(row["seed_parents"])
    if pollen is None or mothers is None or row["seed_shares"] == "":
        return None
    if not dioecious:
        pollen -= number(row["rogued_before_pollen"], 0)
    if row["seed_shares"] == "plants":
        seed = plants[row["grow_out"]]
        pmm = sum((grams / sum(seed)) ** 2 for grams in seed)
    else:
        variation = 0 if row["seed_shares"] == "equal" else float(row["seed_shares"].split()[1])
        pmm = (1 + variation**2) / mothers
    only_spread = row["seed_shares"].startswith("cv") and float(row["seed_shares"].split()[1]) > 0
    if dioecious:
        return pmm, 0.0, 1 / pollen, 0.0, False
    if own_pollen:
        return pmm, 1 / pollen, 1 / pollen, number(row["selfing_rate"], usual_selfing(crop)), True
    if only_spread:
        return pmm, 1 / pollen, 1 / pollen, 0.0, False
    return pmm, (1 - pmm) / (pollen - 1), (pollen - 2 + pmm) / (pollen - 1) ** 2, 0.0, False


class Unknown(Exception):
    pass


order, nodes = [], {}
# one matrix each for: identical, identical and native, both native
theta = [{}, {}, {}]


def between(kind, a, b):
    return theta[kind][(a, b)]


def enter(name, own, with_others):
    """own: three diagonal values; with_others: for each kind a function of an earlier node."""
    for kind in range(3):
        for other in order:
            value = with_others[kind](other)
            theta[kind][(name, other)] = theta[kind][(other, name)] = value
        theta[kind][(name, name)] = own[kind]
    order.append(name)


def pooled(parents, kind, other):
    return sum(share * between(kind, lot, other) for lot, share in parents)


def inside(parents, kind):
    return sum(u * v * between(kind, a, b) for a, u in parents for b, v in parents)


def mean(parents, field):
    return sum(share * nodes[lot][field] for lot, share in parents)


def node(name):
    if name in nodes:
        if nodes[name] is None:
            raise Unknown
        return nodes[name]
    row = lots.get(name)
    if row is None:
        return grown(name)
    crop = crop_of[row["variety"]]
    if crop["matingSystem"] == "clonal":
        nodes[name] = None
        raise Unknown
    if row["kind"] == "founder":
        s = usual_selfing(crop)
        f = number(row["inbreeding"], s / (2 - s))
        nodes[name] = {"f": f, "fn": f, "kf": 1.0, "n": 1.0, "g": 0.0, "founders": {name}}
        # two founders: unrelated, but both native
        enter(name, [0.0, 0.0, 1.0], [lambda o: 0.0, lambda o: 0.0, lambda o: nodes[o]["n"]])
        return nodes[name]
    parents = [(row["from"], 1.0)] if row["kind"] in ("harvest", "split") else shares(row["from"])
    founders = set().union(*(node(lot)["founders"] for lot, _ in parents))
    own = [inside(parents, kind) for kind in range(3)]
    rest = [lambda o, kind=kind: pooled(parents, kind, o) for kind in range(3)]
    nodes[name] = {field: mean(parents, field) for field in ("f", "fn", "kf", "n", "g")} | {"founders": founders}
    enter(name, own, rest)
    return nodes[name]


def grown(name):
    row = grow_outs[name]
    crop = crop_of[row["variety"]]
    parents = shares(row["parents"])
    founders = set().union(*(node(lot)["founders"] for lot, _ in parents))
    chance = chances(row, crop)
    if chance is None:
        nodes[name] = None
        raise Unknown
    pmm, pmf, pff, s, own_pollen = chance
    m = number(row["foreign_pollen"], 0.0)
    u = (1 - s) * (1 - m)
    passing = (1 + s + u) / 2
    n, f, fn, kf = (mean(parents, field) for field in ("n", "f", "fn", "kf"))
    selfs = [(1 + f) / 2, (n + fn) / 2, (n + kf) / 2]
    own, inner = [], []
    for kind in range(3):
        within = inside(parents, kind)
        g = lambda p: p * selfs[kind] + (1 - p) * within
        own.append(((1 + s) ** 2 * g(pmm) + 2 * u * (1 + s) * g(pmf) + u * u * g(pff)) / 4)
        inner.append(s * selfs[kind] + u * (g(pmf) if own_pollen else within))
    rest = [lambda o, kind=kind: passing * pooled(parents, kind, o) for kind in range(3)]
    kappa = ((1 + s) ** 2 * pmm + 2 * (1 - s * s) * pmf + (1 - s) ** 2 * pff) / 4
    nodes[name] = {
        "f": inner[0],
        "fn": inner[1],
        "kf": inner[2],
        "n": passing * n,
        "g": 1 + mean(parents, "g"),
        "founders": founders,
        "size": 1 / (kappa * (1 + f)),
    }
    enter(name, own, rest)
    return nodes[name]


# ------------------------------------------------------------------------------------------------ ledger and tests
MONTH = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31]


def span(text):
    text = text.rstrip("~?%")
    if text.startswith("["):
        a, b = text[1:-1].split("..")
        return span(a)[0], span(b)[1]
    if "/" in text:
        a, b = text.split("/")
        return span(a)[0], span(b)[1]
    if text.endswith("X"):
        return text[:3] + "0-01-01", text[:3] + "9-12-31"
    if len(text) == 4:
        return text + "-01-01", text + "-12-31"
    if len(text) == 7:
        year, month = int(text[:4]), int(text[5:])
        leap = month == 2 and year % 4 == 0 and (year % 100 != 0 or year % 400 == 0)
        return text + "-01", f"{text}-{MONTH[month - 1] + leap:02d}"
    return text, text


def grams_of(lot):
    entries = []
    for place, row in enumerate(rows("ledger.csv")):
        if row["lot"] == lot:
            comes = row["kind"] in ("received", "harvested", "blended-in")
            entries.append((span(row["date"])[0 if comes else 1], place, row["kind"], Fraction(row["grams"]), comes))
    if not entries:
        return None
    held = Fraction(0)
    for _, _, kind, grams, comes in sorted(entries):
        held = grams if kind == "weighed" else held + (grams if comes else -grams)
    return float(held)


def at_most(k, n, p):
    """P(X <= k) for whole numbers of a Fraction p, exactly."""
    return sum(comb(n, i) * p**i * (1 - p) ** (n - i) for i in range(k + 1))


def solve(goal):
    low, high = Fraction(0), Fraction(1)
    for _ in range(60):
        middle = (low + high) / 2
        if goal(middle):
            low = middle
        else:
            high = middle
    return float((low + high) / 2)


def last_test(lot):
    tests = {}
    for row in rows("tests.csv"):
        if row["lot"] == lot:
            test = tests.setdefault(row["test"], {"date": row["date"], "sown": {}, "normal": 0})
            test["sown"][row["replicate"]] = int(row["sown"])
            test["normal"] += int(row["normal"])
    if not tests:
        return None
    name, test = max(enumerate(tests.items()), key=lambda each: (span(each[1][1]["date"])[0], each[0]))[1]
    k, n, tail = test["normal"], sum(test["sown"].values()), Fraction(1, 40)
    low = 0.0 if k == 0 else solve(lambda p: 1 - at_most(k - 1, n, p) < tail)
    high = 1.0 if k == n else solve(lambda p: at_most(k, n, p) > tail)
    return {"test": name, "germination": k / n, "low": low, "high": high}


def figures(lot):
    row = lots[lot]
    known = {"lot": lot, "gramsOnHand": grams_of(lot), "lastTest": last_test(lot)}
    try:
        own = node(lot)
        size = nodes[row["from"]]["size"] if row["kind"] == "harvest" else None
        t, k = between(1, lot, lot), between(2, lot, lot)
        return known | {
            "effectiveSize": size,
            "inbreeding": own["f"],
            "coancestry": between(0, lot, lot),
            "nativeDiversityRetained": 1 - t / k,
            "foreignAncestry": 1 - own["n"],
            "generations": own["g"],
            "founders": sorted(own["founders"]),
        }
    except Unknown:
        return known | {field: None for field in ("effectiveSize", "inbreeding", "coancestry", "nativeDiversityRetained")}


print("[\n" + ",\n".join("  " + json.dumps(figures(lot)) for lot in wanted) + "\n]")
