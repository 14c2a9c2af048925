import { beforeEach, expect, it } from "vitest";
import type { Actor } from "@/lib/access/actor";
import type { Database } from "@/lib/db";
import { perform } from "@/lib/registry/change-set/perform";
import { undoChangeSet } from "@/lib/registry/change-set/undo-change-set";
import { recordStageCounts } from "@/lib/registry/grow-outs/record-stage-counts";
import { recordLedgerEntry } from "@/lib/registry/ledger/record-ledger-entry";
import { splitLot } from "@/lib/registry/lots/split-lot";
import { seenBy } from "@/lib/registry/privacy/seen-by";
import { giveSeed } from "@/lib/registry/transfers/give-seed";
import { takeInSeed } from "@/lib/registry/transfers/take-in-seed";
import { addOtherName } from "@/lib/registry/varieties/add-other-name";
import { recordVariety } from "@/lib/registry/varieties/record-variety";
import { stageCountsSchema } from "@/lib/schemas/grow-outs/field-counts";
import { parseForm } from "@/lib/schemas/lots/form-fields";
import { defaultSettings } from "@/lib/schemas/settings";
import { giveSchema, takeInSchema } from "@/lib/schemas/transfers/transfer";
import { parseDate } from "@/lib/science/dates/parse-date";
import { accepted, type Outcome } from "@/lib/science/outcome";
import { onEveryEngine } from "../../setup/engines";
import { granted } from "../../setup/registry";
import { aCircle, actor, type Circle, secrets } from "../privacy/a-circle";

const today = "2026-11-24";
const settings = defaultSettings;

/** "done", or the codes of the refusals. */
const said = (outcome: Outcome<unknown>) => (outcome.ok ? "done" : outcome.refusals.map((each) => each.code).join(" "));
const sentences = (outcome: Outcome<unknown>) =>
  outcome.ok ? "" : outcome.refusals.map((each) => each.sentence).join(" ");

