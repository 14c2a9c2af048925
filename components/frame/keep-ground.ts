import { type Ground, groundCookie } from "./ground";

const aYear = 60 * 60 * 24 * 365;

/** Shows the page on a ground at once, and keeps the choice for the next. */
export function keepGround(ground: Ground): void {
  document.documentElement.dataset.ground = ground;
  // biome-ignore lint/suspicious/noDocumentCookie: the Cookie Store interface is missing where the page comes by plain http
  document.cookie = `${groundCookie}=${ground}; path=/; max-age=${aYear}; samesite=lax`;
}
