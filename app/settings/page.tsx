import type { Metadata } from "next";
import Link from "next/link";
import { PageHead, Section } from "@/components/frame";
import { Notice } from "@/components/ui";
import { plainNumber } from "@/lib/display/numbers";
import { defaultSettings } from "@/lib/schemas/settings";
import { current } from "../_session/current";
import type { FieldSpec } from "../varieties/_forms/field-spec";
import { RecordForm } from "../varieties/_forms/record-form";
import { storeSettings } from "./_actions/store";

export const metadata: Metadata = { title: "Settings" };

const hundred = (share: number) => plainNumber(share * 100, 2);

export default async function SettingsPage({ searchParams }: { searchParams: Promise<{ stored?: string }> }) {
  const { settings } = await current("settings");
  const { stored } = await searchParams;
  const usual = defaultSettings;
  const fields: readonly FieldSpec[] = [
    {
      kind: "number",
      name: "renewalPlan",
      label: "Plan to renew a lot that germinates below",
      unit: "%",
      required: true,
      value: hundred(settings.renewalPlan),
      hint: `Usually ${hundred(usual.renewalPlan)} % at home; genebanks ask for 85 %. Named by the season, the lots and each test.`,
    },
    {
      kind: "number",
      name: "renewalUrgent",
      label: "It is urgent below",
      unit: "%",
      required: true,
      value: hundred(settings.renewalUrgent),
      hint: `Usually ${hundred(usual.renewalUrgent)} %. Named by the season and the lots.`,
    },
    {
      kind: "number",
      name: "confirmedYears",
      label: "A holder’s word counts for",
      unit: "years",
      whole: true,
      required: true,
      value: String(settings.confirmedYears),
      hint: `Usually ${usual.confirmedYears}, and only with seed younger than its usual life. Named by the season, by each variety’s places and by the reserve.`,
    },
    {
      kind: "choice",
      name: "units",
      label: "Units",
      required: true,
      value: settings.units,
      options: [
        { value: "metric", words: "Grams, metres, degrees Celsius" },
        {
          value: "imperial",
          words: "Ounces, feet, degrees Fahrenheit",
          note: "what is stored stays in grams, metres and Celsius",
        },
      ],
    },
    {
      kind: "choice",
      name: "hemisphere",
      label: "Where the year turns",
      required: true,
      value: settings.hemisphere,
      options: [
        { value: "north", words: "North of the equator" },
        {
          value: "south",
          words: "South of the equator",
          note: "spring begins in September; the season’s strip and “spring 1987” follow",
        },
      ],
    },
  ];
  return (
    <div className="sheet stack">
      <PageHead title="Settings" kind="Registry">
        <p className="measure">Every verdict names the setting that it follows, so that you can see it change here.</p>
      </PageHead>
      {stored ? <Notice title="Stored">All pages follow the new settings.</Notice> : null}
      <RecordForm
        fields={fields}
        action={storeSettings}
        confirm="Store the settings"
        back={{ href: "/season", words: "Back to the season" }}
      />
      <Section id="more" title="More that verdicts follow">
        <ul className="stack-near">
          <li>
            <Link href="/crops">Crops</Link>: mating system, plants, usual life of the seed, isolation; with their
            sources and your own values.
          </li>
          <li>
            <Link href="/stewards">Stewards</Link>: who holds seed for each other.
          </li>
        </ul>
      </Section>
    </div>
  );
}
