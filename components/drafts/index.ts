export { DraftLine } from "./draft-line";
export { useDraft } from "./use-draft";
