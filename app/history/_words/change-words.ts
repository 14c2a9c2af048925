import { counted, listed, plural } from "@/lib/display/plurals";
import type { ChangeCount } from "@/lib/registry/history/list-change-sets";

const done: Readonly<Record<ChangeCount["action"], string>> = {
  create: "made",
  update: "changed",
  remove: "removed",
};

const undone: Readonly<Record<ChangeCount["action"], string>> = {
  create: "removed",
  update: "set back to what stood before",
  remove: "put back",
};

/** What was written: "3 lots and 12 ledger entries made; 1 variety changed". */
export function countsInWords(counts: readonly ChangeCount[]): string {
  return sentence(counts, done) || "nothing";
}

/** What taking it back does: "3 lots and 12 ledger entries are removed; 1 variety is set back to what stood before". */
export function undoInWords(counts: readonly ChangeCount[]): string {
  const parts = actions.flatMap((action) => {
    const own = counts.filter((each) => each.action === action);
    if (own.length === 0) return [];
    const one = own.length === 1 && own[0]?.count === 1;
    return [`${named(own)} ${one ? "is" : "are"} ${undone[action]}`];
  });
  return parts.join("; ");
}

const actions = ["create", "update", "remove"] as const;

function sentence(counts: readonly ChangeCount[], verbs: Readonly<Record<ChangeCount["action"], string>>): string {
  return actions
    .flatMap((action) => {
      const own = counts.filter((each) => each.action === action);
      return own.length === 0 ? [] : [`${named(own)} ${verbs[action]}`];
    })
    .join("; ");
}

/** So many nouns are named; what else was written is counted together. */
const namedAtMost = 5;

function named(counts: readonly ChangeCount[]): string {
  const shown = counts.length <= namedAtMost + 1 ? counts : counts.slice(0, namedAtMost);
  const rest = counts.slice(shown.length).reduce((sum, each) => sum + each.count, 0);
  const words = shown.map(({ noun, count }) => counted(count, noun, pluralOf(noun)));
  return listed(
    rest === 0 ? words : [...words, counted(rest, "record that belongs to them", "records that belong to them")],
  );
}

/** The plural of a noun that may have words behind it: "lines of the type description". */
function pluralOf(noun: string): string {
  const [head = "", ...rest] = noun.split(/ (?=of |from |or )/);
  return [head === "blend" ? "blends" : plural(head), ...rest].join(" ");
}

/** What kind of change set it is. */
export const kindWords: Readonly<Record<string, string>> = {
  entry: "entry",
  import: "files brought in",
  undo: "taken back",
  start: "from the release",
};
