export { DraftLine } from "./draft-line";
export { textsStored } from "./texts-stored";
export { useDraft } from "./use-draft";
