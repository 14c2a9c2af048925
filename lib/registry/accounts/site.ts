/** Where somebody comes in: the address as the browser shows it, and from where they come. */
export interface Site {
  /** https://NAME:PORT */
  readonly origin: string;
  /** the device's network address; only ever kept as a keyed hash */
  readonly from: string;
}

/** The name that passkeys of this address belong to; null where it is a bare number, which passkeys cannot have. */
export function passkeyName(site: Site): string | null {
  const { hostname } = new URL(site.origin);
  return hostname.startsWith("[") || /^[\d.]+$/.test(hostname) ? null : hostname;
}
