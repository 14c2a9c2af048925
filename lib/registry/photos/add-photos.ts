import { uuidv7 } from "uuidv7";
import type { Actor } from "@/lib/access/actor";
import type { Database, Transaction } from "@/lib/db";
import { parseForm } from "@/lib/schemas/lots/form-fields";
import { photoWordsSchema } from "@/lib/schemas/photos/photo-words";
import type { FormTexts } from "@/lib/schemas/varieties/form-texts";
import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";
import { type Performed, perform } from "../change-set/perform";
import { foldName } from "../names/fold-name";
import { oneMeant } from "../search/one-meant";
import { readSettings } from "../settings/read-settings";
import { stewardNamed } from "../stewards/steward-named";
import { columnsOf, type PhotoSubject, subjectInWords } from "./photo-subject";
import type { PhotoFacts } from "./re-encode";

/**
 * Puts stored pictures (see receiveChosen) to a record, as one change set, with what is told of them all. A picture that the record has already is not
 * put there twice. Undoing takes the rows back; the files stay, since the history names them.
 * Refused: no picture, a record or steward that is not on record, a plant that the grow-out does not have, a day that cannot be read.
 */
export async function addPhotos(
  db: Database,
  actor: Actor,
  subject: PhotoSubject,
  input: FormTexts,
  pictures: readonly PhotoFacts[],
): Promise<Outcome<Performed<{ photoIds: readonly string[] }>>> {
  const read = parseForm(photoWordsSchema((await readSettings(db.read)).hemisphere), input);
  if (!read.ok) return read;
  if (pictures.length === 0)
    return refused(refusal("nothing-sent", ["photo"], null, "was chosen", "choose one or more pictures"));
  const { caption, takenOn, takenBy, scale, plant } = read.value;
  return perform(db, actor, { action: "picture", title: "Pictures" }, async (change, tx) => {
    const words = await subjectInWords(tx, subject);
    const hand = takenBy === null ? accepted(null) : await stewardNamed(tx, takenBy, "takenBy");
    const ofPlant = plant === null ? accepted(null) : await plantNamed(tx, subject, plant);
    const faults = [words, hand, ofPlant].flatMap((each) => (each.ok ? [] : each.refusals));
    if (faults.length > 0 || !words.ok || !hand.ok || !ofPlant.ok) return refused(...faults);
    const of = { ...columnsOf(subject), plantId: ofPlant.value };
    const standing = await tx.photo.findMany({
      where: { ...of, hash: { in: pictures.map((each) => each.hash) } },
      select: { hash: true },
    });
    const there = new Set(standing.map((each) => each.hash));
    const rows = pictures.flatMap(({ hash, width, height, bytes }) => {
      if (there.has(hash)) return [];
      there.add(hash);
      const told = { caption, takenOn: takenOn?.text ?? null, stewardId: hand.value, scale };
      return [{ id: uuidv7(), hash, width, height, bytes, ...told, ...of }];
    });
    if (rows.length === 0)
      return refused(refusal("there-already", ["photo"], words.value, "has this picture already", "choose another"));
    await change.createAll("Photo", rows);
    change.title = `${rows.length === 1 ? "A picture" : `${rows.length} pictures`} of ${words.value}`;
    change.touchNothing();
    return accepted({ photoIds: rows.map((row) => row.id) });
  });
}

async function plantNamed(tx: Transaction, subject: PhotoSubject, name: string): Promise<Outcome<string>> {
  const no = (wrong: string, needed: string) => refused(refusal("unknown-plant", ["plant"], name, wrong, needed));
  if (subject.kind !== "grow-out") return no("cannot be told here", "add the picture to the grow-out of the plant");
  const plants = await tx.plant.findMany({ where: { growOutId: subject.id }, select: { id: true, name: true } });
  const alike = plants.filter((each) => foldName(each.name) === foldName(name));
  const plant = oneMeant(name, alike, (each) => each.name);
  return plant ? accepted(plant.id) : no("is no plant of this grow-out", "write it as it stands in Plants and scores");
}
