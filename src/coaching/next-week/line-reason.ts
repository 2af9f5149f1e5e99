/** Why a line says what it says: a code and facts, in the order a coach reads them. */
export type LineReason = {
  readonly code: string;
  readonly facts: Readonly<Record<string, string | number>>;
  /** Of a lift in turn: why its own step is what it is. */
  readonly of?: readonly LineReason[];
};
