import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, it } from "vitest";

function files(folder: string): string[] {
  return readdirSync(folder, { recursive: true })
    .map((name) => join(folder, String(name)))
    .filter((name) => /\.(css|tsx?)$/.test(name));
}

it("no colour is written outside the token file, but for black and white ink on labels", () => {
  const colour = /oklch\(\s*[\d.]|#[0-9a-f]{3,8}\b(?!-)|rgba?\(|hsla?\(/i;
  const found = [...files("components"), ...files("app/styles")].filter((file) => {
    if (file.endsWith("tokens.css")) return false;
    const text = readFileSync(file, "utf8")
      .replace(/color-mix\([^;]*;/g, "")
      .replace(/url\(#[^)]*\)/g, "")
      .replace(/href="#[^"]*"/g, "");
    return colour.test(text);
  });
  expect(found).toEqual([]);
});
