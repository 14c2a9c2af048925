"""Flowering that meets and pollen that comes in from elsewhere. See make_references.py.

Written from the formulas with other tools than ours: quadrature of 30 digits by mpmath over the minimum itself (no crossing points),
and the pollen of a rectangle as an integral over the arc of each distance (the kernel's plane in polar coordinates), by SciPy.
"""

import math

import mpmath as mp
import numpy as np
import scipy.optimize
import scipy.special
from scipy.integrate import quad
from scipy.special import ive

mp.mp.dps = 30


def curve(days):
    if "sd" in days:
        return mp.mpf(days["peak"]), mp.mpf(days["sd"])
    first, last = mp.mpf(days["first"]), mp.mpf(days["last"])
    return mp.mpf(days["peak"]) if "peak" in days else (first + last) / 2, (last - first) / 4


def normal(t, m, s):
    return mp.exp(-((t - m) ** 2) / (2 * s * s)) / (s * mp.sqrt(2 * mp.pi))


def cuts(curves):
    places = sorted({m + k * s for m, s in curves for k in (-14, -6, -3, -1, 0, 1, 3, 6, 14)})
    return places


def some_days(rng):
    kind = rng.random()
    first = rng.randint(170, 230)
    last = first + rng.choice([3, 6, 9, 14, 30, 60])
    if kind < 0.4:
        return {"peak": rng.randint(180, 215) + rng.choice([0, 0.5]), "sd": rng.choice([1, 2, 2.5, 4, 9])}
    if kind < 0.7:
        return {"first": first, "last": last}
    return {"first": first, "last": last, "peak": rng.randint(first, last)}


def flowering_overlap_cases(rng, count):
    cases = []
    for _ in range(count):
        given = {"stigma": some_days(rng), "ownPollen": some_days(rng), "foreignPollen": some_days(rng)}
        if rng.random() < 0.6:
            given["loadRatio"] = rng.choice([0, 0.01, 0.1, 1, 12])
        s, f = curve(given["stigma"]), curve(given["foreignPollen"])
        delta = f[0] - s[0]
        overlap, share = areas_in_doubles(given) if mp.mp.dps < 20 else areas(given)
        expected = {
            "overlap": float(overlap),
            "synchrony": float(mp.exp(-delta * delta / (2 * (f[1] ** 2 + s[1] ** 2)))),
            "daysApart": float(delta),
            "share": None if share is None else float(share),
        }
        cases.append({"input": given, "expected": expected})
    return cases


def areas(given):
    """Overlap and share by quadrature of 30 digits."""
    s, o, f = curve(given["stigma"]), curve(given["ownPollen"]), curve(given["foreignPollen"])
    # where both curves are alike is found by bisection, so that no panel lies across the corner of the minimum
    corners = corners_between(s, f)
    overlap = mp.quad(lambda t: min(normal(t, *s), normal(t, *f)), sorted(set(cuts([s, f]) + corners)))
    if "loadRatio" not in given:
        return overlap, None
    rho = mp.mpf(given["loadRatio"])
    if rho == 0:
        return overlap, mp.mpf(0)

    def met(t):
        ratio = mp.log(rho) + mp.log(o[1] / f[1]) + ((t - o[0]) / o[1]) ** 2 / 2 - ((t - f[0]) / f[1]) ** 2 / 2
        return normal(t, *s) / (1 + mp.exp(-ratio))

    # it may turn from all to nothing within hours: close panels, and one bound on each turn
    low, high = s[0] - 10 * s[1], s[0] + 10 * s[1]
    turns = [t + k * mp.mpf(1) / 20 for t in corners_between(o, f, rho) for k in (-2, -1, 0, 1, 2)]
    places = sorted({low + (high - low) * i / 60 for i in range(61)} | {t for t in turns if low < t < high})
    return overlap, mp.quad(met, places)


