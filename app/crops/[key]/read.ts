import { cache } from "react";
import { readCrop } from "@/lib/registry/crops/read-crop";
import { current } from "../../_session/current";

/** The crop of the page by its key, read once a request. */
export const cropOfPage = cache(async (key: string) => readCrop((await current()).db, decodeURIComponent(key)));
