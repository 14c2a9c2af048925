export { Formula } from "./formula";
