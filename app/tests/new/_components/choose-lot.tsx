import { EmptyState } from "@/components/empty";
import { PageHead } from "@/components/frame";
import { SeedCoat } from "@/components/seed-coat";
import { Button, ButtonLink, TextField } from "@/components/ui";
import { Way } from "@/components/ui/offered";
import { dateInWords } from "@/lib/display/dates";
import { counted } from "@/lib/display/plurals";
import { type LotToTest, lotsToTest } from "@/lib/registry/germination-tests/lots-to-test";
import { storedSeedCoat } from "@/lib/schemas/varieties/seed-coat";
import styles from "./choose-lot.module.css";

type Db = Parameters<typeof lotsToTest>[0];

/** Which lot was tested: those never tested and those tested longest ago stand first. */
export async function ChooseLot({ db, find }: { db: Db; find: string }) {
  const { lots, found } = await lotsToTest(db, find);
  if (found === 0 && find === "") {
    return (
      <div className="sheet">
        <h1 className="heard">A germination test</h1>
        <EmptyState
          noun="lots"
          action={
            <ButtonLink href="/lots/new" kind="chief">
              Enter a lot
            </ButtonLink>
          }
        >
          A test belongs to a lot, and there is none yet: enter the jar first, or{" "}
          <Way href="/bring-in">bring a notebook in</Way>.
        </EmptyState>
      </div>
    );
  }
  return (
    <div className="sheet stack">
      <PageHead kind="Germination test" title="Which lot did you test?" />
      <form className={styles.find}>
        <TextField
          name="find"
          label="Find a lot"
          value={find}
          type="search"
          hint="lot number, variety, crop or holder"
          required
        />
        <Button type="submit">Find</Button>
      </form>
      <p className="quiet" role="status">
        {found === 0
          ? `No lot fits “${find}”.`
          : found > lots.length
            ? `The first ${lots.length} of ${counted(found, "lot")}; ${order}.`
            : `${counted(found, "lot")}; ${order}.`}
      </p>
      <ul className={styles.lots}>
        {lots.map((lot) => (
          <li key={lot.id} className={styles.lot}>
            <SeedCoat
              name={lot.variety.name}
              coat={storedSeedCoat(lot.variety.seedCoat)}
              crop={lot.variety.crop.key}
              size={28}
            />
            <span>
              <Way href={`/tests/new?lot=${lot.id}`}>{lot.number}</Way> {lot.variety.name}
            </span>
            <span className={styles.says}>{wordsOf(lot)}</span>
          </li>
        ))}
      </ul>
    </div>
  );
}

const order = "those never tested or tested longest ago stand first, those with nothing left last";

function wordsOf({ year, holder, lastTest, nothingLeft }: LotToTest): string {
  return [
    year ? `harvest ${dateInWords(year)}` : "year not known",
    holder,
    lastTest ? `tested ${dateInWords(lastTest)}` : "never tested",
    nothingLeft ? "nothing left" : null,
  ]
    .filter(Boolean)
    .join(", ");
}
