import { type Database, readTogether, type Selection, sql } from "@/lib/db";
import { shortCodeOfId } from "@/lib/science/codes/short-code-of-id";

interface Named {
  readonly id: string;
  readonly name: string;
}

/** The grow-outs that a short code may mean: none, one, or by a rare chance several. The code is worked out of the id and stored nowhere. */
export async function growOutsByShortCode(db: Database, code: string): Promise<Named[]> {
  const growOuts: Selection<Named> = {
    columns: { id: "text", name: "text" },
    rows: sql`SELECT g."id", g."name" FROM "GrowOut" g ORDER BY g."id"`,
  };
  const read = await readTogether(db, { growOuts });
  return read.growOuts.filter(({ id }) => shortCodeOfId(id) === code.toUpperCase());
}
