"use client";

import { type DragEvent, type FormEvent, useRef, useState } from "react";
import { Button, Notice, Progress } from "@/components/ui";
import { bytesInWords } from "@/lib/display/numbers";
import styles from "./bring-in.module.css";

const largest = 64 * 1024 * 1024;

/** What the registry answered; nothing where it is no answer of this page, as when one is signed out meanwhile. */
function answerOf(text: string): { upload?: string; refused?: string } {
  try {
    return JSON.parse(text) as { upload?: string; refused?: string };
  } catch {
    return {};
  }
}

/** Chooses files and sends them, with a count of what has gone. Without script the form sends itself. */
export function UploadForm({ refused }: { refused?: string }) {
  const input = useRef<HTMLInputElement>(null);
  const [chosen, choose] = useState<readonly { name: string; size: number }[]>([]);
  const [sent, setSent] = useState<{ done: number; of: number } | null>(null);
  const [over, setOver] = useState(false);
  const [trouble, setTrouble] = useState(refused ?? null);
  const total = chosen.reduce((sum, file) => sum + file.size, 0);

  function take(files: FileList | null) {
    choose([...(files ?? [])].map(({ name, size }) => ({ name, size })));
    setTrouble(null);
  }

  function drop(event: DragEvent) {
    event.preventDefault();
    setOver(false);
    if (!input.current) return;
    input.current.files = event.dataTransfer.files;
    take(input.current.files);
  }

  function send(event: FormEvent<HTMLFormElement>) {
    event.preventDefault();
    if (chosen.length === 0) return setTrouble("Choose a zip or the CSV files of one folder.");
    if (total > largest)
      return setTrouble("The files are over 64 MB together: send fewer at once, or use npm run import.");
    const request = new XMLHttpRequest();
    request.upload.onprogress = ({ loaded, total: of }) =>
      setSent({ done: Math.round(loaded / 1024), of: Math.round(of / 1024) });
    request.onload = () => {
      const answer = answerOf(request.responseText);
      if (answer.upload) window.location.assign(`/bring-in/${answer.upload}`);
      else {
        setSent(null);
        setTrouble(answer.refused ?? "The files did not arrive; open this page anew and send them again.");
      }
    };
    request.onerror = () => {
      setSent(null);
      setTrouble("The registry did not answer; look whether it still runs, and send the files again.");
    };
    request.open("POST", "/bring-in/upload");
    request.setRequestHeader("accept", "application/json");
    request.send(new FormData(event.currentTarget));
  }

  return (
    <form className={styles.form} action="/bring-in/upload" method="post" encType="multipart/form-data" onSubmit={send}>
      {trouble ? (
        <div role="alert">
          <Notice kind="waiting" title="Nothing was brought in">
            <p>{trouble}</p>
          </Notice>
        </div>
      ) : null}
      {/* biome-ignore lint/a11y/noStaticElementInteractions: dropping is a second way; the file field inside is the first */}
      <div
        className={styles.drop}
        data-over={over || undefined}
        onDragOver={(event) => {
          event.preventDefault();
          setOver(true);
        }}
        onDragLeave={() => setOver(false)}
        onDrop={drop}
      >
        <label htmlFor="files">The files, or one zip of them</label>
        <input
          ref={input}
          id="files"
          name="files"
          type="file"
          multiple
          accept=".csv,.zip,text/csv,application/zip"
          onChange={(event) => take(event.currentTarget.files)}
        />
        <p className="quiet">You may drop them here. At most 64 MB.</p>
        {chosen.length > 0 ? (
          <ul className={`${styles.chosen} counts`}>
            {chosen.map((file) => (
              <li key={file.name}>
                {file.name} <span className="quiet">{bytesInWords(file.size)}</span>
              </li>
            ))}
          </ul>
        ) : null}
      </div>
      {sent ? (
        <Progress label="Sending" done={sent.done} of={sent.of} unit="kB" />
      ) : (
        <Button type="submit" kind="chief">
          Look at them
        </Button>
      )}
    </form>
  );
}
