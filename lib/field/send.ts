import type { FieldAnswer, FieldDelivery } from "@/lib/schemas/field/field-delivery";
import { mostAtOnce } from "@/lib/schemas/field/heap";
import type { FieldStore } from "./store";

/** What became of a heap that was posted. A post that throws counts as unreachable. */
export type Posted =
  | { readonly kind: "answered"; readonly answer: FieldAnswer }
  /** nobody is signed in (any more) */
  | { readonly kind: "sign-in" }
  | { readonly kind: "too-big" }
  /** the registry was reached and could not take it: its own words */
  | { readonly kind: "fault"; readonly words: string };

export type Post = (delivery: FieldDelivery) => Promise<Posted>;

/** Why sending ended before all was home; null: nothing is left. */
export type WhyStopped = "sign-in" | "unreachable" | "too-big" | "fault" | "no answer" | null;

export interface Sent {
  /** records that the registry answered */
  readonly answered: number;
  /** records that it has not answered */
  readonly left: number;
  readonly stopped: WhyStopped;
  /** the registry's own words, where it could not take them */
  readonly words: string | null;
}

/**
 * Sends what is unsent in heaps, the oldest first, until the registry has answered all of it. Only ids that an answer names are marked, so
 * whatever is lost on the way is sent again; the registry takes each record once. A heap that is too big is halved; a record that is too big
 * alone stays, and holds up no other. `clock` gives milliseconds since 1970 on this phone.
 */
export async function sendOutbox(store: FieldStore, post: Post, clock: () => number): Promise<Sent> {
  const device = await store.device();
  const tooBig = new Set<string>();
  let answered = 0;
  let heap = mostAtOnce;
  for (;;) {
    const unsent = await store.unsent();
    const rows = unsent.filter((row) => !tooBig.has(row.id)).slice(0, heap);
    const end = (stopped: WhyStopped, words: string | null = null): Sent => ({
      answered,
      left: unsent.length,
      stopped,
      words,
    });
    const [first] = rows;
    if (!first) return end(tooBig.size > 0 ? "too-big" : null);
    const posted = await post({
      device,
      sentAt: new Date(clock()).toISOString(),
      // what was recorded before it is home, or too big to be sent
      unansweredFrom: first.sequence,
      records: rows.map((row) => row.record),
    }).catch(() => null);
    if (posted === null) return end("unreachable");
    if (posted.kind === "sign-in") {
      await store.set("signInAsked", true);
      return end("sign-in");
    }
    if (posted.kind === "fault") return end("fault", posted.words);
    if (posted.kind === "too-big") {
      if (rows.length === 1) tooBig.add(first.id);
      heap = Math.max(1, Math.floor(rows.length / 2));
      continue;
    }
    const sent = new Set(rows.map((row) => row.id));
    await heard(store, posted.answer, clock());
    await store.answered(posted.answer);
    const named = posted.answer.answers.filter((each) => sent.has(each.id)).length;
    answered += named;
    // an answer that names nothing of the heap would be asked for without end
    if (named === 0) return end("no answer");
  }
}

/** Remembers that the registry was there, and how far the two clocks are apart. */
async function heard(store: FieldStore, answer: FieldAnswer, now: number): Promise<void> {
  await store.set("heardAt", new Date(now).toISOString());
  await store.set("clockAhead", now - Date.parse(answer.now));
  await store.set("signInAsked", false);
}
