/** Longest name of a tab in an .xlsx file (the limit of spreadsheet programs; ECMA-376 sets none). */
export const longestTabName = 31;

// Signs that spreadsheets keep for themselves in references, and signs no file of text can hold.
const kept = /[[\]*?:/\\]|\p{Cc}/gu;
const keptByPrograms = /^history$/i;

/** Whether an .xlsx file can hold a tab of this name, and every program open it. */
export function isTabName(name: string): boolean {
  return (
    name.trim() !== "" &&
    name.length <= longestTabName &&
    name.search(kept) < 0 &&
    !/^'|'$/.test(name) &&
    !keptByPrograms.test(name)
  );
}

/** The nearest name that a tab can have and that is not taken. */
export function fittingTabName(text: string, taken: ReadonlySet<string>): string {
  const bare = text.replace(kept, " ").replace(/^['\s]+|['\s]+$/g, "");
  const named = bare === "" || keptByPrograms.test(bare) ? `Tab ${bare}`.trim() : bare;
  for (let count = 1; ; count++) {
    const suffix = count === 1 ? "" : ` ${count}`;
    const room = longestTabName - suffix.length;
    const name = `${named.slice(0, room).replace(/['\s\ud800-\udbff]+$/, "")}${suffix}`;
    if (!taken.has(name.toLowerCase())) return name;
  }
}
