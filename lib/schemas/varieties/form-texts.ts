/** What a form sends: a text a field; a field that was not sent is not there. */
export type FormTexts = Readonly<Record<string, string | undefined>>;

/** The texts of a form, without files and without the framework's own fields. */
export function textsOfForm(form: FormData): Record<string, string> {
  const texts: Record<string, string> = {};
  for (const [name, value] of form) if (typeof value === "string" && !name.startsWith("$")) texts[name] = value;
  return texts;
}
