export { Picture } from "./picture";
