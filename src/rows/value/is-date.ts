/** What the dates seen last are made from: another realm's, and its name takes long to ask for. */
let lastSeen: unknown = Date.prototype;

/** True for a usable `Date`, also one made in another realm, as the spreadsheet hands them over. */
export function isDate(cell: unknown): cell is Date {
  if (typeof cell !== "object" || cell === null) return false;
  const madeFrom = Object.getPrototypeOf(cell);
  if (madeFrom !== lastSeen) {
    if (Object.prototype.toString.call(cell) !== "[object Date]") return false;
    lastSeen = madeFrom;
  }
  return !Number.isNaN((cell as Date).getTime());
}
