import type { CalculationKey } from "@/lib/schemas/calculations/calculation";

/** Keys that many calculations have alike. */
export const confidenceKey: CalculationKey = {
  key: "confidence",
  shape: "between 0 and 1",
  meaning: "how sure the answer should be",
  usual: "0.95",
};

export const assumedKey: CalculationKey = {
  key: "assumed",
  shape: "list of {code, text}",
  meaning: "each default that moves the figure; empty where none did",
};

export function intervalKey(key: string, meaning: string): CalculationKey {
  return { key, shape: "{low, high}, each 0 to 1", meaning };
}
