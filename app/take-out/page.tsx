import type { Metadata } from "next";
import { PageHead, Section } from "@/components/frame";
import { Icon } from "@/components/icons/icon";
import { ButtonLink } from "@/components/ui";
import { current } from "../_session/current";

export const metadata: Metadata = { title: "Take files out" };

export default async function TakeOut() {
  await current("export");
  return (
    <div className="sheet stack">
      <PageHead
        title="Take files out"
        mark={<Icon name="page-out" size={32} />}
        kind="Registry"
        actions={
          <ButtonLink href="/take-out/folder" download kind="chief">
            Take everything out
          </ButtonLink>
        }
      >
        <p className="lead measure">
          One zip with every record as plain spreadsheet files, and the pictures. It needs no program of ours to be
          read, and brought into an empty registry it gives the same registry again.
        </p>
      </PageHead>
      <Section id="tables" title="One list alone">
        <p className="measure">
          Each list has its own way out as a table, with just the rows that are shown: <a href="/lots">lots</a>,{" "}
          <a href="/varieties">varieties</a>, <a href="/tests">germination tests</a>.
        </p>
      </Section>
      <Section id="not-in-it" title="What stays behind">
        <p className="measure">
          Figures are not in it: they are worked out from the records, here or anywhere. The history of who changed what
          stays with the registry's own file; entries that were corrected go out as they stand now.
        </p>
      </Section>
    </div>
  );
}
