export { Cautions } from "./cautions";
