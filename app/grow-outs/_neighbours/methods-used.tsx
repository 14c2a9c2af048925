import { SimpleTable } from "@/components/tables";
import { Way } from "@/components/ui/offered";
import { dateInWords } from "@/lib/display/dates";
import type { MethodRow } from "@/lib/registry/neighbours/read-neighbours";
import { evidenceOptions, methodOptions, wordsOf } from "./choices";
import type { GivenNeighbours } from "./given";

const columns = [
  { key: "method", name: "Method" },
  { key: "days", name: "From when to when" },
  { key: "sure", name: "How it is known" },
  { key: "note", name: "Note" },
  { key: "hand", name: <span className="heard">Put right</span> },
] as const;

/** What was done to keep other pollen off, with its evidence. */
export function MethodsUsed({ read: { methods }, at }: GivenNeighbours) {
  if (methods.length === 0)
    return <p className="quiet">Nothing is on record: neither distance nor time, cage, bags nor hand pollination.</p>;
  return (
    <SimpleTable
      columns={columns}
      entries
      rows={methods.map((each) => ({
        id: each.id,
        cells: {
          method: wordsOf(methodOptions, each.method),
          days: daysOf(each),
          sure: each.evidence === null ? "not written" : wordsOf(evidenceOptions, each.evidence),
          note: each.note,
          hand: (
            <Way className="not-on-paper" href={`${at}/methods/${each.id}`}>
              put right<span className="heard"> {each.method}</span>
            </Way>
          ),
        },
      }))}
    />
  );
}

function daysOf({ fromOn, toOn }: MethodRow): string {
  if (fromOn && toOn) return `${dateInWords(fromOn)} to ${dateInWords(toOn)}`;
  if (fromOn) return `from ${dateInWords(fromOn)}`;
  return toOn ? `until ${dateInWords(toOn)}` : "not written";
}
