export { EmptyState } from "./empty-state";
export type { EmptyNoun } from "./pictures";
