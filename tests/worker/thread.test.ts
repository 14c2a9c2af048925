import { afterAll, describe, expect, it } from "vitest";
import { calculationNamed } from "@/lib/schemas/calculations";
import { CalculationQueue, type Progress } from "@/lib/worker/calculation-queue";
import { startCalculationThread } from "@/lib/worker/long-calculations";

const queue = new CalculationQueue({ startThread: startCalculationThread });
afterAll(() => queue.close());

const lots = [
  { id: "from my aunt", kind: "founder" },
  { id: "1994", kind: "grow-out", parents: [{ id: "from my aunt", share: 1 }], pollenParents: 400, seedParents: 120 },
];

describe("a calculation in a thread of its own", () => {
  it("answers as it does here", async () => {
    for (const name of ["lineage", "viability-forecast", "blend-advice", "choose-plants"]) {
      const { example, run } = calculationNamed(name) ?? { example: null, run: () => null };
      expect(await queue.ask(name, example).answer, name).toEqual(run(example));
    }
  });

  it("refuses as it does here, and an unknown name", async () => {
    const faulty = { lots, replicates: 1, seed: 1 };
    expect(await queue.ask("gene-drop", faulty).answer).toEqual(calculationNamed("gene-drop")?.run(faulty));
    const unknown = await queue.ask("gene-dorp", {}).answer;
    expect(!unknown.ok && unknown.refusals[0]).toMatchObject({ code: "unknown-calculation", given: "gene-dorp" });
  });

  it("counts the runs of gene-drop, and is stopped among them", async () => {
    const heard: Progress[] = [];
    let counted: () => void = () => undefined;
    const counting = new Promise<void>((resolve) => {
      counted = resolve;
    });
    const long = queue.ask("gene-drop", { lots, replicates: 100_000, seed: 1 }, (progress) => {
      heard.push(progress);
      if (progress.state === "working" && progress.done !== null) counted();
    });
    await counting;
    long.stop();
    const answer = await long.answer;
    expect(!answer.ok && answer.refusals[0]?.code).toBe("stopped");
    expect(heard.at(-1)).toMatchObject({ state: "working", of: 100_000 });
    const after = await queue.ask("lineage", { lots }).answer;
    expect(after.ok).toBe(true);
  });
});
