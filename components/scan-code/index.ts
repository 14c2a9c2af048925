export { ScanCode } from "./scan-code";
