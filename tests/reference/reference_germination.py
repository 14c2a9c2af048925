"""Germination tests: whole numbers and quadrature of 30 digits. See make_references.py."""

from fractions import Fraction as Fr
from math import comb

import mpmath as mp
import scipy.stats

mp.mp.dps = 30


# ---- germination: integers and 30 digits ----------------------------------------------------------------------------


def beta_inv(p, a, b):
    """Quantile of Beta(a, b): Newton's steps on the regularised incomplete beta from where SciPy would have it. A step's error is of the
    order of its square, so the last one, below 1e-13 of the quantile, tells it. Where that is not reached, bisection; SciPy's own
    where the function does not converge."""
    near = float(scipy.stats.beta.ppf(float(p), float(a), float(b)))
    if a + b > 2500:
        return mp.mpf(near)
    p, at = mp.mpf(p), mp.mpf(near)
    for _ in range(4):
        if not 0 < at < 1:
            break
        slope = mp.exp((a - 1) * mp.log(at) + (b - 1) * mp.log1p(-at)) / mp.beta(a, b)
        step = (mp.betainc(a, b, 0, at, regularized=True) - p) / slope
        at -= step
        if abs(step) < mp.mpf(10) ** -13 * min(at, 1 - at):
            return at
    low, high = mp.mpf(0), mp.mpf(1)
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
    """P(range ≥ the one seen) in whole numbers: the ways to the total by counts of a to b are a coefficient of (Σ C(n, j) xʲ)ᵏ, read off
    where x is a power of two so large that no coefficient reaches the next."""
    k, total, seen = len(counts), sum(counts), max(counts) - min(counts)
    if seen == 0:
        return 1.0
    every = comb(k * n, total)
    bits = k * n + 1

    def ways(a, b):
        if not k * a <= total <= k * b:
            return 0
        packed = sum(comb(n, j) << bits * (j - a) for j in range(a, b + 1)) ** k
        return packed >> bits * (total - k * a) & (1 << bits) - 1

    within = 0
    for m in range(0, n + 1):
        top = min(n, m + seen - 1)
        within += ways(m, top) - ways(m + 1, top)
    return float(1 - Fr(within, every))


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


def germination_speed_cases(rng, count):
    cases = []
    for _ in range(count):
        sown = rng.choice([10, 25, 50, 100])
        days = sorted(rng.sample(range(1, 60), rng.randint(1, 12)))
        days = [d / 2 if rng.random() < 0.3 and 2 * d not in days else d for d in days]
        days = sorted(set(days))
        left, counts = sown, []
        for d in days:
            n = 0 if rng.random() < 0.15 else rng.randint(0, max(0, left // 2))
            left -= n
            counts.append({"day": d, "newlyGerminated": n})
        total = sum(c["newlyGerminated"] for c in counts)
        t50 = mean = index = None
        if total:
            half, day, cum = Fr(total, 2), Fr(0), Fr(0)
            for c in counts:
                nd, ncum = Fr(c["day"]), cum + c["newlyGerminated"]
                if ncum >= half:
                    t50 = float(day + (half - cum) * (nd - day) / (ncum - cum))
                    break
                day, cum = nd, ncum
            mean = float(sum(Fr(c["day"]) * c["newlyGerminated"] for c in counts) / total)
            index = float(sum(Fr(c["newlyGerminated"]) / Fr(c["day"]) for c in counts))
        expected = {"germinated": total, "finalShare": total / sown, "t50": t50, "meanTime": mean, "index": index}
        cases.append({"input": {"sown": sown, "counts": counts}, "expected": expected})
    return cases
