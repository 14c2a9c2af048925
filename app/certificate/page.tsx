import type { Metadata } from "next";
import { headers } from "next/headers";
import { PageHead, Section } from "@/components/frame";
import { ScanCode } from "@/components/scan-code";
import { ButtonLink, Notice } from "@/components/ui";
import { readAuthority } from "@/lib/registry/accounts/authority";
import { scanPathOf } from "../_session/scan-code";
import { addressToTell } from "../_session/shared";
import { NotShared } from "../members/_parts/not-shared";
import { deviceOf, deviceSteps } from "./_words/devices";
import styles from "./certificate.module.css";

export const metadata: Metadata = { title: "The certificate" };

/** Reached before anything is trusted, by plain HTTP: why, how on this device, and on to the registry. */
export default async function Certificate() {
  const address = addressToTell();
  const authority = await readAuthority();
  if (address === null || !authority) {
    return (
      <div className="sheet stack">
        <PageHead title="The certificate" />
        <NotShared />
      </div>
    );
  }
  const sent = await headers();
  const own = deviceOf(sent.get("user-agent"));
  const host = sent.get("host") ?? address;
  const first = `http://${address}`;
  return (
    <div className="sheet stack">
      <PageHead title="Before you come in the first time" kind="The certificate">
        <p className="measure">
          This registry is kept on a machine of your circle. What goes to and fro is locked by a certificate that the
          machine made itself, so each device is told once that it may trust it. Until then the browser warns, and no
          page can be kept for the field.
        </p>
      </PageHead>
      <ol className={styles.way}>
        <li>
          <ButtonLink href="/certificate/authority" download kind="chief">
            Load the certificate
          </ButtonLink>
        </li>
        <li>Tell your device to trust it, as written below.</li>
        <li>
          <a href={`https://${host}/`}>Go on to the registry</a>
        </li>
      </ol>
      <Section id="steps" title={own ? `On this device: ${own.kind}` : "On your device"}>
        {own ? <Steps of={own} /> : null}
        <div className={styles.others}>
          {deviceSteps
            .filter((each) => each !== own)
            .map((each) => (
              <details key={each.kind} className="whole-on-paper">
                <summary>{each.kind}</summary>
                <Steps of={each} />
              </details>
            ))}
        </div>
      </Section>
      <Section id="whose" title="Is it the right one?">
        <div className="stack">
          <p className="measure">
            It is called <span className="name">{authority.name}</span>. Its fingerprint (SHA-256) stands where the
            owner started the registry, too; the two must be the same:
          </p>
          <p className={styles.fingerprint}>{authority.fingerprint}</p>
          <Notice kind="caution" title="Trust it only where you know whose machine this is">
            <p>
              Whoever holds the key of such an authority could pose as any other place to a device that trusts it. The
              key lies in that machine’s data folder, for its owner alone. When you no longer come here, take the
              certificate off your device again, where you put it in.
            </p>
          </Notice>
        </div>
      </Section>
      <Section id="another" title="Another device">
        <div className={styles.another}>
          <ScanCode {...scanPathOf(first)} label={`The address of this page, ${first}, as a code to scan`} />
          <p className="measure">
            Scan it, or type <span className="name">{first}</span>. The device has to be in the same network.
          </p>
        </div>
      </Section>
    </div>
  );
}

function Steps({ of }: { of: (typeof deviceSteps)[number] }) {
  return (
    <div className="stack-near">
      <ol className={styles.steps}>
        {of.steps.map((step) => (
          <li key={step}>{step}</li>
        ))}
      </ol>
      {of.note ? <p className="measure quiet">{of.note}</p> : null}
    </div>
  );
}
