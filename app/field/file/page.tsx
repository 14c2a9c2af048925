import type { Metadata } from "next";
import { PageHead } from "@/components/frame";
import { Icon } from "@/components/icons/icon";
import { current } from "../../_session/current";
import { FileForm } from "./file-form";

export const metadata: Metadata = { title: "Bring a phone’s file in" };

/** A file carries a phone's records home where the network never does. */
export default async function FieldFile() {
  const { demonstration } = await current("record-in-field");
  return (
    <div className="sheet stack">
      <PageHead title="Bring a phone’s file in" kind="From the field" mark={<Icon name="page-in" size={32} />}>
        <p className="lead measure">
          Where a phone never reaches the registry, it saves its records as a file. Each record in it is taken once,
          whether some of them came by the network or not, and the file may be brought in as often as you like.
        </p>
      </PageHead>
      {demonstration ? (
        <p className="measure">
          You are in the demonstration: what you bring in here goes when the demonstration ends.
        </p>
      ) : null}
      <FileForm />
    </div>
  );
}
