import type { FieldBody, FieldKind, PlantInField } from "@/lib/schemas/field/field-records";
import type { Refusal } from "@/lib/science/outcome";
import type { Device, KeptPack, KeptPhoto, KeptRecord, Settings } from "./kept-rows";
import { dayOf, momentNow, newRecord } from "./new-record";
import { keepPictures } from "./pictures";
import { askForPack, type PackAsked, postPhoto, postRecords } from "./registry-calls";
import { type Sent, sendOutbox } from "./send";
import type { ShrunkPhoto } from "./shrink-photo";
import { storageRefusal } from "./storage-refusal";
import { FieldStore } from "./store";

/** How long an undo is offered, in milliseconds. After that it is an undo of the desk, or a correction. */
export const undoFor = 60_000;
/** After the last tap so long passes before what waits is sent, in milliseconds. */
const sendAfter = 2_000;

/** What was recorded last, while it can be taken back at a tap. */
export interface Last {
  readonly id: string;
  readonly words: string;
  /** by the phone's clock */
  readonly at: number;
}

/** All that the screens show of the phone; a new one at each change. */
export interface PhoneNow {
  readonly open: boolean;
  /** why the phone's memory cannot be used, or stands in another tab's hand */
  readonly trouble: string | null;
  /** why the last tap was not stored: it is still to be done */
  readonly notStored: Refusal | null;
  readonly packs: readonly KeptPack[];
  readonly rows: readonly KeptRecord[];
  readonly photosWaiting: number;
  /** those that the registry would not have yet, and those that were put away */
  readonly photosRefused: readonly KeptPhoto[];
  readonly device: Device | null;
  readonly hand: Settings["hand"];
  readonly drafts: Settings["drafts"];
  readonly heardAt: string | null;
  readonly clockAhead: number;
  readonly signInAsked: boolean;
  readonly sending: boolean;
  readonly sent: Sent | null;
  readonly last: Last | null;
}

const nothing: PhoneNow = {
  ...{
    open: false,
    trouble: null,
    notStored: null,
    packs: [],
    rows: [],
    photosWaiting: 0,
    photosRefused: [],
    device: null,
    hand: "right",
  },
  ...{ drafts: {}, heardAt: null, clockAhead: 0, signInAsked: false, sending: false, sent: null, last: null },
};

/**
 * This phone as the screens know it: what it keeps, what waits, and what can be done. Each deed is stored before it is shown, and what waits is
 * sent on opening, when a signal comes, when the page comes into sight, after each deed, and when asked.
 */
export class Phone {
  readonly store: FieldStore;
  #now = nothing;
  readonly #listeners = new Set<() => void>();
  #sending: Promise<void> | null = null;
  #later: ReturnType<typeof setTimeout> | undefined;
  /** pictures that the registry would not have: they stay here, and are tried again when the page is opened anew */
  readonly #photosForGood = new Set<string>();