def areas_in_doubles(given):
    """The same in double precision (`--quick`), by Gauss's rule of 20 and of 32 points in close panels: where the two are not alike to 1e-11
    (relative) or 1e-14, by 30 digits after all."""
    s, o, f = ((float(m), float(d)) for m, d in (curve(given[key]) for key in ("stigma", "ownPollen", "foreignPollen")))
    density = lambda t, m, d: np.exp(-(((t - m) / d) ** 2) / 2) / (d * math.sqrt(2 * math.pi))
    found = [summed(lambda t: np.minimum(density(t, *s), density(t, *f)), [s, f], sign_changes(s, f, 1))]
    rho = given.get("loadRatio")
    if rho:
        from_own = lambda t: math.log(rho * o[1] / f[1]) + ((t - o[0]) / o[1]) ** 2 / 2 - ((t - f[0]) / f[1]) ** 2 / 2
        found.append(summed(lambda t: density(t, *s) * scipy.special.expit(from_own(t)), [s, o, f], sign_changes(o, f, rho)))
    if any(abs(one - other) > max(1e-14, 1e-11 * abs(other)) for one, other in found):
        with mp.workdps(30):
            return areas(given)
    return found[0][1], None if rho is None else found[1][1] if rho else 0.0


RULES = [np.polynomial.legendre.leggauss(points) for points in (20, 32)]


def summed(height, curves, turns):
    """The area under `height` over ten standard deviations of the first curve, by both rules, in panels of half the least and less near a turn."""
    (m, d), least = curves[0], min(d for _, d in curves)
    low, high = m - 10 * d, m + 10 * d
    near = {t + k / 20 for t in turns for k in range(-4, 5) if low < t + k / 20 < high}
    bounds = np.array(sorted({*np.linspace(low, high, 1 + math.ceil(40 * d / least)), *near}))
    middle, half = (bounds[1:] + bounds[:-1]) / 2, (bounds[1:] - bounds[:-1]) / 2
    return [float((half[:, None] * weights * height(middle[:, None] + half[:, None] * nodes)).sum()) for nodes, weights in RULES]


def sign_changes(one, other, times):
    """`corners_between` in double precision."""
    gap = lambda t: -(((t - one[0]) / one[1]) ** 2) / 2 + ((t - other[0]) / other[1]) ** 2 / 2 - math.log(one[1] * times / other[1])
    low, high = (side(m + k * d for m, d in (one, other)) for side, k in ((min, -15), (max, 15)))
    places = np.linspace(low, high, 801)
    heights = gap(places)
    between = np.where(heights[1:] * heights[:-1] < 0)[0]
    return [*places[heights == 0], *(scipy.optimize.brentq(gap, places[i], places[i + 1], xtol=1e-13) for i in between)]


def corners_between(one, other, times=1):
    """Days on which one curve equals `times` the other: a sign change between close places, then bisection."""
    if times == 0:
        return []
    gap = lambda t: -((t - one[0]) ** 2) / (2 * one[1] ** 2) - mp.log(one[1]) - mp.log(times) + ((t - other[0]) ** 2) / (2 * other[1] ** 2) + mp.log(other[1])
    low = min(one[0] - 15 * one[1], other[0] - 15 * other[1])
    high = max(one[0] + 15 * one[1], other[0] + 15 * other[1])
    steps = 800
    found = []
    before, at = gap(low), low
    for index in range(1, steps + 1):
        t = low + (high - low) * index / steps
        now = gap(t)
        if now == 0:
            found.append(t)
        elif before * now < 0:
            a, b = at, t
            for _ in range(90):
                middle = (a + b) / 2
                if gap(a) * gap(middle) <= 0:
                    b = middle
                else:
                    a = middle
            found.append((a + b) / 2)
        before, at = now, t
    return found


def density(kernel, r):
    if kernel["model"] == "2dt":
        a, b = kernel["a"], kernel["b"]
        return (b - 1) / (math.pi * a * a) * (1 + r * r / (a * a)) ** -b
    if kernel["model"] == "geometric":
        b = kernel["b"]
        return (b + 1) * (b + 2) / (2 * math.pi) * (1 + r) ** b
    d, l, lz = kernel["d"], kernel["l"], kernel["lz"]
    q, p = 1 + d * d * r * r, lz * lz + l * l
    return d * d * math.exp(lz) / (2 * math.pi) * (q**-0.5 + p**0.5) / q * np.exp(l * d * r - np.sqrt(p * q)) * ive(0, l * d * r)


