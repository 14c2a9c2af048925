/** The three steps of bringing files in. */
export const importSteps = [
  { name: "Choose", href: "/bring-in" },
  { name: "Look" },
  { name: "In the registry" },
] as const;
