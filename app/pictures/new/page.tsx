import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { PageHead } from "@/components/frame";
import { Button, ButtonLink, DateField, Notice, Select, TextField } from "@/components/ui";
import type { RecordPage } from "@/lib/registry/ownership/offered-here";
import { type PhotoSubject, readSubject } from "@/lib/registry/photos/photo-subject";
import { listStewards } from "@/lib/registry/stewards/list-stewards";
import { current } from "../../_session/current";
import { OfRecord } from "../../_session/of-record";
import { pageOfSubject, subjectNamed } from "../_words/picture-words";
import styles from "./new.module.css";

export const metadata: Metadata = { title: "Add pictures" };

type Asked = Readonly<Record<string, string | string[] | undefined>>;

/** Chooses pictures for a record. Without script, too: the form sends itself. */
export default async function AddPictures({ searchParams }: { searchParams: Promise<Asked> }) {
  const { db } = await current("picture");
  const asked = await searchParams;
  const subject = subjectNamed(asked);
  const of = subject ? await readSubject(db, subject) : null;
  if (!subject || of === null) notFound();
  const typed = (name: string) => (typeof asked[name] === "string" ? asked[name] : "");
  const people = (await listStewards(db)).flatMap((each) => each.name ?? []);
  const refused = [asked.refused ?? []].flat();
  const back = pageOfSubject(subject);
  return (
    <OfRecord {...recordOfSubject(subject)}>
      <div className="sheet stack">
        <PageHead title="Add pictures" kind={of}>
          <p className="measure">
            Each is turned upright, made at most 1,600 pixels long, and stored without the place, the day and the camera
            that came with it.
          </p>
        </PageHead>
        {refused.length > 0 ? (
          <div role="alert">
            <Notice
              kind="waiting"
              title={typed("stored") ? `Stored: ${typed("stored")}. Not stored:` : "Not stored yet"}
            >
              {refused.map((sentence) => (
                <p key={sentence}>{sentence}</p>
              ))}
            </Notice>
          </div>
        ) : null}
        <form className={styles.form} action="/pictures/upload" method="post" encType="multipart/form-data">
          <input type="hidden" name="of" value={subject.kind} />
          <input type="hidden" name="id" value={subject.id} />
          {subject.kind === "trait" ? <input type="hidden" name="variety" value={subject.varietyId} /> : null}
          <div className={styles.files}>
            <label htmlFor="photos">The pictures</label>
            <p id="photos-hint">JPEG, PNG, WebP or AVIF; at most 20 at once, each at most 30 MB.</p>
            <input
              id="photos"
              name="photos"
              type="file"
              multiple
              required
              accept="image/jpeg,image/png,image/webp,image/avif"
              aria-describedby="photos-hint"
            />
          </div>
          {subject.kind === "grow-out" ? (
            <TextField
              name="plant"
              label="Of which plant"
              hint="As it stands in Plants and scores"
              value={typed("plant")}
            />
          ) : null}
          {subject.kind === "trait" ? (
            <TextField name="scale" label="Which step it shows" hint="As 3, or pale" value={typed("scale")} />
          ) : null}
          <TextField name="caption" label="What they show" lines={2} value={typed("caption")} />
          <DateField name="takenOn" label="Taken on" value={typed("takenOn")} />
          <Select
            name="takenBy"
            label="Taken by"
            empty="not on record"
            options={people.map((name) => ({ value: name, words: name }))}
            value={typed("takenBy")}
          />
          <p className="quiet">History can take pictures back; each can be taken away on its own page.</p>
          <div className="row">
            <Button type="submit" kind="chief">
              Add them
            </Button>
            <ButtonLink href={back} kind="quiet">
              Leave it
            </ButtonLink>
          </div>
        </form>
      </div>
    </OfRecord>
  );
}

/** Whose record it is that the pictures are put to; a trait is of its variety. */
function recordOfSubject(subject: PhotoSubject): { page: RecordPage; id: string } {
  switch (subject.kind) {
    case "trait":
      return { page: "/varieties/[id]", id: subject.varietyId };
    case "variety":
      return { page: "/varieties/[id]", id: subject.id };
    case "lot":
      return { page: "/lots/[id]", id: subject.id };
    case "grow-out":
      return { page: "/grow-outs/[id]", id: subject.id };
    case "test":
      return { page: "/tests/[id]", id: subject.id };
  }
}
