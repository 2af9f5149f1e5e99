/**
 * The platform's document lock, which one run of a script has at a time; it is freed when that run
 * gives it up or ends, and no other can free it. Who would wait is answered at once: here a run comes
 * to its end before anything else happens.
 */
export function documentLock() {
  /** What is done between runs counts as one of its own. */
  const runs: object[] = [{}];
  const current = () => runs[runs.length - 1]!;
  let holder: object | null = null;
  const take = () => {
    if (holder !== null) return false;
    holder = current();
    return true;
  };
  const give = () => {
    if (holder === current()) holder = null;
  };
  return {
    /** As a script sees it. */
    lock: {
      tryLock: (_milliseconds: number) => take(),
      waitLock: (_milliseconds: number) => {
        if (!take())
          throw new Error("Lock timeout: another process was holding the lock for too long.");
      },
      hasLock: () => holder === current(),
      releaseLock: give,
    },
    runStarted: () => {
      runs.push({});
    },
    /** The platform frees a lock that the script left held. */
    runEnded: () => {
      give();
      runs.pop();
    },
  };
}
