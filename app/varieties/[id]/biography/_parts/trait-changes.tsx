import { TraitOverYears, TraitOverYearsKey } from "@/components/charts";
import { Section } from "@/components/frame";
import { Explained, Measured } from "@/components/numbers";
import { SimpleTable } from "@/components/tables";
import { Button, Select } from "@/components/ui";
import { counted } from "@/lib/display/plurals";
import { refusalSentence } from "@/lib/display/refusals";
import { traitDifference, traitDifferenceSpan } from "@/lib/display/trait-difference";
import type { HistoryOfTrait } from "@/lib/registry/traits/history-of-trait";
import type { PossibleCheck } from "@/lib/registry/traits/read-trait-years";
import { differenceOf } from "@/lib/schemas/traits/difference-of";
import { againstCheckExplanation, trendInWords } from "../../traits/years/against-check";
import { drawnPoints, meanOf, plantsScored, rangeOfType } from "../../traits/years/said-of-point";
import { WhatStayed } from "../../traits/years/what-stayed";

/** What its plants were like through the years, trait by trait, and what of it was the variety and not the weather. Grow-outs are named by their year alone. */
export function TraitChanges({
  varietyId,
  histories,
  checks,
  check,
  named,
}: {
  varietyId: string;
  histories: readonly HistoryOfTrait[];
  checks: readonly PossibleCheck[];
  check: PossibleCheck | null;
  /** with the names of people: kept in the address when a check is chosen */
  named: boolean;
}) {
  return (
    <Section id="traits" title="What its plants were like">
      {histories.length === 0 ? (
        <p className="quiet">None of its plants was scored.</p>
      ) : (
        <div className="stack">
          <p className="measure">
            A year’s mean is the weather, the place and the scorer as much as the variety.{" "}
            {check
              ? `What ${check.variety} did in the same years is taken off, so what is left is the variety’s own if both stood side by side.`
              : "Nothing stood beside it that is known not to have changed, so what is the variety’s own cannot be told apart from them."}
          </p>
          {checks.length > 0 ? (
            <form className="row not-on-paper" action={`/varieties/${varietyId}/biography#traits`}>
              {named ? null : <input type="hidden" name="for" value="others" />}
              <Select
                name="check"
                label="Beside which check"
                required
                value={check?.varietyId ?? "none"}
                options={[
                  { value: "none", words: "none" },
                  ...checks.map(({ varietyId: value, variety, years }) => ({
                    value,
                    words: `${variety}, ${counted(years.length, "year")} in common`,
                  })),
                ]}
              />
              <Button type="submit">Show</Button>
            </form>
          ) : null}
          {histories.some(({ trait, points }) => drawnPoints(trait, points).length > 1) ? (
            <TraitOverYearsKey range={histories.some(({ type }) => rangeOfType(type) !== null)} />
          ) : null}
          {histories.map((history) => (
            <OneTrait key={history.trait.id} history={history} beside={check} />
          ))}
        </div>
      )}
    </Section>
  );
}

function OneTrait({ history, beside }: { history: HistoryOfTrait; beside: PossibleCheck | null }) {
  const { trait, type, points, check, cycles } = history;
  const { name, unit } = trait.newest;
  const drawn = drawnPoints(trait, points);
  return (
    <section className="stack-near" aria-labelledby={`trait-${trait.id}`}>
      <h3 id={`trait-${trait.id}`}>{name.charAt(0).toUpperCase() + name.slice(1)}</h3>
      {type.map(({ trait: line, allowed }) => (
        <p key={`${line} ${allowed}`}>
          The type says of {line}: {allowed}.
        </p>
      ))}
      {drawn.length > 1 ? (
        <TraitOverYears
          points={drawn}
          range={rangeOfType(type)}
          unit={unit}
          keyed
          label={`${name} of ${counted(drawn.length, "grow-out")}, from ${drawn[0]?.year} to ${drawn.at(-1)?.year}; the table below tells the same`}
        />
      ) : null}
      <YearTable history={history} />
      {check ? <AgainstWeather history={history} /> : null}
      {beside && !check ? (
        <p className="measure">
          {beside.variety} was not scored by it in these years: what the variety did cannot be told from the weather.
        </p>
      ) : null}
      {check && cycles?.found ? <WhatStayed trait={trait} cycles={cycles} naming="year" /> : null}
    </section>
  );
}

function YearTable({ history: { trait, points, check, compared } }: { history: HistoryOfTrait }) {
  const of = differenceOf(trait.newest);
  const beside = new Map(
    compared?.outcome.ok ? compared.outcome.value.years.map(({ year, toCheck }) => [year, toCheck]) : [],
  );
  return (
    <SimpleTable
      entries
      columns={[
        { key: "year", name: "Year" },
        { key: "plants", name: "Plants", kind: "count" },
        { key: "mean", name: of.share ? "Share" : "Mean", kind: "count" },
        { key: "stood", name: "The kept stood at", kind: "count" },
        ...(check ? [{ key: "check", name: `Less ${check.variety}`, kind: "count" as const }] : []),
      ]}
      rows={points.map((point) => {
        const stood = point.version.id === trait.newest.id && compared?.beside.has(point.id);
        const toCheck = stood && point.year !== null ? beside.get(point.year) : null;
        return {
          id: `${point.id} ${point.version.id}`,
          cells: {
            year:
              point.version.id === trait.newest.id
                ? String(point.year ?? "not known")
                : `${point.year ?? "not known"}, version ${point.version.version}`,
            plants: plantsScored(point),
            mean: meanOf(point),
            stood:
              point.differential === null
                ? "not compared"
                : traitDifference(point.differential, differenceOf(point.version)),
            check: toCheck ? (
              <Measured
                value={traitDifference(toCheck.difference, of)}
                span={traitDifferenceSpan(
                  toCheck.difference - 2 * toCheck.standardError,
                  toCheck.difference + 2 * toCheck.standardError,
                  of,
                )}
              />
            ) : (
              "no check"
            ),
          },
        };
      })}
    />
  );
}

/** What it did against the check, in a sentence that opens to how it was found. */
function AgainstWeather({ history: { trait, check, compared } }: { history: HistoryOfTrait }) {
  if (check === null || compared === null) return null;
  const { outcome } = compared;
  if (!outcome.ok) return <p className="waits">{outcome.refusals.map(refusalSentence).join(" ")}</p>;
  const both = outcome.value.years.filter(({ toCheck }) => toCheck !== null).length;
  const answer = trendInWords(outcome.value, differenceOf(trait.newest), both);
  return (
    <Explained
      explanation={againstCheckExplanation(trait, check, outcome.value, compared.input.years.length, answer)}
      brief
    >
      <span>{answer}</span>
    </Explained>
  );
}
