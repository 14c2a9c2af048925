import type { SearchParameters } from "@/components/tables";

/** An address as a form would have been filled in: the first of each name. */
export function asTyped(parameters: SearchParameters): Readonly<Record<string, string>> {
  return Object.fromEntries(
    Object.entries(parameters).flatMap(([name, value]) => {
      const first = [value ?? []].flat()[0];
      return first === undefined ? [] : [[name, first]];
    }),
  );
}
