/** A score as it is stored: a number, or words (yes, no, not looked; a choice; a date). */
export interface ScoreValue {
  readonly value: number | null;
  readonly text: string | null;
}

export const yes = "yes";
export const no = "no";
/** nobody looked at this plant for it; not the same as no, nor as a cell that was never filled */
export const notLooked = "not looked";
