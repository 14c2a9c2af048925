import { renderToStaticMarkup } from "react-dom/server";
import { expect, it } from "vitest";
import { Choice, DateField, NumberField, Select, TextField } from "@/components/ui";

it("a refusal stands under its field, is tied to it, and what was typed stays", () => {
  const drawn = renderToStaticMarkup(
    <DateField name="year" label="Year" value="19x7" refusals={["It is not a date."]} />,
  );
  expect(drawn).toContain('value="19x7"');
  expect(drawn).toContain('aria-invalid="true"');
  expect(drawn).toContain('aria-describedby="field-year-hint field-year-refusal"');
  expect(drawn).toContain('id="field-year-refusal"');
  expect(drawn).toContain("It is not a date.");
});

it("a field without refusals is not marked", () => {
  const drawn = renderToStaticMarkup(<TextField name="name" label="Name" required />);
  expect(drawn).not.toContain("aria-invalid");
  expect(drawn).not.toContain("aria-describedby");
  expect(drawn).not.toContain("if known");
  expect(drawn).toContain('for="field-name"');
});

it("a number is typed as text, so that nothing typed is lost", () => {
  const drawn = renderToStaticMarkup(<NumberField name="grams" label="Weight" unit="g" value="12,5 or so" />);
  expect(drawn).toContain('type="text"');
  expect(drawn).toContain('inputMode="decimal"');
  expect(drawn).toContain('value="12,5 or so"');
});

it("a choice keeps what was chosen, and an empty answer has its own words", () => {
  const options = [
    { value: "a", words: "Sprouted" },
    { value: "b", words: "Normal seedlings" },
  ];
  const choice = renderToStaticMarkup(<Choice name="basis" label="Counted as" options={options} value="b" />);
  expect(choice).toMatch(/<fieldset[^>]*id="field-basis"/);
  expect(choice).toMatch(/value="b"[^>]*checked|checked=""[^>]*value="b"/);
  const select = renderToStaticMarkup(<Select name="crop" label="Crop" options={options} empty="not known" />);
  expect(select).toMatch(/<option value="" selected="">not known<\/option>/);
});
