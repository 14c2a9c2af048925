import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { PageHead, Section } from "@/components/frame";
import { Picture } from "@/components/picture";
import { Offered } from "@/components/ui/offered";
import { dateInWords } from "@/lib/display/dates";
import { bytesInWords, wholeNumber } from "@/lib/display/numbers";
import { readPhoto } from "@/lib/registry/photos/read-photo";
import { listStewards } from "@/lib/registry/stewards/list-stewards";
import { current } from "../../_session/current";
import { HistoryOf } from "../../history/_components/history-of";
import { RecordForm } from "../../varieties/_forms/record-form";
import { putPictureRight, takePictureAway } from "../_actions/pictures";
import { ErasePicture } from "../_parts/erase-picture";
import { ofWhat } from "../_words/of-what";
import { pictureAlt } from "../_words/picture-words";

export const metadata: Metadata = { title: "A picture" };

export default async function PicturePage({ params }: { params: Promise<{ id: string }> }) {
  const { db } = await current();
  const read = await readPhoto(db, (await params).id);
  if (!read) notFound();
  const { photo, takenBy, there } = read;
  const of = ofWhat(read.of);
  const people = (await listStewards(db)).flatMap((each) => each.name ?? []);
  const alt = pictureAlt({ ...photo, takenBy, plant: read.of.plant?.name ?? null }, of.words);
  return (
    <div className="sheet stack">
      <PageHead
        title={photo.caption ?? `Picture of ${of.words}`}
        kind={<Link href={`${of.page}#pictures`}>Pictures of {of.words}</Link>}
      />
      <Picture {...photo} alt={alt} there={there} whole />
      <dl className="particulars">
        {photo.scale ? (
          <div>
            <dt>Shows</dt>
            <dd>{photo.scale}</dd>
          </div>
        ) : null}
        <div>
          <dt>Taken</dt>
          <dd>{photo.takenOn ? dateInWords(photo.takenOn) : "day not known"}</dd>
        </div>
        <div>
          <dt>By</dt>
          <dd>{takenBy ?? "not on record"}</dd>
        </div>
        <div>
          <dt>File</dt>
          <dd>
            {there ? (
              <a href={`/photos/${photo.hash}`}>
                {wholeNumber(photo.width)} × {wholeNumber(photo.height)} pixels, {bytesInWords(photo.bytes)}
              </a>
            ) : (
              "gone or damaged; bring it back from a backup (npm run verify names it)"
            )}
          </dd>
        </div>
      </dl>
      <Offered deed="picture">
        <div className="beside even not-on-paper">
          <Section id="correct" title="Put it right">
            <RecordForm
              fields={[
                { kind: "words", name: "caption", label: "What it shows", lines: 2, value: photo.caption },
                ...(photo.traitId
                  ? [{ kind: "words" as const, name: "scale", label: "Which step it shows", value: photo.scale }]
                  : []),
                { kind: "date", name: "takenOn", label: "Taken on", value: photo.takenOn },
                {
                  kind: "select",
                  name: "takenBy",
                  label: "Taken by",
                  empty: "not on record",
                  options: people.map((name) => ({ value: name, words: name })),
                  value: takenBy,
                },
                { kind: "words", name: "why", label: "What was wrong", required: true },
              ]}
              action={putPictureRight.bind(null, photo.id)}
              confirm="Put it right"
              back={{ href: of.page, words: "Leave it" }}
            />
          </Section>
          <Section id="away" title="Take it away">
            <RecordForm
              fields={[
                {
                  kind: "words",
                  name: "whyAway",
                  label: "Why",
                  hint: "History can put it back; its file stays until then",
                  required: true,
                },
              ]}
              action={takePictureAway.bind(null, photo.id, of.page)}
              confirm="Take it away"
              back={{ href: of.page, words: "Leave it" }}
            />
          </Section>
        </div>
      </Offered>
      <Offered deed="erase">
        <div className="not-on-paper">
          <Section id="erase" title="Erase it for good">
            <ErasePicture photoId={photo.id} back={of.page} />
          </Section>
        </div>
      </Offered>
      <HistoryOf ids={[photo.id]} />
    </div>
  );
}
