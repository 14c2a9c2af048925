"""Off-types found, their trend and their fate, and the agreement of scorers. See make_references.py."""

import math
from fractions import Fraction as Fr

import mpmath as mp
from reference_germination import beta_inv, exact_interval

mp.mp.dps = 30


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


def off_type_trend_cases(rng, count):
    cases = []
    for _ in range(count):
        years = []
        for y in rng.sample(range(1990, 2026), rng.randint(2, 8)):
            n = rng.choice([1, 20, 150, 400])
            years.append({"year": y, "looked": n, "found": sum(rng.random() < rng.choice([0, 0.02, 0.1]) for _ in range(n))})
        if rng.random() < 0.05:
            years = [{**y, "year": 2000} for y in years]
        N, k = sum(y["looked"] for y in years), sum(y["found"] for y in years)
        f, mean = Fr(k, N), Fr(sum(y["year"] * y["looked"] for y in years), N)
        T = sum(y["year"] * (y["found"] - y["looked"] * f) for y in years)
        V = f * (1 - f) * sum(y["looked"] * (y["year"] - mean) ** 2 for y in years)
        z = p = None
        if V > 0:
            z = mp.mpf(T.numerator) / T.denominator / mp.sqrt(mp.mpf(V.numerator) / V.denominator)
            p = float(mp.erfc(abs(z) / mp.sqrt(2)))
            z = float(z)
        cases.append({"input": {"years": years}, "expected": {"share": float(f), "z": z, "pValue": p}})
    return cases


def off_type_frequency_cases(rng, count):
    cases = []
    for _ in range(count):
        q = Fr(str(rng.choice([0, 0.02, 0.2, 0.5, 0.95, round(rng.random() * 0.99, 3)])))
        t = rng.choice([0, 1, 5, 15])
        kind, rogued = rng.choice(["recessive", "dominant"]), rng.choice(["before-pollen", "after-pollen"])
        g = {"frequency": float(q), "generations": t, "kind": kind, "rogued": rogued}
        # genotypes of the plants, mated one by one: shares of aa, Aa, AA (a: the unwanted form)
        state = {0: (1 - q) ** 2, 1: 2 * q * (1 - q), 2: q * q}
        shows = (lambda n: n == 2) if kind == "recessive" else (lambda n: n > 0)
        qs, shares = [], []
        for _ in range(t + 1):
            qs.append(float(state[1] / 2 + state[2]))
            shares.append(float(sum(v for n, v in state.items() if shows(n))))
            kept = {n: v for n, v in state.items() if not shows(n)}
            pollen = kept if rogued == "before-pollen" else state
            side = lambda plants: sum(v * n for n, v in plants.items()) / 2 / sum(plants.values())
            f, m = side(kept), side(pollen)
            state = {0: (1 - f) * (1 - m), 1: f * (1 - m) + m * (1 - f), 2: f * m}
            if t == 15:
                state = {n: Fr(v).limit_denominator(10**30) for n, v in state.items()}
        cases.append({"input": g, "expected": {"alleleFrequency": qs, "offTypeShare": shares}})
    return cases


def scorer_agreement_cases(rng, count):
    cases = []
    for _ in range(count):
        low, high = rng.choice([(1, 9), (1, 5), (0, 3), (-2, 2), (1, 2)])
        n = rng.choice([1, 10, 19, 20, 30, 60])
        pairs = []
        for _ in range(n):
            a = rng.randint(low, high)
            b = min(high, max(low, a + rng.choice([-2, -1, 0, 0, 0, 1, 1])))
            pairs.append([a, b])
        if rng.random() < 0.1:
            pairs = [[low, low]] * n
        g = {"scale": [low, high], "pairs": pairs}
        if rng.random() < 0.6:
            g["weights"] = rng.choice(["quadratic", "linear"])
        power = 1 if g.get("weights") == "linear" else 2
        K = high - low + 1
        table = [[Fr(0)] * K for _ in range(K)]
        for a, b in pairs:
            table[a - low][b - low] += Fr(1, n)
        w = [[1 - Fr(abs(i - j), K - 1) ** power for j in range(K)] for i in range(K)]
        r = [sum(table[i]) for i in range(K)]
        c = [sum(table[i][j] for i in range(K)) for j in range(K)]
        po = sum(w[i][j] * table[i][j] for i in range(K) for j in range(K))
        pe = sum(w[i][j] * r[i] * c[j] for i in range(K) for j in range(K))
        kappa = se = None
        if pe != 1 and n >= 20:
            k = (po - pe) / (1 - pe)
            wr = [sum(w[i][j] * c[j] for j in range(K)) for i in range(K)]
            wc = [sum(w[i][j] * r[i] for i in range(K)) for j in range(K)]
            var = sum(table[i][j] * (w[i][j] - (wr[i] + wc[j]) * (1 - k)) ** 2 for i in range(K) for j in range(K))
            var = (var - (k - pe * (1 - k)) ** 2) / (n * (1 - pe) ** 2)
            kappa, se = float(k), math.sqrt(var)
        expected = {
            "exact": sum(a == b for a, b in pairs) / n,
            "withinOne": sum(abs(a - b) <= 1 for a, b in pairs) / n,
            "meanDifference": sum(b - a for a, b in pairs) / n,
            "kappa": kappa,
            "standardError": se,
        }
        cases.append({"input": g, "expected": expected})
    return cases
