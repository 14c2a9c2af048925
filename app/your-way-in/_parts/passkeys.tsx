import { AskTwice } from "@/components/ui";
import type { PasskeyInList } from "@/lib/registry/accounts/list-passkeys";
import { dayOf } from "../../members/_words/member-words";
import styles from "../../members/members.module.css";
import { dropPasskey } from "../_actions/your-way-in";
import { AddPasskey } from "./add-passkey";

/** Passkeys: the device's own lock in place of the passphrase. `name` is the name in the address; without one there can be none. */
export function Passkeys({ name, kept }: { name: string | null; kept: readonly PasskeyInList[] }) {
  return (
    <div className="stack">
      {kept.length > 0 ? (
        <ul className={styles.people}>
          {kept.map((each) => (
            <li key={each.id}>
              <span className={styles.name}>{each.name || "a passkey"}</span>
              <span>{each.since ? `since ${dayOf(each.since)}` : ""}</span>
              <span className={styles.aside}>
                <AskTwice
                  button="Take it away"
                  buttonKind="quiet"
                  title="Take this passkey away?"
                  says="Nobody signs in by it any more. Your passphrase stays."
                  confirm="Take it away"
                  kind="people"
                  action={dropPasskey}
                >
                  <input type="hidden" name="id" value={each.id} />
                </AskTwice>
              </span>
            </li>
          ))}
        </ul>
      ) : null}
      {name === null ? (
        <p className="measure">
          A passkey lets you sign in by the lock of your device, a finger or its number. Here it cannot work: passkeys
          belong to a name, and this registry’s address is a bare number. Where your network gives the machine a name
          (often ending in <em>.local</em>), come by that name and add one there.
        </p>
      ) : (
        <>
          <p className="measure">
            A passkey lets you sign in by the lock of your device, a finger or its number, in place of the passphrase.
            It counts for the address <span className="name">{name}</span> alone.
          </p>
          <AddPasskey />
        </>
      )}
    </div>
  );
}
