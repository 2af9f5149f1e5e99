/** Numbers inside a result, rounded to six figures so that 0.1 + 0.2 is 0.3; the rest as it is. */
export function rounded(result: unknown): unknown {
  if (typeof result === "number") return Number(result.toPrecision(6));
  return Array.isArray(result) ? result.map(rounded) : result;
}

/** A result as a coach reads it in cells: to the digits its example is written with. */
export function asWritten(result: unknown, example: unknown): unknown {
  if (typeof result === "number" && typeof example === "number") {
    const decimals = String(example).split(".")[1]?.length ?? 0;
    return Number(result.toFixed(decimals));
  }
  if (Array.isArray(result) && Array.isArray(example)) {
    return result.map((one, at) => asWritten(one, example[at]));
  }
  return result;
}
