"""What to keep back, what dry seed weighs, thousand-seed weight, in exact fractions. See make_references.py."""

import math
from fractions import Fraction as Fr


def reserve_cases(rng, count):
    cases = []
    for _ in range(count):
        s = rng.choice([1, 12, 97, 340, rng.randint(1, 5000)])
        g = {"seedsPerGrowOut": s}
        usual = {"growOuts": 1, "tests": 2, "seedsPerTest": 50, "duplicates": 1, "archive": 50}
        for key in usual:
            if rng.random() < 0.5:
                g[key] = rng.randint(1 if key == "seedsPerTest" else 0, 6 if key != "archive" else 200)
        v = {**usual, **g}
        parts = {
            "growOuts": v["growOuts"] * s,
            "tests": v["tests"] * v["seedsPerTest"],
            "duplicates": v["duplicates"] * s,
            "archive": v["archive"],
        }
        cases.append({"input": g, "expected": {"seeds": sum(parts.values()), "parts": parts}})
    return cases


def dry_to_cases(rng, count):
    cases = []
    for _ in range(count):
        m = round(rng.uniform(1, 60), rng.randint(0, 2))
        target = round(rng.uniform(0, m - 0.5), rng.randint(0, 2))
        if target >= m:
            continue
        g = {"grams": round(rng.uniform(0.01, 30000), rng.randint(0, 3)) or 1, "moisturePercent": m, "targetPercent": target}
        grams = Fr(str(g["grams"])) * (100 - Fr(str(m))) / (100 - Fr(str(target)))
        cases.append({"input": g, "expected": {"targetGrams": float(grams)}})
    return cases


def thousand_seed_weight_cases(rng, count):
    cases = []
    for _ in range(count):
        counts = [
            {"seeds": rng.choice([50, 100, 100, rng.randint(1, 900)]), "grams": round(rng.uniform(0.02, 60), rng.randint(2, 4))}
            for _ in range(rng.randint(1, 9))
        ]
        seeds, grams = sum(c["seeds"] for c in counts), sum(Fr(str(c["grams"])) for c in counts)
        each = [Fr(str(c["grams"])) / c["seeds"] for c in counts]
        cv = None
        if len(each) > 1:
            mean = sum(each) / len(each)
            cv = 100 * math.sqrt(sum((w - mean) ** 2 for w in each) / (len(each) - 1)) / float(mean)
        e = {"thousandSeedGrams": float(1000 * grams / seeds), "cvPercent": cv, "seedsPerGram": float(seeds / grams)}
        cases.append({"input": {"counts": counts}, "expected": e})
    return cases
