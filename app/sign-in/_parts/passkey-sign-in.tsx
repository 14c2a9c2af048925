"use client";

import { useEffect, useState } from "react";
import { Button } from "@/components/ui/button";

/** Signs in by a passkey, where the browser has such a thing. */
export function PasskeySignIn({ then }: { then: string }) {
  const [can, setCan] = useState(false);
  const [fault, setFault] = useState<string | null>(null);
  const [busy, setBusy] = useState(false);
  useEffect(() => setCan("PublicKeyCredential" in window), []);
  if (!can) return null;
  async function signIn() {
    setBusy(true);
    const { passkeyFault, passkeys } = await import("./passkey-client");
    const { error } = await passkeys().signIn.passkey();
    if (!error) return location.assign(then);
    setFault(passkeyFault(error));
    setBusy(false);
  }
  return (
    <div className="stack-near">
      <Button onClick={signIn} disabled={busy}>
        {busy ? "Waiting for the device" : "Sign in with a passkey"}
      </Button>
      <p className="waits" role="status">
        {fault ? `${fault}.` : ""}
      </p>
    </div>
  );
}
