import { Fragment } from "react";
import { Section } from "@/components/frame";
import { dayInWords } from "@/lib/display/dates";
import { listed } from "@/lib/display/plurals";
import type { ReadTest } from "@/lib/registry/germination-tests/read-germination-test";

/** How the test was set up: what was written down, and what was not. */
export function HowSetUp({ read }: { read: ReadTest }) {
  const { test, recordedIn } = read;
  const lines: [string, string | null][] = [
    ["what was counted", test.basis],
    ["method", test.method],
    ["warmth", test.temperature],
    ["before the test", test.preTreatment],
    ["last count", test.finalCountDay === null ? null : `day ${test.finalCountDay}`],
    ["note", test.note],
    ["written down", recordedIn ? `${dayInWords(recordedIn.at.slice(0, 10))}, by ${recordedIn.actor}` : null],
  ];
  const known = lines.filter(([, value]) => value !== null);
  const open = lines.filter(([, value]) => value === null).map(([name]) => name);
  return (
    <Section id="set-up" title="How it was set up">
      <div className="stack-near">
        <dl className="particulars">
          {known.map(([name, value]) => (
            <Fragment key={name}>
              <dt>{name}</dt>
              <dd>{value}</dd>
            </Fragment>
          ))}
        </dl>
        {open.length > 0 ? <p className="quiet">Nobody wrote down: {listed(open)}.</p> : null}
      </div>
    </Section>
  );
}
