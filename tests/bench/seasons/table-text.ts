/** A markdown table; the first column is words, the others figures. */
export function markdownTable(
  head: readonly string[],
  rows: readonly (readonly string[])[],
): string[] {
  const line = (cells: readonly string[]) => `| ${cells.join(" | ")} |`;
  return [line(head), line(head.map((_, i) => (i === 0 ? "---" : "--:"))), ...rows.map(line)];
}

/** A share as percent: "38 %", with one decimal when asked; "–" when there is none. */
export function percent(share: number | null, decimals = 0): string {
  if (share === null || !Number.isFinite(share)) return "–";
  return `${(100 * share).toFixed(decimals)} %`;
}

/** "38/60/74" */
export function percents(shares: readonly number[]): string {
  return shares.map((share) => (100 * share).toFixed(0)).join("/");
}
