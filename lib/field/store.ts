import { Dexie, type Table } from "dexie";
import { uuidv7 } from "uuidv7";
import type { FieldAnswer } from "@/lib/schemas/field/field-delivery";
import type { FieldPack } from "@/lib/schemas/field/field-pack";
import { accepted, type Outcome, refused } from "@/lib/science/outcome";
import type {
  Device,
  KeptPack,
  KeptPhoto,
  KeptRecord,
  KeptSetting,
  NewRecord,
  SettingName,
  Settings,
} from "./kept-rows";
import { isLostConnection, storageFaults, storageRefusal } from "./storage-refusal";

/** So often a record is tried where another tab takes its place. */
const mostTries = 5;

/** Another tab has given a place since this one looked. */
class StalePlace extends Error {
  override readonly name = "StalePlace";
}

/** The name of the store in the phone's browser. */
export const storeName = "kinrow-field";

/**
 * Versions of the store are only ever added to: a page of the release before goes on with the tables it knows, and a newer one finds all that an
 * older one stored. Never change a line that has been released.
 */
const versions: readonly Readonly<Record<string, string>>[] = [
  { packs: "growOutId", records: "id, &sequence, state, growOutId", photos: "hash, growOutId, sent", settings: "name" },
];

class Tables extends Dexie {
  readonly packs!: Table<KeptPack, string>;
  readonly records!: Table<KeptRecord, string>;
  readonly photos!: Table<KeptPhoto, string>;
  readonly settings!: Table<KeptSetting, SettingName>;

  constructor(name: string) {
    // the disk has a record before the screen says so: a phone may die at any moment
    super(name, { chromeTransactionDurability: "strict" });
    versions.forEach((stores, at) => {
      this.version(at + 1).stores(stores);
    });
  }
}

/** What the page is told when another tab stands in the way, or this one has to let go. */
export interface StoreListener {
  /** an older page of the field, still open elsewhere, holds the store back */
  blocked(): void;
  /** a newer page has taken the store over: reload this one */
  outdated(): void;
}

/**
 * The phone's own store: packs, records with what the registry said of them, pictures, settings. A record is stored, with its place among the
 * records of the phone, in one transaction; nothing that was recorded is ever rewritten or removed before the registry has it.
 */
export class FieldStore {
  readonly #tables: Tables;
  #known: Device | null = null;
  /** one record after the other: each place is given after the one before */
  #turn: Promise<unknown> = Promise.resolve();
  /** the last place given, as far as this page knows */
  #last: number | null = null;

