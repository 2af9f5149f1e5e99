/** Equal as data, whatever order their parts were made in. */
export function same(a: unknown, b: unknown): boolean {
  if (a === b) return true;
  if (typeof a !== "object" || typeof b !== "object" || a === null || b === null) return false;
  const [one, other] = [a as Record<string, unknown>, b as Record<string, unknown>];
  const keys = new Set([...Object.keys(one), ...Object.keys(other)]);
  return [...keys].every((key) => same(one[key], other[key]));
}
