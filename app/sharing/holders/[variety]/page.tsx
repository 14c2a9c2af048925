import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { PageHead } from "@/components/frame";
import { Figure } from "@/components/numbers";
import { SeedCoat } from "@/components/seed-coat";
import { Offered, Way } from "@/components/ui/offered";
import { dayInWords } from "@/lib/display/dates";
import { counted } from "@/lib/display/plurals";
import { readSharing } from "@/lib/registry/transfers/read-sharing";
import { storedSeedCoat } from "@/lib/schemas/varieties/seed-coat";
import { current } from "../../../_session/current";
import { holderName, placesExplanation, unconfirmedWords } from "../../../varieties/_words/explanations";
import { HolderWord } from "../../_parts/holder-word";
import styles from "../../_parts/sharing.module.css";

export const metadata: Metadata = { title: "Who holds it" };

export default async function HoldersOfVariety({ params }: { params: Promise<{ variety: string }> }) {
  const { db, settings, today } = await current();
  const { variety: id } = await params;
  const { held, records } = await readSharing(db, settings, today);
  const found = held.find((each) => each.variety.id === id);
  const variety = found?.variety ?? records.varieties.get(id);
  if (!variety) notFound();
  const holders = found?.holders ?? [];
  const places = found?.places ?? 0;
  return (
    <div className="sheet stack">
      <PageHead
        title={variety.name}
        kind={<Link href="/sharing#holders">Who holds what</Link>}
        mark={
          <SeedCoat name={variety.name} crop={variety.crop.key} coat={storedSeedCoat(variety.seedCoat)} size={56} />
        }
        figure={
          <Figure
            value={places === 0 ? "No place" : counted(places, "place")}
            waiting={places < 2}
            explanation={placesExplanation({ holders, people: records.names, crop: variety.crop, variety }, settings)}
          >
            {places > 1 ? "hold" : "holds"} seed of it for certain. Silence is no yes: ask, and write down what they
            say.
          </Figure>
        }
      />
      {holders.length === 0 ? <p className="quiet">Nobody has seed of it on record.</p> : null}
      <div className={styles.list}>
        {holders.map((holder) => {
          const name = holderName(holder, records.names);
          const last =
            holder.last === null
              ? "nothing was ever heard"
              : `${holder.last.how === "word" ? "last word" : "last seen in hand"} ${dayInWords(holder.last.day)}`;
          return (
            <section key={holder.stewardId ?? "here"} className={styles.entry} aria-label={name}>
              <p>
                <strong>{name}</strong>, {counted(holder.lots.length, "lot")} in {counted(holder.places, "place")};{" "}
                {last}
                {holder.why === null ? (
                  ": counts."
                ) : (
                  <span className="waits">: does not count, {unconfirmedWords[holder.why]}.</span>
                )}
              </p>
              {holder.stewardId === null ? null : (
                <Offered deed="desk">
                  <HolderWord
                    varietyId={variety.id}
                    stewardId={holder.stewardId}
                    steward={name}
                    today={today}
                    lots={holder.lots.map((lot) => lot.number)}
                  />
                </Offered>
              )}
            </section>
          );
        })}
      </div>
      <p className="quiet measure">
        A word about one lot, or with an amount:{" "}
        <Way href={`/varieties/${variety.id}/add/word`}>write it down at length</Way>.
      </p>
    </div>
  );
}
