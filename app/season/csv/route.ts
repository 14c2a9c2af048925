import type { Column } from "@/components/tables";
import { readSeasonRecords } from "@/lib/registry/season/read-season-records";
import { waitingItems } from "@/lib/registry/season/waiting";
import { current } from "../../_session/current";
import { rowsAsCsv } from "../../varieties/csv/rows-as-csv";
import { seasonGroups, seasonPlaces } from "../_words/groups";
import { ruleWords } from "../_words/rule-words";

const columns: readonly Column[] = [
  { key: "place", name: "Place", kind: "words" },
  { key: "what", name: "What waits", kind: "words" },
  { key: "record", name: "Record", kind: "words" },
  { key: "of", name: "Of", kind: "words" },
  { key: "says", name: "Why", kind: "words" },
  { key: "urgent", name: "Cannot wait", kind: "words" },
];

/** All that waits for a hand, one line each, in the order of the season's page. */
export async function GET(request: Request): Promise<Response> {
  const { db, settings, today } = await current();
  const records = await readSeasonRecords(db, settings, today);
  const groups = seasonGroups(waitingItems(records), records);
  const rows = seasonPlaces.flatMap(({ place, title }) =>
    groups
      .filter((group) => group.place === place)
      .flatMap(({ rule, lines }) =>
        lines.map(({ key, subject, of, sentence, urgent }) => ({
          id: key,
          cells: {
            place: title,
            what: ruleWords[rule].title,
            record: subject.words,
            of: of ?? "",
            says: sentence,
            urgent: urgent ? "yes" : "no",
          },
        })),
      ),
  );
  return rowsAsCsv(request, `season ${today}`, columns, rows);
}
