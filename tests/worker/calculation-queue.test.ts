import { EventEmitter } from "node:events";
import { afterEach, describe, expect, it, vi } from "vitest";
import { accepted } from "@/lib/science/outcome";
import { CalculationQueue, type Progress } from "@/lib/worker/calculation-queue";
import type { Asked, Told } from "@/lib/worker/messages";

/** A thread that does what the test says. */
class TestThread extends EventEmitter {
  readonly asked: Asked[] = [];
  ended = false;
  held = true;
  postMessage(asked: Asked) {
    this.asked.push(asked);
  }
  tell(told: Told) {
    this.emit("message", told);
  }
  answer(value: object) {
    this.tell({ job: this.asked.at(-1)?.job ?? 0, answer: accepted(value) });
  }
  terminate() {
    this.ended = true;
    this.emit("exit", 1);
  }
  ref() {
    this.held = true;
  }
  unref() {
    this.held = false;
  }
}

function queueOfTest(options: { mostWaiting?: number; idleMilliseconds?: number } = {}) {
  const threads: TestThread[] = [];
  const startThread = () => {
    const thread = new TestThread();
    threads.push(thread);
    return thread;
  };
  return { threads, queue: new CalculationQueue({ startThread, ...options }) };
}

afterEach(() => {
  vi.useRealTimers();
});

describe("the queue of long calculations", () => {
  it("starts no thread before it is asked, and works out one after the other in the order of asking", async () => {
    const { queue, threads } = queueOfTest();
    expect(threads).toHaveLength(0);
    const first = queue.ask("gene-drop", { one: 1 });
    const second = queue.ask("lineage", { two: 2 });
    expect(threads[0]?.asked.map(({ name }) => name)).toEqual(["gene-drop"]);
    expect(second.progress()).toEqual({ state: "waiting", before: 1 });
    threads[0]?.answer({ a: 1 });
    expect(await first.answer).toEqual(accepted({ a: 1 }));
    expect(threads[0]?.asked.map(({ name }) => name)).toEqual(["gene-drop", "lineage"]);
    expect(second.progress()).toEqual({ state: "working", done: null, of: null });
    threads[0]?.answer({ b: 2 });
    expect(await second.answer).toEqual(accepted({ b: 2 }));
    expect(threads).toHaveLength(1);
  });

  it("tells how far each is", () => {
    const { queue, threads } = queueOfTest();
    const heard: Progress[] = [];
    queue.ask("gene-drop", {}, (progress) => heard.push(progress));
    threads[0]?.tell({ job: 1, done: 20, of: 100 });
    // what another job's thread might still say is not taken for this one's
    threads[0]?.tell({ job: 7, done: 99, of: 100 });
    expect(heard).toEqual([
      { state: "working", done: null, of: null },
      { state: "working", done: 20, of: 100 },
    ]);
    const behind: Progress[] = [];
    queue.ask("lineage", {}, (progress) => behind.push(progress));
    expect(behind).toEqual([{ state: "waiting", before: 1 }]);
  });

  it("stops one that works with its thread, and gives the next a new one", async () => {
    const { queue, threads } = queueOfTest();
    const first = queue.ask("gene-drop", {});
    const second = queue.ask("lineage", {});
    first.stop();
    const answer = await first.answer;
    expect(!answer.ok && answer.refusals[0]).toMatchObject({ code: "stopped", given: "gene-drop" });
    expect(threads[0]?.ended).toBe(true);
    expect(threads[1]?.asked.map(({ name }) => name)).toEqual(["lineage"]);
    threads[1]?.answer({ b: 2 });
    expect(await second.answer).toEqual(accepted({ b: 2 }));
  });

  it("takes one that waits out of the queue, and moves up who stands behind", async () => {
    const { queue, threads } = queueOfTest();
    queue.ask("gene-drop", {});
    const second = queue.ask("lineage", {});
    const third = queue.ask("blend-advice", {});
    expect(third.progress()).toEqual({ state: "waiting", before: 2 });
    second.stop();
    const answer = await second.answer;
    expect(!answer.ok && answer.refusals[0]?.code).toBe("stopped");
    expect(third.progress()).toEqual({ state: "waiting", before: 1 });
    expect(threads).toHaveLength(1);
    expect(threads[0]?.ended).toBe(false);
  });

  it.each([
    ["an error", (thread: TestThread) => thread.emit("error", new Error("out of memory")), "out of memory"],
    ["its end", (thread: TestThread) => thread.emit("exit", 9), "its thread ended with 9"],
  ])("makes %s of the thread a refusal, and works on", async (_what, fault, why) => {
    const { queue, threads } = queueOfTest();
    const first = queue.ask("gene-drop", {});
    const second = queue.ask("lineage", {});
    fault(threads[0] as TestThread);
    const answer = await first.answer;
    expect(!answer.ok && answer.refusals[0]).toMatchObject({ code: "calculation-ended", given: "gene-drop" });
    expect(!answer.ok && answer.refusals[0]?.sentence).toContain(why);
    threads[1]?.answer({ b: 2 });
    expect(await second.answer).toEqual(accepted({ b: 2 }));
  });

  it("makes what cannot be sent to a thread a refusal", async () => {
    const { queue, threads } = queueOfTest();
    queue.ask("lineage", {});
    threads[0]?.answer({});
    const thread = threads[0] as TestThread;
    thread.postMessage = () => {
      throw new Error("could not be cloned");
    };
    const answer = await queue.ask("lineage", { run: () => 1 }).answer;
    expect(!answer.ok && answer.refusals[0]?.sentence).toContain("could not be cloned");
  });

  it("refuses more than may wait", async () => {
    const { queue } = queueOfTest({ mostWaiting: 1 });
    queue.ask("gene-drop", {});
    queue.ask("gene-drop", {});
    const answer = await queue.ask("gene-drop", {}).answer;
    expect(!answer.ok && answer.refusals[0]).toMatchObject({ code: "queue-full", given: 1 });
  });

  it("holds no process open with nothing to do, and ends the thread after a while", async () => {
    vi.useFakeTimers();
    const { queue, threads } = queueOfTest({ idleMilliseconds: 1000 });
    queue.ask("lineage", {});
    expect(threads[0]?.held).toBe(true);
    threads[0]?.answer({});
    expect(threads[0]?.held).toBe(false);
    vi.advanceTimersByTime(999);
    expect(threads[0]?.ended).toBe(false);
    vi.advanceTimersByTime(1);
    expect(threads[0]?.ended).toBe(true);
    queue.ask("lineage", {});
    expect(threads).toHaveLength(2);
    vi.advanceTimersByTime(5000);
    expect(threads[1]?.ended).toBe(false);
  });

  it("closes with everything in it stopped", async () => {
    const { queue, threads } = queueOfTest();
    const all = [queue.ask("gene-drop", {}), queue.ask("lineage", {})];
    queue.close();
    for (const { answer } of all) {
      const outcome = await answer;
      expect(!outcome.ok && outcome.refusals[0]?.code).toBe("stopped");
    }
    expect(threads.map(({ ended }) => ended)).toEqual([true]);
  });
});
