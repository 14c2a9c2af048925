"""Spans of a lineage whose records are not complete: every case that the records allow, tried one by one. See make_references.py."""

import copy
import itertools
from fractions import Fraction as Fr

from reference_populations import random_parents, terms


def bounds(plants):
    if plants is None:
        return 1, None
    return (plants, plants) if isinstance(plants, int) else (plants["low"], plants["high"])


def seed_terms(shares, n):
    """Sums of squares of the seed shares among n plants at the worst and at the best; n None: any number."""
    if shares is None or shares == "unknown":
        return [Fr(1), Fr(0) if n is None else Fr(1, n)]
    if shares == "equal":
        return [Fr(0) if n is None else Fr(1, n)]
    if isinstance(shares, list):
        total = sum(Fr(x) for x in shares)
        return [sum((Fr(x) / total) ** 2 for x in shares)]
    if "cv" in shares:
        return [Fr(0) if n is None else (1 + Fr(shares["cv"]) ** 2) / n]
    q = Fr(shares["largest"])
    many, left = 0, Fr(1)
    while left >= q - Fr(1, 10**9):
        many, left = many + 1, left - q
    left = max(left, Fr(0))
    worst = many * q * q + left * left
    if n is None:
        return [worst, q * q]
    return [worst, q * q if n == 1 else q * q + (1 - q) ** 2 / (n - 1)]


def fewest(shares):
    if not isinstance(shares, dict):
        return 1
    n = 1
    while (1 / Fr(shares["largest"]) if "largest" in shares else 1 + Fr(shares["cv"]) ** 2) > n + Fr(1, 10**9):
        n += 1
    return n


def cases_of_plants(lot, separate):
    """(P_MM, P_MF, P_FF) of every number of plants between the bounds; without bound the limit of ever more."""
    shares = lot.get("seedShares")
    alone = not separate and lot.get("selfIncompatible")
    (mlow, mhigh), (flow, fhigh) = bounds(lot.get("pollenParents")), bounds(lot.get("seedParents"))
    flow = max(flow, fewest(shares))
    loose = lot.get("seedParentsMayNotShed") and not separate
    top = max(mlow, 1 if separate or loose else flow, 20 if mhigh is None else mhigh)
    found = []
    for nm in [*range(mlow, top + 1), *([None] if mhigh is None else [])]:
        if alone and nm == 1:
            continue
        ftop = fhigh if separate or loose or nm is None else (nm if fhigh is None else min(nm, fhigh))
        open_end = ftop is None
        for nf in [*range(flow, (max(20, flow) if open_end else ftop) + 1), *([None] if open_end else [])]:
            for mm in seed_terms(shares, nf):
                spread = isinstance(shares, dict) and shares.get("cv", 0) > 0
                if nm is None:
                    found.append((mm, Fr(0), Fr(0)))
                elif separate:
                    found.append((mm, Fr(0), Fr(1, nm)))
                elif alone and not spread:
                    # p* of a plant with seed share q is (1 - q)/(n - 1): sums over the plants
                    found.append((mm, (1 - mm) / (nm - 1), (nm - 2 + mm) / Fr((nm - 1) ** 2)))
                elif loose and nf is not None and mm == Fr(1, nf) and nf > nm:
                    # alike seed parents, each plant that sheds pollen one of them: sum over those plants of 1/nf 1/nm
                    found.append((mm, sum(Fr(1, nf) * Fr(1, nm) for _ in range(nm)), Fr(1, nm)))
                elif loose and nf is None and mm == 0 and not spread:
                    # the limit of the same sum: a plant that sheds pollen gave ever less of the seed
                    found.append((mm, Fr(0), Fr(1, nm)))
                else:
                    found.append((mm, Fr(1, nm), Fr(1, nm)))
    return found


