import { current } from "@/app/_session/current";
import { Section } from "@/components/frame";
import { Way } from "@/components/ui/offered";
import type { PhotoSubject } from "@/lib/registry/photos/photo-subject";
import { readPhotosOf } from "@/lib/registry/photos/read-photos";
import { subjectInAddress } from "../_words/picture-words";
import { Strip } from "./strip";

/** The pictures of a record, as a strip of prints laid side by side. `of`: the record, in words. One statement. */
export async function Pictures({
  subject,
  of,
  none,
}: {
  subject: PhotoSubject;
  of: string;
  /** what a picture would show, where there is none yet */
  none: string;
}) {
  const { db } = await current();
  const photos = await readPhotosOf(db, subject);
  return (
    <Section
      id="pictures"
      title="Pictures"
      aside={<Way href={`/pictures/new?${subjectInAddress(subject)}`}>add pictures</Way>}
    >
      {photos.length === 0 ? (
        <p className="quiet not-on-paper">No picture yet. {none}</p>
      ) : (
        <Strip photos={photos} of={of} />
      )}
    </Section>
  );
}
