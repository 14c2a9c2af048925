import { Fragment } from "react";
import { Section } from "@/components/frame";
import type { ReadTest } from "@/lib/registry/germination-tests/read-germination-test";

/** How the test was set up: what was written down, and what was not. */
export function HowSetUp({ read }: { read: ReadTest }) {
  const { test, recordedIn } = read;
  const lines: [string, string | null][] = [
    ["counted", test.basis],
    ["method", test.method],
    ["warmth", test.temperature],
    ["before the test", test.preTreatment],
    ["last count", test.finalCountDay === null ? null : `day ${test.finalCountDay}`],
    ["note", test.note],
    ["written down", recordedIn ? `${recordedIn.at.slice(0, 10)}, by ${recordedIn.actor}` : null],
  ];
  return (
    <Section id="set-up" title="How it was set up">
      <dl className="particulars">
        {lines.map(([name, value]) => (
          <Fragment key={name}>
            <dt>{name}</dt>
            <dd>{value ?? <span className="quiet">not written down</span>}</dd>
          </Fragment>
        ))}
      </dl>
    </Section>
  );
}
