import { Explained } from "@/components/numbers";
import { SimpleTable } from "@/components/tables";
import type { Explanation } from "@/lib/display/explanation";
import { plainNumber, probability, wholeNumber } from "@/lib/display/numbers";
import { counted } from "@/lib/display/plurals";
import { refusalSentence } from "@/lib/display/refusals";
import { traitDifference, traitDifferenceSpan } from "@/lib/display/trait-difference";
import type { HistoryOfTrait } from "@/lib/registry/traits/history-of-trait";
import type { TraitLine } from "@/lib/registry/traits/list-traits";
import type { PossibleCheck } from "@/lib/registry/traits/read-trait-years";
import { differenceOf } from "@/lib/schemas/traits/difference-of";
import type { TraitYears } from "@/lib/science/trait-years/trait-years";

/** What of the change can be told from the weather: differences to a check and their trend; without one, why nothing can. */
export function AgainstCheck({ history }: { history: HistoryOfTrait }) {
  const { trait, points, compared, check, checks } = history;
  const possible = checks.length;
  const years = new Set(points.flatMap(({ year }) => year ?? [])).size;
  if (years < 2)
    return <p className="measure">One year tells of no change. The next one, with a check beside it, begins to.</p>;
  if (check === null) {
    return (
      <p className="measure">
        Over {counted(years, "year")} the means moved, and whether the variety did or the weather cannot be told: no
        check is chosen.{" "}
        {possible > 0
          ? "Choose above a variety that was scored by the same trait in the same years, if it stood beside and did not change."
          : "No other variety was scored by this trait in the same years. Grow the same unchanged seed beside it each year, as remnant seed of an old lot from the freezer, and score both; then its change can be told."}
      </p>
    );
  }
  if (compared === null) return <p className="quiet">No year of its scores is known, so nothing can be compared.</p>;
  if (!compared.outcome.ok) return <p className="waits">{compared.outcome.refusals.map(refusalSentence).join(" ")}</p>;
  const told = compared.outcome.value;
  const of = differenceOf(trait.newest);
  const both = told.years.filter(({ toCheck }) => toCheck !== null);
  const answer = trendInWords(told, of, both.length);
  return (
    <div className="stack-near">
      <Explained explanation={againstCheckExplanation(trait, check, told, compared.input.years.length, answer)} brief>
        <span>{answer}</span>
      </Explained>
      <SimpleTable
        entries
        columns={[
          { key: "year", name: "Year" },
          { key: "plants", name: "Plants", kind: "count" },
          { key: "difference", name: `Less ${check.variety}`, kind: "count" },
          { key: "span", name: "In truth hardly outside", kind: "count" },
        ]}
        rows={told.years.map(({ year, plants, toCheck }) => ({
          id: String(year),
          cells: {
            year: String(year),
            plants: wholeNumber(plants),
            difference: toCheck === null ? "no check" : traitDifference(toCheck.difference, of),
            span:
              toCheck === null
                ? "–"
                : traitDifferenceSpan(
                    toCheck.difference - 2 * toCheck.standardError,
                    toCheck.difference + 2 * toCheck.standardError,
                    of,
                  ),
          },
        }))}
      />
    </div>
  );
}

/** What the variety did against the check over all its years, in a sentence. */
export function trendInWords({ trend }: TraitYears, of: Parameters<typeof traitDifference>[1], years: number): string {
  if (trend === null)
    return `The check stood beside it in ${counted(years, "year")}; below four no trend is worked out.`;
  const way = trend.s > 0 ? "rose" : "fell";
  const slope = `${traitDifference(trend.slope * 10, of)} in ten years`;
  if (trend.pValue === null)
    return `Against the check it ${way} by ${slope}; two years stand alike, so how sure that is is not worked out.`;
  return trend.pValue < 0.05
    ? `Against the check it ${way}, by ${slope} (p ${probability(trend.pValue)}).`
    : `Against the check no change can be told over ${counted(years, "year")} (${slope}, p ${probability(trend.pValue)}).`;
}

/** How what it did against the check comes about. */
export function againstCheckExplanation(
  trait: TraitLine,
  check: PossibleCheck,
  told: TraitYears,
  years: number,
  answer: string,
): Explanation {
  return {
    title: `what ${trait.newest.name} did against ${check.variety}`,
    answer,
    formula: "D = V − K, standard error √(s_v²/n_v + s_k²/n_k);  S = Σ sign(D_j − D_i), slope the median of all slopes",
    inputs: [
      { name: "years scored", value: wholeNumber(years) },
      { name: "check", value: check.variety, href: `/varieties/${check.varietyId}` },
      ...told.years.flatMap(({ year, toCheck }) =>
        toCheck === null
          ? []
          : [
              {
                name: String(year),
                value: `${plainNumber(toCheck.difference, 2)} ± ${plainNumber(toCheck.standardError, 2)}`,
              },
            ],
      ),
    ],
    assumed: [
      ...told.assumed.map(({ text }) => `${text.charAt(0).toUpperCase()}${text.slice(1)}.`),
      "Both stood side by side: on one plot where the plots are written, else with one steward, else it is taken so.",
    ],
    unsure:
      "What a year did to the one and not to the other stays in the difference. With four years no trend can be surer than 2 in 24.",
    sources: ["Mann 1945, Econometrica 13:245", "Sen 1968, JASA 63:1379"],
    method: "trait-years",
  };
}
