"""The mix of least coancestry, by trying every choice of lots in exact fractions.

For every set of lots that go in, and every part of it that has exactly the smallest share, the shares of the others follow from one
linear system (least w'Gw with sum 1); of all that keep the smallest share the least value is the answer. No search, no tolerance.
"""

from fractions import Fraction as Fr
from itertools import combinations

from reference_populations import lineage, random_lineage


def solved(rows):
    """The solution of a linear system by elimination in fractions, or None where it has none or many."""
    n = len(rows)
    rows = [row[:] for row in rows]
    for col in range(n):
        pivot = next((r for r in range(col, n) if rows[r][col] != 0), None)
        if pivot is None:
            return None
        rows[col], rows[pivot] = rows[pivot], rows[col]
        lead = rows[col][col]
        rows[col] = [x / lead for x in rows[col]]
        for r in range(n):
            if r != col and rows[r][col] != 0:
                f = rows[r][col]
                rows[r] = [x - f * y for x, y in zip(rows[r], rows[col])]
    return [row[n] for row in rows]


def subsets(items):
    for size in range(len(items) + 1):
        yield from combinations(items, size)


def least(gram, floor):
    """The least w'Gw and a w that has it."""
    n = len(gram)
    best = None
    for chosen in subsets(range(n)):
        if not chosen or floor * len(chosen) > 1:
            continue
        for held in subsets(chosen):
            free = [i for i in chosen if i not in held]
            rest = 1 - floor * len(held)
            w = [Fr(0)] * n
            for i in held:
                w[i] = floor
            if free:
                # 2(Gw)_i = lambda over the free ones, and their sum is what is left
                rows = [
                    [2 * gram[i][j] for j in free] + [Fr(-1), -2 * sum(gram[i][k] * floor for k in held)] for i in free
                ]
                rows.append([Fr(1)] * len(free) + [Fr(0), rest])
                answer = solved(rows)
                if answer is None or min(answer[: len(free)]) < floor:
                    continue
                for i, share in zip(free, answer):
                    w[i] = share
            elif rest != 0:
                continue
            value = sum(w[i] * w[j] * gram[i][j] for i in range(n) for j in range(n))
            if best is None or value < best[0]:
                best = (value, w)
    return best


def case(lots, candidates, floor):
    pairs = [(a, b) for a in candidates for b in candidates if a != b]
    worked = lineage(lots, pairs)
    own = {lot["id"]: lot["coancestry"] for lot in worked["lots"]}
    between = {(p["a"], p["b"]): p["coancestry"] for p in worked["pairs"]}
    gram = [[Fr(own[a] if a == b else between[a, b]) for b in candidates] for a in candidates]
    value, _ = least(gram, Fr(str(floor)))
    single = min(own[a] for a in candidates)
    given = {"lots": lots, "candidates": candidates}
    if floor:
        given["minShare"] = floor
    return {
        "input": given,
        "expected": {
            "coancestry": float(value),
            "diversityRetained": float(1 - value),
            "bestSingle": {"diversityRetained": 1 - single},
        },
    }


def cases(rng, count):
    made = []
    while len(made) < count:
        lots, _ = random_lineage(rng)
        ids = [lot["id"] for lot in lots]
        candidates = rng.sample(ids, min(len(ids), rng.choice([1, 2, 3, 4, 5, 5])))
        made.append(case(lots, candidates, rng.choice([0, 0, 0.05, 0.15, 0.25, 0.3, 0.5, 0.6])))
    return made


def founders_alike(rng, count):
    """Unrelated lots that differ a little: which of them go in is a matter of choosing."""
    made = []
    for _ in range(count):
        lots = [
            {"id": "ABCDE"[i], "kind": "founder", "inbreeding": 0, "coancestry": round(rng.uniform(0.05, 0.5), 3)}
            for i in range(5)
        ]
        made.append(case(lots, list("ABCDE"), rng.choice([0.2, 0.22, 0.3, 0.4])))
    return made


def blend_advice_cases(rng, count, alike):
    return cases(rng, count) + founders_alike(rng, alike)
