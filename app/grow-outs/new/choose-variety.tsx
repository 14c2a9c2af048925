import { PageHead } from "@/components/frame";
import { Button, ButtonLink, Notice, Select } from "@/components/ui";
import { namesForForms } from "@/lib/registry/lots/names-for-forms";
import { current } from "../../_session/current";
import styles from "./choose-variety.module.css";

/** Of which variety a grow-out is planned. */
export async function ChooseVariety() {
  const { db } = await current();
  const { varieties } = await namesForForms(db);
  return (
    <div className="sheet stack">
      <PageHead title="Plan a grow-out">
        <p className="measure">
          What must be grown out this year, and what may rest? One variety at a time, and one that crosses at a time on
          a plot.
        </p>
      </PageHead>
      {varieties.length === 0 ? (
        <Notice
          title="A grow-out is of a variety"
          actions={<ButtonLink href="/varieties/new">Enter a variety</ButtonLink>}
        >
          <p>No variety is on record yet. Enter the variety first; its lots and the plan come next.</p>
        </Notice>
      ) : (
        <form className={styles.form}>
          <Select
            name="variety"
            label="Variety"
            options={varieties.map(({ id, name }) => ({ value: id, words: name }))}
            empty="choose the variety"
            required
          />
          <Button type="submit" kind="chief">
            Go on
          </Button>
        </form>
      )}
    </div>
  );
}
