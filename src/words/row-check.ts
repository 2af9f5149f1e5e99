const grouped = (count: number) => String(count).replace(/\B(?=(\d{3})+$)/g, ",");

/** "1,204 of 1,211 rows read" */
export function rowsReadWords(read: number, filled: number): string {
  return `${grouped(read)} of ${grouped(filled)} rows read`;
}
