/** International avoirdupois pound, kg, exact (international yard and pound agreement 1959). */
const poundKg = 0.45359237;

/** The unit a coach writes masses in. */
export type MassUnit = "kg" | "lb";

export const kgFromPounds = (pounds: number): number => pounds * poundKg;
export const poundsFromKg = (kg: number): number => kg / poundKg;
