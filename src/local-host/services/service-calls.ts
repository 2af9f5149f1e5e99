/** Watches every call a script makes to a service: counts it, and lets a test make it fail. */
export type ServiceWatch = {
  /** May throw, as though the call failed before doing anything. */
  readonly before?: (call: string) => void;
  /** May throw, as though the answer was lost after the call took effect. */
  readonly after?: (call: string) => void;
};

/** Counts by call name, "Range.setValues": 3. */
export class ServiceCalls {
  readonly counts = new Map<string, number>();
  watch: ServiceWatch = {};

  get total(): number {
    return [...this.counts.values()].reduce((sum, count) => sum + count, 0);
  }

  reset(): void {
    this.counts.clear();
  }

  /** The object with each of its methods counted and watched. Unknown methods stay unknown. */
  counted<Service extends object>(name: string, service: Service): Service {
    return new Proxy(service, {
      get: (target, key) => {
        const member: unknown = Reflect.get(target, key, target);
        if (typeof member !== "function" || typeof key === "symbol") return member;
        const call = `${name}.${key}`;
        return (...args: unknown[]) => {
          this.counts.set(call, (this.counts.get(call) ?? 0) + 1);
          this.watch.before?.(call);
          const result: unknown = member.apply(target, args);
          this.watch.after?.(call);
          return result;
        };
      },
    });
  }
}
