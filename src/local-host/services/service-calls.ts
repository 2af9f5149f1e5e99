/** Watches every call a script makes to a service: counts it, and lets a test make it fail. */
export type ServiceWatch = {
  /** Makes the call, or answers in its place, as to a run that goes on where it was stopped. */
  readonly around?: (call: string, make: () => unknown) => unknown;
  /** May throw, as though the call failed before doing anything. */
  readonly before?: (call: string) => void;
  /** May throw, as though the answer was lost after the call took effect. */
  readonly after?: (call: string) => void;
  /** What the script is answered instead. */
  readonly answered?: (call: string, result: unknown) => unknown;
};

/** What a custom function may not do on the platform: change a file, show anything. */
const forbiddenInFormula =
  /^(?:(?:Spreadsheet|Sheet|Range)\.(?:set|append|insert|delete|clear|activate|hide|move|protect|addDeveloperMetadata|toast)|Ui\.|SpreadsheetApp\.getUi|HtmlService\.)/;

/** Counts by call name, "Range.setValues": 3. */
export class ServiceCalls {
  readonly counts = new Map<string, number>();
  watch: ServiceWatch = {};
  private inFormula = false;

  get total(): number {
    return [...this.counts.values()].reduce((sum, count) => sum + count, 0);
  }

  reset(): void {
    this.counts.clear();
  }

  /** Runs a custom function, which may read and change nothing. */
  asFormula<Result>(run: () => Result): Result {
    const outer = this.inFormula;
    this.inFormula = true;
    try {
      return run();
    } finally {
      this.inFormula = outer;
    }
  }

  /** The object with each of its methods counted and watched; what it does not have is no function. */
  counted<Service extends object>(name: string, service: Service): Service {
    return new Proxy(service, {
      get: (target, key) => {
        const member: unknown = Reflect.get(target, key, target);
        if (typeof key === "symbol") return member;
        if (member === undefined && key !== "toJSON" && key !== "then") {
          return () => {
            throw new TypeError(`${key} is not a function of ${name}`);
          };
        }
        if (typeof member !== "function") return member;
        const call = `${name}.${key}`;
        return (...args: unknown[]) => {
          this.counts.set(call, (this.counts.get(call) ?? 0) + 1);
          if (this.inFormula && forbiddenInFormula.test(call)) {
            throw new Error(`You do not have permission to call ${call} in a custom function.`);
          }
          this.watch.before?.(call);
          const make = (): unknown => member.apply(target, args);
          const result = this.watch.around ? this.watch.around(call, make) : make();
          this.watch.after?.(call);
          return this.watch.answered ? this.watch.answered(call, result) : result;
        };
      },
    });
  }
}
