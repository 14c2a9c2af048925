"""Moisture of seed from its air, and its life at a moisture and temperature. See make_references.py."""

import mpmath as mp

mp.mp.dps = 30


def seed_moisture_cases(rng, count):
    cases = []
    for _ in range(count):
        rh = rng.choice([0, 0.5, 13, 35, 50.5, 69, 95, round(rng.uniform(0, 99.9), 2)])
        t = rng.choice([-18, 0, 5, 20.3, 25, 40, round(rng.uniform(-30, 60), 1)])
        oil = rng.choice([0, 2, 5, 22, 29, 45, round(rng.uniform(0, 70), 1)])
        me = (1 - mp.mpf(str(oil)) / 100) / (mp.mpf("1.1") + mp.mpf(str(t)) / 90) * mp.sqrt(-440 * mp.log(1 - mp.mpf(str(rh)) / 100))
        g = {"relativeHumidityPercent": rh, "temperatureC": t, "oilPercent": oil}
        cases.append({"input": g, "expected": {"moisturePercent": float(100 * me / (100 + me))}})
    return cases


def viability_cases(rng, count):
    species = [(9.993, 5.993), (9.381, 5.379), (8.498, 4.836), (8.096, 4.246), (8.037, 5.152)]
    cases = []
    for _ in range(count):
        ke, cw = rng.choice(species)
        m, t = round(rng.uniform(2, 20), 2), round(rng.uniform(-20, 45), 1)
        g = {"constants": {"KE": ke, "CW": cw, "CH": 0.0322, "CQ": 0.000454}, "moisturePercent": m, "temperatureC": t}
        if rng.random() < 0.7:
            g["initialViability"] = rng.choice([0.5, 0.85, 0.95, 0.99, 0.999, round(rng.uniform(0.01, 0.99), 3)])
            ki = quantile(mp.mpf(str(g["initialViability"])))
        else:
            g["Ki"] = round(rng.uniform(-2, 5), 3)
            ki = mp.mpf(str(g["Ki"]))
        T = mp.mpf(str(t))
        sigma = mp.power(10, mp.mpf(str(ke)) - mp.mpf(str(cw)) * mp.log10(mp.mpf(str(m))) - mp.mpf("0.0322") * T - mp.mpf("0.000454") * T**2)
        e = {"Ki": float(ki), "sigmaDays": float(sigma), "viabilityAfter": None, "daysToThreshold": None}
        if rng.random() < 0.8:
            g["days"] = rng.choice([0, 30, 365, 3650, 40000])
            e["viabilityAfter"] = float(mp.ncdf(ki - g["days"] / sigma))
        if rng.random() < 0.8:
            g["threshold"] = rng.choice([0.5, 0.7, 0.85, 0.99])
            e["daysToThreshold"] = float(max(mp.mpf(0), (ki - quantile(mp.mpf(str(g["threshold"])))) * sigma))
        cases.append({"input": g, "expected": e})
    return cases


def quantile(p):
    return mp.sqrt(2) * mp.erfinv(2 * p - 1)
