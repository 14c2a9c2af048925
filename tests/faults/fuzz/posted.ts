import { Readable } from "node:stream";
import type { Drawn } from "./drawn";
import { oddWord } from "./odd-words";

export interface Posted {
  readonly headers: Headers;
  readonly body: Readable;
}

const line = "\r\n";

/** Files as a browser posts them, or nearly: names, borders and lengths may be wrong, and the line may break. */
export function postedFiles(files: ReadonlyMap<string, Uint8Array>, drawn: Drawn): Posted {
  const border = "----kinrow-border";
  const dice = drawn.whole(20);
  const parts: Uint8Array[] = [];
  const put = (text: string) => parts.push(new TextEncoder().encode(text));
  for (const [name, bytes] of files) {
    const filename = dice === 0 && drawn.chance(0.4) ? oddName(drawn) : name;
    const escaped = filename.replace(/["\r\n]/g, (sign) => encodeURIComponent(sign));
    put(`--${border}${line}Content-Disposition: form-data; name="files"; filename="${escaped}"${line}`);
    put(`Content-Type: text/csv${line}${line}`);
    parts.push(bytes);
    put(line);
    if (dice === 1)
      put(
        `--${border}${line}Content-Disposition: form-data; name="files"; filename="${escaped}"${line}${line}again${line}`,
      );
  }
  if (dice === 2)
    put(
      `--${border}${line}Content-Disposition: form-data; name="${"n".repeat(3000)}"${line}${line}${oddWord(drawn)}${line}`,
    );
  if (dice !== 3) put(`--${border}--${line}`);
  let body = Uint8Array.from(Buffer.concat(parts));
  if (dice === 4) body = body.subarray(0, drawn.whole(body.length));
  if (dice === 5) body = Uint8Array.from([...drawn.bytes(100), ...body]);
  if (dice === 6) for (let left = 5; left > 0; left -= 1) body[drawn.whole(body.length)] = drawn.whole(256);
  const type =
    dice === 7
      ? drawn.one([
          "multipart/form-data",
          `multipart/form-data; boundary=${"b".repeat(200)}`,
          "text/plain",
          "multipart/form-data; boundary=",
          "",
        ])
      : `multipart/form-data; boundary=${border}`;
  return { headers: new Headers(type === "" ? {} : { "content-type": type }), body: streamed(body, dice === 8, drawn) };
}

function oddName(drawn: Drawn): string {
  const names = [
    "..",
    ".",
    "../../x.csv",
    "a/../lots.csv",
    "n".repeat(300),
    "\0",
    "lots.csv\0.jpg",
    "",
    " ",
    "/",
    "\\",
    "..\\x",
    "\u202ecsv.stol",
    "lots.csv/",
  ];
  return drawn.chance(0.8) ? drawn.one(names) : oddWord(drawn);
}

function streamed(body: Uint8Array, breaks: boolean, drawn: Drawn): Readable {
  const pieces: Uint8Array[] = [];
  for (let at = 0; at < body.length; ) {
    const length = 1 + drawn.whole(65_536);
    pieces.push(body.subarray(at, at + length));
    at += length;
  }
  if (!breaks) return Readable.from(pieces);
  return Readable.from(
    (function* () {
      yield* pieces.slice(0, 1);
      throw new Error("the line broke");
    })(),
  );
}
