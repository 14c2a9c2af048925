export { FieldSheet, type PageCode, type SheetHead, type SheetLine, type TraitOfSheet } from "./field-sheet";
export { type Lie, lies, type Paper, papers } from "./paper";
export { PaperPage } from "./paper-page";
export { type SheetAsk, type SheetLayout, sheetLayout } from "./sheet-layout";
export { type TraitHead, traitHead } from "./trait-head";
