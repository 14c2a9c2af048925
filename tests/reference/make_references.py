"""Reference values for the calculations, made by another program than ours.

    python3 tests/reference/make_references.py          (Python 3.11, SciPy 1.17, mpmath 1.3, NumPy 2)

Writes the *.json files beside it. Written from the formulas, by the plainest way there is: plants one by one as exact fractions,
whole coancestry matrices, integer arithmetic, quadrature of 30 digits. None of it shares a method with lib/science where that
could hide a fault. The random inputs have a fixed seed, so a second run gives the same files.
"""

import json
import math
import os
import random
from fractions import Fraction as Fr
from math import comb

import mpmath as mp
import numpy as np
import scipy.special
import scipy.stats

mp.mp.dps = 30
HERE = os.path.dirname(os.path.abspath(__file__))


def write(name, origin, cases):
    with open(os.path.join(HERE, name + ".json"), "w") as out:
        out.write('{"origin": ' + json.dumps(origin) + ',\n "cases": [\n')
        out.write(",\n".join(json.dumps(case) for case in cases))
        out.write("\n]}\n")


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


# ---- germination: integers and 30 digits ----------------------------------------------------------------------------


def beta_inv(p, a, b):
    """Quantile of Beta(a, b) by bisection on the regularised incomplete beta; SciPy's where that does not converge."""
    if a + b > 2500:
        return mp.mpf(float(scipy.stats.beta.ppf(float(p), float(a), float(b))))
    low, high = mp.mpf(0), mp.mpf(1)
    p = mp.mpf(p)
    for _ in range(90):
        mid = (low + high) / 2
        if mp.betainc(a, b, 0, mid, regularized=True) < p:
            low = mid
        else:
            high = mid
    return (low + high) / 2


def exact_interval(x, n, conf):
    tail = (1 - mp.mpf(conf)) / 2
    return {
        "low": 0.0 if x == 0 else float(beta_inv(tail, x, n - x + 1)),
        "high": 1.0 if x == n else float(beta_inv(1 - tail, x + 1, n - x)),
    }


def jeffreys(x, n, conf):
    tail = (1 - mp.mpf(conf)) / 2
    h = mp.mpf(1) / 2
    return {
        "low": 0.0 if x == 0 else float(beta_inv(tail, x + h, n - x + h)),
        "high": 1.0 if x == n else float(beta_inv(1 - tail, x + h, n - x + h)),
    }


def wilson_mp(x, n, conf):
    z = mp.sqrt(2) * mp.erfinv(mp.mpf(conf))
    p = mp.mpf(x) / n
    half = z * mp.sqrt(p * (1 - p) / n + z * z / (4 * n * n))
    mid = p + z * z / (2 * n)
    return (mid - half) / (1 + z * z / n), (mid + half) / (1 + z * z / n)


def wilson(x, n, conf):
    low, high = wilson_mp(x, n, conf)
    return {"low": max(0.0, float(low)), "high": min(1.0, float(high))}


def range_cdf(q, k):
    """k ∫ φ(z) [Φ(z) − Φ(z − q)]^(k−1) dz by quadrature of 30 digits."""
    f = lambda z: mp.npdf(z) * (mp.ncdf(z) - mp.ncdf(z - q)) ** (k - 1)
    with mp.workdps(20):
        return k * mp.quad(f, [-9, -6, -4, -3, -2, -1, 0, 1, 2, 3, 4, 6, 9], maxdegree=5)


_q975 = {}


def range_quantile(k):
    if k not in _q975:
        low, high = mp.mpf(1), mp.mpf(10)
        for _ in range(52):
            mid = (low + high) / 2
            if range_cdf(mid, k) < mp.mpf("0.975"):
                low = mid
            else:
                high = mid
        _q975[k] = (low + high) / 2
    return _q975[k]


def exact_range(counts, n):
    """P(range ≥ the one seen): all polynomials in whole numbers."""
    k, total, seen = len(counts), sum(counts), max(counts) - min(counts)
    if seen == 0:
        return 1.0

    def coefficient(a, b):
        if a > b:
            return 0
        poly = {0: 1}
        for _ in range(k):
            nxt = {}
            for have, ways in poly.items():
                for j in range(a, b + 1):
                    if have + j <= total:
                        nxt[have + j] = nxt.get(have + j, 0) + ways * comb(n, j)
            poly = nxt
        return poly.get(total, 0)

    r = seen - 1
    within = 0
    for m in range(0, n + 1):
        if k * m <= total <= k * min(n, m + r):
            within += coefficient(m, min(n, m + r)) - coefficient(m + 1, min(n, m + r))
    return float(1 - Fr(within, comb(k * n, total)))


