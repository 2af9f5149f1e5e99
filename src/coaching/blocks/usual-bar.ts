import { kgFromPounds, type MassUnit } from "../units/mass";

/** What a bar weighs where nobody says, kg, by the unit that loads are given in (common practice, no source). */
export const usualBarKg = (unit?: MassUnit): number => (unit === "lb" ? kgFromPounds(45) : 20);
