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
export { Grid } from "./grid";
export { refusalKey, refusalOf } from "./grid-line";
export type { CellChange, GridColumn, GridRow, Place } from "./grid-types";
export { PasteDialog } from "./paste-dialog";
export { type PastePlan, pastedChanges } from "./paste-plan";
export { rectangle, type Selection, selected } from "./selection";
export { useEdits } from "./use-edits";
