/** Rows and columns of the largest tab there is (ECMA-376 part 1, 18.3.1.73 and 18.3.1.4). */
export const largestTab = { rows: 1_048_576, columns: 16_384 } as const;
