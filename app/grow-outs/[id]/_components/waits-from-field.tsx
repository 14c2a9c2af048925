import { Notice } from "@/components/ui";
import { Way } from "@/components/ui/offered";
import { counted } from "@/lib/display/plurals";
import { askedOfGrowOut } from "@/lib/registry/field/read-came-home";
import { current } from "../../../_session/current";

/** What phones brought home of the grow-out and a person has to settle; nothing where all is settled. */
export async function WaitsFromField({ growOutId }: { growOutId: string }) {
  const { db } = await current();
  const asked = await askedOfGrowOut(db, growOutId);
  if (asked === 0) return null;
  return (
    <Notice kind="waiting" title="From the field">
      <p>
        {counted(asked, "question")} {asked === 1 ? "waits" : "wait"} for a person.{" "}
        <Way href={`/field/came-home?growOut=${growOutId}`}>Look at what came home</Way>
      </p>
    </Notice>
  );
}
