import Link from "next/link";
import { Picture } from "@/components/picture";
import type { PhotoRead } from "@/lib/registry/photos/read-photos";
import { pictureAlt, pictureLine } from "../_words/picture-words";
import styles from "./pictures.module.css";

/** Pictures as prints laid side by side, each with what is told of it and a way to its own page. `of`: what they are of, in words. */
export function Strip({ photos, of }: { photos: readonly PhotoRead[]; of: string }) {
  return (
    <ul className={styles.strip}>
      {photos.map((photo) => {
        const line = pictureLine(photo);
        return (
          <li key={photo.id} className={styles.print}>
            <Link href={`/pictures/${photo.id}`}>
              <Picture {...photo} alt={pictureAlt(photo, of)} />
            </Link>
            {photo.caption ? <p className={styles.caption}>{photo.caption}</p> : null}
            {line ? <p className={styles.line}>{line}</p> : null}
          </li>
        );
      })}
    </ul>
  );
}
