import { ButtonLink } from "@/components/ui";
import { Button } from "@/components/ui/button";
import { startDemonstration } from "../_session/demonstration";
import styles from "./first-page.module.css";
import { FirstPicture } from "./first-picture";

/** The page of an empty registry: what this is for, drawn, and the three ways to begin. */
export function FirstPage() {
  return (
    <div className="sheet">
      <div className={styles.page}>
        <div className={styles.words}>
          <h1 className={styles.title}>Every jar remembers where it came from</h1>
          <p className="lead">
            A variety lives as long as somebody grows it, and knows it. Write down what you have, and each jar says what
            is left in it, how it comes up, and how much of the variety it still holds.
          </p>
          <ol className={styles.ways}>
            <li>
              <ButtonLink href="/bring-in" kind="chief" wide>
                Bring my files in
              </ButtonLink>
              <p>
                A folder of spreadsheet files, or one zip of it. You see what each row would do before anything is
                written.
              </p>
            </li>
            <li>
              <ButtonLink href="/type-in" wide>
                Type one variety in
              </ButtonLink>
              <p>
                One row a year, in your own words:{" "}
                <span className="told">1994, from my aunt’s jar, about 40 plants, kept from 12</span>.
              </p>
            </li>
            <li>
              <form action={startDemonstration}>
                <Button type="submit" wide>
                  Look at the demonstration
                </Button>
              </form>
              <p>An invented circle and its decades, kept apart from your own records, and gone with one action.</p>
            </li>
          </ol>
        </div>
        <FirstPicture />
      </div>
    </div>
  );
}