def over_rectangle(kernel, x, y, rect):
    """The integral of g over a rectangle: for each bearing from the place, g·r along the ray from where it enters to where it leaves."""
    x0, x1 = rect["x"] - x, rect["x"] + rect["width"] - x
    y0, y1 = rect["y"] - y, rect["y"] + rect["height"] - y

    def along(theta):
        c, s = math.cos(theta), math.sin(theta)
        low, high = 0.0, math.inf
        for direction, a, b in ((c, x0, x1), (s, y0, y1)):
            if abs(direction) < 1e-15:
                if a > 0 or b < 0:
                    return 0.0
                continue
            near, far = sorted((a / direction, b / direction))
            low, high = max(low, near), min(high, far)
        if high <= low:
            return 0.0
        marks = [m for m in (0.5, 2, 8, 30, 120) if low < m < high]
        return quad(lambda r: r * density(kernel, r), low, high, points=marks or None, epsrel=1e-8, limit=200)[0]

    corners = sorted({math.atan2(b, a) for a in (x0, x1) for b in (y0, y1)} | {-math.pi, -math.pi / 2, 0, math.pi / 2, math.pi})
    bearings = [(a, b) for a, b in zip(corners, corners[1:]) if b - a > 1e-12]
    if mp.mp.dps < 20:
        one, other = (rays_summed(kernel, (x0, x1, y0, y1), bearings, rules) for rules in RAY_RULES)
        if abs(one - other) < 1e-7 * other + 1e-14:
            return other
    return sum(quad(along, a, b, epsrel=1e-7, epsabs=1e-14, limit=200)[0] for a, b in bearings)


# Gauss's rules for the bearings and along a ray, a coarser pair and a finer one: where they differ by more than 1e-7, adaptive quadrature after all
RAY_RULES = [[np.polynomial.legendre.leggauss(points) for points in pair] for pair in ((14, 30), (20, 44))]


def rays_summed(kernel, sides, bearings, rules):
    """The same over fixed bearings and places (`--quick`), r = sinh v along the ray, so that near and far weigh alike."""
    x0, x1, y0, y1 = sides
    (nodes, weights), (along, along_weights) = rules
    a, b = np.array(bearings).T[:, :, None]
    theta, width = ((b + a) / 2 + (b - a) / 2 * nodes).ravel(), ((b - a) / 2 * weights).ravel()
    c, s = np.cos(theta), np.sin(theta)
    across, up = np.sort([x0 / c, x1 / c], axis=0), np.sort([y0 / s, y1 / s], axis=0)
    low, high = np.maximum(np.maximum(across[0], up[0]), 0), np.minimum(across[1], up[1])
    met = high > low
    v0, v1 = np.arcsinh(low[met])[:, None], np.arcsinh(high[met])[:, None]
    v = (v1 + v0) / 2 + (v1 - v0) / 2 * along
    r = np.sinh(v)
    return float((width[met] * ((v1 - v0) / 2 * along_weights * r * density(kernel, r) * np.cosh(v)).sum(axis=1)).sum())


KERNELS = [{"model": "2dt", "a": 1.55, "b": 1.45}, {"model": "geometric", "b": -2.59}, {"model": "nig", "d": 0.2073, "l": 0.3971, "lz": 0.0649}]


