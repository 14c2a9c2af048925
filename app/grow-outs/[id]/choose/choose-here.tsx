"use client";

import { useCallback, useMemo } from "react";
import { ChoosePlants, readSetting } from "@/components/choose-plants";
import type { Option } from "@/components/ui";
import { useClosed } from "@/components/ui/offered";
import type { ChoiceGround } from "@/lib/schemas/plants/choice-ground";
import { storePlants } from "../plants/_grid/store";

/** The choice at the desk: its setting stands in the address, and its marks are stored as the grid's are. */
export function ChooseHere({
  ground,
  asked,
  today,
  people,
}: {
  ground: ChoiceGround;
  /** the address as it was asked for */
  asked: string;
  today: string;
  people: readonly Option[];
}) {
  // The setting is the hand's from then on; what is stored changes the marks, not what was set.
  const start = useMemo(() => readSetting(new URLSearchParams(asked), ground), [asked, ground]);
  const moved = useCallback((address: string) => {
    if (address !== window.location.search) window.history.replaceState(null, "", window.location.pathname + address);
  }, []);
  const store = useCallback(
    (sent: Record<string, unknown>) => storePlants(ground.growOut.id, sent),
    [ground.growOut.id],
  );
  const looksOnly = useClosed().deeds.includes("record-in-field");
  return (
    <ChoosePlants
      ground={ground}
      start={start}
      moved={moved}
      store={looksOnly ? undefined : store}
      today={today}
      people={people}
    />
  );
}