def germination_test(g):
    reps = g["replicates"]
    conf = g.get("confidence", 0.95)
    n, x = sum(r["sown"] for r in reps), sum(r["normal"] for r in reps)
    p = mp.mpf(x) / n
    spread = None
    if len(reps) > 1:
        shares = [Fr(r["normal"], r["sown"]) for r in reps]
        rng_ = float(max(shares) - min(shares))
        inv = sum(mp.mpf(1) / r["sown"] for r in reps) / len(reps)
        tol = float(range_quantile(len(reps)) * mp.sqrt(p * (1 - p) * inv))
        chi = (
            sum((r["normal"] - r["sown"] * p) ** 2 / (r["sown"] * p * (1 - p)) for r in reps) if 0 < x < n else mp.mpf(0)
        )
        df = len(reps) - 1
        pv = mp.gammainc(mp.mpf(df) / 2, chi / 2, mp.inf, regularized=True) if chi > 0 else mp.mpf(1)
        same = len({r["sown"] for r in reps}) == 1 and n <= 10000
        ep = exact_range([r["normal"] for r in reps], reps[0]["sown"]) if same else None
        spread = {
            "range": rng_,
            "toleratedRange": tol,
            "chiSquare": float(chi),
            "degrees": df,
            "pValue": float(pv),
            "exactP": ep,
            "consistent": ep > 0.025 if ep is not None else rng_ <= tol,
        }
    standard = None
    if "standard" in g:
        above = float(1 - mp.betainc(x + 0.5, n - x + 0.5, 0, g["standard"], regularized=True))
        standard = {
            "value": g["standard"],
            "probabilityAbove": above,
            "verdict": "above" if above >= 0.95 else "below" if above <= 0.05 else "cannot tell",
        }
    return {
        "sown": n,
        "normal": x,
        "germination": float(p),
        "exact": exact_interval(x, n, conf),
        "wilson": wilson(x, n, conf),
        "jeffreys": jeffreys(x, n, conf),
        "viablePotential": float(Fr(x + sum(r.get("hard", 0) + r.get("fresh", 0) for r in reps), n)),
        "spread": spread,
        "standard": standard,
    }


def germination_test_cases(rng, count):
    cases = []
    for _ in range(count):
        k = rng.choice([1, 2, 2, 3, 4, 4, 5, 8])
        size = rng.choice([5, 10, 20, 25, 50, 100])
        equal = rng.random() < 0.7
        p = rng.choice([0, 0.05, 0.5, 0.8, 0.9, 0.95, 1, rng.random()])
        reps = []
        for _ in range(k):
            n = size if equal else rng.randint(1, 2 * size)
            x = sum(rng.random() < p for _ in range(n))
            r = {"sown": n, "normal": x}
            left = n - x
            for kind in ("abnormal", "hard", "fresh", "dead"):
                if rng.random() < 0.5:
                    r[kind] = rng.randint(0, left)
                    left -= r[kind]
            reps.append(r)
        g = {"replicates": reps}
        if rng.random() < 0.4:
            g["confidence"] = rng.choice([0.5, 0.8, 0.9, 0.99, 0.9999, round(rng.uniform(0.01, 0.99), 3)])
        if rng.random() < 0.5:
            g["standard"] = rng.choice([0.6, 0.75, 0.85, round(rng.random(), 3)])
        cases.append({"input": g, "expected": germination_test(g)})
    return cases


def fisher_fraction(xa, na, xb, nb):
    t = xa + xb
    weight = lambda i: comb(na, i) * comb(nb, t - i)
    seen = weight(xa)
    total = comb(na + nb, t)
    # equal within 1e-7, in whole numbers
    keep = sum(w for w in map(weight, range(max(0, t - nb), min(na, t) + 1)) if w * 10**7 <= seen * (10**7 + 1))
    return Fr(keep, total)


def germination_compare(g):
    a, b, conf = g["a"], g["b"], g.get("confidence", 0.95)
    xa, na, xb, nb = a["normal"], a["sown"], b["normal"], b["sown"]
    pa, pb = mp.mpf(xa) / na, mp.mpf(xb) / nb
    la, ua = wilson_mp(xa, na, conf)
    lb, ub = wilson_mp(xb, nb, conf)
    f = float(fisher_fraction(xa, na, xb, nb))
    return {
        "difference": float(pb - pa),
        "interval": {
            "low": float(pb - pa - mp.sqrt((pb - lb) ** 2 + (ua - pa) ** 2)),
            "high": float(pb - pa + mp.sqrt((ub - pb) ** 2 + (pa - la) ** 2)),
        },
        "fisherP": f,
        "changed": fisher_fraction(xa, na, xb, nb) <= 1 - Fr(str(conf)),
    }


