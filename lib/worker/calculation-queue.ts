import { type Outcome, refusal, refused } from "@/lib/science/outcome";
import { calculationEnded } from "./answer";
import type { Asked, Told } from "./messages";

/** The thread as the queue needs it: a worker of Node, or one of a test. */
export interface Thread {
  postMessage(asked: Asked): void;
  on(event: "message", heard: (told: Told) => void): unknown;
  on(event: "error", heard: (fault: Error) => void): unknown;
  on(event: "exit", heard: (code: number) => void): unknown;
  terminate(): unknown;
  ref(): unknown;
  unref(): unknown;
}

export interface QueueOptions {
  readonly startThread: () => Thread;
  /** a thread that has had nothing to do for so long ends */
  readonly idleMilliseconds?: number;
  /** more are refused */
  readonly mostWaiting?: number;
}

/** How far a calculation is: so many stand before it; then done of so many, where it counts (the runs of gene-drop), else null. */
export type Progress =
  | { readonly state: "waiting"; readonly before: number }
  | { readonly state: "working"; readonly done: number | null; readonly of: number | null };

/** A calculation that was asked for. */
export interface LongCalculation {
  readonly answer: Promise<Outcome<object>>;
  readonly progress: () => Progress;
  /** takes it out of the queue, or ends it in the midst of its work; its answer is then a refusal, code `stopped` */
  readonly stop: () => void;
}

interface Job extends Asked {
  progress: Progress;
  readonly heard?: (progress: Progress) => void;
  readonly settle: (answer: Outcome<object>) => void;
}

/**
 * Calculations worked out one after the other in a thread beside the server, first asked first. The thread starts with the first and ends when
 * nothing was asked for a while. One that is stopped, or that ends the thread, takes nothing with it but itself: the next gets a new thread.
 */
export class CalculationQueue {
  readonly #options: Required<QueueOptions>;
  #waiting: Job[] = [];
  #working: Job | null = null;
  #thread: Thread | null = null;
  #idle: NodeJS.Timeout | undefined;
  #asked = 0;

  constructor(options: QueueOptions) {
    this.#options = { idleMilliseconds: 30_000, mostWaiting: 20, ...options };
  }

  /** Asks for a calculation by its name. Refused (in its answer): a full queue, an unknown name, what the calculation itself refuses. */
  ask(name: string, input: unknown, heard?: (progress: Progress) => void): LongCalculation {
    const { promise, resolve } = deferred<Outcome<object>>();
    this.#asked += 1;
    const job: Job = {
      job: this.#asked,
      name,
      input,
      heard,
      settle: resolve,
      progress: { state: "waiting", before: this.#waiting.length + (this.#working ? 1 : 0) },
    };
    if (this.#waiting.length >= this.#options.mostWaiting) resolve(full(this.#waiting.length));
    else {
      this.#waiting.push(job);
      this.#next();
      if (job !== this.#working) job.heard?.(job.progress);
    }
    return { answer: promise, progress: () => job.progress, stop: () => this.#stop(job) };
  }

  /** Ends the thread; whatever waits or is worked out is stopped. */
  close(): void {
    for (const job of this.#waiting.splice(0)) job.settle(stopped(job));
    if (this.#working) this.#stop(this.#working);
    this.#endThread();
  }

  #next(): void {
    if (this.#working) return;
    const job = this.#waiting.shift();
    if (!job) {
      this.#rest();
      return;
    }
    clearTimeout(this.#idle);
    this.#working = job;
    this.#tell(job, { state: "working", done: null, of: null });
    for (const [before, each] of this.#waiting.entries()) this.#tell(each, { state: "waiting", before: before + 1 });
    try {
      this.#thread ??= this.#started();
      this.#thread.ref();
      this.#thread.postMessage({ job: job.job, name: job.name, input: job.input });
    } catch (fault) {
      this.#finish(job, calculationEnded(job.name, (fault as Error).message));
    }
  }

  #started(): Thread {
    const thread = this.#options.startThread();
    const lost = (why: string) => {
      if (this.#thread !== thread) return;
      this.#thread = null;
      if (this.#working) this.#finish(this.#working, calculationEnded(this.#working.name, why));
    };
    thread.on("message", (told) => {
      const job = this.#working;
      if (this.#thread !== thread || told.job !== job?.job) return;
      if ("answer" in told) this.#finish(job, told.answer);
      else this.#tell(job, { state: "working", done: told.done, of: told.of });
    });
    thread.on("error", (fault) => lost(fault.message));
    thread.on("exit", (code) => lost(`its thread ended with ${code}`));
    return thread;
  }

  #tell(job: Job, progress: Progress): void {
    job.progress = progress;
    job.heard?.(progress);
  }

  #finish(job: Job, answer: Outcome<object>): void {
    if (this.#working === job) this.#working = null;
    job.settle(answer);
    this.#next();
  }

  #stop(job: Job): void {
    if (this.#working === job) {
      // What runs cannot be asked to stop: its thread goes with it.
      this.#endThread();
      this.#finish(job, stopped(job));
      return;
    }
    const place = this.#waiting.indexOf(job);
    if (place < 0) return;
    this.#waiting.splice(place, 1);
    job.settle(stopped(job));
    const working = this.#working ? 1 : 0;
    for (const [before, each] of this.#waiting.entries())
      this.#tell(each, { state: "waiting", before: before + working });
  }

  /** Nothing to do: the thread holds no process open, and ends after a while. */
  #rest(): void {
    this.#thread?.unref();
    clearTimeout(this.#idle);
    this.#idle = setTimeout(() => this.#endThread(), this.#options.idleMilliseconds);
    this.#idle.unref();
  }

  #endThread(): void {
    clearTimeout(this.#idle);
    const thread = this.#thread;
    this.#thread = null;
    thread?.terminate();
  }
}

function stopped({ name }: Job): Outcome<never> {
  return refused(refusal("stopped", [], name, "was stopped before it had an answer", "ask for it again"));
}

function full(waiting: number): Outcome<never> {
  const wrong = "long calculations wait for their turn already";
  return refused(refusal("queue-full", [], waiting, wrong, "try again when some of them are done"));
}

function deferred<T>(): { promise: Promise<T>; resolve: (value: T) => void } {
  let resolve: (value: T) => void = () => undefined;
  const promise = new Promise<T>((settle) => {
    resolve = settle;
  });
  return { promise, resolve };
}
