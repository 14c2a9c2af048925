"""A choice among scored plants made by hand and rank together. See make_references.py."""

from fractions import Fraction as Fr

from reference_selection import choose_plants_cases, chosen


def choice_of_plants_cases(rng, count):
    cases = []
    for case in choose_plants_cases(rng, count):
        given = case["input"]
        plants, traits, within = given["plants"], given["traits"], given.get("withinCells", True)
        ids = [p["id"] for p in plants]
        barred = [i for i in ids if rng.random() < 0.15]
        taken = [i for i in ids if rng.random() < 0.15]
        given = {"plants": plants, "traits": traits, "keep": given["keep"], "withinCells": within, "barred": barred, "taken": taken}
        cases.append({"input": given, "expected": choice(plants, traits, given["keep"], within, set(barred), set(taken))})
    return cases


def choice(plants, traits, keep, within, barred, taken):
    rows = chosen(plants, traits, 1, within)["ranked"]
    able = [r for r in rows if r["index"] is not None and r["weightCompared"] > 0]
    by_hand = [p["id"] for p in plants if p["id"] in taken and p["id"] not in barred]
    rest = [r for r in able if r["id"] not in barred and r["id"] not in by_hand]
    places = keep - len(by_hand)
    kept, tied, left = [], [], 0
    if places > 0:
        kept = [r["id"] for r in rest]
        if len(rest) > places:
            cut = sorted((r["index"] for r in rest), reverse=True)[places - 1]
            above = [r["id"] for r in rest if r["index"] > cut + 1e-9]
            at = [r["id"] for r in rest if abs(r["index"] - cut) <= 1e-9]
            fits = len(above) + len(at) <= places
            kept, tied, left = (above + at, [], 0) if fits else (above, at, places - len(above))
    kept = sorted(kept + by_hand)
    open_ = sorted((r["index"] for r in able if r["id"] not in barred), reverse=True)
    mine = [r["index"] for r in able if r["id"] in kept]
    return {
        "kept": kept,
        "tied": sorted(tied),
        "placesLeft": left,
        "rankable": len(open_),
        "gain": sum(mine) / len(mine) if mine else None,
        "gains": [sum(open_[: k + 1]) / (k + 1) for k in range(len(open_))],
        "ranks": {r["id"]: 1 + sum(o["index"] > r["index"] + 1e-9 for o in able) for r in able},
        "differential": {t["key"]: within_cells(plants, t["key"], kept, within) for t in traits},
    }


def within_cells(plants, key, kept, within):
    """Each kept plant less the mean of its own cell, as exact fractions."""
    groups = {}
    for p in plants:
        if p["scores"].get(key) is not None and (not within or "cell" in p):
            groups.setdefault(p["cell"] if within else "field", []).append(p)
    stands = []
    for group in groups.values():
        if len(group) < 2:
            continue
        mean = Fr(sum(p["scores"][key] for p in group), len(group))
        stands += [p["scores"][key] - mean for p in group if p["id"] in kept]
    return {"differential": float(sum(stands) / len(stands)), "plants": len(stands)} if stands else None
