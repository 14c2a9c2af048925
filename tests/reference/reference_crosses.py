"""Lineages with crosses and with several harvests of the same plants: every plant by itself. See make_references.py.

A plant is a row of a kinship matrix; its lot says how near it is to any other plant or lot. Nothing is pooled before the end:

    theta(O, O') = sum over plants i of O, j of O' of c_i c'_j phi_ij       phi_ii = the plant with itself, phi_ij = as their lots
    F(O)         = sum over seed parents i of q_i [ s phi_ii + (1-s)(1-m) sum over pollen parents j of p_j phi_ij ]

the same three times: identical; identical and both native; both native. Plants are raised once for all their harvests.
"""

from fractions import Fraction as Fr

RUNS = ("identical", "native", "both")


def shares(given, n):
    total = sum(Fr(x) for x in given) if isinstance(given, list) else None
    return [Fr(x) / total for x in given] if total else [Fr(1, n)] * n


class Plot:
    """Plants in the ground: for each the mixture of lots that it was drawn from."""

    def __init__(self, lot):
        sides = {p.get("role"): {p["id"]: Fr(1)} for p in lot["parents"] if p.get("role")}
        total = sum(Fr(p["share"]) for p in lot["parents"])
        mixed = {p["id"]: Fr(p["share"]) / total for p in lot["parents"]}
        nf, nm = lot["seedParents"], lot["pollenParents"]
        if lot.get("sexes") == "separate":
            self.lots = [sides.get("seed parent", mixed)] * nf + [sides.get("pollen parent", mixed)] * nm
            self.pollen = [None] * nf + list(range(nm))
        else:
            self.lots = [mixed] * nm
            self.pollen = list(range(nm))
        self.s, self.m = Fr(lot.get("selfingRate", 0)), Fr(lot.get("foreignPollen", 0))

    def own(self, lot):
        """Seed and pollen shares by plant of one harvest, and what each plant gives in all."""
        n = len(self.lots)
        q = shares(lot.get("seedShares"), lot["seedParents"])
        q = q + [Fr(0)] * (n - len(q))
        given = shares(lot.get("pollenShares"), lot["pollenParents"])
        p = [Fr(0) if k is None else given[k] for k in self.pollen]
        if lot.get("selfIncompatible"):
            fathers = [sum((q[j] * p[i] / (1 - p[j]) for j in range(n) if j != i and q[j]), Fr(0)) for i in range(n)]
        else:
            fathers = p
        u = (1 - self.s) * (1 - self.m)
        return q, p, [((1 + self.s) * a + u * b) / 2 for a, b in zip(q, fathers)]


def worked(lots, pairs):
    between = {run: {} for run in RUNS}
    inside = {run: {} for run in RUNS}
    native, generations = {}, {}
    plots, harvests = {}, {}

    def two(run, a, b):
        return between[run][a, b]

    def mixed(run, one, other):
        return sum(x * y * two(run, a, b) for a, x in one.items() for b, y in other.items())

    def self_term(run, plant):
        first = {"identical": 1, "native": None, "both": None}[run]
        return sum(w * ((first if first is not None else native[a]) + inside[run][a]) / 2 for a, w in plant.items())

    def set_pair(run, a, b, value):
        between[run][a, b] = value
        between[run][b, a] = value

    done = []
    for lot in lots:
        new = lot["id"]
        if lot["kind"] == "founder":
            theta, f = Fr(lot.get("coancestry", 0)), Fr(lot.get("inbreeding", 0))
            native[new], generations[new] = Fr(1), Fr(0)
            for run in RUNS:
                inside[run][new] = Fr(1) if run == "both" else f
                set_pair(run, new, new, Fr(1) if run == "both" else theta)
                for other in done:
                    set_pair(run, new, other, native[other] if run == "both" else Fr(0))
        elif lot["kind"] != "grow-out":
            total = sum(Fr(p["share"]) for p in lot["parents"])
            w = {p["id"]: Fr(p["share"]) / total for p in lot["parents"]}
            native[new] = sum(x * native[a] for a, x in w.items())
            generations[new] = sum(x * generations[a] for a, x in w.items())
            for run in RUNS:
                inside[run][new] = sum(x * inside[run][a] for a, x in w.items())
                set_pair(run, new, new, mixed(run, w, w))
                for other in done:
                    set_pair(run, new, other, mixed(run, w, {other: Fr(1)}))
        else:
            key = lot.get("plants", new)
            plot = plots.setdefault(key, Plot(lot))
            q, p, c = plot.own(lot)
            u = (1 - plot.s) * (1 - plot.m)
            n = range(len(c))
            cross = any(part.get("role") for part in lot["parents"])
            from_lots = {}
            for i in n:
                for a, w in plot.lots[i].items():
                    from_lots[a] = from_lots.get(a, 0) + c[i] * w
            passed = sum(from_lots.values())
            native[new] = sum(x * native[a] for a, x in from_lots.items())
            generations[new] = 1 + sum(x * generations[a] for a, x in from_lots.items()) / passed
            sisters = harvests.setdefault(key, {})
            for run in RUNS:
                phi = {}
                for i in n:
                    for j in n:
                        one, other = plot.lots[i], plot.lots[j]
                        tag = (i == j, id(one), id(other))
                        if tag not in phi:
                            phi[tag] = self_term(run, one) if i == j else mixed(run, one, other)
                at = lambda i, j: phi[i == j, id(plot.lots[i]), id(plot.lots[j])]
                apart = lot.get("selfIncompatible") or lot.get("sexes") == "separate"
                inside[run][new] = sum(
                    q[i] * (plot.s * at(i, i) + u * (sum(p[j] * at(i, j) for j in n if not (apart and j == i)) / (1 - p[i] if apart else 1)))
                    for i in n
                    if q[i]
                )
                for sister, other in [*sisters.items(), (new, c)]:
                    set_pair(run, new, sister, sum(c[i] * other[j] * at(i, j) for i in n for j in n))
                for other in done:
                    if other not in sisters:
                        set_pair(run, new, other, sum(x * two(run, a, other) for a, x in from_lots.items()))
            sisters[new] = c
            assert not cross or plot.s == 0
        done.append(new)
    result = []
    for lot in lots:
        new = lot["id"]
        theta, k = two("identical", new, new), two("both", new, new)
        result.append(
            {
                "id": new,
                "inbreeding": float(inside["identical"][new]),
                "coancestry": float(theta),
                "foreignAncestry": float(1 - native[new]),
                "nativeDiversityRetained": None if k == 0 else float(1 - two("native", new, new) / k),
                "generations": float(generations[new]),
            }
        )
    return {"lots": result, "pairs": [{"a": a, "b": b, "coancestry": float(two("identical", a, b))} for a, b in pairs]}


