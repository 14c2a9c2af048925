"""Effective size, lineage and plans of a population: plants one by one, whole matrices. See make_references.py."""

import math
from fractions import Fraction as Fr

import mpmath as mp

mp.mp.dps = 30


# ---- effective size: every plant one by one -------------------------------------------------------------------------


def normal_shares(shares, n):
    if shares == "equal" or shares is None:
        return [Fr(1, n)] * n
    if isinstance(shares, dict):
        return None if shares["cv"] > 0 else [Fr(1, n)] * n
    total = sum(Fr(x) for x in shares)
    return [Fr(x) / total for x in shares]


def terms(g):
    """P_MM, P_FF, P_MF from the plants themselves; from the coefficient of variation where only that is known."""
    nf, nm = g["seedParents"], g["pollenParents"]
    q = normal_shares(g.get("seedShares"), nf)
    p = normal_shares(g.get("pollenShares"), nm)
    sep = g.get("sexes") == "separate"
    mm = sum(x * x for x in q) if q else (1 + Fr(g["seedShares"]["cv"]) ** 2) / nf
    ff = sum(x * x for x in p) if p else (1 + Fr(g["pollenShares"]["cv"]) ** 2) / nm
    if sep:
        return mm, ff, Fr(0)
    if q is None or p is None:
        return mm, ff, Fr(1, nm)
    q = q + [Fr(0)] * (nm - nf)
    if g.get("selfIncompatible"):
        star = []
        for i in range(nm):
            star.append(sum((q[j] * p[i] / (1 - p[j]) for j in range(nm) if j != i and q[j] > 0), Fr(0)))
        p = star
    return mm, sum(x * x for x in p), sum(a * b for a, b in zip(q, p))


def effective_size(g):
    mm, ff, mf = terms(g)
    k = g.get("plantsPerSeedParent")
    if k:
        mm = Fr(k - 1, k * g["seedParents"] - 1)
    s, f = Fr(g.get("selfingRate", 0)), Fr(g.get("inbreeding", 0))
    kappa = ((1 + s) ** 2 * mm + 2 * (1 - s * s) * mf + (1 - s) ** 2 * ff) / 4
    ne = None if kappa == 0 else float(1 / (kappa * (1 + f)))
    return {
        "effectiveSize": ne,
        "sameParentProbability": float(kappa),
        "seedParentTerm": float(mm),
        "pollenParentTerm": float(ff),
        "crossTerm": float(mf),
        "diversityLost": float(kappa * (1 + f) / 2),
    }


def random_parents(rng):
    g = {}
    separate = rng.random() < 0.2
    nm = rng.randint(2, 60)
    nf = rng.randint(1, 60) if separate else rng.randint(1, nm)
    g["pollenParents"], g["seedParents"] = nm, nf
    if separate:
        g["sexes"] = "separate"
    elif rng.random() < 0.3:
        g["selfIncompatible"] = True
    elif rng.random() < 0.6:
        g["selfingRate"] = rng.choice([0, 0.05, 0.3, 0.7, 0.95, 1])
    for key, n in (("seedShares", nf), ("pollenShares", nm)):
        kind = rng.random()
        if kind < 0.25:
            g[key] = "equal"
        elif kind < 0.5:
            g[key] = {"cv": round(rng.uniform(0, math.sqrt(n - 1)), 3) if n > 1 and rng.random() < 0.9 else 0}
            if n > 1 and g[key]["cv"] ** 2 > n - 1:
                g[key] = {"cv": 0}
        elif kind < 0.85:
            shares = [round(rng.uniform(0, 50), 2) if rng.random() < 0.85 else 0 for _ in range(n)]
            if sum(1 for x in shares if x > 0) < 2:
                shares = [1.5] * n
            g[key] = shares
    return g


def effective_size_cases(rng, count):
    cases = []
    while len(cases) < count:
        g = random_parents(rng)
        if rng.random() < 0.5:
            g["inbreeding"] = round(rng.random(), 3)
        if rng.random() < 0.2 and g["seedParents"] > 1:
            g["seedShares"] = "equal"
            g["plantsPerSeedParent"] = rng.randint(1, 6)
        cases.append({"input": g, "expected": effective_size(g)})
    return cases


# ---- lineage: whole matrices ----------------------------------------------------------------------------------------


