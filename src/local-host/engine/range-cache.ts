/** A range's values are read once a calculation, however many formulas name the range. */
export class RangeCache {
  private readonly values = new Map<string, readonly (readonly unknown[])[]>();
  clear(): void {
    this.values.clear();
  }
  of(key: string, read: () => readonly (readonly unknown[])[]): readonly (readonly unknown[])[] {
    const known = this.values.get(key);
    if (known) return known;
    const fresh = read();
    this.values.set(key, fresh);
    return fresh;
  }
}
