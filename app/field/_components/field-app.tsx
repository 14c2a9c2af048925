import { lazy, Suspense, useEffect, useState } from "react";
import { Phone } from "@/lib/field/phone";
import styles from "./field.module.css";
import { FieldHead } from "./field-head";
import { OnThisPhone } from "./on-this-phone";
import { PhoneProvider, usePhoneNow } from "./phone-context";
import { placeOf, readPlace, useHash } from "./place";
import { useReadiness } from "./readiness";
import { UndoLine } from "./undo-line";
import { useTapGuard } from "./use-tap-guard";

/* The first screen is light; what is done at the plants is fetched after it, and kept by the phone with it. */
const growOutScreens = () => import("../_screens/grow-out-screens");
const GrowOutScreens = lazy(growOutScreens);
const PhoneScreen = lazy(() => import("../_screens/phone-screen"));

/** The field: one document for all that is done among the plants. */
export function FieldApp() {
  const [phone, setPhone] = useState<Phone | null>(null);
  useEffect(() => {
    const opened = new Phone();
    setPhone(opened);
    // fetched while the phone's memory is being read
    if (readPlace(location.hash).growOutId !== null) void growOutScreens().catch(() => undefined);
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
        <Suspense fallback={<p className={styles.opening}>Opening …</p>}>
          {!phone.open ? (
            <p className={styles.opening}>Opening what is on this phone …</p>
          ) : place.phone ? (
            <PhoneScreen readiness={readiness} />
          ) : place.growOutId !== null ? (
            <GrowOutScreens key={place.growOutId} place={place} growOutId={place.growOutId} readiness={readiness} />
          ) : (
            <OnThisPhone readiness={readiness} />
          )}
        </Suspense>
      </main>
      <footer className={styles.foot}>
        <UndoLine />
      </footer>
    </div>
  );
}
