/** A form as it was sent: which page it stood on, and the texts by their names, in order. */
export interface Submission {
  readonly path: string;
  readonly at: number;
  /** the sign-in page was its answer */
  readonly waited: boolean;
  readonly texts: readonly (readonly [string, string])[];
}

const longest = 12 * 60 * 60 * 1000;

/** A submission as it was kept; null where there is none, or where it is older than half a day. */
export function readSubmission(text: string | null, now: number): Submission | null {
  if (text === null) return null;
  const { path, at, waited, texts } = JSON.parse(text) as Partial<Submission>;
  if (typeof path !== "string" || typeof at !== "number" || now - at > longest) return null;
  const pairs = (Array.isArray(texts) ? texts : []).filter(
    (each): each is [string, string] => Array.isArray(each) && each.every((part) => typeof part === "string"),
  );
  return { path, at, waited: waited === true, texts: pairs };
}

/** False for forms about accounts and for those that only look something up. */
export function takesPart(form: HTMLFormElement): boolean {
  if (form.hasAttribute("data-not-kept") || form.querySelector('input[type="password"]')) return false;
  return form.closest("search") === null;
}

/** What a form would send, without files and without the framework's own fields. */
export function textsOf(form: HTMLFormElement): [string, string][] {
  return [...new FormData(form)].filter(
    (each): each is [string, string] => typeof each[1] === "string" && !each[0].startsWith("$"),
  );
}

/** Puts kept texts into a form that has every one of their fields; false, and nothing done, where it is another form. */
export function fillForm(form: HTMLFormElement, texts: Submission["texts"]): boolean {
  if (!takesPart(form) || texts.length === 0) return false;
  const controls = [...form.elements].filter(isControl);
  const names = new Set(controls.map((control) => control.name));
  if (!texts.every(([name]) => names.has(name))) return false;
  const left = new Map<string, string[]>();
  for (const [name, text] of texts) left.set(name, [...(left.get(name) ?? []), text]);
  for (const control of controls) {
    const own = left.get(control.name);
    if (control instanceof HTMLInputElement && (control.type === "checkbox" || control.type === "radio")) {
      const checked = own?.includes(control.value) ?? false;
      if (control.checked !== checked) control.click();
    } else if (own && own.length > 0 && control.type !== "hidden" && control.type !== "file") {
      put(control, own.shift() ?? "");
    }
  }
  return true;
}

type Control = HTMLInputElement | HTMLTextAreaElement | HTMLSelectElement;

function isControl(element: Element): element is Control {
  return (
    element instanceof HTMLInputElement ||
    element instanceof HTMLTextAreaElement ||
    element instanceof HTMLSelectElement
  );
}

/** Sets a value as a hand would: through the element's own setter, which React watches, and told by the events of typing. */
function put(control: Control, text: string): void {
  if (control.value === text) return;
  const setter = Object.getOwnPropertyDescriptor(Object.getPrototypeOf(control), "value")?.set;
  setter?.call(control, text);
  control.dispatchEvent(new Event("input", { bubbles: true }));
  control.dispatchEvent(new Event("change", { bubbles: true }));
}
