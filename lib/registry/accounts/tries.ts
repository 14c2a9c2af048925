import { uuidv7 } from "uuidv7";
import { type Database, lockWrites } from "@/lib/db";
import { accepted, type Outcome, type Refusal, refused } from "@/lib/science/outcome";
import { veiled } from "./secret";
import type { Site } from "./site";

const minute = 60_000;
const longestWait = 15 * minute;
const forgottenAfter = 60 * minute;

// Knocks come one after the other; a slow machine must not turn the last of many into a fault.
const patience = { maxWait: 60_000, timeout: 60_000 };

/** What wrong tries are counted by, and how many are free. */
interface Counted {
  readonly key: string;
  readonly free: number;
}

/** Tries for one name from one device, for one name from anywhere, and from one device for any name. */
function countedFor(db: Database, site: Site, name: string | null): readonly Counted[] {
  const key = (kind: string, ...parts: string[]) => `${kind}:${veiled(db.location.folder, parts.join("\n"))}`;
  const device = { key: key("device", site.from), free: 30 };
  if (name === null) return [device];
  return [{ key: key("pair", name, site.from), free: 5 }, { key: key("name", name), free: 30 }, device];
}

/**
 * Counts one try before it is looked at, so that many at once count as many. After the free ones it is refused, with the time to wait:
 * a minute, then twice as long each time, at most a quarter of an hour; an hour without a try forgets all. A name that nobody has is counted like any other.
 */
export async function tryOnce(
  db: Database,
  site: Site,
  name: string | null,
  now: Date = new Date(),
): Promise<Outcome<void>> {
  const counted = countedFor(db, site, name);
  const wait = await db.write.$transaction(async (tx) => {
    await lockWrites(tx, db.engine);
    const at = now.getTime();
    await tx.rateLimit.deleteMany({ where: { lastRequest: { lt: BigInt(at - forgottenAfter) } } });
    const rows = await tx.rateLimit.findMany({ where: { key: { in: counted.map((each) => each.key) } } });
    const countOf = new Map(rows.map((row) => [row.key, row]));
    const waits = counted.map(({ key, free }) => {
      const row = countOf.get(key);
      if (!row || row.count < free) return 0;
      const pause = Math.min(minute * 2 ** Math.min(row.count - free, 10), longestWait);
      return Number(row.lastRequest) + pause - at;
    });
    const longest = Math.max(...waits);
    if (longest > 0) return longest;
    for (const { key } of counted) {
      await tx.rateLimit.upsert({
        where: { key },
        create: { id: uuidv7(), key, count: 1, lastRequest: BigInt(at) },
        update: { count: { increment: 1 }, lastRequest: BigInt(at) },
      });
    }
    return 0;
  }, patience);
  return wait > 0 ? refused(tooMany(wait)) : accepted(undefined);
}

/** The name was right: what was counted for it is forgotten, and this try of the device. */
export async function forgetTries(db: Database, site: Site, name: string): Promise<void> {
  const [pair, any, device] = countedFor(db, site, name);
  await db.write.rateLimit.deleteMany({ where: { key: { in: [pair?.key ?? "", any?.key ?? ""] } } });
  await db.write.rateLimit.updateMany({
    where: { key: device?.key, count: { gt: 0 } },
    data: { count: { decrement: 1 } },
  });
}

function tooMany(wait: number): Refusal {
  const minutes = Math.ceil(wait / minute);
  const needed = `try again in ${minutes} ${minutes === 1 ? "minute" : "minutes"}`;
  return {
    code: "too-many-tries",
    path: [],
    given: null,
    needed,
    sentence: `There were too many wrong tries; ${needed}`,
  };
}
