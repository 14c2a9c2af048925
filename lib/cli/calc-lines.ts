import type { Readable } from "node:stream";

/**
 * The lines of a stream of UTF-8 text, as they come. Only a line feed ends a line: the other line ends of Unicode may stand
 * inside JSON text. A byte-order mark at the start and what follows the last line feed, if nothing, are no lines.
 */
export async function* linesOf(input: Readable): AsyncGenerator<string> {
  const decoder = new TextDecoder("utf-8");
  let pieces: string[] = [];
  for await (const chunk of input) {
    const text = typeof chunk === "string" ? chunk : decoder.decode(chunk as Uint8Array, { stream: true });
    let start = 0;
    for (let end = text.indexOf("\n"); end >= 0; end = text.indexOf("\n", start)) {
      pieces.push(text.slice(start, end));
      yield pieces.join("");
      pieces = [];
      start = end + 1;
    }
    if (start < text.length) pieces.push(text.slice(start));
  }
  pieces.push(decoder.decode());
  const last = pieces.join("");
  if (last !== "") yield last;
}
