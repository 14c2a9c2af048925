import { Figure } from "@/components/numbers";
import { counted } from "@/lib/display/plurals";
import type { SeasonGroup } from "../_words/groups";

/** The one figure of the season: what cannot wait, else what waits at all. */
export function SeasonFigure({ groups }: { groups: readonly SeasonGroup[] }) {
  const all = groups.reduce((sum, group) => sum + group.count, 0);
  const urgent = groups.reduce((sum, group) => sum + group.urgent, 0);
  const rest = all - urgent;
  if (all === 0) return <Figure value="Nothing">waits for a hand. Enjoy the day.</Figure>;
  if (urgent === 0) {
    return (
      <Figure value={counted(all, "thing")}>
        {all === 1 ? "waits" : "wait"} for a hand; all of it can wait a while.
      </Figure>
    );
  }
  return (
    <Figure value={counted(urgent, "thing")} waiting>
      cannot wait long.{rest === 0 ? "" : ` ${rest} more ${rest === 1 ? "waits" : "wait"} for a quiet day.`}
    </Figure>
  );
}
