import type { HistoryFilter } from "@/lib/registry/history/list-change-sets";

type Parameters = Readonly<Record<string, string | readonly string[] | undefined>>;

/** The filter as it stands in the address: `?words=…&kind=…&from=…&to=…&part=…`. */
export function readHistoryAddress(parameters: Parameters): { filter: HistoryFilter; part: number } {
  const one = (name: string) => {
    const value = parameters[name];
    return (typeof value === "string" ? value : value?.[0])?.trim() || undefined;
  };
  const day = (name: string) => (/^\d{4}-\d{2}-\d{2}$/.test(one(name) ?? "") ? one(name) : undefined);
  const part = Number(one("part") ?? 1);
  return {
    filter: { words: one("words"), kind: one("kind"), from: day("from"), to: day("to") },
    part: Number.isInteger(part) && part > 0 ? part : 1,
  };
}

/** The address of a filter on `path`. */
export function historyHref(path: string, filter: HistoryFilter, part = 1): string {
  const query = new URLSearchParams();
  for (const [name, value] of Object.entries(filter)) if (value) query.set(name, value);
  if (part > 1) query.set("part", String(part));
  const text = query.toString();
  return text === "" ? path : `${path}?${text}`;
}
