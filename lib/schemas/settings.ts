import { z } from "zod";

/** The settings that verdicts name, with their defaults. */
export const SettingsSchema = z.strictObject({
  /** germination (share) below which a lot is to be renewed: plan it */
  renewalPlan: z.number().gt(0).lt(1).default(0.7),
  /** germination (share) below which renewing is urgent */
  renewalUrgent: z.number().gt(0).lt(1).default(0.5),
  /** for how many years a holder's word counts, with seed younger than its usual life */
  confirmedYears: z.number().int().min(1).max(50).default(3),
  /** weight, length and temperature as the steward reads them; storage is always grams, metres, degrees Celsius */
  units: z.enum(["metric", "imperial"]).default("metric"),
  hemisphere: z.enum(["north", "south"]).default("north"),
});

export type Settings = z.infer<typeof SettingsSchema>;

export const defaultSettings: Settings = SettingsSchema.parse({});
