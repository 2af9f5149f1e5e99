import { Worker } from "node:worker_threads";

/** Watches the process's memory from a thread of its own while the first thread is busy. */
export class PeakMemory {
  private readonly shared = new Float64Array(new SharedArrayBuffer(16));
  private readonly worker: Worker;

  constructor() {
    this.worker = new Worker(
      `const { workerData: seen } = require("node:worker_threads");
       setInterval(() => {
         const now = process.memoryUsage.rss();
         if (now > seen[0]) seen[0] = now;
         seen[1]++;
       }, 2);`,
      { eval: true, workerData: this.shared },
    );
  }

  /** Begins anew; waits until the thread looks. */
  async start(): Promise<number> {
    const looks = this.shared[1] as number;
    while (this.shared[1] === looks) await new Promise((done) => setTimeout(done, 5));
    const now = process.memoryUsage.rss();
    this.shared[0] = now;
    return now;
  }

  /** Most bytes held since the start. */
  peak(): number {
    return Math.max(this.shared[0] as number, process.memoryUsage.rss());
  }

  async stop(): Promise<void> {
    await this.worker.terminate();
  }
}
