export { Jar } from "./jar";
export type { Amount, JarContents } from "./jar-levels";