def germination_compare_cases(rng, count):
    cases = []
    for _ in range(count):
        side = lambda: (lambda n: {"sown": n, "normal": rng.choice([0, n, rng.randint(0, n), round(0.9 * n)])})(
            rng.choice([1, 5, 10, 20, 50, 100, 400, 2000])
        )
        g = {"a": side(), "b": side()}
        if rng.random() < 0.4:
            g["confidence"] = rng.choice([0.5, 0.8, 0.9, 0.99, 0.999])
        cases.append({"input": g, "expected": germination_compare(g)})
    return cases


def off_type_cases(rng, count):
    cases = []
    for _ in range(count):
        conf = rng.choice([None, 0.5, 0.9, 0.95, 0.99, 0.999])
        c = 0.95 if conf is None else conf
        if rng.random() < 0.6:
            n = rng.choice([1, 5, 30, 100, 300, 1000, 20000])
            x = rng.choice([0, 0, min(n, 1), min(n, 3), rng.randint(0, n), n])
            g = {"sampled": n, "found": x}
            upper = 1.0 if x == n else float(beta_inv(mp.mpf(c), x + 1, n - x))
            expected = {"share": x / n, "upperBound": upper, "interval": exact_interval(x, n, c)}
        else:
            f = rng.choice([1, 0.5, 0.05, 0.01, 0.001, round(rng.uniform(0.0005, 0.9), 4)])
            g = {"frequency": f}
            n = 1
            if f < 1:
                n = max(1, int(mp.floor(mp.log(1 - mp.mpf(c)) / mp.log(1 - mp.mpf(f)))) - 2)
                while 1 - (1 - mp.mpf(f)) ** n < mp.mpf(c) - mp.mpf(10) ** -14:
                    n += 1
            expected = {"plants": n}
        if conf is not None:
            g["confidence"] = conf
        cases.append({"input": g, "expected": expected})
    return cases


# ---- sowing-count: sums over every outcome ---------------------------------------------------------------------------


def chance_of_plants(m, wanted, x, n, e):
    """P(Binomial(m, e·π) ≥ N), π ~ Beta(x+½, n−x+½). With π = sin²θ the mean is that of a trigonometric polynomial of degree m + n,
    which the trapezium rule on more points than that gives exactly."""
    points = m + n + 5
    theta = np.linspace(0, np.pi / 2, points + 1)
    pi = np.sin(theta) ** 2
    with np.errstate(divide="ignore"):
        ln_w = scipy.special.xlogy(x, pi) + scipy.special.xlogy(n - x, np.cos(theta) ** 2)
    w = np.exp(ln_w - ln_w.max())
    w[0] /= 2
    w[-1] /= 2
    return float((w * scipy.stats.binom.sf(wanted - 1, m, e * pi)).sum() / w.sum())


def sowing_count(g):
    x, n = g["test"]["normal"], g["test"]["sown"]
    e, c, wanted = g.get("emergence", 1), g.get("confidence", 0.9), g["plantsWanted"]
    chance = lambda m: chance_of_plants(m, wanted, x, n, e)
    low, high = wanted - 1, 2 * wanted
    while chance(high) < c:
        low, high = high, 2 * high
        if high > 200000:
            return None
    while high - low > 1:
        mid = (low + high) // 2
        low, high = (low, mid) if chance(mid) >= c else (mid, high)
    plain = None if x == 0 else math.ceil(Fr(wanted) * n / (x * Fr(str(e))))
    mean = (x + 0.5) / (n + 1)
    return {"seeds": high, "expectedPlants": high * e * mean, "plainDivision": plain, "probability": chance(high)}


def sowing_count_cases(rng, count):
    cases = []
    while len(cases) < count:
        n = rng.choice([1, 5, 10, 20, 25, 50, 100, 400])
        x = rng.choice([n, round(0.9 * n), round(0.7 * n), rng.randint(0, n), rng.randint(0, n)])
        g = {"test": {"sown": n, "normal": x}, "plantsWanted": rng.choice([1, 2, 5, 20, 60, 100, 250])}
        if rng.random() < 0.7:
            g["emergence"] = rng.choice([1, 0.95, 0.8, 0.5, 0.1])
        if rng.random() < 0.6:
            g["confidence"] = rng.choice([0.5, 0.8, 0.95, 0.99])
        expected = sowing_count(g)
        if expected:
            cases.append({"input": g, "expected": expected})
    return cases


# ---- viability-forecast: a fine grid, every draw counted -------------------------------------------------------------


def posterior_grid(g, k, l):
    tests, prior, ceiling = g["tests"], g["prior"], g.get("ceiling", 1)
    K, L = np.meshgrid(k, l, indexing="ij")
    value = -0.5 * ((K - prior["Ki"]["mean"]) / prior["Ki"]["sd"]) ** 2
    value -= 0.5 * ((L - prior["lnSigmaYears"]["mean"]) / prior["lnSigmaYears"]["sd"]) ** 2
    for t in tests:
        u = K - t["years"] * np.exp(-L)
        ln_p = math.log(ceiling) + scipy.special.log_ndtr(u)
        ln_q = scipy.special.log_ndtr(-u) if ceiling == 1 else np.log1p(-ceiling * scipy.special.ndtr(u))
        value += t["normal"] * ln_p if t["normal"] else 0
        value += (t["sown"] - t["normal"]) * ln_q if t["normal"] < t["sown"] else 0
    return K, L, value


