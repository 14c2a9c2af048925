export { Explained } from "./explained";
export { ExplainedHere } from "./explained-here";
export { ExplanationBody } from "./explanation-body";
export { Figure } from "./figure";
export { Measured } from "./measured";
