import { expect, test } from "vitest";
import { inTurn } from "@/lib/db/in-turn";
import type { Connector } from "@/lib/db/narrowed";

/** A connection that notes when a statement begins and ends, and refuses one that comes while another runs. */
function noting(heard: string[]): Connector {
  let runs = false;
  const run = async ({ sql }: { sql: string }) => {
    if (runs) throw new Error(`${sql} came while another ran`);
    runs = true;
    heard.push(`${sql} begins`);
    await new Promise((resolve) => setTimeout(resolve, 1));
    heard.push(`${sql} ends`);
    runs = false;
    if (sql === "wrong") throw new Error("wrong statement");
    return { columnNames: [], columnTypes: [], rows: [] };
  };
  const running = { queryRaw: run, executeRaw: run, commit: () => run({ sql: "commit" }) };
  const connection = { queryRaw: run, startTransaction: async () => running };
  return { provider: "postgres", adapterName: "noting", connect: async () => connection } as unknown as Connector;
}

const asked = (sql: string) => ({ sql, args: [], argTypes: [] });

test("statements of a transaction that are asked for at once run one after the other, also after one that failed", async () => {
  const heard: string[] = [];
  const connection = await inTurn(noting(heard)).connect();
  const running = await connection.startTransaction();
  const all = [asked("first"), asked("wrong"), asked("third")].map((each) => running.queryRaw(each));
  const ends = await Promise.allSettled([...all, running.commit()]);
  expect(ends.map(({ status }) => status)).toEqual(["fulfilled", "rejected", "fulfilled", "fulfilled"]);
  const names = ["first", "wrong", "third", "commit"];
  expect(heard).toEqual(names.flatMap((name) => [`${name} begins`, `${name} ends`]));
});
