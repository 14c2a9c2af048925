export { Jar } from "./jar";
export type { Amount, JarContents } from "./jar-levels";
export { MixedJar, type MixedLayer } from "./mixed-jar";
