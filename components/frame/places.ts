/** A place that the head of every page leads to. */
export interface Place {
  readonly name: string;
  readonly href: string;
}

/** Where the day's work is. */
export const workPlaces: readonly Place[] = [
  { name: "Season", href: "/season" },
  { name: "Varieties", href: "/varieties" },
  { name: "Grow-outs", href: "/grow-outs" },
  { name: "Lots", href: "/lots" },
  { name: "Tests", href: "/tests" },
  { name: "Sharing", href: "/sharing" },
];

export const searchPlace: Place = { name: "Search", href: "/search" };

/** What concerns the registry as a whole. */
export const registryPlaces: readonly Place[] = [
  { name: "Bring files in", href: "/bring-in" },
  { name: "Take files out", href: "/take-out" },
  { name: "From the field", href: "/field/came-home" },
  { name: "Crops", href: "/crops" },
  { name: "Stewards", href: "/stewards" },
  { name: "Methods", href: "/methods" },
  { name: "History", href: "/history" },
  { name: "Safe keeping", href: "/safe-keeping" },
  { name: "Settings", href: "/settings" },
  { name: "Who may come in", href: "/members" },
];

/** True where `path` is the place itself or a page under it. */
export function isWithin(path: string, place: Place): boolean {
  return path === place.href || path.startsWith(`${place.href}/`);
}
