export { Scanner } from "./scanner";
export type { Typing } from "./typing-instead";
