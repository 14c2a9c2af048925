import { z } from "zod";
import { CountSchema } from "./counts";

/** A later look at a running test: for each replicate that was counted, what was new that day. */
export const LaterCountsSchema = z.strictObject({
  testId: z.string().min(1, "is no test; choose the test that was counted"),
  counts: z
    .array(CountSchema.extend({ replicateId: z.string().min(1, "is no replicate; choose one of the test") }))
    .min(1, "are missing; write at least one count"),
});
export type LaterCounts = z.infer<typeof LaterCountsSchema>;
