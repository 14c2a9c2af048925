import { type Way, ways } from "./trace";

/** What the picture shows, as it stands in the page's address. */
export interface StemAddress {
  readonly lot: string | null;
  readonly way: Way;
  readonly with: string | null;
  readonly zoom: number;
}

/** Steps of the zoom: how many times as wide as the frame all years are. */
export const zooms = [1, 1.5, 2.25, 3.5, 5, 7.5, 11, 16] as const;

type Asked = Readonly<Record<string, string | readonly string[] | undefined>>;

/** Anything that is not understood is as if it were not there. */
export function readStemAddress(asked: Asked): StemAddress {
  const text = (name: string) =>
    typeof asked[name] === "string" && asked[name] !== "" ? (asked[name] as string) : null;
  const zoom = Number(text("zoom"));
  const compared = text("with");
  return {
    lot: text("lot"),
    way: compared === null ? (ways.find((way) => way === text("way") && way !== "shared") ?? "back") : "shared",
    with: compared,
    zoom: zooms.find((each) => each === zoom) ?? 1,
  };
}

/** The address again; what is usual is left out. */
export function stemAddress(path: string, { lot, way, with: compared, zoom }: StemAddress): string {
  const parameters = new URLSearchParams();
  if (lot !== null) parameters.set("lot", lot);
  if (lot !== null && way === "forward") parameters.set("way", way);
  if (lot !== null && way === "shared" && compared !== null) parameters.set("with", compared);
  if (zoom !== 1) parameters.set("zoom", String(zoom));
  const text = parameters.toString();
  return text === "" ? path : `${path}?${text}`;
}
