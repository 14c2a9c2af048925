import type { Drawn } from "./drawn";
import { oddWord, soundWord } from "./odd-words";
import type { Code, Person } from "./people";

/** What stands in the registry that a form about people can name. */
export interface Known {
  readonly people: readonly Person[];
  readonly names: readonly string[];
  readonly codes: readonly Code[];
  readonly ids: readonly string[];
  readonly stewards: readonly string[];
  readonly growOuts: readonly string[];
  readonly upload: string;
}

/** A form as it is sent: its arguments by name, and the secret that was typed into it. */
export interface Sent {
  readonly all: unknown[];
  readonly form: FormData;
  readonly typed: string;
  readonly code: string;
  readonly forged: boolean;
}

const nothing = [null, undefined, 0, true, [], {}, { not: "x" }, { contains: "" }, ["x"], new FormData()];

/** The fields of each form; of those that are not here the form asks for an id alone. */
const fieldsOf: Readonly<Record<string, readonly string[]>> = {
  inviteSomebody: ["role", "stewardId", "growOuts", "words"],
  storeMember: ["role", "stewardId", "growOuts", "note"],
  makeAccount: ["name", "signInName", "passphrase", "again"],
  makePassphrase: ["passphrase", "again"],
  newPassphrase: ["now", "passphrase", "again"],
  signInHere: ["signInName", "passphrase", "borrowed"],
  bringIn: ["upload"],
};

const beside = ["__proto__", "userId", "password", "endedAt", "role", "passphrase", "id", "x"];

/** Forms about people with values that fit, and odd ones. `number` makes what is new in them unlike anything before. */
export function sentByPeople(
  { name: kind, takes }: { readonly name: string; readonly takes: readonly string[] },
  who: Person | null,
  known: Known,
  number: number,
  drawn: Drawn,
): Sent {
  const odd = drawn.chance(0.6) ? 0.02 : 0.2;
  const text = (fits: () => string) => (drawn.chance(odd) ? oddWord(drawn) : fits());
  const target = drawn.one(known.people);
  const signsIn = kind === "signInHere" && drawn.chance(0.7);
  const passphrase = signsIn || drawn.chance(0.1) ? target.passphrase : `a heap of stones ${number} in the wet`;
  const ownName = known.names[known.people.indexOf(target)] ?? "";
  const fits: Readonly<Record<string, () => string>> = {
    role: () => drawn.one(["owner", "steward", "librarian", "helper", "reader", "reader", "public", ""]),
    stewardId: () => drawn.one(["", ...known.stewards]),
    growOuts: () => drawn.one(known.growOuts),
    words: () => soundWord(drawn),
    note: () => soundWord(drawn),
    id: () => drawn.one(known.ids),
    name: () => `Person ${number}`,
    signInName: () => (kind === "signInHere" || drawn.chance(0.1) ? ownName : `sower-${number}`),
    now: () => (who && drawn.chance(0.8) ? who.passphrase : target.passphrase),
    passphrase: () => passphrase,
    again: () => String(form.get("passphrase") ?? ""),
    borrowed: () => drawn.one(["on", "", "yes"]),
    upload: () => known.upload,
  };
  const form = new FormData();
  for (const field of fieldsOf[kind] ?? ["id"])
    for (let times = field === "growOuts" ? drawn.whole(3) : 1; times > 0; times -= 1)
      if (!drawn.chance(odd)) form.append(field, text(fits[field] ?? (() => "")));
  if (drawn.chance(0.05)) form.append(drawn.one(beside), oddWord(drawn));
  if (drawn.chance(0.02)) form.append(drawn.one(beside), new File(["x"], "x.bin"));
  const code = text(() => (known.codes.length > 0 ? drawn.one(known.codes.slice(-6)).code : "none"));
  let forged = false;
  const all = takes.map((name) => {
    if (drawn.chance(0.03)) {
      forged = true;
      return drawn.one<unknown>(nothing);
    }
    if (name === "form") return form;
    if (name === "before" || name === "state") return { typed: {}, refusals: [], shown: null };
    if (name === "code") return code;
    return name === "then" ? text(() => "/lots") : text(() => drawn.one(known.ids));
  });
  return { all, form, typed: String(form.get("passphrase") ?? ""), code, forged };
}
