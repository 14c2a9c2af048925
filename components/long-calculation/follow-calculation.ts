import { type Outcome, refusal, refused } from "@/lib/science/outcome";

/** How far a calculation in the server's thread is. */
export type Heard =
  | { readonly state: "waiting"; readonly before: number }
  | { readonly state: "working"; readonly done: number | null; readonly of: number | null };

/**
 * Asks the server for a calculation and hears how far it is until its answer is there. Aborting the signal stops the calculation, and throws
 * as an aborted fetch does. Where the server cannot be reached or goes away, the answer is a refusal.
 */
export async function followCalculation(
  name: string,
  input: unknown,
  heard: (progress: Heard) => void,
  signal?: AbortSignal,
): Promise<Outcome<object>> {
  try {
    const response = await fetch("/calculations", {
      method: "POST",
      headers: { "content-type": "application/json" },
      body: JSON.stringify({ name, input }),
      signal,
    });
    for await (const line of linesOf(response, signal)) {
      const told = JSON.parse(line) as Heard | { answer: Outcome<object> };
      if ("answer" in told) return told.answer;
      heard(told);
    }
  } catch {
    // A line that breaks off is as good as none.
  }
  signal?.throwIfAborted();
  return refused(
    refusal("no-answer", [], name, "had no answer from the server", "look whether it runs, and try again"),
  );
}

async function* linesOf(response: Response, signal?: AbortSignal): AsyncGenerator<string> {
  const reader = response.body?.getReader();
  signal?.addEventListener("abort", () => reader?.cancel().catch(() => undefined));
  const decoder = new TextDecoder();
  let rest = "";
  while (reader) {
    const { done, value } = await reader.read();
    rest += done ? decoder.decode() : decoder.decode(value, { stream: true });
    const lines = rest.split("\n");
    rest = lines.pop() ?? "";
    yield* lines.filter(Boolean);
    if (done) break;
  }
  if (rest) yield rest;
}
