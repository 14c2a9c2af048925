import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type DatedBackup, keptBackups } from "@/lib/registry/safe-keeping/kept-backups";

const backup = (at: string, more: Partial<DatedBackup> = {}): DatedBackup => ({
  name: at,
  at,
  sound: true,
  byHand: false,
  ...more,
});

/** One backup a day at 03:00 UTC, from a day on. */
function daily(from: string, days: number): DatedBackup[] {
  return Array.from({ length: days }, (_none, day) =>
    backup(new Date(Date.parse(`${from}T03:00:00Z`) + day * 86_400_000).toISOString()),
  );
}

describe("which backups are kept", () => {
  // Counted on a calendar: 2023-12-25 .. 2026-03-10 are 807 days; the last seven are 4 to 10 March.
  it("are seven of days, twelve of months and every year, the newest of each", () => {
    const all = daily("2023-12-25", 807);
    expect(all.at(-1)?.at).toBe("2026-03-10T03:00:00.000Z");
    const kept = [...keptBackups(all, "2026-03-10T12:00:00.000Z").keys()].map((name) => name.slice(0, 10)).sort();
    expect(kept).toEqual([
      "2023-12-31",
      "2024-12-31",
      "2025-04-30",
      "2025-05-31",
      "2025-06-30",
      "2025-07-31",
      "2025-08-31",
      "2025-09-30",
      "2025-10-31",
      "2025-11-30",
      "2025-12-31",
      "2026-01-31",
      "2026-02-28",
      "2026-03-04",
      "2026-03-05",
      "2026-03-06",
      "2026-03-07",
      "2026-03-08",
      "2026-03-09",
      "2026-03-10",
    ]);
  });

  it("say what each is kept as", () => {
    const kept = keptBackups(daily("2025-12-30", 4), "2026-01-03T00:00:00.000Z");
    expect(kept.get("2025-12-31T03:00:00.000Z")).toEqual(["day", "month", "year"]);
    expect(kept.get("2025-12-30T03:00:00.000Z")).toEqual(["day"]);
  });

  it("do not go because a machine was off: days without a backup do not count", () => {
    const all = daily("2026-01-01", 7);
    expect(keptBackups(all, "2027-06-01T00:00:00.000Z").size).toBe(7);
  });

  it("of two on one day are the newer, unless the older was made by hand", () => {
    const early = backup("2026-01-02T03:00:00.000Z");
    const late = backup("2026-01-02T20:00:00.000Z");
    const now = "2026-01-03T00:00:00.000Z";
    expect([...keptBackups([early, late], now).keys()]).toEqual([late.name]);
    expect(keptBackups([{ ...early, byHand: true }, late], now).get(early.name)).toEqual(["by hand"]);
  });

  it("dated ahead of the clock never go and take no other's place", () => {
    const ahead = daily("2031-01-01", 9);
    const kept = keptBackups([...daily("2026-01-01", 7), ...ahead], "2026-01-08T00:00:00.000Z");
    expect(ahead.map((each) => kept.get(each.name))).toEqual(ahead.map(() => ["dated ahead"]));
    expect(kept.size).toBe(16);
  });

  it("that are unsound take no sound one's place, and go when a sound one is newer", () => {
    const sound = daily("2026-01-01", 7);
    const bad = daily("2026-01-08", 9).map((each) => ({ ...each, sound: false }));
    const kept = keptBackups([...sound, ...bad], "2026-01-20T00:00:00.000Z");
    expect(sound.every((each) => kept.has(each.name))).toBe(true);
    expect(bad.filter((each) => kept.has(each.name))).toEqual(bad.slice(2));
    const mended = backup("2026-01-17T03:00:00.000Z");
    const after = keptBackups([...sound, ...bad, mended], "2026-01-20T00:00:00.000Z");
    expect(bad.filter((each) => after.has(each.name))).toEqual([]);
  });

  const anyBackup = fc.record({
    at: fc
      .integer({ min: Date.parse("2020-01-01"), max: Date.parse("2030-01-01") })
      .map((at) => new Date(at).toISOString()),
    sound: fc.boolean(),
    byHand: fc.boolean(),
  });
  const anyMoment = fc.integer({ min: Date.parse("2019-01-01"), max: Date.parse("2031-01-01") });

  it("always hold the newest sound one and all that are dated ahead, whatever the clock says", () => {
    fc.assert(
      fc.property(fc.array(anyBackup, { maxLength: 60 }), anyMoment, (given, moment) => {
        const all = given.map((each, place) => ({ ...each, name: `${each.at} ${place}` }));
        const now = new Date(moment).toISOString();
        const kept = keptBackups(all, now);
        const past = all.filter((each) => each.sound && each.at <= now).sort((a, b) => (a.at < b.at ? 1 : -1));
        if (past[0]) expect([...kept.keys()].some((name) => name.startsWith(past[0]?.at ?? ""))).toBe(true);
        expect(all.filter((each) => each.at > now).every((each) => kept.has(each.name))).toBe(true);
      }),
    );
  });

  it("are kept a second time when those that went are gone: letting go has an end", () => {
    fc.assert(
      fc.property(fc.array(anyBackup, { maxLength: 60 }), anyMoment, (given, moment) => {
        const all = given.map((each, place) => ({ ...each, name: `${each.at} ${place}` }));
        const now = new Date(moment).toISOString();
        const kept = keptBackups(all, now);
        const left = all.filter((each) => kept.has(each.name));
        expect([...keptBackups(left, now).keys()].sort()).toEqual([...kept.keys()].sort());
      }),
    );
  });
});
