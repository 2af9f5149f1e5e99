/** What a bar weighs where nobody says, in the unit that loads are given in (common practice, no source). */
export const usualBar = { kg: 20, lb: 45 } as const;
