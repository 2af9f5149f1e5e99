/**
 * A copy of plain data, as it arrives on the other side of the bridge between sidebar and script:
 * `undefined` in a list becomes null, in an object it is left out.
 *
 * @throws Error naming what the bridge refuses: dates, functions and other objects with behaviour
 */
export function plainData(value: unknown, what: "argument" | "answer"): unknown {
  refuseOthers(value, what, []);
  return value === undefined ? null : JSON.parse(JSON.stringify(value));
}

function refuseOthers(value: unknown, what: string, path: readonly string[]): void {
  const place = path.length > 0 ? ` at ${path.join(".")}` : "";
  if (typeof value === "function" || typeof value === "symbol" || typeof value === "bigint") {
    throw new Error(`The ${what} holds a ${typeof value}${place}, which the bridge cannot carry.`);
  }
  if (typeof value === "number" && !Number.isFinite(value)) {
    throw new Error(`The ${what} holds ${value}${place}, which the bridge cannot carry.`);
  }
  if (value === null || typeof value !== "object") return;
  const kind = Object.prototype.toString.call(value).slice(8, -1);
  if (kind !== "Object" && kind !== "Array") {
    throw new Error(
      `The ${what} holds a ${kind}${place}, which the bridge cannot carry: send text.`,
    );
  }
  for (const [key, part] of Object.entries(value)) refuseOthers(part, what, [...path, key]);
}
