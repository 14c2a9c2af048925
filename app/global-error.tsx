"use client";

import "./globals.css";
import { useEffect } from "react";
import { groundCookie, groundOf } from "@/components/frame/ground";
import { NameMark } from "@/components/frame/name-mark";
import { PageHead } from "@/components/frame/page-head";
import { Button } from "@/components/ui/button";
import { faces } from "./fonts/faces";
import styles from "./global-error.module.css";

/**
 * What stands there when not even the frame of the pages could be made. It is drawn in the browser by the scripts that the answer names, asks the
 * server for nothing more, and gives the mark by which the log knows the fault.
 */
export default function NoPageAtAll({ error }: { error: Error & { digest?: string } }) {
  // The frame that would have said it is not there.
  useEffect(() => {
    const stored = new RegExp(`(?:^|; )${groundCookie}=(\\w+)`).exec(document.cookie)?.[1];
    document.documentElement.dataset.ground = groundOf(stored);
  }, []);
  return (
    <html lang="en" className={faces}>
      <head>
        <title>No page could be made · Kinrow</title>
      </head>
      <body>
        <header className={styles.head}>
          <NameMark />
          Kinrow
        </header>
        <main className="sheet stack" id="content">
          <PageHead title="No page could be made">
            <p className="measure" role="alert">
              Nothing that is stored is touched by this. What you typed last and did not store may still be on this
              device.
            </p>
          </PageHead>
          <section className="stack-near" aria-labelledby="what">
            <h2 id="what">What to do</h2>
            <ol className={`${styles.steps} measure`}>
              <li>Wait a moment and try once more: somebody may be starting it anew.</li>
              <li>
                Where it stays so, look at the machine that it runs on: the window where it was started says why, in a
                sentence. End it there with Ctrl-C and start it again with <code>npm start</code>.
              </li>
              <li>
                After that, <code>npm run verify</code> looks through all records and says what is not as it should be.
              </li>
            </ol>
          </section>
          <form className="row">
            <Button kind="chief" type="submit">
              Try once more
            </Button>
          </form>
          {error.digest ? (
            <p className="quiet">
              For whoever looks into it: mark <span className="counts">{error.digest}</span> in the log of the server.
            </p>
          ) : null}
        </main>
      </body>
    </html>
  );
}
