"""Flowering that meets and pollen that comes in from elsewhere. See make_references.py.

Written from the formulas with other tools than ours: quadrature of 30 digits by mpmath over the minimum itself (no crossing points),
and the pollen of a rectangle as an integral over the arc of each distance (the kernel's plane in polar coordinates), by SciPy.
"""

import math

import mpmath as mp
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
        s, o, f = curve(given["stigma"]), curve(given["ownPollen"]), curve(given["foreignPollen"])
        delta = f[0] - s[0]
        # where both curves are alike is found by bisection, so that no panel lies across the corner of the minimum
        corners = corners_between(s, f)
        overlap = mp.quad(lambda t: min(normal(t, *s), normal(t, *f)), sorted(set(cuts([s, f]) + corners)))
        share = None
        if "loadRatio" in given:
            rho = mp.mpf(given["loadRatio"])

            def met(t):
                ratio = mp.log(rho) + mp.log(o[1] / f[1]) + ((t - o[0]) / o[1]) ** 2 / 2 - ((t - f[0]) / f[1]) ** 2 / 2
                return normal(t, *s) / (1 + mp.exp(-ratio))

            # it may turn from all to nothing within hours: close panels, and one bound on each turn
            low, high = s[0] - 10 * s[1], s[0] + 10 * s[1]
            turns = [t + k * mp.mpf(1) / 20 for t in corners_between(o, f, rho) for k in (-2, -1, 0, 1, 2)]
            places = sorted({low + (high - low) * i / 60 for i in range(61)} | {t for t in turns if low < t < high})
            share = float(mp.quad(met, places)) if rho > 0 else 0.0
        expected = {
            "overlap": float(overlap),
            "synchrony": float(mp.exp(-delta * delta / (2 * (f[1] ** 2 + s[1] ** 2)))),
            "daysApart": float(delta),
            "share": share,
        }
        cases.append({"input": given, "expected": expected})
    return cases


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
    return d * d * math.exp(lz) / (2 * math.pi) * (q**-0.5 + p**0.5) / q * math.exp(l * d * r - math.sqrt(p * q)) * ive(0, l * d * r)


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
    return sum(quad(along, a, b, epsrel=1e-7, epsabs=1e-14, limit=200)[0] for a, b in zip(corners, corners[1:]) if b - a > 1e-12)


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
