import { Notice } from "@/components/ui";
import { Way } from "@/components/ui/offered";
import { counted } from "@/lib/display/plurals";

/** What phones brought home of the grow-out and a person has to settle; nothing where all is settled. */
export function WaitsFromField({ growOutId, asked }: { growOutId: string; asked: number }) {
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
