import type { FUniver } from "@univerjs/core/facade";
import { localFormulas } from "../../words/local-formulas";

/**
 * A calculation starts 100 ms after the change that calls for it, if any does. Counted in turns of
 * the event loop, each at least so long: on a busy machine time passes in which nothing can start.
 */
const turnMs = 8;
const quietTurns = 24;

/** Tells when the grid has answered: results come some time after a change, never at once. */
export class CalculationState {
  private running = false;
  private lastStart = Number.NEGATIVE_INFINITY;
  private lastChange = performance.now();
  private turnsSinceChange = 0;

  constructor(api: FUniver) {
    const formula = api.getFormula();
    formula.calculationStart(() => {
      this.running = true;
      this.lastStart = performance.now();
    });
    formula.calculationEnd(() => {
      this.running = false;
    });
    api.addEvent(api.Event.CommandExecuted, ({ id, options }) => {
      const own = options && "fromFormula" in options && options.fromFormula;
      if (!/^sheet\.mutation\./.test(id) || own) return;
      this.lastChange = performance.now();
      this.turnsSinceChange = 0;
    });
  }

  /** Waits until no calculation runs or is due. Rejects after `patienceMs`. */
  async settled(patienceMs = 120_000): Promise<void> {
    const start = performance.now();
    while (!this.isSettled()) {
      if (performance.now() - start > patienceMs) {
        throw new Error(localFormulas.notCalculated);
      }
      await new Promise((resolve) => setTimeout(resolve, turnMs));
      this.turnsSinceChange++;
    }
  }

  private isSettled(): boolean {
    // The first calculation, which a workbook without formulas has too, begins once the grid is drawn.
    if (!Number.isFinite(this.lastStart)) return false;
    const covered = this.lastChange < this.lastStart;
    // Both, for two that wait at once count each turn twice.
    const quiet =
      this.turnsSinceChange >= quietTurns &&
      performance.now() - this.lastChange >= quietTurns * turnMs;
    return !this.running && (covered || quiet);
  }
}
