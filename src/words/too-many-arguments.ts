/** What is said of a formula with more arguments than it reads: a range in parts, or a decimal comma. */
export const tooManyArguments = (name: string, most: number, given: number): string =>
  `${name} takes ${most} ${most === 1 ? "argument" : "arguments"} at most, and ${given} were given: what comes after would not be read. A decimal comma parts arguments, too: write 0.79, or “0,79”.`;
