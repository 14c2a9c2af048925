import type { Metadata } from "next";
import { notFound, redirect } from "next/navigation";
import { PageHead, Section } from "@/components/frame";
import { ButtonLink, Notice, Steps } from "@/components/ui";
import { Way } from "@/components/ui/offered";
import { counted } from "@/lib/display/plurals";
import { refusalSentence } from "@/lib/display/refusals";
import { checkFolder } from "@/lib/exchange/bring-in/import-folder";
import { uploadedFiles } from "@/lib/exchange/bring-in/uploads";
import { current } from "../../_session/current";
import { ConfirmImport } from "../_components/confirm-import";
import { FindingsTable } from "../_components/findings-table";
import { importSteps } from "../_components/steps";
import { TallyTable } from "../_components/tally-table";
import { bringIn } from "../actions";

export const metadata: Metadata = { title: "Look at the files" };

export default async function LookAtUpload({ params }: { params: Promise<{ upload: string }> }) {
  const { upload } = await params;
  const { db } = await current("import");
  const files = await uploadedFiles(db.location.folder, upload);
  if (!files) notFound();
  if (!files.ok) redirect(`/bring-in?refused=${encodeURIComponent(files.refusals.map(refusalSentence).join(" "))}`);
  const { faults, warnings, tally, changes, nothingNew } = await checkFolder(db, files.value);
  const rows = tally.reduce((sum, each) => sum + each.added + each.changed, 0);
  return (
    <div className="sheet stack">
      <PageHead title={headline(faults.length, nothingNew)} kind="Bring files in" />
      <Steps steps={importSteps} now={1} />
      {faults.length > 0 ? (
        <Section
          id="faults"
          title={counted(faults.length, "fault")}
          aside={
            <ButtonLink href={`/bring-in/${upload}/faults`} download="faults.csv">
              Take the list out
            </ButtonLink>
          }
        >
          <p className="measure">
            Nothing was written. Mend these rows in your files and <Way href="/bring-in">bring them in again</Way>. Rows
            that are already in are not made twice.
          </p>
          <FindingsTable findings={faults} />
        </Section>
      ) : (
        <Section id="what" title="What would be written">
          <TallyTable tally={tally} />
          {nothingNew ? (
            <Notice title="Nothing to do" actions={<ButtonLink href="/lots">To the lots</ButtonLink>}>
              <p>The registry holds every row of these files already.</p>
            </Notice>
          ) : (
            <ConfirmImport upload={upload} rows={rows} action={bringIn} />
          )}
        </Section>
      )}
      {changes.length > 0 ? (
        <Section id="changes" title={`${counted(changes.length, "record")} would change`}>
          <ul className="counts">
            {changes.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </Section>
      ) : null}
      {warnings.length > 0 ? (
        <Section id="warnings" title={`${counted(warnings.length, "thing")} to look at`}>
          <p className="measure">
            These keep nothing out. They look unlikely: look whether they are as you meant them.
          </p>
          <FindingsTable findings={warnings} />
        </Section>
      ) : null}
    </div>
  );
}

function headline(faults: number, nothingNew: boolean): string {
  if (faults > 0) return "Not yet";
  return nothingNew ? "Nothing new" : "Look before it goes in";
}
