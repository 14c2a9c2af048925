"""Seeds to sow and the life of a lot: sums over every outcome, fine grids. See make_references.py."""

import math
from fractions import Fraction as Fr

import mpmath as mp
import numpy as np
import scipy.interpolate
import scipy.optimize
import scipy.special
import scipy.stats


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


def chance_to_60_digits(m, wanted, x, n, e):
    """The same: j of m seeds germinate with C(m, j) B(j+x+½, m−j+n−x+½)/B(x+½, n−x+½), of which Binomial(j, e) come up."""
    a, b, e = mp.mpf(2 * x + 1) / 2, mp.mpf(2 * (n - x) + 1) / 2, mp.mpf(str(e))
    weight, total, chance = mp.mpf(1), mp.mpf(0), mp.mpf(0)
    last, enough = e**wanted, mp.mpf(0)  # the last of the plants wanted came up from seed j; P(Binomial(j, e) ≥ wanted)
    for j in range(m + 1):
        if j >= wanted:
            enough += last
            last *= (1 - e) * j / (j - wanted + 1)
        total += weight
        chance += weight * enough
        if j < m:
            weight *= mp.mpf(m - j) / (j + 1) * (a + j) / (b + m - j - 1)
    return chance / total


def sowing_count(g):
    x, n = g["test"]["normal"], g["test"]["sown"]
    e, c, wanted = g.get("emergence", 1), g.get("confidence", 0.9), g["plantsWanted"]
    chance = lambda m: chance_of_plants(m, wanted, x, n, e)
    low, high = wanted - 1, 2 * wanted

    def enough(m):
        """At the edge, where rounding would decide, more digits do."""
        near = chance(m)
        if abs(near - c) > 1e-10:
            return near >= c
        with mp.workdps(60):
            return chance_to_60_digits(m, wanted, x, n, e) >= mp.mpf(str(c)) - mp.mpf(10) ** -40

    while not enough(high):
        low, high = high, 2 * high
        if high > 200000:
            return None
    while high - low > 1:
        mid = (low + high) // 2
        low, high = (low, mid) if enough(mid) else (mid, high)
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


# ---- viability-forecast: a fine grid, its mass summed up ---------------------------------------------------------------


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


def settled_grid(g, rough, fine):
    """The posterior on fine x fine cells over all of it that is above e^-28 of its top, found by three grids that close in on it."""
    prior = g["prior"]
    box = [(prior[key]["mean"] - 9 * prior[key]["sd"], prior[key]["mean"] + 9 * prior[key]["sd"]) for key in ("Ki", "lnSigmaYears")]
    for size in (rough, rough, fine):
        k, l = (np.linspace(low, high, size) for low, high in box)
        K, L, value = posterior_grid(g, k, l)
        keep = value > value.max() - 28
        dk, dl = k[1] - k[0], l[1] - l[0]
        ks, ls = np.where(keep.any(axis=1))[0], np.where(keep.any(axis=0))[0]
        box = [(k[ks[0]] - dk, k[ks[-1]] + dk), (l[ls[0]] - dl, l[ls[-1]] + dl)]
    return k, l, K, L, np.exp(value - value.max())


def viability_forecast(g, quick=False):
    ceiling, threshold = g.get("ceiling", 1), g["threshold"]
    k, l, K, L, w = settled_grid(g, *((160, 240) if quick else (500, 1600)))
    w /= w.sum()
    mk, ml = (w * K).sum(), (w * L).sum()
    # for each sigma the life is below y years where Ki is below a limit; the mass up to it is read from the sums along Ki
    places = np.linspace(k[0], k[-1], 20000)
    least = threshold["ofInitial"] * scipy.special.ndtr(places) if isinstance(threshold, dict) else min(1, threshold / ceiling)
    ahead = places - scipy.special.ndtri(least)
    if quick:
        below = splines_below(k, w)
    else:
        sums = np.concatenate([np.zeros((1, len(l))), np.cumsum((w[1:] + w[:-1]) / 2, axis=0)])
        below = lambda limits: sum(np.interp(limit, k, sums[:, i]) for i, limit in enumerate(limits)) / sums[-1].sum()

    def below_years(years):
        return float(below(np.interp(years * np.exp(-l), ahead, places)))

    def quantile(p):
        if below_years(0) >= p:
            return 0.0
        high = 1.0
        while below_years(high) < p:
            high *= 2
        return float(scipy.optimize.brentq(lambda y: below_years(y) - p, 0, high, xtol=1e-9, rtol=1e-9))

    now = below_years(max([t["years"] for t in g["tests"]], default=0))
    return {
        "Ki": {"mean": float(mk), "sd": float(math.sqrt((w * (K - mk) ** 2).sum()))},
        "lnSigmaYears": {"mean": float(ml), "sd": float(math.sqrt((w * (L - ml) ** 2).sum()))},
        "yearsToThreshold": {"median": quantile(0.5), "low": quantile(0.05), "high": quantile(0.95)},
        "probabilityBelowNow": now,
    }


def splines_below(k, w):
    """The mass below one limit for each column of w, whose densities along k are read as cubic splines."""
    pieces = scipy.interpolate.CubicSpline(k, w, axis=0).antiderivative()
    coefficients, columns, total = pieces.c, np.arange(w.shape[1]), pieces(k[-1]).sum()

    def below(limits):
        at = np.clip(np.searchsorted(k, limits, side="right") - 1, 0, len(k) - 2)
        c, d = coefficients[:, at, columns], limits - k[at]
        return ((((c[0] * d + c[1]) * d + c[2]) * d + c[3]) * d + c[4]).sum() / total

    return below


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
        cases.append({"input": g, "expected": viability_forecast(g, mp.mp.dps < 20)})
    return cases
