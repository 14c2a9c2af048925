import { dateInWords } from "@/lib/display/dates";
import type { PhotoSubject } from "@/lib/registry/photos/photo-subject";

interface Told {
  readonly caption: string | null;
  readonly takenOn: string | null;
  readonly takenBy: string | null;
  readonly plant: string | null;
  readonly scale: string | null;
}

/** What somebody hears who does not see the picture: its caption, or else what is known of it. `of`: the record, in words. */
export function pictureAlt({ caption, plant, scale, takenOn }: Told, of: string): string {
  if (caption) return caption;
  const what = plant ? `plant ${plant} of ${of}` : of;
  const step = scale ? `, ${scale}` : "";
  return `Picture of ${what}${step}${takenOn ? `, ${dateInWords(takenOn)}` : ""}`;
}

/** The small line under a picture: "plant 12, step 3, 4 July 2026, by Halda Morrow"; empty where nothing is known. */
export function pictureLine({ plant, scale, takenOn, takenBy }: Told): string {
  return [
    plant ? `plant ${plant}` : "",
    scale ?? "",
    takenOn ? dateInWords(takenOn) : "",
    takenBy ? `by ${takenBy}` : "",
  ]
    .filter(Boolean)
    .join(", ");
}

/** The page of the record that pictures are of. */
export function pageOfSubject(subject: PhotoSubject): string {
  switch (subject.kind) {
    case "variety":
      return `/varieties/${subject.id}`;
    case "lot":
      return `/lots/${subject.id}`;
    case "grow-out":
      return `/grow-outs/${subject.id}`;
    case "test":
      return `/tests/${subject.id}`;
    case "trait":
      return `/varieties/${subject.varietyId}/traits/${subject.id}`;
  }
}

/** The record as an address carries it. */
export function subjectInAddress(subject: PhotoSubject): string {
  const of = new URLSearchParams({ of: subject.kind, id: subject.id });
  if (subject.kind === "trait") of.set("variety", subject.varietyId);
  return of.toString();
}

/** The record that an address or a form names; null where it names none. */
export function subjectNamed(named: Readonly<Record<string, unknown>>): PhotoSubject | null {
  const { of, id, variety } = named;
  if (typeof id !== "string") return null;
  if (of === "variety" || of === "lot" || of === "grow-out" || of === "test") return { kind: of, id };
  return of === "trait" && typeof variety === "string" ? { kind: of, id, varietyId: variety } : null;
}