def lineage(lots, pairs):
    """The recursion on whole matrices of floats, founders first; lots must come parents first here."""
    place = {lot["id"]: i for i, lot in enumerate(lots)}
    n = len(lots)
    th = [[0.0] * n for _ in range(n)]
    tn = [[0.0] * n for _ in range(n)]
    ka = [[0.0] * n for _ in range(n)]
    F, Fn, kF, nat, gen = [0.0] * n, [0.0] * n, [0.0] * n, [0.0] * n, [0.0] * n
    for i, lot in enumerate(lots):
        if lot["kind"] == "founder":
            F[i] = Fn[i] = lot.get("inbreeding", 0)
            th[i][i] = tn[i][i] = lot.get("coancestry", 0)
            kF[i] = nat[i] = ka[i][i] = 1.0
            for x in range(i):
                ka[i][x] = ka[x][i] = nat[x]
            continue
        w = [(place[p["id"]], p["share"]) for p in lot["parents"]]
        total = sum(s for _, s in w)
        w = [(p, s / total) for p, s in w]
        mean = lambda v: sum(s * v[p] for p, s in w)
        quad = lambda M: sum(s * z * M[p][q] for p, s in w for q, z in w)
        Fm, Fnm, kFm, nm, gm = mean(F), mean(Fn), mean(kF), mean(nat), mean(gen)
        tm, tnm, km = quad(th), quad(tn), quad(ka)
        if lot["kind"] == "grow-out":
            mm, ff, mf = (float(x) for x in terms(lot))
            s, m = lot.get("selfingRate", 0), lot.get("foreignPollen", 0)
            u = (1 - s) * (1 - m)
            noself = lot.get("sexes") == "separate" or lot.get("selfIncompatible")

            def new(S, between):
                G = lambda P: P * S + (1 - P) * between
                theta = 0.25 * (
                    G(mm) + 2 * (s * G(mm) + u * G(mf)) + s * s * G(mm) + 2 * s * u * G(mf) + u * u * G(ff)
                )
                return theta, s * S + u * (between if noself else G(mf))

            th[i][i], F[i] = new(0.5 * (1 + Fm), tm)
            tn[i][i], Fn[i] = new(0.5 * (nm + Fnm), tnm)
            ka[i][i], kF[i] = new(0.5 * (nm + kFm), km)
            a = 0.5 * (1 + s + u)
            nat[i] = 0.5 * nm + 0.5 * (s + u) * nm
            gen[i] = 1 + gm
        else:
            th[i][i], tn[i][i], ka[i][i] = tm, tnm, km
            F[i], Fn[i], kF[i], nat[i], gen[i] = Fm, Fnm, kFm, nm, gm
            a = 1.0
        for M in (th, tn, ka):
            for x in range(i):
                M[i][x] = M[x][i] = a * sum(s * M[p][x] for p, s in w)
    out = []
    for i, lot in enumerate(lots):
        t = th[i][i]
        out.append(
            {
                "id": lot["id"],
                "inbreeding": F[i],
                "coancestry": t,
                "diversityRetained": 1 - t,
                "founderEquivalents": None if t == 0 else 1 / (2 * t),
                "foreignAncestry": 1 - nat[i],
                "nativeDiversityRetained": 1 - tn[i][i] / ka[i][i],
                "generations": gen[i],
            }
        )
    return {
        "lots": out,
        "pairs": [{"a": a, "b": b, "coancestry": th[place[a]][place[b]]} for a, b in pairs],
    }


def random_lineage(rng):
    lots = []
    founders = rng.randint(1, 3)
    for i in range(founders):
        lot = {"id": f"F{i}", "kind": "founder"}
        if rng.random() < 0.6:
            lot["inbreeding"] = round(rng.random(), 3)
        if rng.random() < 0.4:
            lot["coancestry"] = round(rng.uniform(0, 0.5), 3)
        lots.append(lot)
    for i in range(rng.randint(2, 14)):
        kind = rng.choice(["grow-out"] * 5 + ["blend", "blend", "split"])
        many = 1 if kind == "split" else rng.choice([1, 1, 2, 2, 3, 4])
        parents = rng.sample(lots, min(many, len(lots)))
        raw = [rng.uniform(0.1, 1) for _ in parents]
        shares = [round(x / sum(raw), 6) for x in raw]
        lot = {"id": f"L{i}", "kind": kind}
        lot["parents"] = [{"id": p["id"], "share": 1 if kind == "split" else s} for p, s in zip(parents, shares)]
        if kind == "grow-out":
            lot.update(random_parents(rng))
            if rng.random() < 0.3:
                lot["foreignPollen"] = rng.choice([0.02, 0.2, 0.5, 1])
        lots.append(lot)
    ids = [lot["id"] for lot in lots]
    pairs = [[rng.choice(ids), rng.choice(ids)] for _ in range(5)]
    return lots, pairs


