"""Reference values for the calculations, made by another program than ours.

    python3 tests/reference/make_references.py          (Python 3.11, SciPy 1.17, mpmath 1.3, NumPy 2)

Writes the *.json files beside it. Written from the formulas, by the plainest way there is: plants one by one as exact fractions,
whole coancestry matrices, integer arithmetic, quadrature of 30 digits. None of it shares a method with lib/science where that
could hide a fault. The random inputs have a fixed seed, so a second run gives the same files.
"""

import json
import os
import random

import mpmath as mp
import reference_blends as blends
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


def write(name, origin, cases):
    with open(os.path.join(HERE, name + ".json"), "w") as out:
        out.write('{"origin": ' + json.dumps(origin) + ',\n "cases": [\n')
        out.write(",\n".join(json.dumps(case) for case in cases))
        out.write("\n]}\n")


def main():
    origin = "tests/reference/make_references.py (Python fractions, SciPy, mpmath at 30 digits), fixed random seed"
    write("effective-size", origin, populations.effective_size_cases(random.Random(1), 300))
    write("lineage", origin, populations.lineage_cases(random.Random(2), 300))
    write("lineage-span", origin, spans.lineage_span_cases(random.Random(24), 300))
    ks = [2, 3, 4, 5, 6, 8, 10, 20, 100, 1000]
    write(
        "studentized-range",
        origin,
        [{"k": k, "quantile975": float(germination.range_quantile(k)), "cdfAt3": float(germination.range_cdf(mp.mpf(3), k))} for k in ks],
    )
    write("germination-test", origin, germination.germination_test_cases(random.Random(3), 300))
    write("germination-compare", origin, germination.germination_compare_cases(random.Random(4), 300))
    write("off-types", origin, off_types.off_type_cases(random.Random(5), 300))
    write("sowing-count", origin, seed_life.sowing_count_cases(random.Random(6), 300))
    write("germination-speed", origin, germination.germination_speed_cases(random.Random(8), 300))
    write("allele-capture", origin, populations.allele_capture_cases(random.Random(9), 300))
    write("population-plan", origin, populations.population_plan_cases(random.Random(10), 300))
    write("scorer-agreement", origin, off_types.scorer_agreement_cases(random.Random(11), 300))
    write("off-type-trend", origin, off_types.off_type_trend_cases(random.Random(12), 300))
    write("off-type-frequency", origin, off_types.off_type_frequency_cases(random.Random(13), 300))
    write("flowering-overlap", origin, isolation.flowering_overlap_cases(random.Random(14), 300))
    write("pollen-risk", origin, isolation.pollen_risk_cases(random.Random(15), 60, 240))
    write("bessel-i0-scaled", origin, isolation.bessel_cases())
    write("blend-advice", origin, blends.blend_advice_cases(random.Random(14), 240, 60))
    write("reserve", origin, jars.reserve_cases(random.Random(21), 300))
    write("dry-to", origin, jars.dry_to_cases(random.Random(22), 300))
    write("thousand-seed-weight", origin, jars.thousand_seed_weight_cases(random.Random(23), 300))
    write("seed-moisture", origin, storage.seed_moisture_cases(random.Random(19), 300))
    write("viability", origin, storage.viability_cases(random.Random(20), 300))
    write("choose-plants", origin, selection.choose_plants_cases(random.Random(16), 300))
    write("selection-response", origin, selection.selection_response_cases(random.Random(17), 300))
    write("realised-heritability", origin, selection.realised_heritability_cases(random.Random(18), 300))
    write("viability-forecast", origin, seed_life.viability_forecast_cases(random.Random(7), 300))


if __name__ == "__main__":
    main()
