/** A figure, or the reason there is none. */
export type Outcome<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly refusal: Refusal };

/** Why no figure can be given: a stable code, and the facts a sentence about it needs. */
export type Refusal = {
  readonly code: string;
  readonly facts: Readonly<Record<string, string | number>>;
};

export function accept<T>(value: T): Outcome<T> {
  return { ok: true, value };
}

/** The figure of an outcome; null where it is refused and nobody is told why. */
export function valueOrNull<T>(outcome: Outcome<T>): T | null {
  return outcome.ok ? outcome.value : null;
}

/** The figure of an outcome that cannot be refused here; a refusal is our own mistake and throws. */
export function certain<T>(outcome: Outcome<T>): T {
  if (!outcome.ok) throw new Error(`refused against expectation: ${outcome.refusal.code}`);
  return outcome.value;
}

export function refuse(code: string, facts: Refusal["facts"] = {}): Outcome<never> {
  return { ok: false, refusal: { code, facts } };
}
