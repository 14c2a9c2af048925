import { useCallback, useEffect, useRef, useState } from "react";
import { Button, ButtonAnchor } from "@/components/ui/button";
import { counted } from "@/lib/display/plurals";
import type { Phone } from "@/lib/field/phone";
import type { FieldPack } from "@/lib/schemas/field/field-pack";
import { Opens } from "../_components/on-this-phone";
import { usePhone, usePhoneNow } from "../_components/phone-context";
import { askForLastingStorage, type Readiness } from "../_components/readiness";
import { lastingInWords } from "../_words/storage-words";
import styles from "./screens.module.css";

type Taken = Awaited<ReturnType<Phone["take"]>>;

export interface Taking {
  /** what came of asking; null: it is under way, or was not asked */
  readonly taken: Taken | null;
  readonly lasting: boolean | null;
  /** the first taking of a grow-out is shown until the hand goes on */
  readonly shown: boolean;
  again(): void;
  goOn(): void;
}

/**
 * Takes a grow-out along: at once where it is not on the phone; quietly anew where it is and nothing of it waits, so that what others did is there.
 */
export function useTaking(growOutId: string): Taking {
  const phone = usePhone();
  const { packs, rows } = usePhoneNow();
  const [taken, setTaken] = useState<Taken | null>(null);
  const [lasting, setLasting] = useState<boolean | null>(null);
  const [shown, setShown] = useState(() => !packs.some((each) => each.growOutId === growOutId));
  const waits = useRef(false);
  waits.current = rows.some((row) => row.growOutId === growOutId && row.state === "unsent");
  const ask = useCallback(async () => {
    setTaken(null);
    const given = await phone.take(growOutId);
    setLasting(given.kind === "pack" ? await askForLastingStorage() : null);
    setTaken(given);
  }, [phone, growOutId]);
  useEffect(() => {
    if (!waits.current) void ask();
  }, [ask]);
  return { taken, lasting, shown, again: () => void ask(), goOn: () => setShown(false) };
}

/** What is on the phone now, or why it is not. */
export function TakeAlong({
  taking,
  pack,
  readiness,
}: {
  taking: Taking;
  pack: FieldPack | null;
  readiness: Readiness;
}) {
  const { taken } = taking;
  if (taken === null) {
    return (
      <p className={styles.lead} role="status">
        The grow-out is being taken along …
      </p>
    );
  }
  if (taken.kind !== "pack" || pack === null) {
    return (
      <>
        <h1>Not taken along</h1>
        <p className={styles.lead} role="alert">
          {whyNot(taken)}
        </p>
        <div className={styles.thumb}>
          {taken.kind === "sign-in" ? (
            <ButtonAnchor href="/sign-in?then=%2Ffield" kind="chief" wide>
              Sign in
            </ButtonAnchor>
          ) : null}
          <Button onClick={taking.again} wide>
            Try again
          </Button>
        </div>
      </>
    );
  }
  return (
    <>
      <h1>Taken along</h1>
      <p className={styles.lead}>
        {readiness.opens ? "Ready with no signal. " : ""}
        {pack.growOut.name} is on this phone, and was read back: {counted(pack.plants.length, "plant")},{" "}
        {counted(pack.traits.length, "trait")}, {counted(pack.walks.length, "rogue pass")}.
      </p>
      <Opens readiness={readiness} />
      <p className={styles.quiet}>{lastingInWords(taking.lasting)}</p>
      <div className={styles.thumb}>
        <Button onClick={taking.goOn} kind="chief" wide>
          To the plants
        </Button>
      </div>
    </>
  );
}

function whyNot(taken: Taken): string {
  switch (taken.kind) {
    case "unreachable":
      return "The registry cannot be reached from here, and this grow-out is not on the phone. Go where there is a signal and try again.";
    case "sign-in":
      return "The registry asks who you are first. Sign in; then this grow-out is taken along.";
    case "not here":
    case "not kept":
      return taken.words;
    case "pack":
      return "The phone did not give back what was stored. Make room on it and try again.";
  }
}
