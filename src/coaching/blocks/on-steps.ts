/** The last whole step from one load at or under another, kg. */
export const onSteps = (fromKg: number, toKg: number, stepKg: number): number =>
  fromKg + Math.floor((toKg - fromKg) / stepKg + 1e-9) * stepKg;
