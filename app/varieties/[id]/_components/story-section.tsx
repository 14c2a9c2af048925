import { Section } from "@/components/frame";
import { Way } from "@/components/ui/offered";
import { dateInWords } from "@/lib/display/dates";
import type { VarietyRead } from "@/lib/registry/varieties/read-variety";
import styles from "./told.module.css";

/** What is told of the variety: its own story, and further ones with who told them. */
export function StorySection({ read: { variety, stories } }: { read: VarietyRead }) {
  const add = <Way href={`/varieties/${variety.id}/add/story`}>Write a story down</Way>;
  return (
    <Section id="story" title="Story" aside={add}>
      {variety.story === null && stories.length === 0 ? (
        <p className="quiet">
          Nobody has written down yet where it came from. Write it at once, in the teller’s words.
        </p>
      ) : null}
      <div className={styles.told}>
        {variety.story ? <blockquote className={styles.words}>{variety.story}</blockquote> : null}
        {stories.map((story) => {
          const about = story.about ? `of ${dateInWords(story.about).replace(/^in /, "")}` : "";
          const when = story.toldOn ? `told ${dateInWords(story.toldOn)}` : "";
          const by = [story.teller ? `by ${story.teller}` : "", when, about].filter(Boolean).join(", ");
          return (
            <figure key={story.id}>
              <blockquote className={styles.words}>{story.words}</blockquote>
              {by ? <figcaption className={styles.by}>{by}</figcaption> : null}
            </figure>
          );
        })}
      </div>
    </Section>
  );
}
