const mostBytesByValue = 9 * 1024;
const mostBytes = 500 * 1024;

/** The platform's Properties: text by name, 9 KB a value and 500 KB in all. */
export class PropertyStore {
  private readonly values: Map<string, string>;

  constructor(
    start: Readonly<Record<string, string>>,
    private readonly changed: () => void = () => {},
  ) {
    this.values = new Map(Object.entries(start));
  }
  getProperty(key: string): string | null {
    return this.values.get(key) ?? null;
  }
  getProperties(): Record<string, string> {
    return Object.fromEntries(this.values);
  }
  getKeys(): string[] {
    return [...this.values.keys()];
  }
  setProperty(key: string, value: string): this {
    if (typeof value !== "string") throw new Error("Properties hold text only.");
    if (value.length > mostBytesByValue) throw new Error("Argument too large: value");
    const others = [...this.values].filter(([name]) => name !== key);
    const size = others.reduce((sum, [name, text]) => sum + name.length + text.length, 0);
    if (size + key.length + value.length > mostBytes) {
      throw new Error("You have exceeded the property storage quota.");
    }
    this.values.set(key, value);
    this.changed();
    return this;
  }
  setProperties(values: Readonly<Record<string, string>>): this {
    for (const [key, value] of Object.entries(values)) this.setProperty(key, value);
    return this;
  }
  deleteProperty(key: string): this {
    this.values.delete(key);
    this.changed();
    return this;
  }
}

/** The platform's Cache: 100 KB a value; entries may go at any time, here when the program ends. */
export function memoryCache() {
  const values = new Map<string, string>();
  return {
    get: (key: string) => values.get(key) ?? null,
    put: (key: string, value: string) => {
      if (value.length > 100 * 1024) throw new Error("Argument too large: value");
      values.set(key, value);
    },
    remove: (key: string) => {
      values.delete(key);
    },
  };
}
