/** Rows by a key, each list in the order of the rows, keys in the order they first appear. */
export function grouped<Row, Key>(
  rows: readonly Row[],
  keyOf: (row: Row) => Key,
): ReadonlyMap<Key, readonly Row[]> {
  const groups = new Map<Key, Row[]>();
  for (const row of rows) {
    const key = keyOf(row);
    const group = groups.get(key);
    if (group) group.push(row);
    else groups.set(key, [row]);
  }
  return groups;
}