def viability_forecast(g):
    prior, ceiling, threshold = g["prior"], g.get("ceiling", 1), g["threshold"]
    box = [(prior[key]["mean"] - 9 * prior[key]["sd"], prior[key]["mean"] + 9 * prior[key]["sd"]) for key in ("Ki", "lnSigmaYears")]
    for size in (500, 500, 1600):
        k, l = (np.linspace(low, high, size) for low, high in box)
        K, L, value = posterior_grid(g, k, l)
        keep = value > value.max() - 28
        dk, dl = k[1] - k[0], l[1] - l[0]
        ks, ls = np.where(keep.any(axis=1))[0], np.where(keep.any(axis=0))[0]
        box = [(k[ks[0]] - dk, k[ks[-1]] + dk), (l[ls[0]] - dl, l[ls[-1]] + dl)]
    w = np.exp(value - value.max())
    w /= w.sum()
    mk, ml = (w * K).sum(), (w * L).sum()
    if isinstance(threshold, dict):
        z = scipy.special.ndtri(threshold["ofInitial"] * scipy.special.ndtr(K))
    else:
        z = np.full_like(K, scipy.special.ndtri(min(1, threshold / ceiling)))
    years = np.maximum(0, (K - z) * np.exp(L)).ravel()
    order = np.argsort(years)
    cum = np.cumsum(w.ravel()[order]) - w.ravel()[order] / 2
    quantile = lambda p: float(np.interp(p, cum, years[order]))
    now = max([t["years"] for t in g["tests"]], default=0)
    below = float((w * ((K - z) * np.exp(L) < now)).sum())
    return {
        "Ki": {"mean": float(mk), "sd": float(math.sqrt((w * (K - mk) ** 2).sum()))},
        "lnSigmaYears": {"mean": float(ml), "sd": float(math.sqrt((w * (L - ml) ** 2).sum()))},
        "yearsToThreshold": {"median": quantile(0.5), "low": quantile(0.05), "high": quantile(0.95)},
        "probabilityBelowNow": below,
    }


def viability_forecast_cases(rng, count):
    cases = []
    for _ in range(count):
        ki, sigma, ceiling = rng.gauss(1.65, 0.5), math.exp(rng.gauss(math.log(5), 0.6)), rng.choice([1, 1, 1, 0.9, 0.95])
        years, tests = rng.choice([0, 0, 0.5]), []
        for _ in range(rng.choice([0, 1, 1, 2, 3, 4, 6])):
            n = rng.choice([10, 20, 25, 50, 100, 400])
            p = ceiling * float(scipy.special.ndtr(ki - years / sigma))
            tests.append({"years": years, "sown": n, "normal": sum(rng.random() < p for _ in range(n))})
            years = round(years + rng.uniform(0.5, 4), 1)
        g = {
            "tests": tests,
            "prior": {
                "Ki": {"mean": rng.choice([1.65, 1.3, 2]), "sd": rng.choice([0.3, 0.5, 1])},
                "lnSigmaYears": {"mean": round(math.log(rng.choice([1, 3, 5, 10])), 3), "sd": rng.choice([0.4, 0.8, 1.2])},
            },
            "threshold": rng.choice([0.75, 0.5, 0.85, {"ofInitial": 0.85}, {"ofInitial": 0.5}]),
        }
        if ceiling < 1:
            g["ceiling"] = ceiling
        cases.append({"input": g, "expected": viability_forecast(g)})
    return cases


def main():
    origin = "tests/reference/make_references.py (Python fractions, SciPy, mpmath at 30 digits), fixed random seed"
    write("effective-size", origin, effective_size_cases(random.Random(1), 300))
    write("lineage", origin, lineage_cases(random.Random(2), 80))
    ks = [2, 3, 4, 5, 6, 8, 10, 20, 100, 1000]
    write(
        "studentized-range",
        origin,
        [{"k": k, "quantile975": float(range_quantile(k)), "cdfAt3": float(range_cdf(mp.mpf(3), k))} for k in ks],
    )
    write("germination-test", origin, germination_test_cases(random.Random(3), 300))
    write("germination-compare", origin, germination_compare_cases(random.Random(4), 300))
    write("off-types", origin, off_type_cases(random.Random(5), 300))
    write("sowing-count", origin, sowing_count_cases(random.Random(6), 300))
    write("viability-forecast", origin, viability_forecast_cases(random.Random(7), 100))


if __name__ == "__main__":
    main()
