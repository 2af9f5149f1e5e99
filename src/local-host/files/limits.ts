/**
 * What a file may ask of this machine. A squad of sixty with a season's rows needs a hundredth of it;
 * beyond it a file is damaged or meant to harm (common practice, no source).
 */
export const limits = {
  fileBytes: 60_000_000,
  unpackedBytes: 400_000_000,
  /** Unpacked against packed, for parts over a megabyte. */
  ratio: 200,
  parts: 5_000,
  tabs: 200,
  rows: 250_000,
  columns: 1_000,
  cells: 8_000_000,
} as const;