def plane_case(rng):
    side = rng.choice([6, 20, 50])
    plot = {"x": 0, "y": 0, "width": side, "height": rng.choice([side, side / 2])}
    sources = []
    for index in range(rng.choice([0, 1, 1, 2, 3])):
        size, gap = rng.choice([2, 10, 100]), rng.choice([1, 10, 60, 400])
        place = rng.choice([(side + gap, -size / 2), (-gap - size, 0), (3, plot["height"] + gap), (-gap - size, -gap - size)])
        source = {"id": f"s{index}", "x": place[0], "y": place[1], "width": size, "height": size, "overlap": rng.choice([1, 0.5273, 0]), "compatibility": rng.choice([1, 0.2])}
        if rng.random() < 0.3:
            source["shedding"] = rng.choice([0, 0.5])
        sources.append(source)
    given = {"form": "plane", "kernel": rng.choice(KERNELS), "plot": plot, "sources": sources}
    if rng.random() < 0.5:
        given["points"] = rng.choice([1, 2, 4])
    if rng.random() < 0.3:
        given["ownBorders"] = [{"x": -3, "y": 0, "width": 3, "height": plot["height"]}]
        given["sources"] = [s for s in sources if s["x"] + s["width"] <= -3 or s["x"] >= 0]
    n = given.get("points", 3)
    if n > 2 and rng.random() < 0.5:
        n = given["points"] = 1
    parts = [0.0] * len(given["sources"])
    for i in range(n):
        for j in range(n):
            x, y = (i + 0.5) / n * plot["width"], (j + 0.5) / n * plot["height"]
            own = sum(over_rectangle(given["kernel"], x, y, r) for r in [plot] + given.get("ownBorders", []))
            each = [s["overlap"] * s["compatibility"] * s.get("shedding", 1) * over_rectangle(given["kernel"], x, y, s) for s in given["sources"]]
            for k, e in enumerate(each):
                parts[k] += e / (own + sum(each)) / n**2
    return given, parts, 5


def odds_case(rng):
    if rng.random() < 0.5:
        measured = [(3, 0.21), (12, 0.06), (40, 0.011), (150, 0.002)]
        curve = {"points": [{"distanceMetres": d, "share": p} for d, p in measured[: rng.choice([2, 3, 4])]]}
    else:
        curve = rng.choice([{"a": 0.1628, "b": -0.6067, "cap": 0.5}, {"a": 2.2375, "b": -1.2392, "cap": 0.5}])
    given = {"form": "odds", "curve": curve, "plotSize": rng.choice([4, 30, 1200]), "sources": []}
    for index in range(rng.choice([0, 1, 2, 4])):
        given["sources"].append({"id": f"s{index}", "distanceMetres": rng.choice([0, 1, 7, 12, 80, 900]), "size": rng.choice([1, 60, 20000]), "overlap": rng.choice([1, 0.3]), "compatibility": rng.choice([1, 0.05, 0])})
    terms = []
    for s in given["sources"]:
        p = share_at(curve, s["distanceMetres"])
        terms.append(p / (1 - p) * min(10, max(0.1, s["size"] / given["plotSize"])) * s["overlap"] * s["compatibility"])
    return given, [t / (1 + sum(terms)) for t in terms], 10


def share_at(curve, d):
    if "cap" in curve:
        return curve["cap"] if d == 0 else min(curve["cap"], curve["a"] * d ** curve["b"])
    p = curve["points"]
    if d <= p[0]["distanceMetres"]:
        return p[0]["share"]
    pairs = list(zip(p, p[1:]))
    one, other = next(((a, b) for a, b in pairs if d <= b["distanceMetres"]), pairs[-1])
    part = (math.log(d) - math.log(one["distanceMetres"])) / (math.log(other["distanceMetres"]) - math.log(one["distanceMetres"]))
    return math.exp((1 - part) * math.log(one["share"]) + part * math.log(other["share"]))


def pollen_risk_cases(rng, planes, odds):
    cases = []
    for make in [plane_case] * planes + [odds_case] * odds:
        given, parts, factor = make(rng)
        if rng.random() < 0.3:
            factor = given["uncertaintyFactor"] = rng.choice([1, 2, 100])
        share = sum(parts)
        largest = None
        for s, part in zip(given["sources"], parts):
            if largest is None or part > largest[1]:
                largest = (s["id"], part)
        expected = {
            "foreignShare": share,
            "range": {"low": share / factor, "high": min(1.0, share * factor)},
            "bySource": [{"id": s["id"], "share": part} for s, part in zip(given["sources"], parts)],
            "largest": largest and largest[0],
        }
        cases.append({"input": given, "expected": expected})
    return cases


def bessel_cases():
    return [{"x": x, "scaled": float(mp.besseli(0, mp.mpf(x)) * mp.exp(-mp.mpf(x)))} for x in (0, 0.01, 0.5, 3, 12, 29.9, 30.1, 45, 300, 5000)]
