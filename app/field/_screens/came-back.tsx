import { Button } from "@/components/ui/button";
import { counted } from "@/lib/display/plurals";
import type { KeptPhoto, KeptRecord } from "@/lib/field/kept-rows";
import { usePhone, usePhoneNow } from "../_components/phone-context";
import { momentInWords } from "../_words/moments";
import { recordInWords } from "../_words/record-words";
import controls from "./controls.module.css";
import { savePhoto, saveRecords } from "./save-file";
import styles from "./screens.module.css";

/** What the registry asked, holds back or would not have: a sentence each; and what was put away. */
export function CameBack({ clock }: { clock: number }) {
  const { rows, photosRefused } = usePhoneNow();
  const asked = rows.filter((row) => row.state === "question" || row.state === "waiting");
  const down = rows.filter((row) => row.state === "refused" && !row.putAway);
  const photos = photosRefused.filter((photo) => !photo.putAway);
  const away = rows.filter((row) => row.putAway);
  const photosAway = photosRefused.filter((photo) => photo.putAway);
  return (
    <>
      {down.length + photos.length > 0 ? <TurnedDown rows={down} photos={photos} clock={clock} /> : null}
      {asked.length > 0 ? <Asked rows={asked} /> : null}
      {away.length + photosAway.length > 0 ? <PutAway rows={away} photos={photosAway} clock={clock} /> : null}
    </>
  );
}

function Asked({ rows }: { rows: readonly KeptRecord[] }) {
  return (
    <section className={styles.part} aria-labelledby="came-back">
      <h2 id="came-back">What came back</h2>
      <ul className={styles.works}>
        {rows.map((row) => (
          <li key={row.id} className={styles.cameBack}>
            <p>
              <Said row={row} />:{" "}
              <strong>{row.state === "question" ? "a question for the desk" : "stored, waits"}</strong>
            </p>
            <p>{row.sentence ?? "Something that it belongs to has not come yet."}</p>
          </li>
        ))}
      </ul>
    </section>
  );
}

/** What the registry would not have: why, and what can be done: send it again, save it to a file, and put it away once it stands in one. */
function TurnedDown({
  rows,
  photos,
  clock,
}: {
  rows: readonly KeptRecord[];
  photos: readonly KeptPhoto[];
  clock: number;
}) {
  const phone = usePhone();
  const { sending } = usePhoneNow();
  const unsaved = [...rows, ...photos].filter((each) => each.savedAt === undefined).length;
  const away = () =>
    phone.putAway(
      rows.map((row) => row.id),
      photos.map((photo) => photo.hash),
      true,
    );
  return (
    <section className={styles.part} aria-labelledby="not-taken-in">
      <h2 id="not-taken-in">Not taken in</h2>
      <p className={styles.quietNear}>
        They stay here. Send them again once what stands against them is put right; or save them to a file and bring it
        to the desk, where somebody whose grow-out it is can take it in.
      </p>
      <ul className={styles.works}>
        {rows.map((row) => (
          <li key={row.id} className={styles.cameBack}>
            <p>
              <strong>
                <Said row={row} />
              </strong>
            </p>
            <p>{row.sentence ?? "The registry did not say why."}</p>
            <InFile savedAt={row.savedAt} clock={clock} />
          </li>
        ))}
        {photos.map((photo) => (
          <li key={photo.hash} className={styles.cameBack}>
            <p>
              <strong>A photo</strong>
            </p>
            <p>{photo.sentence}</p>
            <InFile savedAt={photo.savedAt} clock={clock} />
            <SavePhoto photo={photo} />
          </li>
        ))}
      </ul>
      <div className={styles.acts}>
        <Button wide disabled={sending} onClick={() => void phone.sendAgain()}>
          {sending ? "Sending …" : "Send them again"}
        </Button>
        <SaveThese rows={rows} />
        <Button wide disabled={unsaved > 0} onClick={() => void away()}>
          Put them away
        </Button>
      </div>
      {unsaved > 0 ? (
        <p className={styles.quietNear}>What stands in no file yet cannot be put away: it would be nowhere else.</p>
      ) : null}
    </section>
  );
}

/** What was put away is still on the phone: it can be saved once more, and taken back. */
function PutAway({
  rows,
  photos,
  clock,
}: {
  rows: readonly KeptRecord[];
  photos: readonly KeptPhoto[];
  clock: number;
}) {
  const phone = usePhone();
  const back = () =>
    phone.putAway(
      rows.map((row) => row.id),
      photos.map((photo) => photo.hash),
      false,
    );
  const what = [
    rows.length > 0 ? counted(rows.length, "record") : "",
    photos.length > 0 ? counted(photos.length, "photo") : "",
  ].filter(Boolean);
  return (
    <details className={styles.part}>
      <summary className={styles.tick}>Put away: {what.join(" and ")}, still on this phone</summary>
      <ul className={styles.works}>
        {rows.map((row) => (
          <li key={row.id} className={styles.cameBack}>
            <p>
              <Said row={row} />
            </p>
            <InFile savedAt={row.savedAt} clock={clock} />
          </li>
        ))}
        {photos.map((photo) => (
          <li key={photo.hash} className={styles.cameBack}>
            <p>A photo</p>
            <InFile savedAt={photo.savedAt} clock={clock} />
            <SavePhoto photo={photo} />
          </li>
        ))}
      </ul>
      <div className={styles.acts}>
        <SaveThese rows={rows} />
        <Button wide onClick={() => void back()}>
          Take them back out
        </Button>
      </div>
    </details>
  );
}

function Said({ row: { record, growOutId } }: { row: KeptRecord }) {
  const { packs } = usePhoneNow();
  const words = recordInWords(record, packs.find((each) => each.growOutId === growOutId)?.pack);
  return words.charAt(0).toUpperCase() + words.slice(1);
}

function InFile({ savedAt, clock }: { savedAt: string | undefined; clock: number }) {
  return savedAt === undefined ? null : (
    <p className={styles.quietNear}>Saved to a file {momentInWords(savedAt, clock)}.</p>
  );
}

function SaveThese({ rows }: { rows: readonly KeptRecord[] }) {
  const phone = usePhone();
  const { device } = usePhoneNow();
  if (device === null || rows.length === 0) return null;
  const save = async () => {
    const savedAt = await saveRecords(device, rows);
    if (savedAt !== null)
      await phone.savedToFile(
        rows.map((row) => row.id),
        [],
        savedAt,
      );
  };
  return (
    <Button wide onClick={() => void save()}>
      Save {rows.length === 1 ? "this record" : `these ${rows.length} records`} to a file
    </Button>
  );
}

function SavePhoto({ photo: { hash, bytes } }: { photo: KeptPhoto }) {
  const phone = usePhone();
  if (bytes === null) return null;
  const save = async () => {
    const savedAt = await savePhoto(hash, bytes);
    if (savedAt !== null) await phone.savedToFile([], [hash], savedAt);
  };
  return (
    <button type="button" className={controls.quietChoice} onClick={() => void save()}>
      Save this photo
    </button>
  );
}
