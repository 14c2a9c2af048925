import { EventEmitter } from "node:events";
import { afterEach, beforeEach, describe, expect, it, vi } from "vitest";
import { POST } from "@/app/calculations/route";
import { followCalculation, type Heard } from "@/components/long-calculation";
import { ownerHere } from "@/lib/access/actor";
import { calculationNamed } from "@/lib/schemas/calculations";
import { answerTo } from "@/lib/worker/answer";
import { CalculationQueue } from "@/lib/worker/calculation-queue";
import type { Asked } from "@/lib/worker/messages";

vi.mock("@/app/_session/current", () => ({ current: async () => ({ actor: ownerHere() }) }));

let queue: CalculationQueue;
vi.mock("@/lib/worker/long-calculations", () => ({ longCalculations: () => queue }));

/** Counts two steps of every calculation and answers it; one with the number of runs that stands for "endless" it never answers. */
class TestThread extends EventEmitter {
  postMessage({ job, name, input }: Asked) {
    setImmediate(() => {
      for (const done of [1, 2]) this.emit("message", { job, done, of: 3 });
      if ((input as { replicates?: number }).replicates === endless) return;
      this.emit("message", { job, answer: answerTo(name, input) });
    });
  }
  terminate() {}
  ref() {}
  unref() {}
}

const endless = 100_000;

beforeEach(() => {
  queue = new CalculationQueue({ startThread: () => new TestThread() });
});

/** The page's end and the server's end, with nothing between them. */
function joined() {
  const asked = vi.fn((path: string, init: RequestInit) => POST(new Request(`http://here${path}`, init)));
  vi.stubGlobal("fetch", asked);
  return asked;
}

afterEach(() => {
  vi.unstubAllGlobals();
  queue.close();
});

const lots = [
  { id: "old", kind: "founder" },
  { id: "new", kind: "grow-out", parents: [{ id: "old", share: 1 }], pollenParents: 400, seedParents: 120 },
];

describe("a calculation that a page follows", () => {
  it("counts its runs and ends with the answer", async () => {
    joined();
    const heard: Heard[] = [];
    const input = { lots, replicates: 20, seed: 5 };
    const answer = await followCalculation("gene-drop", input, (progress) => heard.push(progress));
    expect(answer).toEqual(calculationNamed("gene-drop")?.run(input));
    expect(heard).toEqual([
      { state: "working", done: null, of: null },
      { state: "working", done: 1, of: 3 },
      { state: "working", done: 2, of: 3 },
    ]);
  });

  it("stops it when it is aborted, and the next has its turn", async () => {
    joined();
    const abort = new AbortController();
    const asked = { lots, replicates: endless, seed: 5 };
    const first = followCalculation("gene-drop", asked, () => abort.abort(), abort.signal);
    await expect(first).rejects.toThrow();
    const next = await followCalculation("lineage", { lots }, () => undefined);
    expect(next.ok).toBe(true);
  });

  it("hears what the calculation refuses", async () => {
    joined();
    const answer = await followCalculation("lineage", { lots: [{ id: "a", kind: "seed" }] }, () => undefined);
    expect(!answer.ok && answer.refusals[0]?.path).toEqual(["lots", 0, "kind"]);
  });

  it("is refused where the server goes away", async () => {
    vi.stubGlobal("fetch", async () => new Response('{"state":"working","done":null,"of":null}\n'));
    const answer = await followCalculation("lineage", { lots }, () => undefined);
    expect(!answer.ok && answer.refusals[0]?.code).toBe("no-answer");
  });

  it.each([
    ["what is no JSON", "{", "application/json", "no-json"],
    ["another kind of body", "{}", "text/plain", "no-json"],
    ["a missing name", '{"input":{}}', "application/json", "no-name"],
    ["what is too large", `"${"x".repeat(9_000_000)}"`, "application/json", "too-large"],
  ])("refuses %s", async (_what, body, kind, code) => {
    const request = new Request("http://here/calculations", {
      method: "POST",
      body,
      headers: { "content-type": kind },
    });
    const response = await POST(request);
    expect(response.status).toBe(400);
    expect(JSON.parse(await response.text()).answer.refusals[0].code).toBe(code);
  });
});
