import { checkCharacter, hasRightCheckCharacter } from "@/lib/science/codes/check-character";
import { isShortCode, SHORT_CODE_CHARACTERS, shortCodeOfId } from "@/lib/science/codes/short-code-of-id";
import { inUpperCase, outOfUpperCase, SCAN_ALPHABET } from "@/lib/science/codes/upper-case-text";
import { accepted, type Outcome, refusal, refused } from "@/lib/science/outcome";

/*
 * What the code on a printed plant tag says: KINROW: and T, five characters for the grow-out, the tag as it is written, and a check character
 * (ISO 7064 over the characters of the code). A tag that is of no grow-out says N in place of T and of the five. Tag 12 reads
 * KINROW:T7KQ2M12 and one character more: up to a tag of six characters the code has 21 modules on a side.
 */
const start = "KINROW:";
const ofGrowOut = "T";
const ofNone = "N";

/** As long as the tag of a plant may be. */
const longestTag = 60;

/** A tag that was read: what is written on it, and the short code of the grow-out it was printed for; null where it was for none. */
export interface TagCode {
  readonly tag: string;
  readonly growOut: string | null;
}

/** What the code of a tag says, to be printed. */
export function tagCodeText(tag: string, growOutId: string | null): string {
  const head = growOutId === null ? ofNone : `${ofGrowOut}${shortCodeOfId(growOutId)}`;
  const said = `${head}${inUpperCase(tag.normalize("NFC").trim())}`;
  return `${start}${said}${checkCharacter(said, SCAN_ALPHABET)}`;
}

/**
 * Reads what a scanner found on a tag. Refused: what is no code of a tag (another's, an address, a lot's), one that is damaged (its last
 * character does not fit), and one that says no tag or one that is too long. Whether the grow-out is the one at hand is for `isTagOf`.
 */
export function readTagCode(text: string): Outcome<TagCode> {
  const code = text.trim().toUpperCase();
  const said = code.slice(start.length);
  const kind = said[0];
  if (!code.startsWith(start) || (kind !== ofGrowOut && kind !== ofNone))
    return wrong("no-tag-code", text, "is no code of a plant tag", "scan a tag, or type what is written on it");
  if (!hasRightCheckCharacter(said, SCAN_ALPHABET))
    return wrong("tag-code-check", text, "does not fit its last character", "scan it again, or type the tag");
  const growOut = kind === ofGrowOut ? said.slice(1, 1 + SHORT_CODE_CHARACTERS) : null;
  if (growOut !== null && !isShortCode(growOut))
    return wrong("tag-code-grow-out", growOut, "names no grow-out", "scan it again, or type the tag");
  const tag = outOfUpperCase(said.slice(1 + (growOut?.length ?? 0), -1));
  if (!tag.ok) return tag;
  const written = tag.value.trim();
  if (written === "") return wrong("tag-code-empty", text, "says no tag", "type what is written on the tag");
  if (written.length > longestTag)
    return wrong("too-long", text, `says a tag of ${written.length} letters`, `a tag has at most ${longestTag}`);
  return accepted({ tag: written, growOut });
}

/** Whether a tag may be of this grow-out: it was printed for it, or for none. */
export function isTagOf(tag: TagCode, growOutId: string): boolean {
  return tag.growOut === null || tag.growOut === shortCodeOfId(growOutId);
}

function wrong(code: string, given: string, what: string, needed: string): Outcome<never> {
  const shown = given.length > 40 ? `${given.slice(0, 40)}…` : given;
  return refused(refusal(code, ["tag"], shown, what, needed));
}
