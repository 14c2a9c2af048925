export { ChoosePlants } from "./choose-plants";
export type { KeptAnswer, StoreChoice } from "./keep-these";
export { readSetting, type Setting, startSetting } from "./setting";
