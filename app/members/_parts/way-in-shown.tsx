import { ScanCode } from "@/components/scan-code";
import { Notice } from "@/components/ui";
import type { FormAnswer } from "../../varieties/_forms/field-spec";
import styles from "./way-in-shown.module.css";

/** A way in that was made: shown once, on this page. */
export interface WayInShown {
  readonly link: string;
  readonly code: string;
  readonly expiresAt: string;
  readonly scan: { readonly size: number; readonly path: string };
}

export interface WayInAnswer extends FormAnswer {
  readonly shown: WayInShown | null;
}

export const noWayInYet: WayInAnswer = { refusals: [], typed: {}, shown: null };

/** The link, the code to scan and the signs to type. They are kept nowhere, so this is the time to hand them over. */
export function WayIn({ shown, whatFor }: { shown: WayInShown; whatFor: string }) {
  const until = new Date(shown.expiresAt);
  return (
    <Notice title={whatFor}>
      <div className={styles.wayIn}>
        <ScanCode {...shown.scan} label="The link as a code to scan" />
        <div className="stack-near">
          <p>
            Hand it over now: it is shown this once and kept nowhere. It works once, until{" "}
            <time dateTime={shown.expiresAt}>
              {until.toLocaleString("en-GB", { dateStyle: "long", timeStyle: "short" })}
            </time>
            .
          </p>
          <p>As a link, by a message that only that person reads:</p>
          <p className={styles.link}>
            <a href={shown.link}>{shown.link}</a>
          </p>
          <p>
            Or to be typed in, under <em>Sign in › invitation</em>:{" "}
            <strong className={styles.code}>{shown.code}</strong>
          </p>
          <p className="quiet">
            A device that comes for the first time begins at the page on the certificate, or its browser warns of this
            registry.
          </p>
        </div>
      </div>
    </Notice>
  );
}
