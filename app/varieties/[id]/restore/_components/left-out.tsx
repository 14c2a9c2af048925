import Link from "next/link";
import { Button, NumberField, TextField } from "@/components/ui";
import { dateInWords } from "@/lib/display/dates";
import { listed } from "@/lib/display/plurals";
import type { LotToRestoreWith } from "@/lib/registry/varieties/read-restore";
import type { RestoreAsked } from "../_words/asked";
import styles from "./restore.module.css";

/** How many living seeds the mix is to hold, and the lots that are left out, each with why; a reason brings in what may be overruled. */
export function LeftOut({ lots, asked }: { lots: readonly LotToRestoreWith[]; asked: RestoreAsked }) {
  const against = lots.filter((lot) => lot.against.some(({ code }) => code !== "foreign-pollen" || !asked.foreign));
  const crossed = lots.some(({ foreign }) => foreign);
  const overridable = against.filter((lot) => lot.against.every((each) => each.overridable));
  const wantsReason = asked.also.size > 0 && asked.although === "";
  return (
    <form className={styles.asked}>
      <NumberField
        name="seeds"
        label="Living seeds of the mix"
        hint="left as it is: enough for one grow-out"
        value={asked.seedsTyped ?? String(asked.seeds)}
        refusals={
          asked.seedsTyped === null ? [] : [`“${asked.seedsTyped}” is no count; write a whole number, 1 or more`]
        }
        whole
        required
      />
      {crossed ? (
        <label className={styles.foreign}>
          <input type="checkbox" name="foreign" value="yes" defaultChecked={asked.foreign} />
          <span>Lots with foreign pollen up the line, too, by their native genes alone</span>
        </label>
      ) : null}
      {against.length > 0 ? (
        <div>
          <h3>Left out</h3>
          <div className={styles.against}>
            {against.map((lot) => (
              <div key={lot.id}>
                {overridable.includes(lot) ? (
                  <label>
                    <input
                      type="checkbox"
                      name="also"
                      value={lot.id}
                      defaultChecked={asked.also.has(lot.id)}
                      aria-describedby={`against-${lot.id}`}
                    />
                    <span>
                      Take it<span className="heard">, lot {lot.number},</span> all the same
                    </span>
                  </label>
                ) : (
                  <span className="quiet">Not to be taken</span>
                )}
                <p id={`against-${lot.id}`}>
                  <Link href={`/lots/${lot.id}`}>{lot.number}</Link>
                  {lot.year === null ? "" : `, ${dateInWords(lot.year)}`}
                  {lot.holder === null ? "" : `, ${lot.holder}`}: {listed(lot.against.map(({ words }) => words))}.
                </p>
              </div>
            ))}
          </div>
        </div>
      ) : null}
      {overridable.length > 0 ? (
        <TextField
          name="although"
          label="Why all the same"
          hint="it is shown with the advice"
          value={asked.although}
          refusals={wantsReason ? ["nothing stands here; say why, or leave these lots out"] : []}
        />
      ) : null}
      <p className="not-on-paper">
        <Button type="submit">Reckon again</Button>
      </p>
    </form>
  );
}
