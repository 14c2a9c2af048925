"""Choosing plants, what it may bring and what came of it. See make_references.py."""

import math
from fractions import Fraction as Fr
from functools import lru_cache

import numpy as np
from scipy import integrate, special, stats


def choose_plants_cases(rng, count):
    cases = []
    for _ in range(count):
        n = rng.randint(1, 14)
        cells = [None, "A", "B", "C"]
        keys = ["height", "ears", "score"][: rng.randint(1, 3)]
        plants = []
        for i in range(n):
            p = {"id": f"p{i}", "scores": {}}
            cell = rng.choice(cells)
            if cell is not None:
                p["cell"] = cell
            for k in keys:
                r = rng.random()
                if r < 0.75:
                    p["scores"][k] = rng.randint(1, 9)
                elif r < 0.85:
                    p["scores"][k] = None
            plants.append(p)
        traits = [
            {"key": k, "weight": rng.choice([0, 1, 1, 2, 5]), "better": rng.choice(["higher", "lower", {"target": 5}])} for k in keys
        ]
        if all(t["weight"] == 0 for t in traits):
            traits[0]["weight"] = 1
        within = rng.random() < 0.8
        given = {"plants": plants, "traits": traits, "keep": rng.randint(1, n)}
        if not within or rng.random() < 0.3:
            given["withinCells"] = within
        cases.append({"input": given, "expected": chosen(plants, traits, given["keep"], within)})
    return cases


def chosen(plants, traits, keep, within):
    """Squares as exact fractions; only the root of s is taken in floating point."""
    total = sum(t["weight"] for t in traits)
    index, compared = {p["id"]: 0.0 for p in plants}, {p["id"]: 0 for p in plants}
    for t in traits:
        def value(p):
            x = p["scores"].get(t["key"])
            if x is None:
                return None
            b = t["better"]
            return x if b == "higher" else -x if b == "lower" else -abs(x - b["target"])

        groups = {}
        for p in plants:
            if value(p) is not None and (not within or "cell" in p):
                groups.setdefault(p["cell"] if within else "field", []).append(p)
        groups = [g for g in groups.values() if len(g) >= 2]
        d = {}
        for g in groups:
            mean = Fr(sum(value(p) for p in g), len(g))
            for p in g:
                d[p["id"]] = value(p) - mean
        df = sum(len(g) for g in groups) - len(groups)
        s2 = sum(v * v for v in d.values()) / df if df else 0
        for pid, v in d.items():
            compared[pid] += t["weight"]
            if s2:
                index[pid] += t["weight"] * math.copysign(math.sqrt(v * v / s2), v)
    rows = []
    for p in plants:
        has = any(p["scores"].get(t["key"]) is not None for t in traits)
        rows.append([p["id"], index[p["id"]] / total if has else None, compared[p["id"]] / total])
    ok = [r for r in rows if r[1] is not None]
    def rank(r):
        return None if r[1] is None else 1 + sum(o[1] > r[1] + 1e-9 for o in ok)

    ranked = sorted(rows, key=lambda r: (rank(r) is None, rank(r) or 0, r[0]))
    kept, tied, left = [r[0] for r in ok], [], 0
    if len(ok) > keep:
        cut = sorted((r[1] for r in ok), reverse=True)[keep - 1]
        above = [r[0] for r in ok if r[1] > cut + 1e-9]
        at = [r[0] for r in ok if abs(r[1] - cut) <= 1e-9]
        kept, tied, left = (above + at, [], 0) if len(above) + len(at) <= keep else (above, at, keep - len(above))
    diff = {}
    for t in traits:
        every = [p["scores"][t["key"]] for p in plants if p["scores"].get(t["key"]) is not None]
        mine = [p["scores"][t["key"]] for p in plants if p["id"] in kept and p["scores"].get(t["key"]) is not None]
        diff[t["key"]] = float(Fr(sum(mine), len(mine)) - Fr(sum(every), len(every))) if mine else None
    return {
        "ranked": [{"id": r[0], "index": r[1], "rank": rank(r), "weightCompared": r[2]} for r in ranked],
        "kept": sorted(kept),
        "tied": sorted(tied),
        "placesLeft": left,
        "proportion": min(keep, len(ok)) / len(plants),
        "differential": diff,
    }


