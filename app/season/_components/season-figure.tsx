import { Figure } from "@/components/numbers";
import { counted } from "@/lib/display/plurals";
import type { SeasonGroup } from "../_words/groups";

/** The one figure of the season: what cannot wait, else what waits at all. */
export function SeasonFigure({ groups }: { groups: readonly SeasonGroup[] }) {
  const lines = groups.flatMap((group) => group.lines);
  const urgent = lines.filter((line) => line.urgent).length;
  const rest = lines.length - urgent;
  if (lines.length === 0) return <Figure value="Nothing">waits for a hand. Enjoy the day.</Figure>;
  if (urgent === 0) {
    return (
      <Figure value={counted(lines.length, "thing")}>
        {lines.length === 1 ? "waits" : "wait"} for a hand; all of it can wait a while.
      </Figure>
    );
  }
  return (
    <Figure value={counted(urgent, "thing")} waiting>
      cannot wait long.{rest === 0 ? "" : ` ${rest} more ${rest === 1 ? "waits" : "wait"} for a quiet day.`}
    </Figure>
  );
}
