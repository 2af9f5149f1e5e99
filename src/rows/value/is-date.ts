/** True for a usable `Date`, also one made in another realm, as the spreadsheet hands them over. */
export function isDate(cell: unknown): cell is Date {
  if (typeof cell !== "object" || cell === null) return false;
  const date = cell instanceof Date || Object.prototype.toString.call(cell) === "[object Date]";
  return date && !Number.isNaN((cell as Date).getTime());
}
