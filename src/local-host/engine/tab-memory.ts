/** A script's protection of a range, or of the whole tab (`range` null). */
export type KeptProtection = {
  readonly description: string;
  readonly warningOnly: boolean;
  readonly range: string | null;
};

/**
 * What scripts rely on about a tab and no file format holds: its number, tags on its parts, and
 * protections that only warn.
 */
export type TabMemory = {
  readonly tab: string;
  readonly number: number;
  readonly tags: readonly {
    readonly key: string;
    readonly value: string;
    /** Null for a tag on the whole tab. */
    readonly range: string | null;
    /** First text or number of a tagged column: another program may have moved the column. */
    readonly top?: string;
  }[];
  readonly protections?: readonly KeptProtection[];
};

/** Kept among the workbook's properties, out of scripts' sight. */
const key = "local workbook: tabs";

export function withTabMemory(
  properties: Readonly<Record<string, string>>,
  tabs: readonly TabMemory[],
): Record<string, string> {
  return { ...properties, [key]: JSON.stringify(tabs) };
}

/** The properties scripts see, and what is remembered of the tabs; a damaged memory is an empty one. */
export function splitTabMemory(properties: Readonly<Record<string, string>>): {
  readonly seen: Record<string, string>;
  readonly tabs: readonly TabMemory[];
} {
  const { [key]: text, ...seen } = properties;
  return { seen, tabs: parsed(text) };
}

function parsed(text: string | undefined): readonly TabMemory[] {
  if (text === undefined) return [];
  try {
    const found: unknown = JSON.parse(text);
    return Array.isArray(found) ? found.filter(isTabMemory) : [];
  } catch {
    return [];
  }
}

function isTabMemory(found: unknown): found is TabMemory {
  if (found === null || typeof found !== "object") return false;
  const { tab, number, tags, protections } = found as Partial<Record<keyof TabMemory, unknown>>;
  return (
    typeof tab === "string" &&
    Number.isInteger(number) &&
    Array.isArray(tags) &&
    (protections === undefined || Array.isArray(protections))
  );
}
