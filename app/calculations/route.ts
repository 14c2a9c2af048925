import { current } from "@/app/_session/current";
import { type Outcome, refusal, refused } from "@/lib/science/outcome";
import { longCalculations } from "@/lib/worker/long-calculations";

/** More than any input that a person or a page makes. */
const mostBytes = 8 * 1024 * 1024;

/**
 * Takes {name, input} and works the calculation out in the thread beside the server. Answers with a line of JSON each time something is to be
 * told ({state: "waiting", before}, {state: "working", done, of}), the last with {answer}. Who stops listening stops the calculation.
 */
export async function POST(request: Request): Promise<Response> {
  await current("read");
  const asked = await readAsked(request);
  if (!asked.ok) return onlyAnswer(asked, 400);
  const { name, input } = asked.value;
  const encoder = new TextEncoder();
  let stop: () => void = () => undefined;
  const body = new ReadableStream<Uint8Array>({
    start(controller) {
      let open = true;
      const tell = (line: object) => {
        if (open) controller.enqueue(encoder.encode(`${JSON.stringify(line)}\n`));
      };
      const long = longCalculations().ask(name, input, tell);
      stop = () => {
        open = false;
        long.stop();
      };
      request.signal.addEventListener("abort", stop);
      long.answer.then((answer) => {
        tell({ answer });
        if (open) controller.close();
        open = false;
      });
    },
    cancel: () => stop(),
  });
  return new Response(body, { headers: linesOfJson });
}

// no-transform: what is compressed on the way would be held back until there is more of it.
const linesOfJson = { "content-type": "application/x-ndjson", "cache-control": "no-store, no-transform" };

function onlyAnswer(answer: Outcome<object>, status: number): Response {
  return new Response(`${JSON.stringify({ answer })}\n`, { status, headers: linesOfJson });
}

async function readAsked(request: Request): Promise<Outcome<{ name: string; input: unknown }>> {
  const needed = 'send {"name": ..., "input": ...} as JSON';
  const kind = request.headers.get("content-type") ?? "";
  if (!kind.startsWith("application/json")) return refused(refusal("no-json", [], kind, "is no JSON", needed));
  const size = Number(request.headers.get("content-length"));
  const text = size > mostBytes ? null : await request.text();
  if (text === null || text.length > mostBytes)
    return refused(refusal("too-large", [], `${size} bytes`, "are too many", "send an input of 8 MB at most"));
  try {
    const { name, input } = JSON.parse(text);
    if (typeof name === "string") return { ok: true, value: { name, input } };
    return refused(refusal("no-name", ["name"], name, "is no name of a calculation", needed));
  } catch {
    return refused(refusal("no-json", [], text.slice(0, 40), "cannot be read", needed));
  }
}
