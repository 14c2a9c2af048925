"use client";

import { passkeyClient } from "@better-auth/passkey/client";
import { createAuthClient } from "better-auth/client";

/** The browser's side of passkeys: it speaks to app/api/auth alone. */
export function passkeys() {
  return createAuthClient({ baseURL: location.origin, plugins: [passkeyClient()] });
}

/** What an answer that was no success says to a person. */
export function passkeyFault(error: {
  readonly code?: string;
  readonly message?: string;
  readonly status: number;
}): string {
  if (error.status === 429) return error.message ?? "There were too many tries; wait a quarter of an hour";
  if (error.code === "SESSION_NOT_FRESH")
    return "You signed in more than a day ago; sign out and in with your passphrase, then add the passkey";
  if (error.code === "AUTH_CANCELLED" || error.code === "ERROR_CEREMONY_ABORTED")
    return "The device gave no passkey for this address; nothing has changed";
  return "This passkey is not known here; sign in with your passphrase";
}
