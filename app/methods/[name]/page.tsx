import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { Formula } from "@/components/formula";
import { PageHead, Section } from "@/components/frame";
import { SimpleTable } from "@/components/tables";
import { ButtonLink } from "@/components/ui";
import { calculationNamed } from "@/lib/schemas/calculations";
import type { CalculationKey } from "@/lib/schemas/calculations/calculation";
import { typesetFormulas } from "@/lib/schemas/calculations/typeset";
import { current } from "../../_session/current";
import styles from "../methods.module.css";
import { TryIt } from "./_components/try-it";

type Params = { params: Promise<{ name: string }> };

export async function generateMetadata({ params }: Params): Promise<Metadata> {
  return { title: calculationNamed((await params).name)?.title ?? "A method" };
}

export default async function Method({ params }: Params) {
  await current();
  const { name } = await params;
  const calculation = calculationNamed(name);
  if (!calculation) notFound();
  const typeset = typesetFormulas[name];
  return (
    <div className="sheet">
      <PageHead title={calculation.title} kind="Method">
        <p className="lead measure">{calculation.answers}</p>
        <p className="measure">
          <b>When to doubt it.</b> {calculation.whenToDoubt}
        </p>
      </PageHead>
      <div className={styles.formulaAndSymbols}>
        <Section id="formula" title="Formula">
          <div className={styles.formulas}>
            {typeset
              ? typeset.map((tex) => <Formula key={tex} tex={tex} />)
              : calculation.formula.map((line) => <p key={line}>{line}</p>)}
            {typeset ? (
              <details className="whole-on-paper">
                <summary>All of it in plain lines</summary>
                {calculation.formula.map((line) => (
                  <p key={line}>{line}</p>
                ))}
              </details>
            ) : null}
          </div>
        </Section>
        <Section id="symbols" title="Its symbols">
          {calculation.symbols.length > 0 ? (
            <dl className={styles.symbols}>
              {calculation.symbols.map(({ symbol, meaning }) => (
                <div key={symbol}>
                  <dt>{lowered(symbol)}</dt>
                  <dd>{meaning}</dd>
                </div>
              ))}
            </dl>
          ) : (
            <p className="quiet">They are the words of the input below.</p>
          )}
        </Section>
      </div>
      <Section id="try" title="Try it">
        <TryIt name={name} example={calculation.example} keys={calculation.input} answers={calculation.output} />
      </Section>
      <Section id="input" title="What goes in">
        <KeyTable keys={calculation.input} usual />
      </Section>
      <Section id="output" title="What comes out">
        <KeyTable keys={calculation.output} />
      </Section>
      <Section id="source" title="Where it is from">
        <ul className="measure">
          {calculation.source.map((source) => (
            <li key={source}>{source}</li>
          ))}
        </ul>
        <p>
          <ButtonLink href="/methods" kind="quiet">
            All methods
          </ButtonLink>
        </p>
      </Section>
    </div>
  );
}

/** A symbol as it is set: "P_MM" with its MM below. */
function lowered(symbol: string) {
  return symbol.split(/_([A-Za-z0-9]+)/).map((part, place) => (place % 2 === 1 ? <sub key={part}>{part}</sub> : part));
}

function KeyTable({ keys, usual = false }: { keys: readonly CalculationKey[]; usual?: boolean }) {
  const columns = [
    { key: "key", name: "Key" },
    { key: "meaning", name: "What it is" },
    { key: "shape", name: "What may stand there" },
    ...(usual ? [{ key: "usual", name: "Where left out" }] : []),
  ];
  return (
    <SimpleTable
      columns={columns}
      entries
      rows={keys.map(({ key, meaning, shape, usual: otherwise }) => ({
        id: key,
        cells: { key: <code>{key}</code>, meaning, shape, usual: otherwise ?? "" },
      }))}
    />
  );
}