  constructor(store?: FieldStore) {
    this.store =
      store ??
      new FieldStore(undefined, {
        blocked: () => this.#change({ trouble: "An older page of the field is open in another tab. Close it." }),
        outdated: () =>
          this.#change({
            trouble: "A newer page of the field is open in another tab. Close this one, or open it anew.",
          }),
      });
  }

  readonly now = (): PhoneNow => this.#now;
  readonly listen = (listener: () => void): (() => void) => {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  };

  #change(part: Partial<PhoneNow>): void {
    this.#now = { ...this.#now, ...part };
    for (const listener of this.#listeners) listener();
  }

  /** Reads what the phone keeps, and sends what waits. */
  async open(): Promise<void> {
    try {
      const device = await this.store.device();
      await this.#readAgain();
      this.#change({ open: true, device });
    } catch (fault) {
      this.#change({ open: true, trouble: storageRefusal(fault).needed, notStored: storageRefusal(fault) });
      return;
    }
    void this.send();
  }

  /** Reads everything anew: another tab may have recorded, too. `without` is a grow-out that has left the phone. */
  async #readAgain(without?: string): Promise<void> {
    const { store } = this;
    const [packs, rows, photos, away, hand, drafts, heardAt, clockAhead, signInAsked] = await Promise.all([
      ...([
        store.packs(),
        store.records(),
        store.unsentPhotos(),
        store.photosAway(),
        store.setting("hand"),
        store.setting("drafts"),
      ] as const),
      ...([store.setting("heardAt"), store.setting("clockAhead"), store.setting("signInAsked")] as const),
    ]);
    // what was tapped while this was read stands behind it
    const last = rows.at(-1)?.sequence ?? 0;
    const since = this.#now.rows.filter((row) => row.sequence > last && row.growOutId !== without);
    this.#change({
      ...{ packs, rows: [...rows, ...since], photosWaiting: photos.length, hand: hand ?? "right" },
      ...{ drafts: drafts ?? {}, photosRefused: [...photos, ...away].filter((photo) => photo.sentence !== null) },
      ...{ heardAt: heardAt ?? null, clockAhead: clockAhead ?? 0, signInAsked: signInAsked ?? false },
    });
  }

  /**
   * Stores what was just done and offers to take it back; `words` say what it was. Null where it could not be stored: why stands in
   * `notStored`, and the screen goes on showing what was there before.
   */
  async record<K extends FieldKind>(
    growOutId: string,
    kind: K,
    body: FieldBody<K>,
    words: string,
  ): Promise<KeptRecord | null> {
    const stewardId = this.#now.packs.find((each) => each.growOutId === growOutId)?.pack.hand.stewardId ?? null;
    const moment = momentNow();
    const kept = await this.store.append(newRecord(kind, body, { growOutId, stewardId }, moment));
    if (!kept.ok) {
      this.#change({ notStored: kept.refusals[0] ?? null });
      return null;
    }
    performance.mark("field record stored");
    const last = kind === "undo" ? null : { id: kept.value.id, words, at: moment.at };
    this.#change({ rows: [...this.#now.rows, kept.value], notStored: null, last });
    this.#sendSoon();
    return kept.value;
  }

  /** Takes a record back, by a record of its own. */
  undo(growOutId: string, of: string): Promise<KeptRecord | null> {
    return this.record(growOutId, "undo", { of }, "");
  }

  forgetLast(): void {
    this.#change({ last: null });
  }

  /** Keeps what was begun on a screen; null: it is done with. */
  async setDraft(screen: string, text: string | null): Promise<void> {
    const { [screen]: _before, ...others } = this.#now.drafts;
    const drafts = text === null ? others : { ...others, [screen]: text };
    this.#change({ drafts });
    // a draft that cannot be kept is on the screen still
    await this.store.set("drafts", drafts).catch(() => undefined);
  }

  /** Stores a picture that was shrunk, then the record that names it. False where it could not be: why stands in `notStored`. */
  async keepPhoto(
    growOutId: string,
    plant: PlantInField,
    { hash, bytes }: ShrunkPhoto,
    words: string,
  ): Promise<boolean> {
    const takenAt = new Date().toISOString();
    const kept = await this.store.keepPhoto({ hash, growOutId, bytes, takenAt, sent: 0, sentence: null });
    if (!kept.ok) {
      this.#change({ notStored: kept.refusals[0] ?? null });
      return false;
    }
    this.#change({ photosWaiting: (await this.store.unsentPhotos()).length });
    return (await this.record(growOutId, "photo", { plant, traitId: null, hash, caption: null }, words)) !== null;
  }

  async setHand(hand: Settings["hand"]): Promise<void> {
    this.#change({ hand });
    await this.store.set("hand", hand);
  }

  /** Asks the registry for a grow-out, stores it, and reads it back. The refusal says why it is not on the phone (anew). */
  async take(growOutId: string): Promise<PackAsked | { readonly kind: "not kept"; readonly words: string }> {
    const asked = await askForPack(growOutId);
    if (asked.kind === "sign-in") this.#change({ signInAsked: true });
    if (asked.kind !== "pack") return asked;
    const kept = await this.store.keepPack(asked.pack, new Date().toISOString());
    if (!kept.ok) return { kind: "not kept", words: kept.refusals[0]?.sentence ?? "" };
    this.#change({ packs: [...this.#now.packs.filter((each) => each.growOutId !== growOutId), kept.value] });
    void this.#keepPictures();
    return asked;
  }

  /** Takes a grow-out off the phone; false where something of it is not in the registry. */
  async leaveBehind(growOutId: string): Promise<boolean> {
    const left = await this.store.leaveBehind(growOutId);
    if (left) {
      await this.#readAgain(growOutId);
      void this.#keepPictures();
    }
    return left;
  }

  /** What the registry would not have is sent once more: it may have what was missing meanwhile. */
  async sendAgain(): Promise<void> {
    await this.store.sendAgain(this.#now.rows.flatMap(({ id, state }) => (state === "refused" ? id : [])));
    this.#photosForGood.clear();
    await this.#readAgain();
    await this.send();
  }

  /** Notes that these stand in a file now. */
  async savedToFile(ids: readonly string[], hashes: readonly string[], savedAt: string): Promise<void> {
    await this.store.savedToFile(ids, hashes, savedAt);
    await this.#readAgain();
  }

  /** Puts what the registry would not have, and what stands in a file, out of the way, or takes it back. */
  async putAway(ids: readonly string[], hashes: readonly string[], away: boolean): Promise<void> {
    await this.store.putAway(ids, hashes, away);
    await this.#readAgain();
  }

  #keepPictures(): Promise<void> {
    return keepPictures(this.#now.packs.map((each) => each.pack)).catch(() => undefined);
  }

  #sendSoon(): void {
    clearTimeout(this.#later);
    this.#later = setTimeout(() => void this.send(), sendAfter);
  }

  /** Sends what waits; one sending at a time. */
  send(): Promise<void> {
    this.#sending ??= this.#send().finally(() => {
      this.#sending = null;
    });
    return this.#sending;
  }

  async #send(): Promise<void> {
    if ((await this.store.unsent(1)).length === 0 && (await this.store.unsentPhotos()).length === 0) return;
    this.#change({ sending: true });
    try {
      const sent = await sendOutbox(this.store, postRecords, Date.now);
      if (sent.stopped === null) await this.#sendPhotos();
      await this.#readAgain();
      this.#change({ sent });
    } finally {
      this.#change({ sending: false });
    }
  }

  async #sendPhotos(): Promise<void> {
    for (const { hash, bytes } of await this.store.unsentPhotos()) {
      if (bytes === null || this.#photosForGood.has(hash)) continue;
      const refused = await postPhoto(hash, bytes).catch(() => undefined);
      if (refused === undefined) return;
      if (refused?.again === false) this.#photosForGood.add(hash);
      await this.store.photoAnswered(hash, refused === null ? null : refused.words);
    }
  }

  /** Sends whenever the phone may have a signal again. Ends with what it gives back. */
  watch(): () => void {
    const wake = () => {
      if (document.visibilityState === "visible") void this.#readAgain().then(() => this.send());
    };
    const online = () => void this.send();
    window.addEventListener("online", online);
    document.addEventListener("visibilitychange", wake);
    const each = setInterval(() => navigator.onLine && this.#now.rows.some(isUnsent) && void this.send(), 60_000);
    return () => {
      window.removeEventListener("online", online);
      document.removeEventListener("visibilitychange", wake);
      clearInterval(each);
    };
  }

  /** Today by the phone's calendar. */
  today(): string {
    return dayOf(momentNow());
  }
}

function isUnsent({ state }: KeptRecord): boolean {
  return state === "unsent";
}
