import Link from "next/link";
import { Explained } from "@/components/numbers";
import { dateInWords } from "@/lib/display/dates";
import type { LotRead } from "@/lib/registry/lots/read-lot";
import type { NoteOfLot } from "@/lib/registry/lots/read-notes";
import { spanShown } from "@/lib/registry/varieties/span-shown";
import { diversityExplanation, diversityInWords, diversitySentence } from "../_words/explain-lineage";
import { narrowsHref, narrowsInWords } from "../_words/span-in-words";
import { ClaimsOfLot } from "./claims-of-lot";
import { KinOfLotPart } from "./kin-of-lot";

/** What a lot still holds of its variety's diversity, where it comes from, and what came of it. */
export async function LineageOfLot({ read }: { read: LotRead }) {
  const shown = spanShown(read.standing, read.figures);
  await shown?.narrowsAtHand();
  const diversity = diversityExplanation(read);
  const counted = read.standing === "counted" || shown !== null;
  const narrows = shown?.narrows ?? null;
  const making = read.notes.find((note) => note.what === "making");
  return (
    <div className="stack">
      {diversity ? (
        <Explained explanation={diversity}>
          {counted
            ? `${diversityInWords(read)} ${diversitySentence(read)}`
            : `What is kept of the diversity: ${diversityInWords(read)}.`}
        </Explained>
      ) : null}
      {counted ? null : <p>{diversitySentence(read)}</p>}
      {narrows ? (
        <p className="measure">
          {narrowsInWords(narrows)} <Link href={narrowsHref(narrows)}>look it up</Link>
        </p>
      ) : null}
      {making ? <p className="measure">{makingInWords(making)}</p> : null}
      <KinOfLotPart read={read} />
      <ClaimsOfLot read={read} />
    </div>
  );
}

/** When a lot was mixed or parted, by whom and why, with what was overruled. */
function makingInWords({ on, who, words, more }: NoteOfLot): string {
  const done = more === "split" ? "Parted" : "Mixed";
  const said = [on ? ` ${dateInWords(on)}` : "", who ? ` by ${who}` : ""].join("");
  return `${done}${said}${words ? `: ${words.replace(/\.+$/, "")}` : ", nobody wrote why"}.`;
}
