"use client";

import { useRouter } from "next/navigation";
import { type FormEvent, useEffect, useState } from "react";
import { Button, TextField } from "@/components/ui";
import { passkeyFault, passkeys } from "../../sign-in/_parts/passkey-client";

/** Adds a passkey of this device, where the browser has such a thing. */
export function AddPasskey() {
  const [can, setCan] = useState<boolean | null>(null);
  const [says, say] = useState("");
  const [busy, setBusy] = useState(false);
  const router = useRouter();
  useEffect(() => setCan("PublicKeyCredential" in window), []);
  if (can === null) return null;
  if (!can) return <p className="quiet">This browser has no passkeys.</p>;
  async function add(event: FormEvent<HTMLFormElement>) {
    event.preventDefault();
    const name = String(new FormData(event.currentTarget).get("passkey") ?? "").trim();
    setBusy(true);
    const { error } = await passkeys().passkey.addPasskey({ name: name || "a passkey" });
    say(error ? `${passkeyFault(error)}.` : "The passkey stands.");
    setBusy(false);
    if (!error) router.refresh();
  }
  return (
    <form onSubmit={add} className="stack-near" data-not-kept>
      <TextField name="passkey" label="A word for it" hint="So that you know it in the list: my phone" />
      <Button type="submit" disabled={busy}>
        {busy ? "Waiting for the device" : "Add a passkey"}
      </Button>
      <p className="waits" role="status">
        {says}
      </p>
    </form>
  );
}
