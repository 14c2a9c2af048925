import { createHash } from "node:crypto";
import { existsSync, readdirSync } from "node:fs";
import path from "node:path";
import { Readable } from "node:stream";
import { expect, it } from "vitest";
import { ownerHere } from "@/lib/access/actor";
import { undoChangeSet } from "@/lib/registry/change-set/undo-change-set";
import { addPhotos } from "@/lib/registry/photos/add-photos";
import { photoErased, receiveChosen, receivePhoto } from "@/lib/registry/photos/arriving";
import { takePhotoAway } from "@/lib/registry/photos/correct-photo";
import { erasePhoto } from "@/lib/registry/photos/erase-photo";
import { verifyRegistry } from "@/lib/registry/safe-keeping/verify/verify-registry";
import type { Outcome } from "@/lib/science/outcome";
import { Phone } from "@/tests/registry/field/a-phone";
import { aCircle, actor } from "@/tests/registry/privacy/a-circle";
import { onEveryEngine } from "@/tests/setup/engines";
import { granted } from "@/tests/setup/registry";
import { withPlace } from "./pictures";

const owner = ownerHere();
const said = (outcome: Outcome<unknown>) => (outcome.ok ? "done" : outcome.refusals.map((each) => each.code).join(" "));

onEveryEngine("A picture that is erased", (fresh) => {
  it("is gone from its folder, its records and the history, for good; that there was one, and who erased it, stays", async () => {
    const db = await fresh();
    const { lots, stewards, growOuts } = await aCircle(db);
    const [first, other] = [await withPlace(60, 40), await withPlace(30, 20)];
    const hashOf = (bytes: Uint8Array) => createHash("sha256").update(bytes).digest("hex");
    const sent = () => Readable.from([Buffer.from(first)]);
    const facts = granted(await receivePhoto(db, hashOf(first), sent()));
    const kept = granted(await receiveChosen(db, "b.jpg", Readable.from([Buffer.from(other)])));
    const told = { caption: "Bert behind the house" };
    const of = (id: string) => ({ kind: "lot" as const, id });
    const berts = granted(await addPhotos(db, owner, of(lots.berts), told, [facts, kept]));
    const annas = granted(await addPhotos(db, owner, of(lots.annas), told, [facts]));
    const taken = granted(await takePhotoAway(db, owner, annas.value.photoIds[0] ?? "", { why: "wrong lot" }));
    const [id = ""] = berts.value.photoIds;
    const phone = new Phone(growOuts.berts);
    const picture = { plant: null, traitId: null, hash: hashOf(first), caption: "Bert, in his old hat" };
    const recorded = phone.makes("photo", picture);
    expect(await phone.sends(db, [recorded])).toEqual(["taken"]);

    expect(said(await erasePhoto(db, actor("steward", stewards.bert), id, { why: "I want it gone" }))).toBe(
      "not-allowed",
    );
    expect(said(await erasePhoto(db, owner, id, { why: " " }))).toBe("missing");
    expect(said(await erasePhoto(db, owner, lots.berts, { why: "asked to" }))).toBe("unknown");
    const file = (hash: string) => path.join(db.location.folder, "photos", hash.slice(0, 2), `${hash}.jpg`);
    expect(existsSync(file(facts.hash))).toBe(true);

    const erased = granted(await erasePhoto(db, owner, id, { why: "Bert asked for it" }));
    expect(erased.value.records).toBe(2);
    expect([existsSync(file(facts.hash)), existsSync(file(kept.hash))]).toEqual([false, true]);
    expect((await db.read.photo.findMany()).map((each) => each.hash)).toEqual([kept.hash]);
    const history = JSON.stringify(await db.read.change.findMany({ where: { tableName: "Photo" } }));
    expect(history).not.toContain(facts.hash);
    expect(history.split("Bert behind the house").length - 1).toBe(1);
    // What the phone sent with it is there, without its words; and they do not come back with the record, nor with another.
    const everywhere = async () =>
      JSON.stringify([
        await db.read.fieldRecord.findMany({ orderBy: { id: "asc" } }),
        await db.read.change.findMany(),
        await db.read.question.findMany(),
      ]);
    expect(await everywhere()).not.toContain("old hat");
    expect(await phone.sends(db, [recorded, phone.makes("photo", picture)])).toEqual(["held", "held"]);
    expect(await everywhere()).not.toContain("old hat");
    const bodies = (await db.read.fieldRecord.findMany({ orderBy: { id: "asc" } })).map((each) =>
      JSON.parse(each.body),
    );
    expect(bodies.map(({ body }) => body)).toEqual([1, 2].map(() => ({ ...picture, caption: "(picture erased)" })));
    expect(await db.read.question.count()).toBe(0);
    const set = await db.read.changeSet.findUniqueOrThrow({ where: { id: erased.changeSetId ?? "" } });
    expect(set).toMatchObject({
      title: "A picture erased for good",
      reason: "Bert asked for it",
      actor: "the owner",
    });

    for (const changeSetId of [erased.changeSetId, taken.changeSetId]) {
      const back = await undoChangeSet(db, owner, changeSetId ?? "");
      expect(back.ok ? "" : back.refusals[0]?.sentence).toContain("was for good: no picture is kept");
    }
    // A phone that has it still is told that it came, so that it lets it go; nothing is stored.
    granted(await receivePhoto(db, hashOf(first), sent()));
    expect([existsSync(file(facts.hash)), await photoErased(db, hashOf(first))]).toEqual([false, true]);
    expect(readdirSync(path.join(db.location.folder, "uploads"))).toEqual([]);
    expect((await verifyRegistry(db, path.join(db.location.folder, "photos"))).findings).toEqual([]);
  });
});
