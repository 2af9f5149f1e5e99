import { types } from "node:util";
import type { ServicesHost } from "../../faults/held-by-services";

/** How a stretch of a run ended: all was done, a sentence, the lock is another's, or it was stopped. */
export type Ended =
  | { readonly is: "done" }
  | { readonly is: "refused"; readonly said: string }
  | { readonly is: "waits" }
  | { readonly is: "stopped" };

/** A lock that is given to all is none: a fault put in on purpose. */
export type Lock = "one at a time" | "given to all";

export type Stretch = {
  /** Stops before the call after so many. */
  readonly calls?: number;
  /** Waits for a lock that another has, as long as that takes, instead of being refused it. */
  readonly patient?: boolean;
  /** Before each call, by its number from 0: here another's run may come in. */
  readonly before?: (call: number) => void;
};

/**
 * One coach's run of the built script, which can be stopped before any of its calls to a service and
 * go on later. A script cannot be held in the middle; but it does the same whenever it is answered the
 * same, so to go on it is run again, and the calls it has made are answered as they were, without
 * being made. A stopped run must not have the lock: its host frees it.
 */
export class ScriptRun {
  /** Calls made, with what was answered. */
  readonly made: { readonly call: string; readonly answer: unknown }[] = [];

  constructor(
    private readonly host: ServicesHost,
    private readonly request: string,
    private readonly message: unknown,
    private readonly lock: Lock = "one at a time",
  ) {}

  go({ calls = Number.POSITIVE_INFINITY, patient = true, before }: Stretch = {}): Ended {
    const { host, made, lock } = this;
    const outer = host.calls.watch;
    let at = 0;
    const halt = new Error("The run is stopped here.");
    let halted = null as Ended | null;
    const stop = (ended: Ended) => {
      halted = ended;
      return halt;
    };
    host.calls.watch = {
      around: (call, make) => {
        if (halted) throw halt;
        const known = made[at];
        if (known) {
          if (known.call !== call) throw new Error(`${call} instead of ${known.call}`);
          at++;
          return known.answer;
        }
        if (at >= calls) throw stop({ is: "stopped" });
        before?.(at);
        const isLock = lock === "given to all" && call.startsWith("Lock.");
        const answer = isLock ? true : make();
        if (call === "Lock.tryLock" && answer === false && patient) throw stop({ is: "waits" });
        made.push({ call, answer });
        at++;
        return answer;
      },
    };
    try {
      host.run(this.request, [this.message]);
      return { is: "done" };
    } catch (error) {
      if (halted) return halted;
      expect(error).not.toBeInstanceOf(TypeError);
      return { is: "refused", said: (error as Error).message };
    } finally {
      host.calls.watch = outer;
    }
  }

  /** Whether the lock was got and not given up. */
  get holdsLock(): boolean {
    const locks = this.made.filter(({ call }) => call.startsWith("Lock."));
    const last = locks[locks.length - 1];
    return last?.call === "Lock.tryLock" && last.answer === true;
  }

  /** What it has seen so far: two runs that saw the same go on the same way. */
  get seen(): string {
    const shown = (_: string, value: unknown) => (types.isProxy(value) ? "a service" : value);
    return JSON.stringify(this.made, shown);
  }
}
