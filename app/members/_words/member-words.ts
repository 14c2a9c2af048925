import { dayInWords } from "@/lib/display/dates";
import type { MemberInList } from "@/lib/registry/accounts/list-members";
import { roleNames } from "./roles";

/** A member by name: the name for signing in where both are one. */
export function nameOf(member: { readonly name: string | null; readonly signInName: string | null }): string {
  return member.name ?? member.signInName ?? "somebody (account gone)";
}

/** What a member is here, in one line: "Helper, for Hollow Pea 2026". */
export function membershipInWords(member: Pick<MemberInList, "role" | "steward" | "growOuts">): string {
  const steward = member.steward ? `, keeps seed for ${member.steward}` : "";
  const growOuts = member.growOuts.length > 0 ? `, for ${member.growOuts.map((each) => each.name).join(", ")}` : "";
  return `${roleNames[member.role]}${steward}${growOuts}`;
}

/** The day of an instant, in words. */
export function dayOf(instant: string | Date): string {
  return dayInWords((typeof instant === "string" ? instant : instant.toISOString()).slice(0, 10));
}

const systems: readonly [RegExp, string][] = [
  [/iPhone/, "an iPhone"],
  [/iPad/, "an iPad"],
  [/Android/, "an Android device"],
  [/Windows/, "Windows"],
  [/Mac OS X|Macintosh/, "a Mac"],
  [/CrOS/, "a Chromebook"],
  [/Linux/, "Linux"],
];

const browsers: readonly [RegExp, string][] = [
  [/Edg(?:A|iOS)?\//, "Edge"],
  [/Firefox|FxiOS/, "Firefox"],
  [/SamsungBrowser/, "Samsung’s browser"],
  [/Chrome|CriOS/, "Chrome"],
  [/Safari/, "Safari"],
];

/** A device by what its browser says of itself: "Firefox on an Android device". */
export function deviceInWords(agent: string | null): string {
  const find = (list: typeof systems) => list.find(([sign]) => sign.test(agent ?? ""))?.[1];
  const [browser, system] = [find(browsers), find(systems)];
  if (!browser && !system) return "a device that does not say what it is";
  return system ? `${browser ?? "a browser"} on ${system}` : (browser ?? "a browser");
}