def corners_of_shares(shares, n):
    """Seed shares of n plants at their worst and at their best; what is not known lies between."""
    even = [Fr(1, n)] * n
    if shares == "equal":
        return [even]
    if shares in (None, "unknown"):
        return [[Fr(1)] + [Fr(0)] * (n - 1), even]
    q = Fr(shares["largest"])
    many, left = [], Fr(1)
    while left >= q - Fr(1, 10**9):
        many, left = many + [q], left - q
    worst = many + [max(left, Fr(0))] + [Fr(0)] * n
    return [worst[: max(n, len(many) + 1)], [q] + [(1 - q) / (n - 1)] * (n - 1) if n > 1 else [q]]


def plant_by_plant(lot, s, m):
    """(a, kappa, alpha) of every admissible case where only the seed parents that shed pollen selfed: c of each plant, summed as it is. Plants
    of one share are alike, so how many of them shed is tried, with others that shed and gave no seed."""
    shares = lot.get("seedShares")
    (mlow, mhigh), (flow, fhigh) = bounds(lot.get("pollenParents")), bounds(lot.get("seedParents"))
    flow = max(flow, fewest(shares))
    found = []
    for nf in range(flow, (max(20, flow) if fhigh is None else fhigh) + 1):
        for q in corners_of_shares(shares, nf):
            q = [float(x) for x in q if x > 0]
            kinds = sorted(set(q))
            for sheds in itertools.product(*[range(q.count(k) + 1) for k in kinds]):
                for n in range(max(mlow, sum(sheds), 1), (max(20, mlow, len(q)) if mhigh is None else mhigh) + 1):
                    selfed = sum(s * k * j for k, j in zip(kinds, sheds))
                    u = (1 - selfed) * (1 - m)
                    c2 = (n - sum(sheds)) * (u / n / 2) ** 2
                    for k, j in zip(kinds, sheds):
                        c2 += j * (((1 + s) * k + u / n) / 2) ** 2 + (q.count(k) - j) * (k / 2) ** 2
                    alpha = sum(j * k * (s + (1 - s) * (1 - m) / n) for k, j in zip(kinds, sheds))
                    found.append(((1 + selfed + u) / 2, c2, alpha))
    return found


def rates(lot):
    s = lot.get("selfingRate", 0)
    return (float(s["low"]), float(s["high"])) if isinstance(s, dict) else (float(s), float(s))


def kappa(t, s, m):
    mm, mf, ff = t
    u = (1 - s) * (1 - m)
    return ((1 + s) ** 2 * mm + 2 * u * (1 + s) * mf + u * u * ff) / 4


def least_over_rates(t, low, high, m):
    """The least of a convex function between two rates, by thirds."""
    for _ in range(80):
        a, b = low + (high - low) / 3, high - (high - low) / 3
        if kappa(t, a, m) <= kappa(t, b, m):
            high = b
        else:
            low = a
    return kappa(t, low, m)


def drift(lot):
    """a, kappa and alpha at their ends."""
    m = float(lot.get("foreignPollen", 0))
    known = all(isinstance(lot.get(k), int) for k in ("pollenParents", "seedParents"))
    shares = lot.get("seedShares")
    known = known and shares not in (None, "unknown") and not (isinstance(shares, dict) and "largest" in shares)
    known = known and not lot.get("seedParentsMayNotShed")
    ways = []
    separate = lot.get("sexes") == "separate"
    if lot.get("seedParentsMayNotShed") and rates(lot)[1] > 0:
        cases = [c for s in rates(lot) for c in plant_by_plant(lot, s, m)]
        apart = cases_of_plants(lot, True)  # none shed: here numbers may be without bound
        cases += [(1 - m / 2, float(kappa(t, 0.0, m)), 0.0) for t in apart]
        return [(min(x), max(x)) for x in zip(*cases)]
    if known:
        mm, ff, mf = terms(lot)
        ways.append(([(mm, mf, ff)], *rates(lot), not separate and not lot.get("selfIncompatible")))
    else:
        ways.append((cases_of_plants(lot, separate), *rates(lot), not separate and not lot.get("selfIncompatible")))
        if lot.get("seedParentsMayNotShed") and not separate:
            ways.append((cases_of_plants(lot, True), 0.0, 0.0, False))
    a, k, alpha = [], [], []
    for found, low, high, can_self in ways:
        a += [1 - (1 - s) * m / 2 for s in (low, high)]
        for t in {tuple(map(float, t)) for t in found}:
            k += [float(kappa(t, low, m)), float(kappa(t, high, m))]
            if low < high and t[0] - 2 * (1 - m) * t[1] + (1 - m) ** 2 * t[2] > 0:
                k.append(least_over_rates(t, low, high, m))
            alpha += [float(s + ((1 - s) * (1 - m) * t[1] if can_self else 0)) for s in (low, high)]
    return [(float(min(x)), float(max(x))) for x in (a, k, alpha)]


