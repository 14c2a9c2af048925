import { Field, NumberField } from "@/components/ui";
import { Refusals } from "@/components/ui/field";
import { dateInWords } from "@/lib/display/dates";
import { counted } from "@/lib/display/plurals";
import { refusalSentence } from "@/lib/display/refusals";
import type { GroundToGrowOn } from "@/lib/registry/varieties/read-grown-otherwise";
import type { Refusal } from "@/lib/science/outcome";
import { type PlanTyped, spreads } from "../_plan/plan-of-address";
import styles from "./grown-otherwise.module.css";

/** The fields of a plan that is tried out. `start` is what stood in them first; `plan` what stands there now. */
export function PlanFields({
  ground,
  plan,
  start,
  refusals,
}: {
  ground: GroundToGrowOn;
  plan: PlanTyped;
  start: PlanTyped;
  refusals: readonly Refusal[];
}) {
  const at = (field: string) => refusals.filter(({ path }) => path[0] === field).map(refusalSentence);
  const { today } = ground;
  return (
    <div className="stack-near">
      <fieldset className={styles.lots}>
        <legend>Sown from</legend>
        {inOrder(ground.lots, start.lots).map(({ id, number, year, holder }) => (
          <div key={id} className={styles.lot}>
            <label>
              <input type="checkbox" name="lots" value={id} defaultChecked={start.lots.includes(id)} />
              <span>
                Lot {number}
                <small>
                  {[year === null ? "year not known" : dateInWords(year), holder].filter(Boolean).join(", ")}
                </small>
              </span>
            </label>
            {plan.lots.length > 1 && plan.lots.includes(id) ? (
              <label className={styles.share}>
                <span className="heard">Share of lot {number} in percent of the plants</span>
                <input
                  type="text"
                  inputMode="decimal"
                  name={`share.${id}`}
                  defaultValue={start.shares[id] ?? ""}
                  autoComplete="off"
                />{" "}
                %
              </label>
            ) : null}
          </div>
        ))}
        <Refusals id="lots-refused" refusals={[...at("lots"), ...at("shares"), ...at("parents")]} />
      </fieldset>
      <div className={styles.counts}>
        <NumberField
          name="plants"
          label="Plants in flower"
          value={start.plants}
          refusals={[...at("plants"), ...at("lots")].filter(() => at("plants").length > 0)}
          whole
          required
        />
        <NumberField
          name="seedParents"
          label="Seed kept from"
          value={start.seedParents}
          refusals={[...at("seedParents"), ...at("pollenParents")]}
          unit="plants"
          whole
          required
        />
        <NumberField
          name="every"
          label="A grow-out every"
          value={start.every}
          refusals={[...at("every"), ...at("yearsBetween")]}
          unit="years"
          whole
          required
        />
        <Field name="unlike" label="The seed parents give" required>
          {(control) => (
            <select {...control} defaultValue={start.cv}>
              {spreads.map(({ cv, words }) => (
                <option key={cv} value={cv}>
                  {words}
                </option>
              ))}
            </select>
          )}
        </Field>
      </div>
      {today ? (
        <p className="quiet">
          Today’s plan: {counted(today.size.plants, "plant")},{" "}
          {
            {
              plan: today.growOut ? `as grow-out ${today.growOut.name} is planned` : "as planned",
              variety: "as the variety asks for",
              crop: "the crop’s floor",
            }[today.size.from]
          }
          , a grow-out every third year.
        </p>
      ) : null}
    </div>
  );
}

/** Those that were chosen at first stand first, so that they are seen without scrolling. */
function inOrder(lots: GroundToGrowOn["lots"], chosen: readonly string[]): GroundToGrowOn["lots"] {
  const first = lots.filter(({ id }) => chosen.includes(id));
  return [...first, ...lots.filter(({ id }) => !chosen.includes(id))];
}
