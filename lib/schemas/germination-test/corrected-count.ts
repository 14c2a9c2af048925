import { z } from "zod";
import { CountSchema } from "./counts";

/** What should stand instead of a count that was written wrongly; without `instead` the count is taken back altogether. */
export const CorrectedCountSchema = z.strictObject({
  countId: z.string().min(1, "is no count; choose the count to correct"),
  instead: CountSchema.nullable(),
  reason: z.string().trim().max(500, "is longer than 500 characters; keep the reason short").nullable().default(null),
});
export type CorrectedCount = z.infer<typeof CorrectedCountSchema>;
