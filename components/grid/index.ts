export { CellLine } from "./cell-line";
export {
  cellText,
  countEdits,
  type Edits,
  isEmpty,
  noEdits,
  readEdits,
  withCells,
  withoutRow,
  withRows,
} from "./edits";
export { filledDown } from "./fill-down";
export { Grid, refusalKey, refusalOf } from "./grid";
export type { CellChange, GridColumn, GridRow, Place } from "./grid-types";
export { PasteDialog } from "./paste-dialog";
export { type PastePlan, pastedChanges } from "./paste-plan";
export { rectangle, type Selection, selected } from "./selection";
export { useEdits } from "./use-edits";