def nothing_bounds(lot):
    (_, mhigh), (flow, fhigh) = bounds(lot.get("pollenParents")), bounds(lot.get("seedParents"))
    bounded = fhigh is not None or (lot.get("sexes") != "separate" and mhigh is not None)
    return not bounded and flow <= 1


def least_mixture(d, b):
    """The least of sum (d - b) u^2 + b over shares u, by moving share from the dearest plant to the cheapest."""
    if min(d) <= b:
        return min(d)
    u = [1 / len(d)] * len(d)
    for _ in range(20000):
        g = [(x - b) * y for x, y in zip(d, u)]
        i, j = g.index(max(g)), g.index(min(g))
        if g[i] - g[j] < 1e-17:
            break
        step = min(u[i], (g[i] - g[j]) / ((d[i] - b) + (d[j] - b)))
        u[i], u[j] = u[i] - step, u[j] + step
    return b + sum((x - b) * y * y for x, y in zip(d, u))


def lineage_span(lots, pairs):
    """Two whole matrices, founders before what descends from them; lots must come parents first here."""
    place = {lot["id"]: i for i, lot in enumerate(lots)}
    n = len(lots)
    th = [[[0.0] * n for _ in range(n)] for _ in range(2)]
    F, gen = [[0.0] * n, [0.0] * n], [[0.0] * n, [0.0] * n]
    size, since = [None] * n, [[] for _ in range(n)]
    for pair in pairs:  # founders alone: nothing descends from them yet
        a, b = place[pair["a"]], place[pair["b"]]
        far, near = 0.0, min(lots[a].get("coancestry", 0), lots[b].get("coancestry", 0))
        if pair["coancestry"] != "unknown":
            far = near = pair["coancestry"]
        th[0][a][b] = th[0][b][a] = far
        th[1][a][b] = th[1][b][a] = near
    for i, lot in enumerate(lots):
        begins = lot["kind"] == "grow-out" and nothing_bounds(lot)
        if lot["kind"] == "founder" or begins:
            s = rates(lot)
            for e in (0, 1):
                F[e][i] = float(s[e] / (2 - s[e])) if begins else lot.get("inbreeding", 0)
                th[e][i][i] = 0.0 if begins else lot.get("coancestry", 0)
            since[i] = [lot["id"]] if begins else []
            continue
        parts = [(place[p["id"]], p.get("share")) for p in lot["parents"]]
        if len(parts) == 1:
            parts = [(parts[0][0], 1.0)]
        known = [(p, w) for p, w in parts if w is not None]
        open_parts = [p for p, w in parts if w is None]
        total = sum(w for _, w in known)
        if not open_parts:
            known = [(p, w / total) for p, w in known]
        rest = max(0.0, 1 - total) if open_parts else 0.0
        pick = (min, max)

        def mean(v, e):
            return sum(w * v[e][p] for p, w in known) + (rest * pick[e](v[e][p] for p in open_parts) if rest else 0)

        theta = []
        for e in (0, 1):
            x = sum(v * w * th[e][p][q] for p, v in known for q, w in known)
            x += sum(2 * rest * w * pick[e](th[e][p][q] for q in open_parts) for p, w in known if rest)
            if rest:
                d = [th[e][p][p] for p in open_parts]
                if e == 1:
                    x += rest * rest * max(d)
                else:
                    apart = [th[0][p][q] for p, q in itertools.combinations(open_parts, 2)]
                    x += rest * rest * (least_mixture(d, min(apart)) if apart else d[0])
            theta.append(min(x, mean([[th[k][p][p] for p in range(n)] for k in (0, 1)], e)))
        fm, gm = [mean(F, e) for e in (0, 1)], [mean(gen, e) for e in (0, 1)]
        a = (1.0, 1.0)
        if lot["kind"] == "grow-out":
            a, k, alpha = drift(lot)
            own = drift({**lot, "foreignPollen": 0})[1]
            size[i] = {"low": 1 / (own[1] * (1 + fm[1])), "high": None if own[0] == 0 else 1 / (own[0] * (1 + fm[0]))}
        for e in (0, 1):
            if lot["kind"] == "grow-out":
                S = (1 + fm[e]) / 2
                th[e][i][i] = (a[e] ** 2 - k[e]) * theta[e] + k[e] * S
                F[e][i] = alpha[e] * S + (2 * a[e] - 1 - alpha[e]) * theta[e]
                gen[e][i] = 1 + gm[e]
            else:
                th[e][i][i], F[e][i], gen[e][i] = theta[e], fm[e], gm[e]
            for x in range(i):  # founders keep what was written of their pairs
                row = sum(w * th[e][p][x] for p, w in known)
                if rest:
                    row += rest * pick[e](th[e][p][x] for p in open_parts)
                th[e][i][x] = th[e][x][i] = a[e] * row
        for p, _ in parts:
            since[i] += [s for s in since[p] if s not in since[i]]
    return th, F, gen, size, since


