import { cache } from "react";
import { readField } from "@/lib/registry/grow-outs/read-field";
import { readGrowOut } from "@/lib/registry/grow-outs/read-grow-out";
import { current } from "../../_session/current";

/** The grow-out of the page, read once a request. */
export const growOutOfPage = cache(async (id: string) => readGrowOut((await current()).db, id));

/** Its counts, passes and flowering, read once a request; null where there is no such grow-out. */
export const fieldOfPage = cache(async (id: string) => {
  const read = await growOutOfPage(id);
  return read ? readField((await current()).db, read) : null;
});
