"""Effective sizes of harvests, worked out plant by plant in exact fractions, independently of the project's own code.

    python3 tests/registry/harvests/expected-sizes.py > tests/registry/harvests/expected-sizes.json

Every plant gives a share q of the seed and a share p of the pollen. Two genes of two seeds come from one plant with the chance
kappa = sum c^2, c = (q + p*)/2; p* = s q + (1 - s) p, or, where no plant can father its own seed, p*_i = sum over j other than i of
q_j p_i / (1 - p_j). Ne = 1/(kappa (1 + F)) (Crow & Denniston 1988, Evolution 42:482-495; Lindgren & Mullin 1998, Can. J. For. Res.
28:276-283).
"""
import json
from fractions import Fraction as Fr


def size(seed, pollen, s=Fr(0), incompatible=False, inbreeding=Fr(0)):
    """seed, pollen: one number a plant, in the same order, of any unit."""
    q = [Fr(x) / sum(map(Fr, seed)) for x in seed]
    p = [Fr(x) / sum(map(Fr, pollen)) for x in pollen]
    if incompatible:
        fathers = [sum(q[j] * p[i] / (1 - p[j]) for j in range(len(q)) if j != i and q[j] > 0) for i in range(len(p))]
    else:
        fathers = [s * q[i] + (1 - s) * p[i] for i in range(len(p))]
    kappa = sum(((q[i] + fathers[i]) / 2) ** 2 for i in range(len(p)))
    return float(1 / (kappa * (1 + inbreeding)))


def plot(seed, standing, without=0, others_without=0, kept=None, **rest):
    """`without` of the seed parents and `others_without` of the others have no tassel; `kept`: which seed parents keep theirs."""
    n = len(seed)
    keeping = kept if kept is not None else range(n - without)
    pollen = [1 if i in keeping else 0 for i in range(n)] + [0] * others_without + [1] * (standing - n - others_without)
    return size(seed + [0] * (standing - n), pollen, **rest)


heavy = [92, 61, 40, 12, 9, 8, 7, 6, 6, 5, 4, 3, 2, 2]
answers = {
    # 20 seed parents of 50 that flowered, every one of them without its tassel
    "rows that only give seed": plot([1] * 20, 50, without=20),
    "some of the seed parents": plot([1] * 20, 50, without=8, others_without=4),
    "only others": plot([1] * 20, 50, others_without=10),
    "no selfing possible": plot([1] * 20, 50, without=8, others_without=4, incompatible=True),
    # of four unequal seed parents two were without; the two heaviest kept theirs
    "heaviest kept theirs": plot([40, 30, 20, 10], 10, without=2, others_without=1),
    "lightest kept theirs": plot([40, 30, 20, 10], 10, without=2, others_without=1, kept=[2, 3]),
    # 14 of 60 plants, three of them far heavier
    "greedy": plot(heavy, 60),
    "greedy, equal shares": plot([1] * 14, 60),
    "greedy, no selfing possible": plot(heavy, 60, incompatible=True),
    "greedy, parents inbred": plot(heavy, 60, inbreeding=Fr(1, 8)),
    "greedy, mostly selfed": plot(heavy, 60, s=Fr(9, 10)),
    # 14 plants gave 5 g each, ten of them 4 g more
    "two harvests of the same plants": plot([9] * 10 + [5] * 4, 40),
    # 30 plants gave 10 g each, ten of them 10 g more, out of 40
    "a notebook's and another": plot([20] * 10 + [10] * 20, 40),
}
answers["greedy, three heaviest"] = sum(sorted(heavy)[-3:]) / sum(heavy)
answers["greedy, seed parents count as"] = float(Fr(sum(heavy)) ** 2 / sum(Fr(x) ** 2 for x in heavy))
print(json.dumps({name: round(answer, 12) for name, answer in answers.items()}, indent=2))
