"""Reference values for the calculations, made by another program than ours.

    python3 tests/reference/make_references.py          (Python 3.11, SciPy 1.17, mpmath 1.3, NumPy 2)

Writes the *.json files beside it; `--count 10000 --seed 7 --into FOLDER [--only NAME ...] [--quick]` as many other cases into another
folder (`npm run bench -- references` does so): every generator starts from that seed and its own. Quick ones work with 16 digits, and where a
case would take half a second, by rules of fixed points. How far those are off is known: areas of flowering and pollen of a rectangle are summed by
two rules, and where these differ, worked out the slow way after all (none of 300 and of 80 were, which agree with it to 2e-15 and 2e-11); forecasts
are 240 x 240 cells read by cubic splines, which differ from 420 x 420 by at most 4e-6 years and from the plain sums over 1,600 x 1,600 by 3e-4,
over the 300 of the committed file.

Written from the formulas, by the plainest way there is: plants one by one as exact fractions, whole coancestry matrices, integer arithmetic,
quadrature of 30 digits. None of it shares a method with lib/science where that could hide a fault. The random inputs have a fixed seed, so
a second run gives the same files.
"""

import argparse
import json
import os
import random

import mpmath as mp
import reference_blends as blends
import reference_crosses as crosses
import reference_choice as choice
import reference_germination as germination
import reference_isolation as isolation
import reference_jars as jars
import reference_off_types as off_types
import reference_populations as populations
import reference_seed_life as seed_life
import reference_selection as selection
import reference_spans as spans
import reference_storage as storage

HERE = os.path.dirname(os.path.abspath(__file__))


def all_cases(seed, count):
    """Each file with its cases, made only when they are asked for. The committed ones are those of seed 0 and no count."""
    few, many = count or 60, count or 300

    def rng(own):
        return random.Random(own + 1000 * seed)

    def ranges():
        ks = [2, 3, 4, 5, 6, 8, 10, 20, 100, 1000]
        return [{"k": k, "quantile975": float(germination.range_quantile(k)), "cdfAt3": float(germination.range_cdf(mp.mpf(3), k))} for k in ks]

    return {
        "effective-size": lambda: populations.effective_size_cases(rng(1), many),
        "lineage": lambda: populations.lineage_cases(rng(2), many),
        "lineage-crosses": lambda: crosses.cross_and_harvest_cases(rng(31), many),
        "lineage-span": lambda: spans.lineage_span_cases(rng(24), many),
        "studentized-range": ranges,
        "germination-test": lambda: germination.germination_test_cases(rng(3), many),
        "germination-compare": lambda: germination.germination_compare_cases(rng(4), many),
        "off-types": lambda: off_types.off_type_cases(rng(5), many),
        "sowing-count": lambda: seed_life.sowing_count_cases(rng(6), many),
        "germination-speed": lambda: germination.germination_speed_cases(rng(8), many),
        "allele-capture": lambda: populations.allele_capture_cases(rng(9), many),
        "population-plan": lambda: populations.population_plan_cases(rng(10), many),
        "scorer-agreement": lambda: off_types.scorer_agreement_cases(rng(11), many),
        "off-type-trend": lambda: off_types.off_type_trend_cases(rng(12), many),
        "off-type-frequency": lambda: off_types.off_type_frequency_cases(rng(13), many),
        "flowering-overlap": lambda: isolation.flowering_overlap_cases(rng(14), many),
        "pollen-risk": lambda: isolation.pollen_risk_cases(rng(15), few, count or 240),
        "bessel-i0-scaled": isolation.bessel_cases,
        "blend-advice": lambda: blends.blend_advice_cases(rng(14), count or 240, few),
        "reserve": lambda: jars.reserve_cases(rng(21), many),
        "dry-to": lambda: jars.dry_to_cases(rng(22), many),
        "thousand-seed-weight": lambda: jars.thousand_seed_weight_cases(rng(23), many),
        "seed-moisture": lambda: storage.seed_moisture_cases(rng(19), many),
        "viability": lambda: storage.viability_cases(rng(20), many),
        "choose-plants": lambda: selection.choose_plants_cases(rng(16), many),
        "choice-of-plants": lambda: choice.choice_of_plants_cases(rng(25), many),
        "selection-response": lambda: selection.selection_response_cases(rng(17), many),
        "realised-heritability": lambda: selection.realised_heritability_cases(rng(18), many),
        "viability-forecast": lambda: seed_life.viability_forecast_cases(rng(7), many),
    }


def main():
    asked = argparse.ArgumentParser()
    asked.add_argument("--count", type=int)
    asked.add_argument("--seed", type=int, default=0)
    asked.add_argument("--into", default=HERE)
    asked.add_argument("--only", nargs="*")
    asked.add_argument("--quick", action="store_true")
    given = asked.parse_args()
    if given.quick:
        mp.mp.dps = 16
    origin = "tests/reference/make_references.py (Python fractions, SciPy, mpmath at 30 digits), fixed random seed"
    for name, cases in all_cases(given.seed, given.count).items():
        if given.only is None or name in given.only:
            with open(os.path.join(given.into, name + ".json"), "w") as out:
                out.write('{"origin": ' + json.dumps(origin) + ',\n "cases": [\n')
                out.write(",\n".join(json.dumps(case) for case in cases()))
                out.write("\n]}\n")


if __name__ == "__main__":
    main()
