import localFont from "next/font/local";

/*
 * Two faces, kept here with their licences (SIL Open Font License 1.1): Vollkorn for words, whose own figures are
 * old-style; Archivo Narrow for counts, whose own figures are of one width. The second cut of each holds the letters
 * of the other Latin alphabets and is only fetched where a name needs it.
 */
const words = localFont({
  src: [
    { path: "./vollkorn-latin-regular.woff2", weight: "400", style: "normal" },
    { path: "./vollkorn-latin-italic.woff2", weight: "400", style: "italic" },
    { path: "./vollkorn-latin-semibold.woff2", weight: "600", style: "normal" },
  ],
  variable: "--font-words",
  display: "swap",
  adjustFontFallback: false,
});

const wordsExtended = localFont({
  src: [
    { path: "./vollkorn-latin-ext-regular.woff2", weight: "400", style: "normal" },
    { path: "./vollkorn-latin-ext-italic.woff2", weight: "400", style: "italic" },
    { path: "./vollkorn-latin-ext-semibold.woff2", weight: "600", style: "normal" },
  ],
  variable: "--font-words-extended",
  display: "swap",
  preload: false,
  adjustFontFallback: "Times New Roman",
  declarations: [
    {
      prop: "unicode-range",
      value:
        "U+0100-02BA,U+02BD-02C5,U+02C7-02CC,U+02CE-02D7,U+02DD-02FF,U+1D00-1DBF,U+1E00-1E9F,U+1EF2-1EFF,U+2020,U+20A0-20AB,U+20AD-20C0,U+2113,U+2C60-2C7F,U+A720-A7FF",
    },
  ],
});

const counts = localFont({
  src: [
    { path: "./archivo-narrow-latin-regular.woff2", weight: "400", style: "normal" },
    { path: "./archivo-narrow-latin-semibold.woff2", weight: "600", style: "normal" },
  ],
  variable: "--font-counts",
  display: "swap",
  adjustFontFallback: false,
});

const countsExtended = localFont({
  src: [
    { path: "./archivo-narrow-latin-ext-regular.woff2", weight: "400", style: "normal" },
    { path: "./archivo-narrow-latin-ext-semibold.woff2", weight: "600", style: "normal" },
  ],
  variable: "--font-counts-extended",
  display: "swap",
  preload: false,
  adjustFontFallback: "Arial",
  declarations: [
    {
      prop: "unicode-range",
      value:
        "U+0100-02BA,U+02BD-02C5,U+02C7-02CC,U+02CE-02D7,U+02DD-02FF,U+1D00-1DBF,U+1E00-1E9F,U+1EF2-1EFF,U+2020,U+20A0-20AB,U+20AD-20C0,U+2113,U+2C60-2C7F,U+A720-A7FF",
    },
  ],
});

/** STIX Two Math (same licence), which knows how far a root and a bracket reach: the formulas of the methods; fetched only where one stands. */
const formulas = localFont({
  src: [{ path: "./stix-two-math-regular.woff2", weight: "400", style: "normal" }],
  variable: "--font-formulas",
  display: "swap",
  preload: false,
  adjustFontFallback: false,
});

/** The classes that set the font variables; they stand on <html>. */
export const faces = [words, wordsExtended, counts, countsExtended, formulas].map((face) => face.variable).join(" ");
