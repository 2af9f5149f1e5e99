import type { FUniver } from "@univerjs/core/facade";

/** A calculation starts 100 ms after the change that calls for it. */
const debounceMs = 150;

/** Tells when the grid has answered: results come some time after a change, never at once. */
export class CalculationState {
  private running = false;
  private lastChange = performance.now();

  constructor(api: FUniver) {
    const formula = api.getFormula();
    formula.calculationStart(() => {
      this.running = true;
    });
    formula.calculationEnd(() => {
      this.running = false;
      this.lastChange = performance.now();
    });
    api.addEvent(api.Event.CommandExecuted, ({ id }) => {
      if (/mutation/.test(id)) this.lastChange = performance.now();
    });
  }

  /** Waits until no calculation runs or is due. Rejects after `patienceMs`. */
  async settled(patienceMs = 120_000): Promise<void> {
    const start = performance.now();
    while (this.running || performance.now() - this.lastChange < debounceMs) {
      if (performance.now() - start > patienceMs) {
        throw new Error("The calculation did not finish in two minutes.");
      }
      await new Promise((resolve) => setTimeout(resolve, 15));
    }
  }
}