def lineage_cases(rng, count):
    cases = []
    for _ in range(count):
        lots, pairs = random_lineage(rng)
        expected = lineage(lots, pairs)
        order = list(range(len(lots)))
        rng.shuffle(order)
        lots = [lots[i] for i in order]
        expected["lots"] = [expected["lots"][i] for i in order]
        cases.append({"input": {"lots": lots, "pairs": pairs}, "expected": expected})
    return cases


def allele_capture_cases(rng, count):
    cases = []
    for _ in range(count):
        p, P = rng.choice([0.5, 0.05, 0.03, 0.01, round(rng.uniform(0.001, 0.9), 4)]), rng.choice([0.5, 0.9, 0.95, 0.99])
        g = {"frequency": p, "probability": P}
        if rng.random() < 0.5:
            g["loci"] = rng.choice([1, 10, 100])
        if rng.random() < 0.5:
            g["inbreeding"] = rng.choice([0, 0.5, 1, round(rng.random(), 2)])
        loci, F = g.get("loci", 1), mp.mpf(str(g.get("inbreeding", 0)))
        caught = lambda n: (1 - (1 - mp.mpf(str(p))) ** (2 * n / (1 + F))) ** loci >= mp.mpf(str(P)) - mp.mpf(10) ** -20
        low, high = 0, 1
        while not caught(high):
            low, high = high, 2 * high
        while high - low > 1:
            mid = (low + high) // 2
            low, high = (low, mid) if caught(mid) else (mid, high)
        cases.append({"input": g, "expected": {"plants": high}})
    return cases


def population_plan_cases(rng, count):
    cases = []
    while len(cases) < count:
        g = {
            "retain": rng.choice([0.5, 0.8, 0.9, 0.95]),
            "years": rng.choice([1, 10, 30, 60]),
            "yearsBetweenGrowOuts": rng.choice([1, 2, 3, 5, 0.5, 2.5]),
        }
        if rng.random() < 0.6:
            g["seedParentShare"] = rng.choice([1, 0.5, 0.1, 0.3, 0.75])
        separate = rng.random() < 0.3
        if separate:
            g["sexes"] = "separate"
        elif rng.random() < 0.5:
            g["selfingRate"] = rng.choice([0, 0.3, 0.9, 1])
        if rng.random() < 0.4:
            g["inbreeding"] = rng.choice([0, 0.25, 1])
        if rng.random() < 0.5:
            g["seedCv"] = rng.choice([0, 0.5, 1, 2])
        t = math.ceil(Fr(str(g["years"])) / Fr(str(g["yearsBetweenGrowOuts"])))
        needed = 1 / (2 * (1 - mp.mpf(str(g["retain"])) ** (mp.mpf(1) / t)))
        share, cv = Fr(str(g.get("seedParentShare", 1))), Fr(str(g.get("seedCv", 0)))
        n = 0
        while True:
            n += 1
            nf = max(1, math.ceil(share * n))
            if cv * cv > nf - 1:
                continue
            q = {"pollenParents": n, "seedParents": nf, "seedShares": {"cv": cv}, "sexes": g.get("sexes", "hermaphrodite")}
            s, F = Fr(str(g.get("selfingRate", 0))), Fr(str(g.get("inbreeding", 0)))
            mm, ff = (1 + cv * cv) / nf, Fr(1, n)
            mf = Fr(0) if separate else Fr(1, n)
            kappa = ((1 + s) ** 2 * mm + 2 * (1 - s * s) * mf + (1 - s) ** 2 * ff) / 4
            ne = 1 / (kappa * (1 + F))
            if mp.mpf(ne.numerator) / ne.denominator >= needed * (1 - mp.mpf(10) ** -9):
                break
            if n > 3000:
                break
        if n > 3000:
            continue
        expected = {
            "generations": t,
            "effectiveSizeNeeded": float(needed),
            "floweringPlants": 2 * n if separate else n,
            "seedParents": nf,
        }
        cases.append({"input": g, "expected": expected})
    return cases
