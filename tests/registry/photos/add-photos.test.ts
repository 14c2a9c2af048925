import { uuidv7 } from "uuidv7";
import { beforeEach, expect, it } from "vitest";
import { ownerHere } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { perform } from "@/lib/registry/change-set/perform";
import { undoChangeSet } from "@/lib/registry/change-set/undo-change-set";
import { addPhotos } from "@/lib/registry/photos/add-photos";
import { correctPhoto, takePhotoAway } from "@/lib/registry/photos/correct-photo";
import type { PhotoSubject } from "@/lib/registry/photos/photo-subject";
import { readPhoto, seesPhoto } from "@/lib/registry/photos/read-photo";
import { readPhotosOf } from "@/lib/registry/photos/read-photos";
import { seenBy } from "@/lib/registry/privacy/seen-by";
import { removeTrait } from "@/lib/registry/traits/change-trait";
import { accepted, type Outcome } from "@/lib/science/outcome";
import { lotsMerged } from "@/tests/registry/photos/lots-merged";
import { aCircle, actor, type Circle } from "@/tests/registry/privacy/a-circle";
import { onEveryEngine } from "@/tests/setup/engines";
import { granted } from "@/tests/setup/registry";

const owner = ownerHere();
const picture = (letter: string) => ({ hash: letter.repeat(64), width: 80, height: 60, bytes: 900 });
const said = (outcome: Outcome<unknown>) => (outcome.ok ? "done" : outcome.refusals.map((each) => each.code).join(" "));

