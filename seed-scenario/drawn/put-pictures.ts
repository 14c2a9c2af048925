import sharp from "sharp";
import type { Actor } from "@/lib/access/actor";
import type { Database } from "@/lib/registry/handles";
import { addPhotos } from "@/lib/registry/photos/add-photos";
import type { PhotoSubject } from "@/lib/registry/photos/photo-subject";
import { storePhoto } from "@/lib/registry/photos/store-photo";
import type { Outcome } from "@/lib/science/outcome";
import { Draws } from "../telling/draws";
import { maizeByStaff, maizeEar, maizeRows } from "./maize";
import { seedsOnCloth } from "./seeds";

interface Drawn {
  readonly of: PhotoSubject | null;
  readonly draw: (draws: Draws) => string;
  readonly told: Readonly<Record<string, string>>;
}

/** Puts a few pictures to the records of the demonstration. They are drawn for it, since nobody could photograph what is invented. */
export async function putPictures(db: Database, actor: Actor): Promise<void> {
  for (const [place, { of, draw, told }] of (await drawn(db)).entries()) {
    if (!of) continue;
    const jpeg = await sharp(Buffer.from(draw(new Draws(`picture ${place}`))))
      .jpeg({ quality: 90 })
      .toBuffer();
    const stored = granted(await storePhoto(db, Uint8Array.from(jpeg), told.caption ?? ""));
    granted(await addPhotos(db, actor, of, told, [stored]));
  }
}

async function drawn(db: Database): Promise<readonly Drawn[]> {
  const [bean, maize] = [await idOf(db, "variety", "Thimblewright"), await idOf(db, "variety", "Gannerby Nightwatch")];
  const [lot, growOut] = [await idOf(db, "lot", "Thimble 36"), await idOf(db, "growOut", "Night 2026 mill field")];
  const test = await idOf(db, "germinationTest", "Thimble 36 test 1");
  const vigour = await idOf(db, "trait", "vigour");
  const step = (value: string, words: string, high: number): Drawn => ({
    of: vigour && maize ? { kind: "trait", id: vigour, varietyId: maize } : null,
    draw: (draws) => maizeByStaff(draws, high),
    told: { scale: `step ${value}`, caption: words, takenOn: "2024-08", takenBy: "Jossa Pellinder" },
  });
  return [
    {
      of: bean ? { kind: "variety", id: bean } : null,
      draw: (draws) => seedsOnCloth(draws, { rows: 5, columns: 7 }),
      told: { caption: "Thirty-five seeds as they should be: wine-red specks on buff", takenBy: "Edda Sallowby" },
    },
    {
      of: lot ? { kind: "lot", id: lot } : null,
      draw: (draws) => seedsOnCloth(draws, { rows: 3, columns: 4 }),
      told: { caption: "A dozen of the jar on the kitchen cloth", takenOn: "2026-02-08", takenBy: "Edda Sallowby" },
    },
    {
      of: test ? { kind: "test", id: test } : null,
      draw: (draws) => seedsOnCloth(draws, { rows: 2, columns: 5, root: (place) => ![3, 8].includes(place) }),
      told: { caption: "The towel opened on the ninth day", takenOn: "2026-02-26", takenBy: "Edda Sallowby" },
    },
    {
      of: growOut ? { kind: "grow-out", id: growOut } : null,
      draw: maizeRows,
      told: { caption: "In tassel, seen from the gate", takenOn: "2026-08-03", takenBy: "Jossa Pellinder" },
    },
    {
      of: growOut ? { kind: "grow-out", id: growOut } : null,
      draw: maizeEar,
      told: {
        plant: "1",
        caption: "Ten rows, one red kernel in eight",
        takenOn: "2026-09-19",
        takenBy: "Jossa Pellinder",
      },
    },
    step("1", "hardly grows", 90),
    step("5", "as most", 230),
    step("9", "strongest of its block", 360),
  ];
}

/** The id of a record of the demonstration by its name; null in a registry that has it not. */
async function idOf(
  { read }: Database,
  table: "variety" | "lot" | "growOut" | "germinationTest" | "trait",
  name: string,
): Promise<string | null> {
  const select = { id: true };
  if (table === "variety") return (await read.variety.findFirst({ where: { name }, select }))?.id ?? null;
  if (table === "lot") return (await read.lot.findFirst({ where: { number: name }, select }))?.id ?? null;
  if (table === "growOut") return (await read.growOut.findFirst({ where: { name }, select }))?.id ?? null;
  if (table === "trait") return (await read.trait.findFirst({ where: { name }, select }))?.id ?? null;
  return (await read.germinationTest.findFirst({ where: { name }, select }))?.id ?? null;
}

function granted<T>(outcome: Outcome<T>): T {
  if (outcome.ok) return outcome.value;
  throw new Error(outcome.refusals.map((each) => each.sentence).join("\n"));
}
