import type { Metadata } from "next";
import { PageHead } from "@/components/frame";
import { Icon } from "@/components/icons/icon";
import { Steps } from "@/components/ui";
import { current } from "../_session/current";
import styles from "./_components/bring-in.module.css";
import { FileColumns } from "./_components/file-columns";
import { importSteps } from "./_components/steps";
import { UploadForm } from "./_components/upload-form";

export const metadata: Metadata = { title: "Bring files in" };

export default async function BringIn({ searchParams }: { searchParams: Promise<{ refused?: string }> }) {
  const { demonstration } = await current("import");
  const { refused } = await searchParams;
  return (
    <div className="sheet stack">
      <PageHead title="Bring files in" kind="Registry" mark={<Icon name="page-in" size={32} />}>
        <p className="lead measure">
          A folder of plain spreadsheet files (CSV), or one zip of it. You see what each row would do before anything is
          written; it goes in whole or not at all, and one action takes it back.
        </p>
      </PageHead>
      <Steps steps={importSteps} now={0} />
      {demonstration ? (
        <p className="measure">
          You are in the demonstration: what you bring in here goes when the demonstration ends.
        </p>
      ) : null}
      <UploadForm refused={refused} />
      <details className={styles.columns}>
        <summary>What the files look like</summary>
        <FileColumns />
      </details>
    </div>
  );
}