onEveryEngine("Pictures of a record", (fresh) => {
  let db: Database;
  let circle: Circle;
  let trait: string;

  beforeEach(async () => {
    db = await fresh();
    circle = await aCircle(db);
    trait = uuidv7();
    const row = { id: trait, name: "husk cover", nameKey: "husk cover", kind: "scale", scaleLow: 1, scaleHigh: 9 };
    granted(
      await perform(db, owner, { action: "record", title: "a trait" }, async (change) => {
        await change.create("Trait", { ...row, varietyId: circle.varieties.held });
        return accepted(null);
      }),
    );
  });

  const lot = (id: string): PhotoSubject => ({ kind: "lot", id });
  const told = { caption: " The  jar ", takenOn: "1987-05~", takenBy: "Bert Omm" };

  it("stand there with what is told of them, as one change set, the same picture once, and go by undo", async () => {
    const { lots } = circle;
    const added = granted(
      await addPhotos(db, owner, lot(lots.berts), told, [picture("a"), picture("b"), picture("a")]),
    );
    expect(added.value.photoIds).toHaveLength(2);
    const [first] = await readPhotosOf(db, lot(lots.berts));
    expect(first).toMatchObject({
      ...picture("a"),
      caption: "The  jar",
      takenOn: "1987-05~",
      takenBy: "Bert Omm",
      there: false,
    });
    expect((await db.read.changeSet.findFirst({ orderBy: { number: "desc" } }))?.title).toBe("2 pictures of lot OMM-1");
    expect(said(await addPhotos(db, owner, lot(lots.berts), {}, [picture("b")]))).toBe("there-already");
    granted(await addPhotos(db, owner, lot(lots.annas), {}, [picture("b")]));
    granted(await undoChangeSet(db, owner, added.changeSetId ?? ""));
    expect(await readPhotosOf(db, lot(lots.berts))).toEqual([]);
    expect(await seesPhoto(db, picture("b").hash)).toBe(true);
    expect(await seesPhoto(db, picture("a").hash)).toBe(false);
  });

  it("move no figure: no variety counts as changed", async () => {
    const before = await db.read.variety.findMany({ select: { id: true, revision: true }, orderBy: { id: "asc" } });
    granted(await addPhotos(db, owner, lot(circle.lots.berts), {}, [picture("a")]));
    const after = await db.read.variety.findMany({ select: { id: true, revision: true }, orderBy: { id: "asc" } });
    expect(after).toEqual(before);
  });

  it("are of every kind of record, and those of a plant stand with its grow-out", async () => {
    const { varieties, growOuts } = circle;
    const growOut: PhotoSubject = { kind: "grow-out", id: growOuts.annas };
    granted(await addPhotos(db, owner, growOut, { plant: "1", takenOn: "2026-07" }, [picture("a")]));
    granted(await addPhotos(db, owner, growOut, { takenOn: "2026-06" }, [picture("b")]));
    granted(await addPhotos(db, owner, growOut, {}, [picture("c")]));
    expect((await readPhotosOf(db, growOut)).map(({ plant, takenOn }) => [plant, takenOn])).toEqual([
      [null, "2026-06"],
      ["1", "2026-07"],
      [null, null],
    ]);
    expect(said(await addPhotos(db, owner, growOut, { plant: "99" }, [picture("d")]))).toBe("unknown-plant");
    granted(await addPhotos(db, owner, lot(circle.lots.berts), {}, [picture("d")]));
    const life = await readPhotosOf(db, { kind: "life", id: varieties.shared });
    expect(life.map(({ hash }) => hash[0])).toEqual(["b", "a", "c", "d"]);
    const ofTrait: PhotoSubject = { kind: "trait", id: trait, varietyId: varieties.held };
    granted(await addPhotos(db, owner, ofTrait, { scale: "9" }, [picture("e")]));
    granted(await addPhotos(db, owner, { kind: "variety", id: varieties.held }, {}, [picture("f")]));
    expect((await readPhotosOf(db, ofTrait)).map((each) => each.scale)).toEqual(["9"]);
    expect((await readPhotosOf(db, { kind: "variety", id: varieties.held })).map((each) => each.hash)).toEqual([
      picture("f").hash,
    ]);
    expect(said(await removeTrait(db, owner, varieties.held, trait))).toBe("trait-pictured");
  });

  it("are refused with a reason: no picture, a record or steward or day that is not", async () => {
    const { lots } = circle;
    expect(said(await addPhotos(db, owner, lot(lots.berts), {}, []))).toBe("nothing-sent");
    expect(said(await addPhotos(db, owner, lot(uuidv7()), {}, [picture("a")]))).toBe("unknown");
    expect(said(await addPhotos(db, owner, lot(lots.berts), { takenOn: "last week" }, [picture("a")]))).not.toBe(
      "done",
    );
    expect(said(await addPhotos(db, owner, lot(lots.berts), { takenBy: "Nobody" }, [picture("a")]))).not.toBe("done");
    expect(await db.read.photo.count()).toBe(0);
  });

  it("are put right and taken away with a reason, and what stood there stays in the history", async () => {
    const added = granted(await addPhotos(db, owner, lot(circle.lots.berts), told, [picture("a")]));
    const [id = ""] = added.value.photoIds;
    expect(said(await correctPhoto(db, owner, id, { ...told, caption: "The old jar" }))).toBe("missing");
    granted(await correctPhoto(db, owner, id, { ...told, caption: "The old jar", why: "two jars" }));
    expect((await readPhoto(db, id))?.photo.caption).toBe("The old jar");
    expect(said(await correctPhoto(db, owner, id, { ...told, caption: "The old jar", why: "again" }))).toBe("as-it-is");
    expect(said(await takePhotoAway(db, owner, id, { why: " " }))).toBe("missing");
    const away = granted(await takePhotoAway(db, owner, id, { why: "not this lot" }));
    expect(await readPhoto(db, id)).toBeNull();
    granted(await undoChangeSet(db, owner, away.changeSetId ?? ""));
    expect((await readPhoto(db, id))?.photo.caption).toBe("The old jar");
  });

  it("are added by whose the record is, and seen by who sees the record", async () => {
    const { lots, varieties, growOuts, stewards } = circle;
    const [anna, bert] = [actor("steward", stewards.anna), actor("steward", stewards.bert)];
    const helper = actor("helper", null, [growOuts.annas]);
    expect(said(await addPhotos(db, bert, lot(lots.annas), {}, [picture("a")]))).toBe("not-yours");
    expect(said(await addPhotos(db, bert, lot(lots.berts), {}, [picture("a")]))).toBe("done");
    expect(said(await addPhotos(db, bert, { kind: "variety", id: varieties.held }, {}, [picture("b")]))).toBe(
      "unknown",
    );
    expect(said(await addPhotos(db, helper, { kind: "grow-out", id: growOuts.annas }, {}, [picture("c")]))).toBe(
      "done",
    );
    expect(said(await addPhotos(db, helper, { kind: "grow-out", id: growOuts.berts }, {}, [picture("c")]))).toBe(
      "not-yours",
    );
    expect(said(await addPhotos(db, actor("reader"), lot(lots.berts), {}, [picture("a")]))).toBe("not-allowed");
    const held: PhotoSubject = { kind: "trait", id: trait, varietyId: varieties.held };
    const [heldId = ""] = granted(await addPhotos(db, anna, held, {}, [picture("d")])).value.photoIds;
    const sees = (who: typeof anna, letter: string) => seesPhoto(seenBy(db, who), picture(letter).hash);
    expect([await sees(anna, "d"), await sees(owner, "d"), await sees(bert, "a"), await sees(anna, "a")]).toEqual([
      ...[true, true, true, true],
    ]);
    expect([await sees(bert, "d"), await sees(actor("reader"), "d"), await sees(actor("public"), "d")]).toEqual([
      ...[false, false, false],
    ]);
    expect(await readPhoto(seenBy(db, bert), heldId)).toBeNull();
    expect(said(await takePhotoAway(db, bert, heldId, { why: "x" }))).toBe("unknown");
    // The same picture of an open record and of a held one is seen for the open one's sake, and only there.
    granted(await addPhotos(db, bert, lot(lots.berts), {}, [picture("d")]));
    expect(await sees(actor("reader"), "d")).toBe(true);
    expect(await readPhotosOf(seenBy(db, actor("reader")), held)).toEqual([]);
  });

  it("of two records of one lot stand together", async () => {
    const { lots } = circle;
    granted(await addPhotos(db, owner, lot(lots.annas), {}, [picture("a")]));
    granted(await addPhotos(db, owner, lot(lots.berts), {}, [picture("b")]));
    await lotsMerged(db, lots.annas, lots.berts);
    for (const id of [lots.annas, lots.berts])
      expect((await readPhotosOf(db, lot(id))).map((each) => each.hash[0])).toEqual(["a", "b"]);
  });
});