def part(rng, ids, role=None):
    return {"id": rng.choice(ids), "share": 0.5 if role else 1, **({"role": role} if role else {})}


def parents_of(rng, ids, most=3):
    chosen = rng.sample(ids, rng.randint(1, min(most, len(ids))))
    cuts = sorted(rng.randint(1, 99) for _ in chosen[1:])
    sizes = [max(1, b - a) for a, b in zip([0, *cuts], [*cuts, 100])]
    return [{"id": a, "share": size / sum(sizes)} for a, size in zip(chosen, sizes)]


def weights(rng, n, least=1):
    given = [0 if rng.random() < 0.4 else rng.randint(1, 90) for _ in range(n)]
    while sum(1 for x in given if x) < least:
        given[rng.randrange(n)] = rng.randint(1, 90)
    return given


def plot_of(rng, cross):
    separate = cross or rng.random() < 0.2
    nm = rng.randint(2, 9)
    nf = rng.randint(1, 9) if separate else rng.randint(1, nm)
    plot = {"pollenParents": nm, "seedParents": nf}
    if separate:
        plot["sexes"] = "separate"
    elif rng.random() < 0.3:
        plot["selfIncompatible"] = True
    elif rng.random() < 0.6:
        plot["selfingRate"] = rng.choice([0.1, 0.5, 0.9])
    if rng.random() < 0.5:
        plot["pollenShares"] = weights(rng, nm, 2)
    if rng.random() < 0.5:
        plot["foreignPollen"] = rng.choice([0.02, 0.2, 0.5])
    return plot


def random_lineage(rng):
    lots = [{"id": f"F{k}", "kind": "founder", "inbreeding": rng.choice([0, 0, 0.5, 1])} for k in range(rng.randint(2, 3))]
    step = 0
    while step < rng.randint(3, 6):
        ids = [lot["id"] for lot in lots]
        kind = rng.random()
        new = f"L{step}"
        step += 1
        if kind < 0.35:
            one, other = rng.sample(ids, 2)
            sides = [{"id": one, "share": 0.5, "role": "seed parent"}, {"id": other, "share": 0.5, "role": "pollen parent"}]
            rng.shuffle(sides)
            plot = plot_of(rng, True)
            lots.append({"id": new, "kind": "grow-out", "parents": sides, **plot, "seedShares": weights(rng, plot["seedParents"])})
        elif kind < 0.75:
            parents, plot = parents_of(rng, ids), plot_of(rng, False)
            for harvest in range(rng.randint(2, 4)):
                own = "equal" if rng.random() < 0.2 else weights(rng, plot["seedParents"])
                lots.append({"id": f"{new}.{harvest}", "kind": "grow-out", "parents": parents, **plot, "seedShares": own, "plants": new})
        else:
            lots.append({"id": new, "kind": "blend", "parents": parents_of(rng, ids)})
    return lots


def cross_and_harvest_cases(rng, count):
    cases = []
    while len(cases) < count:
        lots = random_lineage(rng)
        ids = [lot["id"] for lot in lots]
        pairs = [[a, b] for k, a in enumerate(ids) for b in ids[k + 1 :]]
        pairs = rng.sample(pairs, min(len(pairs), 8))
        expected = worked(lots, pairs)
        mixed_up = lots[:]
        rng.shuffle(mixed_up)
        order = {lot["id"]: k for k, lot in enumerate(mixed_up)}
        expected["lots"].sort(key=lambda lot: order[lot["id"]])
        cases.append({"input": {"lots": mixed_up, "pairs": pairs}, "expected": expected})
    return cases
