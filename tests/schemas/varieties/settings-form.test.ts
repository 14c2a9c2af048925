import { describe, expect, it } from "vitest";
import { parseForm } from "@/lib/schemas/lots/form-fields";
import { SettingsFormSchema } from "@/lib/schemas/varieties/settings-form";

const typed = { renewalPlan: "70", renewalUrgent: "50", confirmedYears: "3", units: "metric", hemisphere: "north" };
const read = (patch: Record<string, string> = {}) => parseForm(SettingsFormSchema, { ...typed, ...patch });

describe("the settings as they are typed", () => {
  it("become shares and years", () => {
    const settings = read({ renewalPlan: "72,5" });
    expect(settings.ok ? settings.value : null).toEqual({
      renewalPlan: 0.725,
      renewalUrgent: 0.5,
      confirmedYears: 3,
      units: "metric",
      hemisphere: "north",
    });
  });

  it("are refused at their field: no number, out of range, nothing", () => {
    const paths = (patch: Record<string, string>) => {
      const outcome = read(patch);
      return outcome.ok ? null : outcome.refusals.map((each) => each.path[0]);
    };
    expect(paths({ renewalPlan: "seventy" })).toEqual(["renewalPlan"]);
    expect(paths({ renewalPlan: "100" })).toEqual(["renewalPlan"]);
    expect(paths({ renewalUrgent: "0" })).toEqual(["renewalUrgent"]);
    expect(paths({ confirmedYears: "51" })).toEqual(["confirmedYears"]);
    expect(paths({ confirmedYears: "" })).toEqual(["confirmedYears"]);
    expect(paths({ units: "stone" })).toEqual(["units"]);
  });

  it("are refused where the urgent line does not lie below the planning line, in percent", () => {
    const outcome = read({ renewalUrgent: "70" });
    expect(outcome.ok ? "" : outcome.refusals[0]?.sentence).toBe(
      "70 is not below the line for planning; write a percentage below 70",
    );
    expect(read({ renewalUrgent: "69.9" }).ok).toBe(true);
  });
});