onEveryEngine("Who may write what", (fresh) => {
  let db: Database;
  let circle: Circle;
  let anna: Actor;
  let bert: Actor;

  beforeEach(async () => {
    db = await fresh();
    circle = await aCircle(db);
    anna = actor("steward", circle.stewards.anna);
    bert = actor("steward", circle.stewards.bert);
  });

  const weigh = (who: Actor, lotId: string) => {
    const entry = { kind: "weighed" as const, amount: 498, on: granted(parseDate("2026-11-01")), unit: "g" as const };
    return recordLedgerEntry(seenBy(db, who), who, lotId, { ...entry, other: null, notes: null }, today);
  };
  const count = (who: Actor, growOutId: string) => {
    const typed = granted(parseForm(stageCountsSchema("north"), { "up.plants": "30", "up.on": "2026-05-20" }));
    return recordStageCounts(seenBy(db, who), who, growOutId, typed, today);
  };
  const give = (who: Actor, lotId: string, holder: string) => {
    const typed = { kind: "gift", on: "2026-11-01", amount: "20", unit: "g", holder, told: ["caution-crop"] };
    const input = granted(parseForm(giveSchema("north"), { ...typed, override: "agreed by all" }));
    return giveSeed(seenBy(db, who), who, lotId, input, { settings, today });
  };
  const takeIn = (who: Actor, typed: Readonly<Record<string, string>>) => {
    const start = { kind: "gift", on: "2026-11-05", unit: "g", amount: "2", story: "It was theirs." };
    return takeInSeed(seenBy(db, who), who, granted(parseForm(takeInSchema("north"), { ...start, ...typed })), today);
  };
  const written = () => db.read.changeSet.count();

  it("a steward: own lots and grow-outs; what is another's is refused with who may, and nothing is written", async () => {
    const before = await written();
    const refused = await weigh(bert, circle.lots.annas);
    expect(said(refused)).toBe("not-yours");
    expect(sentences(refused)).toContain("of lot VELL-1");
    expect(sentences(refused)).toContain("Anna Vell or the owner may");
    expect(said(await count(bert, circle.growOuts.annas))).toContain("not-yours");
    expect(await written()).toBe(before);
    expect(await db.read.ledgerEntry.count({ where: { lotId: circle.lots.annas } })).toBe(1);
    expect(said(await weigh(bert, circle.lots.berts))).toBe("done");
    expect(said(await count(bert, circle.growOuts.berts))).toBe("done");
    expect(said(await weigh(actor("steward", null), circle.lots.berts))).toBe("not-yours");
  });

  it("a steward puts own seed into another's hand, and takes none out of it", async () => {
    expect(said(await give(anna, circle.lots.annas, "Bert Omm"))).toBe("done");
    expect(said(await give(bert, circle.lots.annas, "Bert Omm"))).toContain("not-yours");
    const part = { amount: 5, unit: "g" as const, on: granted(parseDate("2026-11-01")), number: null, reason: null };
    const split = {
      ...part,
      holder: "Bert Omm",
      newHolder: null,
      override: "agreed",
      notes: null,
      container: null,
      place: null,
    };
    expect(said(await splitLot(db, anna, circle.lots.annas, split))).toBe("done");
    const intoStore = { ...split, container: "jar" as const, place: "the shelf at Bert’s" };
    expect(said(await splitLot(db, anna, circle.lots.annas, intoStore))).toBe("done");
    const fromLot = { variety: "Vell Early", fromLot: "VELL-1", giver: "Anna Vell", holder: "Bert Omm" };
    expect(said(await takeIn(bert, fromLot))).toContain("not-yours");
    expect(said(await takeIn(bert, { variety: "Vell Early", holder: "Bert Omm", giverWords: "a cousin" }))).toBe(
      "done",
    );
    // A jar cannot be handed on by naming another holder.
    const moved = perform(db, bert, { action: "correct", title: "Another holder" }, async (change) => {
      await change.update("Lot", circle.lots.berts, { holderId: circle.stewards.anna });
      return accepted(null);
    });
    expect(said(await moved)).toBe("not-yours");
  });

  it("a steward who names nobody means the own hand", async () => {
    const id = "01990000-0000-7000-8000-00000000abcd";
    const entered = await perform(db, bert, { action: "record", title: "A grow-out" }, async (change) => {
      const named = { name: "Omm 2027", nameKey: "omm 2027", varietyId: circle.varieties.shared };
      await change.create("GrowOut", { id, ...named, stewardId: null });
      return accepted(null);
    });
    expect(said(entered)).toBe("done");
    expect((await db.read.growOut.findUniqueOrThrow({ where: { id } })).stewardId).toBe(circle.stewards.bert);
  });

  it("a helper: the field's tables of the grow-outs that are named", async () => {
    const helper = actor("helper", circle.stewards.anna, [circle.growOuts.annas]);
    expect(said(await count(helper, circle.growOuts.annas))).toBe("done");
    expect(said(await count(helper, circle.growOuts.berts))).toContain("not-yours");
    expect(said(await weigh(helper, circle.lots.annas))).toBe("not-allowed");
    const renamed = perform(db, helper, { action: "record-in-field", title: "Another name" }, async (change) => {
      await change.update("GrowOut", circle.growOuts.annas, { note: "mine now" });
      return accepted(null);
    });
    expect(said(await renamed)).toBe("not-yours");
  });

  it("a librarian: the desk of the library, both ways of a loan; with no library of their own, every lot at the desk", async () => {
    const librarian = actor("librarian", circle.stewards.library);
    expect(said(await give(librarian, circle.lots.librarys, "Bert Omm"))).toBe("done");
    expect(said(await weigh(librarian, circle.lots.annas))).toBe("not-yours");
    expect(said(await count(librarian, circle.growOuts.annas))).toBe("not-allowed");
    const back = { kind: "return", variety: "Omm Round", fromLot: "LENT-1", giver: secrets.borrower };
    expect(
      said(await takeIn(librarian, { ...back, holder: "Seed shelf of Omm", answers: circle.transfers.lent })),
    ).toBe("done");
    const desk = actor("librarian");
    expect(said(await weigh(desk, circle.lots.annas))).toBe("done");
    const changed = perform(db, desk, { action: "desk", title: "A variety" }, async (change) => {
      await change.update("Variety", circle.varieties.open, { note: "x" });
      return accepted(null);
    });
    expect(said(await changed)).toBe("not-yours");
  });

  it("readers and strangers write nothing", async () => {
    for (const who of [actor("reader"), actor("public")])
      expect(said(await weigh(who, circle.lots.annas))).toContain(who.role === "public" ? "unknown" : "not-allowed");
  });

  it("a variety is written of by those who keep it", async () => {
    const name = (who: Actor, varietyId: string) =>
      addOtherName(seenBy(db, who), who, varietyId, { name: `Of ${who.stewardId}`, kind: "other" });
    expect(said(await name(bert, circle.varieties.shared))).toBe("done");
    expect(said(await name(bert, circle.varieties.open))).toBe("not-yours");
    // One that is hidden is not taken for one that nobody keeps, by whatever way its id came.
    const unseen = perform(db, bert, { action: "record", title: "Another name" }, async (change) => {
      const named = { name: "Guessed", nameKey: "guessed", kind: "other", varietyId: circle.varieties.held };
      await change.create("VarietyName", { id: "01990000-0000-7000-8000-00000000abce", ...named });
      return accepted(null);
    });
    expect(said(await unseen)).toBe("not-yours");
  });

  it("a record that is hidden is refused word for word like one that is not there", async () => {
    const nowhere = "00000000-0000-7000-8000-000000000000";
    const of = async (attempt: Promise<Outcome<unknown>>, id: string) =>
      JSON.stringify(await attempt).replaceAll(id, "ID");
    expect(await of(weigh(bert, circle.lots.held), circle.lots.held)).toBe(await of(weigh(bert, nowhere), nowhere));
    expect(await of(count(bert, circle.growOuts.held), circle.growOuts.held)).toBe(
      await of(count(bert, nowhere), nowhere),
    );
    const crop = (await db.read.crop.findFirstOrThrow({ where: { clonal: false }, orderBy: { key: "asc" } }))
      .commonName;
    const taken = await recordVariety(seenBy(db, bert), bert, { name: secrets.held, crop });
    expect(said(taken)).toBe("cannot-be-used");
    expect(sentences(taken)).not.toContain(secrets.held);
  });

  it("what one entered oneself is taken back, what another entered is not even there", async () => {
    const own = granted(await weigh(bert, circle.lots.berts)).changeSetId ?? "";
    const annas = granted(await weigh(anna, circle.lots.annas)).changeSetId ?? "";
    expect(said(await undoChangeSet(seenBy(db, bert), bert, annas))).toBe("unknown");
    // Asked over the whole registry, its rows are still another's.
    expect(said(await undoChangeSet(db, bert, annas))).toBe("not-yours");
    expect(said(await undoChangeSet(seenBy(db, bert), bert, own))).toBe("done");
    expect(said(await undoChangeSet(db, actor("reader"), annas))).toBe("not-allowed");
    const given = granted(await give(anna, circle.lots.annas, "Bert Omm")).changeSetId ?? "";
    expect(said(await undoChangeSet(seenBy(db, anna), anna, given))).toBe("done");
  });
});
