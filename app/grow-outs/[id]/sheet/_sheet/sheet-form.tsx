import { Button, Choice, DateField, NumberField, Select, TextField, Tick } from "@/components/ui";
import { FieldGroup, SideBySide } from "../../../../lots/_form/lot-form";
import { rowsUnlessSaid } from "./rows-of-sheet";
import styles from "./sheet-form.module.css";

const downs = [
  { value: "record", words: "The plants on record", note: "their tags stand there already" },
  { value: "next", words: "Numbered rows", note: "for the next free tags, or from a number that you say" },
  { value: "hand", words: "Rows without a tag", note: "the tag is written by hand" },
];

const orders = [
  { value: "tag", words: "by tag" },
  { value: "cell", words: "by cell, as they stand" },
  { value: "entry", words: "as they came onto record" },
];

/** What a sheet is to have. It is sent as the address of the page, so that a sheet can be printed again. */
export function SheetForm({
  growOutId,
  typed,
  start,
  traits,
  ticked,
  refusals,
}: {
  growOutId: string;
  typed: Readonly<Record<string, string>>;
  start: Readonly<Record<string, string>>;
  traits: readonly { readonly id: string; readonly name: string }[];
  ticked: readonly string[];
  refusals: readonly { readonly field: string; readonly sentence: string }[];
}) {
  const field = (name: string) => ({
    name,
    value: typed[name] ?? start[name] ?? "",
    refusals: refusals.filter((each) => each.field === name).map((each) => each.sentence),
  });
  const others = refusals.filter((each) => !(each.field in fields)).map((each) => each.sentence);
  return (
    <details className={styles.folded} open={typed.asked === undefined || refusals.length > 0}>
      <summary>What stands on the sheet</summary>
      <form action={`/grow-outs/${growOutId}/sheet`} className={styles.form}>
        <input type="hidden" name="asked" value="yes" />
        {others.length > 0 ? <p className="waits">{others.join(" ")}</p> : null}
        <div className={styles.parts}>
          <Choice {...field("down")} label="Down the sheet" options={downs} />
          {traits.length > 0 ? (
            <FieldGroup title="Across, with its scale in the head">
              {traits.map((trait) => (
                <Tick
                  key={trait.id}
                  name="trait"
                  value={trait.id}
                  label={trait.name}
                  checked={ticked.includes(trait.id)}
                />
              ))}
            </FieldGroup>
          ) : null}
        </div>
        <FieldGroup title="Of the plants on record">
          <Select {...field("order")} label="In which order" options={orders} required />
        </FieldGroup>
        <FieldGroup title="Of new rows">
          <SideBySide>
            <NumberField {...field("many")} label="How many" hint={`${rowsUnlessSaid} unless you say`} whole />
            <NumberField {...field("from")} label="From number" hint="else the next free one" whole />
            <TextField {...field("letters")} label="Letters before the number" hint="as R for R1, R2" />
            <TextField {...field("cell")} label="First cell" hint="as A; the cells count up" />
            <NumberField {...field("perCell")} label="Rows in a cell" whole />
          </SideBySide>
        </FieldGroup>
        <FieldGroup title="Paper">
          <SideBySide>
            <Select
              {...field("paper")}
              label="Size"
              options={[
                { value: "a4", words: "A4" },
                { value: "letter", words: "Letter" },
              ]}
              required
            />
            <Select
              {...field("lie")}
              label="It lies"
              options={[
                { value: "fits", words: "as fits" },
                { value: "portrait", words: "upright" },
                { value: "landscape", words: "on its long side" },
              ]}
              required
            />
            <DateField {...field("on")} label="Day in the field" hint="left empty, it is written in by hand" />
          </SideBySide>
        </FieldGroup>
        <div className="row">
          <Button type="submit">Lay it out</Button>
        </div>
      </form>
    </details>
  );
}

/** The fields that show their own refusals. */
const fields: Readonly<Record<string, true>> = {
  ...{ down: true, order: true, many: true, from: true, letters: true },
  ...{ cell: true, perCell: true, paper: true, lie: true, on: true },
};
