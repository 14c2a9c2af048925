import { actionOfPath } from "./routes";

/** What is asked for before anybody can have signed in and is no page of its own: the signs of the app, and the steps of a passkey. */
const beside = ["/icon.svg", "/manifest.webmanifest", "/api/auth/"];

/** True where an address needs no sign-in: what everybody may ask for, by the one list of addresses. Everything else leads to the sign-in page. */
export function isOpenRoute(path: string): boolean {
  return beside.some((open) => path.startsWith(open)) || actionOfPath(path) === "come-in";
}
