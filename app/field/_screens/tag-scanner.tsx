import { Scanner } from "@/components/scanner";
import { isTagOf, readTagCode, type TagCode } from "@/lib/schemas/field/tag-code";
import { type Outcome, refusal, refused } from "@/lib/science/outcome";

/** Reads the code of a printed tag; one that was printed for another grow-out is refused. */
export default function TagScanner({ growOutId, onTag }: { growOutId: string; onTag: (tag: string) => void }) {
  const read = (text: string): Outcome<TagCode> => {
    const tag = readTagCode(text);
    if (!tag.ok || isTagOf(tag.value, growOutId)) return tag;
    return refused(
      refusal(
        "tag-of-another",
        ["tag"],
        tag.value.tag,
        "was printed for another grow-out",
        "take a tag of this one, or type it",
      ),
    );
  };
  return <Scanner what="a tag" read={read} onRead={(found) => onTag(found.tag)} typing={null} />;
}
