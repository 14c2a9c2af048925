import { useEffect, useState } from "react";

/** What this phone can do for somebody without a signal. */
export interface Readiness {
  /** the page itself opens with no signal; null: still being seen to */
  readonly opens: boolean | null;
  /** why it does not, and what to do */
  readonly missing: string | null;
  /** a newer page is ready, and opens at the next start */
  readonly newer: boolean;
}

const seeing: Readiness = { opens: null, missing: null, newer: false };

const notSecure =
  "This address is not one that a phone trusts, so the field cannot be kept for times without a signal, and no camera can be used. Open the registry by its HTTPS address, after its certificate has been taken in on this phone (the page /certificate tells how).";
const noWorker =
  "This browser keeps no pages for times without a signal (a private window never does). Open the field in the phone’s own browser.";

/** Has the page kept for times without a signal, and tells whether it is. */
export function useReadiness(): Readiness {
  const [readiness, setReadiness] = useState(seeing);
  useEffect(() => {
    if (!window.isSecureContext) return setReadiness({ opens: false, missing: notSecure, newer: false });
    if (!("serviceWorker" in navigator)) return setReadiness({ opens: false, missing: noWorker, newer: false });
    const heard = (event: MessageEvent<unknown>) => {
      if (event.data === "newer field page") setReadiness((before) => ({ ...before, newer: true }));
    };
    navigator.serviceWorker.addEventListener("message", heard);
    keptForLater()
      .then((opens) => setReadiness((before) => ({ ...before, opens, missing: opens ? null : notKept })))
      .catch(() => setReadiness({ opens: false, missing: notKept, newer: false }));
    return () => navigator.serviceWorker.removeEventListener("message", heard);
  }, []);
  return readiness;
}

const notKept =
  "The page could not be kept for times without a signal. Stay where there is one and open it anew; if this stays, the phone may be full, or does not trust the registry’s certificate (the page /certificate tells how).";

/** True once the page and its parts are kept. With the server dead it is so if it was before. */
async function keptForLater(): Promise<boolean> {
  const before = await navigator.serviceWorker.getRegistration("/field");
  if (!before) await navigator.serviceWorker.register("/sw.js", { scope: "/field", updateViaCache: "none" });
  const registration = await navigator.serviceWorker.getRegistration("/field");
  const worker = registration?.active ?? registration?.waiting ?? registration?.installing;
  if (!worker) return false;
  if (worker.state !== "activated") {
    await new Promise<void>((resolve) => {
      worker.addEventListener("statechange", () => {
        if (worker.state === "activated" || worker.state === "redundant") resolve();
      });
    });
  }
  return (await caches.match("/field")) !== undefined;
}

/** Whether the browser keeps what is stored until a person clears it; null where it does not say. */
export async function askForLastingStorage(): Promise<boolean | null> {
  const { storage } = navigator;
  if (!storage?.persist) return null;
  return (await storage.persisted().catch(() => false)) || (await storage.persist().catch(() => false));
}

/** Room left on the phone for this page, in bytes; null where it does not say. */
export async function roomLeft(): Promise<number | null> {
  const estimate = await navigator.storage?.estimate?.().catch(() => null);
  return estimate?.quota === undefined ? null : estimate.quota - (estimate.usage ?? 0);
}