  constructor(name: string = storeName, listener?: StoreListener) {
    this.#tables = new Tables(name);
    this.#tables.on("blocked", () => listener?.blocked());
    this.#tables.on("versionchange", () => {
      this.#tables.close({ disableAutoOpen: false });
      listener?.outdated();
      return false;
    });
  }

  /**
   * Stores a record and gives it its place. Refused where the phone's memory is full or gone, with what to do; the record is then not stored.
   * A record that is stored already (its id) is given back as it is, so that trying again makes no second one.
   */
  async append(record: NewRecord): Promise<Outcome<KeptRecord>> {
    const turn = this.#turn.then(() => this.#again(() => this.#append(record)));
    this.#turn = turn.catch(() => undefined);
    try {
      return accepted(await turn);
    } catch (fault) {
      return refused(storageRefusal(fault));
    }
  }

  async #append(record: NewRecord): Promise<KeptRecord> {
    const device = this.#known ?? (await this.device());
    for (let tries = 1; ; tries += 1) {
      const before = this.#last ?? (await this.#read("sequence", 0));
      try {
        const row = await this.#appendAfter(before, record, device);
        this.#last = row.sequence;
        return row;
      } catch (fault) {
        // another tab was quicker, or the record is there already
        this.#last = null;
        const stored = isThere(fault) ? await this.#tables.records.get(record.id) : undefined;
        if (stored) return stored;
        if (tries === mostTries || !(isThere(fault) || isStale(fault))) throw fault;
      }
    }
  }

  /** One transaction whose steps do not wait for each other: a tap is answered only after them. All or none of it is done. */
  #appendAfter(before: number, record: NewRecord, device: Device): Promise<KeptRecord> {
    const { records, settings } = this.#tables;
    const sequence = before + 1;
    const row: KeptRecord = {
      ...{ id: record.id, sequence, growOutId: record.growOutId },
      record: { ...record, deviceId: device.id, sequence },
      ...{ state: "unsent", sentence: null, answeredAt: null },
    };
    return this.#tables.transaction("rw", records, settings, async () => {
      const [last] = await Promise.all([
        this.#read("sequence", 0),
        settings.put({ name: "sequence", value: sequence }),
        records.add(row),
      ]);
      if (last !== before) throw new StalePlace();
      return row;
    });
  }

  /** This phone; it gets its id the first time it is asked for. */
  device(): Promise<Device> {
    return this.#again(() => this.#tables.transaction("rw", this.#tables.settings, () => this.#device()));
  }

  async #device(): Promise<Device> {
    const found = (await this.#tables.settings.get("device"))?.value as Device | undefined;
    const id = uuidv7();
    const device = found ?? { id, name: `Phone ${id.slice(-4)}` };
    if (!found) await this.#tables.settings.put({ name: "device", value: device });
    this.#known = device;
    return device;
  }

  /** What the registry has not answered yet, in the order in which it was recorded; at most `most`. */
  unsent(most = Number.POSITIVE_INFINITY): Promise<KeptRecord[]> {
    return this.#again(async () => {
      const rows = await this.#tables.records.where("state").equals("unsent").sortBy("sequence");
      return rows.slice(0, most);
    });
  }

  /** Puts beside each record what the registry said of it. Ids that this phone does not have are passed over; how many were marked. */
  answered(answer: FieldAnswer): Promise<number> {
    const { records } = this.#tables;
    return this.#again(() =>
      this.#tables.transaction("rw", records, async () => {
        const found = await records.bulkGet(answer.answers.map((each) => each.id));
        const marked = answer.answers.flatMap(({ fate, sentence }, at): KeptRecord[] => {
          const row = found[at];
          return row ? [{ ...row, state: fate, sentence, answeredAt: answer.now }] : [];
        });
        await records.bulkPut(marked);
        return marked.length;
      }),
    );
  }

  /** Notes which records and pictures stand in a file now, and since when by the phone's clock. */
  async savedToFile(ids: readonly string[], hashes: readonly string[], savedAt: string): Promise<void> {
    await this.#each(ids, hashes, () => ({ savedAt }));
  }

  /**
   * Puts out of the way what the registry would not have and what stands in a file; it stays on the phone. What is in no file is passed over. `away`
   * false takes it back.
   */
  async putAway(ids: readonly string[], hashes: readonly string[], away: boolean): Promise<void> {
    await this.#each(ids, hashes, (row) => (away && !(row.savedAt && isTurnedDown(row)) ? null : { putAway: away }));
  }

  /** What the registry would not have is to be sent once more. */
  async sendAgain(ids: readonly string[]): Promise<void> {
    await this.#each(ids, [], (row) => (isTurnedDown(row) ? { state: "unsent", putAway: false } : null));
  }

  /** Writes beside each of these rows what `change` says; null: nothing. */
  #each(
    ids: readonly string[],
    hashes: readonly string[],
    change: (row: KeptRecord | KeptPhoto) => Partial<Beside> | null,
  ): Promise<void> {
    const { records, photos } = this.#tables;
    return this.#again(() =>
      this.#tables.transaction("rw", records, photos, async () => {
        for (const row of await records.bulkGet([...ids])) {
          const next = row && change(row);
          if (row && next) await records.update(row.id, next);
        }
        for (const photo of await photos.bulkGet([...hashes])) {
          const next = photo && change(photo);
          if (photo && next) await photos.update(photo.hash, next);
        }
      }),
    );
  }

  /** All records of a grow-out, or of the phone, in their order. */
  records(growOutId?: string): Promise<KeptRecord[]> {
    const { records } = this.#tables;
    return this.#again(() =>
      growOutId === undefined
        ? records.orderBy("sequence").toArray()
        : records.where("growOutId").equals(growOutId).sortBy("sequence"),
    );
  }

  /** Stores a pack and reads it back: what it gives stands on the phone. */
  async keepPack(pack: FieldPack, keptAt: string): Promise<Outcome<KeptPack>> {
    const { packs } = this.#tables;
    try {
      await this.#again(() => packs.put({ growOutId: pack.growOut.id, pack, keptAt }));
      const back = await this.#again(() => packs.get(pack.growOut.id));
      return back?.pack.madeAt === pack.madeAt ? accepted(back) : refused(storageRefusal({ name: "read back empty" }));
    } catch (fault) {
      return refused(storageRefusal(fault));
    }
  }

  packs(): Promise<KeptPack[]> {
    return this.#again(() => this.#tables.packs.toArray());
  }

  pack(growOutId: string): Promise<KeptPack | undefined> {
    return this.#again(() => this.#tables.packs.get(growOutId));
  }

  /**
   * Takes a grow-out off the phone, unless something of it is not in the registry yet: then nothing goes, and false. What was put away stays: it is
   * nowhere else but in its file.
   */
  leaveBehind(growOutId: string): Promise<boolean> {
    const { packs, records, photos } = this.#tables;
    return this.#again(() =>
      this.#tables.transaction("rw", packs, records, photos, async () => {
        const rows = await records.where("growOutId").equals(growOutId).toArray();
        const pictures = await photos.where("growOutId").equals(growOutId).toArray();
        const here = rows.filter((row) => !row.putAway);
        const shown = pictures.filter((picture) => !picture.putAway);
        if (here.some((row) => row.state === "unsent" || row.state === "refused")) return false;
        if (shown.some((picture) => picture.sent === 0)) return false;
        await records.bulkDelete(here.map((row) => row.id));
        await photos.bulkDelete(shown.map((picture) => picture.hash));
        await packs.delete(growOutId);
        return true;
      }),
    );
  }

  /** Stores a picture. The same picture twice is one. */
  async keepPhoto(photo: KeptPhoto): Promise<Outcome<string>> {
    const { photos } = this.#tables;
    try {
      await this.#again(() =>
        this.#tables.transaction("rw", photos, async () => {
          if (!(await photos.get(photo.hash))) await photos.add(photo);
        }),
      );
      return accepted(photo.hash);
    } catch (fault) {
      return refused(storageRefusal(fault));
    }
  }

  photo(hash: string): Promise<KeptPhoto | undefined> {
    return this.#again(() => this.#tables.photos.get(hash));
  }

  unsentPhotos(): Promise<KeptPhoto[]> {
    return this.#again(() =>
      this.#tables.photos
        .where("sent")
        .equals(0)
        .filter((photo) => !photo.putAway)
        .toArray(),
    );
  }

  /** Pictures that were put away. */
  photosAway(): Promise<KeptPhoto[]> {
    return this.#again(() => this.#tables.photos.filter((photo) => photo.putAway === true).toArray());
  }

  /** The registry has the picture: its bytes leave the phone. Or it would not have it, with why: they stay. */
  async photoAnswered(hash: string, refusal: string | null): Promise<void> {
    const change = refusal === null ? { sent: 1 as const, bytes: null, sentence: null } : { sentence: refusal };
    await this.#again(() => this.#tables.photos.update(hash, change));
  }

  setting<N extends SettingName>(name: N): Promise<Settings[N] | undefined> {
    return this.#again(async () => (await this.#tables.settings.get(name))?.value as Settings[N] | undefined);
  }

  async set<N extends SettingName>(name: N, value: Settings[N]): Promise<void> {
    await this.#again(() => this.#tables.settings.put({ name, value }));
  }

  close(): void {
    this.#tables.close();
  }

  async #read(name: "sequence", otherwise: number): Promise<number> {
    const found = await this.#tables.settings.get(name);
    return typeof found?.value === "number" ? found.value : otherwise;
  }

  /** After sleep some phones drop the connection: opened once more, and tried once more. */
  async #again<T>(work: () => PromiseLike<T>): Promise<T> {
    try {
      return await work();
    } catch (fault) {
      if (!isLostConnection(fault)) throw fault;
      this.#tables.close({ disableAutoOpen: false });
      await this.#tables.open();
      return work();
    }
  }
}

/** What stands beside a row, and is no part of what was recorded. */
type Beside = Pick<KeptRecord, "state" | "savedAt" | "putAway">;

/** True of what the registry would not have: a record that is none of it, a picture with why. */
function isTurnedDown(row: KeptRecord | KeptPhoto): boolean {
  return "record" in row ? row.state === "refused" : row.sent === 0 && row.sentence !== null;
}

/** True where a record of the same id is stored already. */
function isThere(fault: unknown): boolean {
  return storageFaults(fault).some(({ name }) => name === "ConstraintError");
}

function isStale(fault: unknown): boolean {
  return storageFaults(fault).some(({ name }) => name === "StalePlace");
}
