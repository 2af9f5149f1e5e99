/** Why a line says what it says: a code and facts, in the order a coach reads them. */
export type LineReason = {
  readonly code: string;
  readonly facts: Readonly<Record<string, string | number>>;
  /** Of a lift in turn why its own step is what it is, of what is set by hand why it was proposed otherwise. */
  readonly of?: readonly LineReason[];
};

/** Reasons and all that stand under them. */
export const withTheirOwn = (reasons: readonly LineReason[]): readonly LineReason[] =>
  reasons.flatMap((reason) => [reason, ...withTheirOwn(reason.of ?? [])]);
