import type { PrintedSession } from "./printable-week";

/**
 * First names where nobody else in the room has the same one; otherwise the whole name, as where the
 * first is a letter only. Of "Brandmoor, Ilka" the first name is the one after the comma.
 */
export function shortNames(group: readonly PrintedSession[]): (athlete: string) => string {
  const first = (athlete: string) => {
    const [name] = athlete.split(",").pop()!.trim().split(/\s+/);
    return !name || /^\p{L}\.?$/u.test(name) ? athlete : name;
  };
  const counts = new Map<string, number>();
  for (const { line } of group) {
    const name = first(line.athlete).toLowerCase();
    counts.set(name, (counts.get(name) ?? 0) + 1);
  }
  return (athlete) => (counts.get(first(athlete).toLowerCase()) === 1 ? first(athlete) : athlete);
}
