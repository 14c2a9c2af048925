import { Button, Choice, NumberField, Select, TextField, Tick } from "@/components/ui";
import { FieldGroup, SideBySide } from "../../../../lots/_form/lot-form";
import { rowsUnlessSaid } from "../../sheet/_sheet/rows-of-sheet";
import styles from "../../sheet/_sheet/sheet-form.module.css";

const downs = [
  { value: "next", words: "The next free numbers", note: "or from a number that you say" },
  { value: "record", words: "The plants on record", note: "once more, for tags that were lost" },
];

const kinds = [
  { value: "hang", words: "To hang", note: "62 × 32 mm, with a hole for a tie" },
  { value: "loop", words: "Loop", note: "190 × 20 mm, round the stem and through its slit" },
];

/** Which tags, and how they are cut. It is sent as the address of the page, so that the same tags can be printed again. */
export function TagsForm({
  growOutId,
  typed,
  usualPaper,
  refusals,
}: {
  growOutId: string;
  typed: Readonly<Record<string, string>>;
  usualPaper: string;
  refusals: readonly { readonly field: string; readonly sentence: string }[];
}) {
  const start: Readonly<Record<string, string>> = { down: "next", kind: "hang", paper: usualPaper };
  const shown = ["down", "kind", "many", "from", "letters", "paper"];
  const field = (name: string) => ({
    name,
    value: typed[name] ?? start[name] ?? "",
    refusals: refusals.filter((each) => each.field === name).map((each) => each.sentence),
  });
  const others = refusals.filter((each) => !shown.includes(each.field)).map((each) => each.sentence);
  return (
    <form action={`/grow-outs/${growOutId}/tags`} className={styles.form}>
      {others.length > 0 ? <p className="waits">{others.join(" ")}</p> : null}
      <div className={styles.parts}>
        <Choice {...field("down")} label="Which tags" options={downs} />
        <Choice {...field("kind")} label="How they are cut" options={kinds} />
      </div>
      <FieldGroup title="Of new numbers">
        <SideBySide>
          <NumberField {...field("many")} label="How many" hint={`${rowsUnlessSaid} unless you say`} whole />
          <NumberField {...field("from")} label="From number" hint="else the next free one" whole />
          <TextField {...field("letters")} label="Letters before the number" hint="as R for R1, R2" />
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
          <Tick
            name="twice"
            label="Each tag twice"
            note="one for the plant, one for its seed bag"
            checked={typed.twice === "yes"}
          />
        </SideBySide>
      </FieldGroup>
      <div className="row">
        <Button type="submit">Lay them out</Button>
      </div>
    </form>
  );
}
