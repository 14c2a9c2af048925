import { isShared } from "./shared";
import { siteOf } from "./site-of";

/** The address under which this page was asked for, for a code that leads back: https where the registry is opened to others. */
export function originHere(headers: { get(name: string): string | null }): string {
  const { origin } = siteOf(headers);
  return isShared() ? origin : origin.replace(/^https:/, "http:");
}
