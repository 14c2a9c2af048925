import { useEffect, useState } from "react";
import { Phone } from "@/lib/field/phone";
import styles from "./field.module.css";
import { FieldHead } from "./field-head";
import { Later, laterPart } from "./later";
import { OnThisPhone } from "./on-this-phone";
import { PhoneProvider, usePhoneNow } from "./phone-context";
import { placeOf, readPlace, useHash } from "./place";
import { useReadiness } from "./readiness";
import { UndoLine } from "./undo-line";
import { useTapGuard } from "./use-tap-guard";

/* The first screen is light; what is done at the plants is fetched after it, and kept by the phone with it. */
const growOutScreens = laterPart(() => import("../_screens/grow-out-screens"));
const phoneScreen = laterPart(() => import("../_screens/phone-screen"));
if (readPlace(location.hash).growOutId !== null) growOutScreens.ahead();

/** The field: one document for all that is done among the plants. */
export function FieldApp() {
  const [phone, setPhone] = useState<Phone | null>(null);
  useEffect(() => {
    const opened = new Phone();
    setPhone(opened);
    void opened.open();
    const end = opened.watch();
    return () => {
      end();
      opened.store.close();
    };
  }, []);
  if (phone === null) return <p className={styles.opening}>The field is being opened …</p>;
  return (
    <PhoneProvider value={phone}>
      <Screens />
    </PhoneProvider>
  );
}

function Screens() {
  useTapGuard();
  const readiness = useReadiness();
  const phone = usePhoneNow();
  const place = readPlace(useHash());
  const kept = phone.packs.find((each) => each.growOutId === place.growOutId);
  useEffect(() => {
    document.title = kept ? `${kept.pack.variety.name} · in the field` : "In the field · Kinrow";
  }, [kept]);
  const deeper = place.what !== "" && place.growOutId !== null;
  const back = deeper
    ? { place: placeOf(place.growOutId ?? ""), words: "the grow-out" }
    : place.phone || place.growOutId !== null
      ? { place: "#", words: "what is on this phone" }
      : null;
  return (
    <div className={styles.field} data-hand={phone.hand}>
      <FieldHead
        back={back}
        title={kept ? kept.pack.variety.name : "In the field"}
        hand={kept ? `${kept.pack.hand.name}’s hand` : null}
      />
      {phone.trouble ? (
        <p className={styles.trouble} role="alert">
          {phone.trouble}
        </p>
      ) : null}
      <main className={styles.main} id="content">
        {!phone.open ? (
          <p className={styles.opening}>Opening what is on this phone …</p>
        ) : place.phone ? (
          <Later part={phoneScreen} props={{ readiness }} />
        ) : place.growOutId !== null ? (
          <Later key={place.growOutId} part={growOutScreens} props={{ place, growOutId: place.growOutId, readiness }} />
        ) : (
          <OnThisPhone readiness={readiness} />
        )}
      </main>
      <footer className={styles.foot}>
        <UndoLine />
      </footer>
    </div>
  );
}
