"use client";

import { useEffect } from "react";

/** Tells the server in which zone the person sits, so that "today" is theirs. */
export function Zone() {
  useEffect(() => {
    const zone = Intl.DateTimeFormat().resolvedOptions().timeZone;
    if (!zone || document.cookie.includes(`kinrow-zone=${encodeURIComponent(zone)}`)) return;
    const secure = location.protocol === "https:" ? "; secure" : "";
    // biome-ignore lint/suspicious/noDocumentCookie: the Cookie Store interface is missing in some browsers
    document.cookie = `kinrow-zone=${encodeURIComponent(zone)}; path=/; max-age=31536000; samesite=lax${secure}`;
  }, []);
  return null;
}
