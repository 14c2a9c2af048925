import { AskTwice } from "@/components/ui";
import type { SignedInDevice } from "@/lib/registry/accounts/list-sessions";
import { dayOf, deviceInWords } from "../_words/member-words";
import styles from "../members.module.css";

/** Devices that are signed in, each with the way to sign it out. `here` is the one in hand. */
export function Devices({
  devices,
  here,
  action,
}: {
  devices: readonly SignedInDevice[];
  here?: string;
  action: (form: FormData) => Promise<void>;
}) {
  if (devices.length === 0) return <p className="quiet">Signed in nowhere.</p>;
  return (
    <ul className={styles.people}>
      {devices.map((device) => (
        <li key={device.id}>
          <span className={styles.name}>
            {device.id === here ? "This one: " : ""}
            {deviceInWords(device.agent)}
          </span>
          <span>
            since {dayOf(device.since)}, until {dayOf(device.until)}
          </span>
          <span className={styles.aside}>
            {device.id === here ? (
              "in your hand"
            ) : (
              <AskTwice
                button="Sign it out"
                buttonKind="quiet"
                title="Sign this device out?"
                says="It is out at once. What is typed there and not sent stays on it."
                confirm="Sign it out"
                kind="people"
                action={action}
              >
                <input type="hidden" name="id" value={device.id} />
              </AskTwice>
            )}
          </span>
        </li>
      ))}
    </ul>
  );
}
