import type { FieldAnswer } from "@/lib/schemas/field/field-delivery";
import type { FieldPack } from "@/lib/schemas/field/field-pack";
import type { Post } from "./send";

/*
 * What the phone asks of the registry. Answers are looked at by hand here: the shapes' own reader is too heavy for a phone, and the registry judges
 * what it is sent.
 */

/** How a pack that was asked for came. */
export type PackAsked =
  | { readonly kind: "pack"; readonly pack: FieldPack }
  | { readonly kind: "sign-in" }
  | { readonly kind: "unreachable" }
  | { readonly kind: "not here"; readonly words: string };

/** Asks for the pack of a grow-out. */
export async function askForPack(growOutId: string): Promise<PackAsked> {
  const response = await fetch(`/field/pack/${encodeURIComponent(growOutId)}`, { cache: "no-store" }).catch(() => null);
  if (response === null) return { kind: "unreachable" };
  if (response.status === 401) return { kind: "sign-in" };
  if (!response.ok) return { kind: "not here", words: await wordsOf(response) };
  const pack: unknown = await response.json().catch(() => null);
  if (isPack(pack)) return { kind: "pack", pack };
  return { kind: "not here", words: "The registry answered with something that is no grow-out; open this page anew." };
}

/** Posts a heap of records. */
export const postRecords: Post = async (delivery) => {
  const response = await fetch("/field/records", {
    method: "POST",
    headers: { "content-type": "application/json" },
    body: JSON.stringify(delivery),
    // a phone between two masts holds a connection that leads nowhere
    signal: AbortSignal.timeout(60_000),
  });
  if (response.status === 401) return { kind: "sign-in" };
  if (response.status === 413) return { kind: "too-big" };
  if (!response.ok) return { kind: "fault", words: await wordsOf(response) };
  const answer: unknown = await response.json().catch(() => null);
  if (isAnswer(answer)) return { kind: "answered", answer };
  return { kind: "fault", words: "The registry answered in a way that this page does not know; open it anew." };
};

/** Sends a picture; null: the registry has it. `again` is true where another try may help. */
export async function postPhoto(hash: string, bytes: Blob): Promise<{ words: string; again: boolean } | null> {
  const response = await fetch(`/field/photos?sha256=${hash}`, {
    method: "POST",
    headers: { "content-type": bytes.type || "image/jpeg" },
    body: bytes,
  });
  if (response.ok) return null;
  return { words: await wordsOf(response), again: [400, 401, 503, 507].includes(response.status) };
}

/** What the registry said: its own words where there are any, else that it could not. */
async function wordsOf(response: Response): Promise<string> {
  const otherwise = `The registry could not do it (${response.status}).`;
  const text = (await response.text().catch(() => "")).trim();
  if (text === "" || text.startsWith("<")) return otherwise;
  const read = readJson(text);
  if (!isObject(read)) return text.slice(0, 400);
  return String(read.words ?? read.refused ?? otherwise);
}

function readJson(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return null;
  }
}

function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

const fates = ["taken", "held", "waiting", "question", "refused"];

export function isAnswer(value: unknown): value is FieldAnswer {
  return (
    isObject(value) &&
    typeof value.now === "string" &&
    !Number.isNaN(Date.parse(value.now)) &&
    Array.isArray(value.answers) &&
    value.answers.every((each) => isObject(each) && typeof each.id === "string" && fates.includes(String(each.fate)))
  );
}

const lists = ["traits", "type", "plants", "counts", "walks", "flowering", "harvests", "cautions"];

export function isPack(value: unknown): value is FieldPack {
  return (
    isObject(value) &&
    value.version === 1 &&
    typeof value.madeAt === "string" &&
    isObject(value.growOut) &&
    typeof value.growOut.id === "string" &&
    ["variety", "crop", "plan", "hand"].every((part) => isObject(value[part])) &&
    lists.every((part) => Array.isArray(value[part]))
  );
}
