import { ExplainedHere } from "@/components/numbers";
import { SimpleTable } from "@/components/tables";
import { Way } from "@/components/ui/offered";
import { kOfN, percentSpan, wholeNumber } from "@/lib/display/numbers";
import { lastOfStanding, numbersOfEvents } from "@/lib/registry/grow-outs/counts-in-step";
import type { CountOnRecord } from "@/lib/registry/grow-outs/field-records";
import type { FieldRead } from "@/lib/registry/grow-outs/read-field";
import type { GrowOutRead } from "@/lib/registry/grow-outs/read-grow-out";
import { type Stage, stages } from "@/lib/schemas/grow-outs/field-kinds";
import { exactInterval } from "@/lib/science/binomial/exact-interval";
import { stageAfterCount, stageWords, thinningInWords, whenSeen } from "../../_words/field-words";
import styles from "./counts.module.css";
import { OddNotes } from "./odd-notes";

const columns = [
  { key: "stage", name: "Stage" },
  { key: "plants", name: "Plants", kind: "count" },
  { key: "fall", name: <span className="heard">Drawn</span> },
  { key: "share", name: "Of those before" },
  { key: "note", name: <span className="heard">Note</span> },
] as const;

/** Stages that want a count: where none stands the row is open. */
const wanted: readonly Stage[] = ["sown", "up", "standing", "flowering"];

/** Counts by stage as they fall from the seeds sown to the plants in flower, each with its share of those before. */
export function CountsTable({ read, field }: { read: GrowOutRead; field: FieldRead }) {
  const rows = rowsOf(read, field);
  const most = Math.max(1, ...rows.map((row) => row.plants ?? 0));
  const standing = standingInWords(read.growOut, field);
  return (
    <>
      <SimpleTable
        caption="Counts by stage"
        columns={columns}
        entries
        rows={rows.map((row) => ({
          id: row.id,
          cells: {
            stage: (
              <>
                {stageWords[row.stage].name}
                <span className={styles.under}>
                  {[thinningInWords(row.count?.thinnedBy ?? null), row.count ? whenSeen(row.count.on) : row.from]
                    .filter(Boolean)
                    .join(", ")}
                </span>
              </>
            ),
            plants: row.plants === null ? <span className={styles.open}>not counted</span> : wholeNumber(row.plants),
            fall: <Fall plants={row.plants} most={most} />,
            share: <Share row={row} />,
            note: <Notes row={row} read={read} field={field} />,
          },
        }))}
      />
      {standing ? <p className="quiet measure">{standing}</p> : null}
    </>
  );
}

/** Where the plants standing that the figures take are not simply the last count: how they come about, or that they say otherwise. */
export function standingInWords(
  growOut: Pick<GrowOutRead["growOut"], "plantsStanding">,
  { counts, passes }: Pick<FieldRead, "counts" | "passes">,
): string | null {
  const stood = growOut.plantsStanding;
  const { plantsStanding: counted } = numbersOfEvents({ counts, passes });
  if (stood === null || counted === null) return null;
  if (stood !== counted)
    return `The grow-out says that ${wholeNumber(stood)} stood, and the figures follow it; by the counts and passes it would be ${wholeNumber(counted)}.`;
  const last = lastOfStanding(counts);
  if (!last || last.plants === stood) return null;
  return `For the figures ${wholeNumber(stood)} stood before the first pass: the ${wholeNumber(last.plants)} ${stageAfterCount[last.stage]}, and ${wholeNumber(stood - last.plants)} pulled before they were counted.`;
}

interface Row {
  readonly id: string;
  readonly stage: Stage;
  readonly plants: number | null;
  readonly count: CountOnRecord | null;
  /** where the number is from, where no count gave it */
  readonly from?: string;
  /** the last count of the stage before */
  readonly before: { readonly stage: Stage; readonly plants: number } | null;
}

function rowsOf({ growOut }: GrowOutRead, { counts, crop }: FieldRead): Row[] {
  const rows: Row[] = [];
  let before: Row["before"] = null;
  for (const stage of stages) {
    const own = counts.filter((count) => count.stage === stage);
    for (const count of own) rows.push({ id: count.id, stage, plants: count.plants, count, before });
    const written = own.length === 0 ? writtenWithout(stage, growOut, counts) : null;
    if (written) rows.push({ id: stage, stage, ...written, count: null, before });
    else if (own.length === 0 && wanted.includes(stage))
      rows.push({ id: stage, stage, plants: null, count: null, before: null });
    const last = own.at(-1)?.plants ?? written?.plants;
    if (last !== undefined && !(stage === "sown" && crop.clusters)) before = { stage, plants: last };
  }
  return rows;
}

/** The seeds that the sowing wrote, and the plants standing that stand with the grow-out where no count speaks of them. */
function writtenWithout(stage: Stage, growOut: GrowOutRead["growOut"], counts: readonly CountOnRecord[]) {
  if (stage === "sown" && growOut.seedsSown !== null) return { plants: growOut.seedsSown, from: "by the sowing" };
  const speaks = counts.some((count) => count.stage === "replanted" || count.stage === "flowering");
  if (stage === "standing" && growOut.plantsStanding !== null && !speaks)
    return { plants: growOut.plantsStanding, from: "written with the grow-out" };
  return null;
}

/** The bar of a count, as wide as its share of the largest. */
function Fall({ plants, most }: { plants: number | null; most: number }) {
  return (
    <span className={styles.falling} aria-hidden="true">
      {plants === null ? (
        <span className={styles.noFall} />
      ) : (
        <span className={styles.fall} style={{ inlineSize: `${(plants / most) * 100}%` }} />
      )}
    </span>
  );
}

/** The share of the stage before; of the seeds sown with the span in which the share that comes up lies. */
function Share({ row: { plants, before, stage } }: { row: Row }) {
  if (plants === null || before === null || before.plants === 0 || plants > before.plants) return null;
  const words = kOfN(plants, before.plants);
  if (stage !== "up" || before.stage !== "sown")
    return (
      <span>
        {words} {stageAfterCount[before.stage]}
      </span>
    );
  const { low, high } = exactInterval(plants, before.plants, 0.95);
  return (
    <ExplainedHere
      explanation={{
        title: "the share that came up",
        answer: `${words}, in truth ${percentSpan(low, high)}`,
        formula: "share = up/sown;  exact interval at 95 % (Clopper–Pearson)",
        inputs: [
          { name: "seeds sown", value: wholeNumber(before.plants) },
          { name: "up", value: wholeNumber(plants) },
        ],
        assumed: ["Each seed came up or not by itself, and those that came up later are not counted."],
        unsure: "It holds the germination and the bed together: what came up is not what a germination test gives.",
        sources: ["Clopper & Pearson 1934, Biometrika 26:404-413"],
        method: "germination-test",
      }}
    >
      {words}
    </ExplainedHere>
  );
}

function Notes({ row, read, field }: { row: Row; read: GrowOutRead; field: FieldRead }) {
  if (!row.count) return null;
  const { note, males, stewardId, id } = row.count;
  return (
    <>
      <OddNotes
        words={[males === null ? null : `${wholeNumber(males)} of them males`, note]}
        who={
          stewardId === null || stewardId === read.growOut.stewardId
            ? null
            : (read.people.get(stewardId) ?? "a steward")
        }
        odd={field.warnings.get(id)}
      />
      <Way className={styles.right} href={`/grow-outs/${read.growOut.id}/count/${id}`}>
        Put right<span className="heard"> {stageWords[row.stage].name}</span>
      </Way>
    </>
  );
}
