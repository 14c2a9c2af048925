import { describe, expect, it } from "vitest";
import { backupDue } from "@/lib/registry/safe-keeping/backup-due";

describe("a backup is due", () => {
  it("at once where there is none", () => {
    expect(backupDue([], null, "2026-05-01T08:00:00.000Z")).toEqual({ now: true, at: "2026-05-01T08:00:00.000Z" });
  });

  it("half an hour before a day has passed since the newest, so that it keeps its hour", () => {
    const made = ["2026-04-29T08:00:00.000Z", "2026-04-30T08:00:00.000Z"];
    expect(backupDue(made, null, "2026-05-01T07:29:00.000Z")).toEqual({ now: false, at: "2026-05-01T07:30:00.000Z" });
    expect(backupDue(made, null, "2026-05-01T07:30:00.000Z").now).toBe(true);
  });

  it("at once after a machine was off for weeks", () => {
    expect(backupDue(["2026-04-01T08:00:00.000Z"], null, "2026-05-01T08:00:00.000Z").now).toBe(true);
  });

  it("an hour after one that failed, not in between", () => {
    const failed = "2026-05-01T08:00:00.000Z";
    expect(backupDue(["2026-04-01T08:00:00.000Z"], failed, "2026-05-01T08:59:00.000Z")).toEqual({
      now: false,
      at: "2026-05-01T09:00:00.000Z",
    });
    expect(backupDue(["2026-04-01T08:00:00.000Z"], failed, "2026-05-01T09:00:00.000Z").now).toBe(true);
  });

  it("by its day again once a backup was made after the failure", () => {
    const made = ["2026-05-01T08:10:00.000Z"];
    expect(backupDue(made, "2026-05-01T08:00:00.000Z", "2026-05-01T12:00:00.000Z").at).toBe("2026-05-02T07:40:00.000Z");
  });

  describe("with a clock that was set back", () => {
    const ahead = "2026-06-10T08:00:00.000Z";

    it("at once, although one is dated ahead", () => {
      expect(backupDue([ahead], null, "2026-05-01T08:00:00.000Z").now).toBe(true);
    });

    it("once a day from then on, not one after the other", () => {
      expect(backupDue([ahead, "2026-05-01T08:00:00.000Z"], null, "2026-05-01T08:10:00.000Z")).toEqual({
        now: false,
        at: "2026-05-02T07:30:00.000Z",
      });
    });

    it("and a failure that is dated ahead does not hold it up", () => {
      expect(backupDue([], ahead, "2026-05-01T08:00:00.000Z").now).toBe(true);
    });
  });
});
