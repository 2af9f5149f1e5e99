import type { Workbook } from "../../src/actions/workbook";

/**
 * A workbook each of whose calls passes through a test's hands.
 *
 * @param around is told the call's number from 1, and makes it
 */
export function watchedWorkbook(
  real: Workbook,
  around: (call: number, make: () => unknown, name: string) => unknown,
): { readonly book: Workbook; readonly made: string[] } {
  const made: string[] = [];
  const watched = Object.entries(real).map(([name, member]) => [
    name,
    typeof member !== "function"
      ? member
      : (...args: unknown[]): unknown => {
          made.push(name);
          const work = member as (...given: unknown[]) => unknown;
          return around(made.length, () => work(...args), name);
        },
  ]);
  return { book: Object.fromEntries(watched) as Workbook, made };
}
