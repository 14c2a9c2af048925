import { cache } from "react";
import { readGrowOut } from "@/lib/registry/grow-outs/read-grow-out";
import { current } from "../../_session/current";

/** The grow-out of the page, read once a request. */
export const growOutOfPage = cache(async (id: string) => readGrowOut((await current()).db, id));
