import { z } from "zod";
import { type Refusal, refusal } from "@/lib/science/outcome";

type Texts = Readonly<Record<string, string>>;

/** The hidden field in which a correction says what stood in its fields when it was opened. */
export const stoodField = "stood";

/** What stands in the fields of a correction, to be sent along with it. */
export function stoodAs(texts: Texts): string {
  return JSON.stringify(texts);
}

export interface Joined {
  /** what is to be stored */
  readonly texts: Texts;
  /** the same for the form, where it is shown once more */
  readonly typed: Texts;
  readonly refusals: readonly Refusal[];
}

/**
 * A correction that was opened a while ago, joined with what others wrote meanwhile: a field that this hand left alone takes what stands in it
 * now (`now`), one that both changed is asked about once. Nobody's words are written over unseen. A correction that does not say what stood is
 * taken as it is.
 */
export function joinedWithMeanwhile(sent: Texts, now: Texts): Joined {
  const { [stoodField]: told, ...typed } = sent;
  const stood = readStood(told);
  const texts = { ...typed };
  const refusals: Refusal[] = [];
  for (const [name, stands] of Object.entries(now)) {
    const [was, mine] = [stood[name], typed[name]];
    if (was === undefined || mine === undefined || alike(stands, was)) continue;
    if (alike(mine, was)) texts[name] = stands;
    else if (!alike(mine, stands)) refusals.push(meanwhile(name, stands));
  }
  return { texts, typed: { ...texts, [stoodField]: stoodAs(now) }, refusals };
}

function meanwhile(name: string, stands: string): Refusal {
  const needed = "store again to put yours in its place, or take that over";
  return refusal("written-meanwhile", [name], stands, "was written here meanwhile", needed);
}

const StoodSchema = z.record(z.string(), z.string());

function readStood(told: string | undefined): Texts {
  try {
    return StoodSchema.safeParse(JSON.parse(told ?? "{}")).data ?? {};
  } catch {
    return {};
  }
}

/** A form sends line ends in its own way. */
function alike(a: string, b: string): boolean {
  const plain = (text: string) => text.replaceAll("\r\n", "\n").trim();
  return plain(a) === plain(b);
}
