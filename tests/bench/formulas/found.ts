import type { FigureName } from "./figures";
import type { Measured } from "./measured";

/** One row of the table. */
export type Found = Measured & {
  readonly contender: string;
  readonly figure: FigureName;
  readonly rows: number;
};
