import { cache } from "react";
import { readVariety } from "@/lib/registry/varieties/read-variety";
import { current } from "../../_session/current";

/** The variety of the page, read once a request. */
export const varietyOfPage = cache(async (id: string) => {
  const { db, settings, today } = await current();
  return readVariety(db, id, settings, today);
});
