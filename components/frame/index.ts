export { Frame } from "./frame";
export { type Ground, groundCookie, groundOf } from "./ground";
export { PageHead } from "./page-head";
export { Parts, partOf } from "./parts";
export { Section } from "./section";
