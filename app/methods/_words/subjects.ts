/** The calculations by what the hand is at, in the order of the year. */
export const subjects: readonly { readonly id: string; readonly title: string; readonly names: readonly string[] }[] = [
  {
    id: "plants",
    title: "How many plants, and what they pass on",
    names: [
      "effective-size",
      "effective-size-span",
      "lineage",
      "lineage-span",
      "bottleneck-cost",
      "harmonic-size",
      "blend-advice",
      "population-plan",
      "allele-capture",
      "grown-on",
      "outcome-spread",
      "gene-drop",
    ],
  },
  {
    id: "tests",
    title: "What a germination test says",
    names: ["germination-test", "germination-compare", "germination-speed"],
  },
  {
    id: "jar",
    title: "The jar: how long, how dry, how much",
    names: [
      "viability-forecast",
      "viability",
      "seed-moisture",
      "dry-to",
      "thousand-seed-weight",
      "sowing-count",
      "reserve",
    ],
  },
  {
    id: "field",
    title: "The field: off-types and foreign pollen",
    names: [
      "off-types",
      "off-type-trend",
      "off-type-frequency",
      "foreign-pollen-seen",
      "pollen-risk",
      "flowering-overlap",
    ],
  },
  {
    id: "choosing",
    title: "Choosing plants, and what came of it",
    names: ["choose-plants", "selection-response", "realised-heritability", "scorer-agreement", "trait-years"],
  },
];
