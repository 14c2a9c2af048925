import { scanPathOf } from "@/app/_session/scan-code";
import { addressToTell } from "@/app/_session/shared";
import { ScanCode } from "@/components/scan-code";
import { ButtonAnchor } from "@/components/ui/button";
import { Offered } from "@/components/ui/offered";
import styles from "./take-to-field.module.css";

/** Takes the grow-out along on this device; or by a code that a phone scans from this screen. */
export function TakeToField({ growOutId, name }: { growOutId: string; name: string }) {
  const told = addressToTell();
  const place = `/field#${growOutId}`;
  return (
    <Offered deed="record-in-field">
      <div className="row not-on-paper">
        <ButtonAnchor href={place}>Take to the field</ButtonAnchor>
        <details className={styles.scan}>
          <summary>with a phone</summary>
          {told === null ? (
            <p className="measure">
              A phone reaches this registry once it is opened to others: start it with <code>npm start -- --share</code>
              . Then the code to scan stands here.
            </p>
          ) : (
            <div className={styles.code}>
              <ScanCode {...scanPathOf(`https://${told}${place}`)} label={`${name} in the field, as a code to scan`} />
              <p className="measure">Scanned with a phone’s camera, it opens the field there and takes this along.</p>
            </div>
          )}
        </details>
      </div>
    </Offered>
  );
}
