import { describe, expect, it } from "vitest";
import { fillCropList } from "@/lib/registry/crops/fill-crop-list";
import { profileOfCrop } from "@/lib/registry/crops/profile-of-crop";
import { readCrop } from "@/lib/registry/crops/read-crop";
import { removeOwnValue } from "@/lib/registry/crops/remove-own-value";
import { setOwnValue } from "@/lib/registry/crops/set-own-value";
import { emptyRegistry, granted } from "@/tests/setup/registry";
import { owner, withVariety } from "../varieties/with-variety";

async function pea() {
  const db = await emptyRegistry();
  const crop = await db.read.crop.findUniqueOrThrow({ where: { key: "pea" } });
  const set = (field: string, value: string, reason = "seen here for years") =>
    setOwnValue(db, owner, { cropId: crop.id, field, value, reason });
  return { db, crop, set };
}

describe("an own value of a crop", () => {
  it("stands in the list's place, with its reason, and the list's value beside it", async () => {
    const { db, crop, set } = await pea();
    granted(await set("seedLifeYearsMax", "7,5"));
    const read = await readCrop(db, "pea");
    const field = read?.fields.find((each) => each.field === "seedLifeYearsMax");
    expect(field).toMatchObject({ listed: crop.seedLifeYearsMax, own: { value: 7.5, reason: "seen here for years" } });
    const rows = await db.read.cropOverride.findMany();
    expect(profileOfCrop(crop, rows).seedLifeYearsMax).toBe(7.5);
  });

  it("is replaced by a second one and taken back to the list's", async () => {
    const { db, set } = await pea();
    granted(await set("plantsMin", "30"));
    granted(await set("plantsMin", "35"));
    const row = await db.read.cropOverride.findFirstOrThrow();
    expect(row.value).toBe("35");
    granted(await removeOwnValue(db, owner, row.id));
    expect(await db.read.cropOverride.count()).toBe(0);
    const gone = await removeOwnValue(db, owner, row.id);
    expect(gone.ok ? "" : gone.refusals[0]?.code).toBe("unknown-own-value");
  });

  it("outlives the next release's crop list", async () => {
    const { db, set } = await pea();
    granted(await set("plantsMin", "30"));
    granted(await fillCropList(db));
    expect(await db.read.cropOverride.count()).toBe(1);
  });

  it("is refused without a reason, in another kind of value, and out of range", async () => {
    const { set } = await pea();
    const code = async (...given: Parameters<typeof set>) => {
      const outcome = await set(...given);
      return outcome.ok ? null : outcome.refusals[0]?.code;
    };
    expect(await code("plantsMin", "30", "")).toBe("missing");
    expect(await code("plantsMin", "30.5")).toBe("not-a-number");
    expect(await code("plantsMin", "many")).toBe("not-a-number");
    expect(await code("plantsMin", "0")).toBe("out-of-range");
    expect(await code("outcrossingPctMax", "101")).toBe("out-of-range");
    expect(await code("matingSystem", "sometimes")).toBe("not-a-choice");
    expect(await code("colour", "red")).toBe("not-one-of");
  });

  it("is refused where the lower end would pass the upper one", async () => {
    const { crop, set } = await pea();
    const outcome = await set("seedLifeYearsMin", String((crop.seedLifeYearsMax ?? 0) + 1));
    expect(outcome.ok ? "" : outcome.refusals[0]?.code).toBe("range-crossed");
  });

  it("marks the figures of the crop's varieties as stale, and of no other", async () => {
    const { db, set } = await pea();
    const [own, other] = [await withVariety(db), await withVariety(db, "Mere Oat", "oat")];
    const revision = async (id: string) => (await db.read.variety.findUniqueOrThrow({ where: { id } })).revision;
    const before = await revision(other);
    granted(await set("outcrossingPctMax", "20"));
    expect(await revision(other)).toBe(before);
    expect(await revision(own)).toBeGreaterThan(before);
  });
});