@lru_cache(maxsize=None)
def mean_of_largest(n, k):
    """(n/k) times the integral of x phi(x) P(fewer than k of the n - 1 others lie above x), by the trapezium rule over the whole line: for such
    a function its error falls faster than any power of the step, so a step and its half tell it. Where they are not alike to 1e-12, by
    adaptive quadrature (it never was needed)."""
    if k == n:
        return 0.0
    f = lambda x: x * stats.norm.pdf(x) * special.betainc(n - k, k, stats.norm.cdf(x))
    one, other = (n / k * math.fsum(f(np.arange(-12 * steps, 12 * steps + 1) / steps)) / steps for steps in (100, 200))
    if abs(one - other) < 1e-12:
        return other
    cuts = np.linspace(-9, 9, 37)
    return n / k * math.fsum(integrate.quad(f, a, b, epsabs=1e-14, epsrel=1e-12, limit=200)[0] for a, b in zip(cuts, cuts[1:]))


def selection_response_cases(rng, count):
    cases = []
    for _ in range(count):
        n = rng.choice([1, 2, 5, 10, 40, 200, 1000])
        k = rng.choice([1, n, rng.randint(1, n), max(1, n // 10)])
        g = {"candidates": n, "kept": k, "heritability": round(rng.random(), 3), "phenotypicSd": round(rng.uniform(0, 40), 2)}
        g["control"] = rng.choice(["seed-parents", "both-parents"])
        if rng.random() < 0.5:
            g["selfingRate"] = rng.choice([0, 0.1, 0.9, 1])
        p = k / n
        i = mean_of_largest(n, k)
        c = 1 if g["control"] == "both-parents" else (1 + g.get("selfingRate", 0)) / 2
        infinite = 0 if k == n else stats.norm.pdf(stats.norm.isf(p)) / p
        e = {"proportion": p, "intensityInfinite": infinite, "intensity": i, "response": i * g["heritability"] * g["phenotypicSd"] * c}
        cases.append({"input": g, "expected": e})
    return cases


def realised_heritability_cases(rng, count):
    cases = []
    for _ in range(count):
        T = rng.randint(3, 12)
        cycles = [{"differential": round(rng.uniform(0.1, 4), 2), "mean": round(rng.uniform(-5, 5) + t, 2)} for t in range(T)]
        if rng.random() < 0.5:
            del cycles[-1]["differential"]
        g = {"cycles": cycles}
        S = np.cumsum([c["differential"] for c in cycles[:-1]])
        R = np.array([c["mean"] - cycles[0]["mean"] for c in cycles[1:]])
        h = (S @ R) / (S @ S)
        se = math.sqrt(((R - h * S) @ (R - h * S)) / (len(S) - 1) / (S @ S))
        e = {"heritability": h, "standardError": se, "withDrift": None}
        e["cumulative"] = [{"differential": s, "response": r} for s, r in zip(S, R)]
        if rng.random() < 0.6:
            va, ne, vp = round(rng.uniform(0, 3), 3), rng.choice([4.5, 30, 200]), round(rng.uniform(0.1, 9), 3)
            M = [rng.randint(1, 300) for _ in cycles]
            g["drift"] = {"additiveVariance": va, "effectiveSize": ne, "phenotypicVariance": vp, "measured": M}
            t = np.arange(1, T)
            V = np.minimum.outer(t, t) * va / ne + vp / M[0] + np.diag([vp / m for m in M[1:]])
            W = np.linalg.inv(V)
            e["withDrift"] = {"heritability": (S @ W @ R) / (S @ W @ S), "standardError": 1 / math.sqrt(S @ W @ S)}
        cases.append({"input": g, "expected": e})
    return cases