def by_mixtures_behind(lots):
    """First what has the fewest mixtures of unknown shares behind it; a mixture before what is known to come of it, of mixtures
    those with a known share, then by id. One share left out alone is what the others leave."""
    behind = {}
    mixture = lambda lot: sum("share" not in p for p in lot.get("parents", [])) > 1 and len(lot["parents"]) > 1
    begins = lambda lot: lot["kind"] == "grow-out" and nothing_bounds(lot)
    for lot in lots:
        most = 0 if begins(lot) else max([behind[p["id"]][0] for p in lot.get("parents", [])], default=0)
        none = all("share" not in p for p in lot.get("parents", []))
        behind[lot["id"]] = (most + 1, int(none), lot["id"]) if mixture(lot) and not begins(lot) else (most, 2, "")
    return sorted(lots, key=lambda lot: behind[lot["id"]])


def answer(lots, pairs):
    given, lots = lots, by_mixtures_behind(lots)
    place = {lot["id"]: i for i, lot in enumerate(lots)}
    th, F, gen, size, since = lineage_span(lots, pairs)
    out = []
    ends = lambda v, i: {"low": v[0][i], "high": v[1][i]}
    for i, lot in enumerate(lots):
        t = {"low": th[0][i][i], "high": th[1][i][i]}
        fge = lambda x: None if x == 0 else 1 / (2 * x)
        out.append(
            {
                "id": lot["id"],
                "inbreeding": ends(F, i),
                "coancestry": t,
                "diversityRetained": {"low": 1 - t["high"], "high": 1 - t["low"]},
                "founderEquivalents": {"low": fge(t["high"]), "high": fge(t["low"])},
                "effectiveSize": size[i],
                "generations": ends(gen, i),
                "since": sorted(since[i]),
            }
        )
    return {"lots": [out[place[lot["id"]]] for lot in given]}


def random_bounds(rng, count):
    kind = rng.random()
    if kind < 0.35:
        return count
    if kind < 0.45:
        return None
    low = rng.randint(1, count)
    return {"low": low, "high": None if kind > 0.92 else rng.randint(count, count + 8)}


def random_grow_out(rng):
    g = random_parents(rng)
    while max(g["pollenParents"], g["seedParents"]) > 16:
        g = random_parents(rng)
    if g.get("selfingRate") is not None and rng.random() < 0.4:
        g["selfingRate"] = {"low": round(g["selfingRate"] * rng.random(), 3), "high": g["selfingRate"]}
    if rng.random() < 0.35:
        g.setdefault("seedShares", "equal")
        return g
    g.pop("pollenShares", None)
    shares = g.get("seedShares")
    kind = rng.random()
    if isinstance(shares, dict) or (isinstance(shares, list) and kind < 0.5):
        shares = g["seedShares"] = rng.choice(["equal", "unknown"])
    if isinstance(shares, list):
        g["seedParents"] = len(shares)
        seeds = g["seedParents"]
    else:
        seeds = random_bounds(rng, g["seedParents"])
        if kind > 0.85 and isinstance(seeds, int) and seeds > 1:
            g["seedShares"] = {"largest": round(rng.uniform(1 / seeds + 0.001, 0.9), 3)}
    pollen = random_bounds(rng, g["pollenParents"])
    if g.get("sexes") != "separate" and bounds(pollen)[1] is not None:
        least = bounds(seeds)[0] if bounds(seeds)[1] is None else bounds(seeds)[1]
        if bounds(pollen)[1] < least:
            pollen = {"low": 1, "high": least + 3}
    for key, value in (("seedParents", seeds), ("pollenParents", pollen)):
        if value is None:
            g.pop(key)
        else:
            g[key] = value
    if g.get("selfIncompatible") and bounds(g.get("pollenParents"))[1] == 1:
        g["pollenParents"] = {"low": 1, "high": 4}
    loose = not isinstance(shares, list) or "selfingRate" not in g  # which of listed plants shed is not tried here
    if g.get("sexes") != "separate" and not g.get("selfIncompatible") and loose and rng.random() < 0.15:
        g["seedParentsMayNotShed"] = True
    return g


def random_lineage_span(rng):
    lots, pairs = [], []
    for i in range(rng.randint(1, 3)):
        lot = {"id": f"F{i}", "kind": "founder"}
        if rng.random() < 0.6:
            lot["inbreeding"] = round(rng.random(), 3)
        if rng.random() < 0.6:
            lot["coancestry"] = round(rng.uniform(0, 0.5), 3)
        for other in lots:
            if rng.random() < 0.5:
                near = min(lot.get("coancestry", 0), other.get("coancestry", 0))
                known = round(near * rng.random(), 4)
                pairs.append({"a": other["id"], "b": lot["id"], "coancestry": rng.choice(["unknown", known])})
        lots.append(lot)
    for i in range(rng.randint(2, 12)):
        kind = rng.choice(["grow-out"] * 5 + ["blend", "blend", "split"])
        many = 1 if kind == "split" else rng.choice([1, 1, 2, 2, 3, 4])
        parents = rng.sample(lots, min(many, len(lots)))
        raw = [rng.uniform(0.1, 1) for _ in parents]
        made = [{"id": p["id"], "share": 1 if kind == "split" else round(x / sum(raw), 6)} for p, x in zip(parents, raw)]
        unsaid = rng.random()
        if kind != "split" and len(made) > 1 and unsaid < 0.5:
            for part in made if unsaid < 0.35 else made[1:]:
                part.pop("share")
        lot = {"id": f"L{i}", "kind": kind, "parents": made}
        if kind == "grow-out":
            lot.update(random_grow_out(rng))
            if rng.random() < 0.3:
                lot["foreignPollen"] = rng.choice([0.02, 0.2, 0.5, 1])
        lots.append(lot)
    return lots, pairs


def lineage_span_cases(rng, count):
    cases = []
    for _ in range(count):
        lots, pairs = random_lineage_span(rng)
        expected = answer(lots, pairs)
        order = list(range(len(lots)))
        rng.shuffle(order)
        given = {"lots": [copy.deepcopy(lots[i]) for i in order], "founderPairs": pairs}
        cases.append({"input": given, "expected": {"lots": [expected["lots"][i] for i in order]}})
    return cases
