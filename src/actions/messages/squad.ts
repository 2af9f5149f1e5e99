import type { NumberStyle } from "../../words/printed-numbers";
import type { Dress, ReadWithout } from "../messages";
import type { LinePicture, SeasonPicture, SetsPicture } from "./pictures";

export type SquadLine = {
  readonly athlete: string;
  readonly group: string;
  readonly event: string;
  readonly mayDo: string;
  readonly word: string;
  readonly dress: Dress;
  /** "since 12 May (± 10 days)" or "". */
  readonly since: string;
  readonly why: string;
  /** "23 Jun: below usual" */
  readonly today: string;
  /** Main reason of the day's word; "" when it is as usual. */
  readonly todayWhy: string;
  readonly todayDress: Dress;
  readonly rowsNotUsed: number;
};

export type SquadView = ReadWithout & {
  readonly asOf: string;
  readonly asOfWords: string;
  readonly summary: string;
  readonly lines: readonly SquadLine[];
  /** Cells and names listed under Rows. */
  readonly toCheck: number;
  readonly cautions: readonly string[];
};

export type AthleteView = {
  /** How its drawings write figures. */
  readonly numbers: NumberStyle;
  readonly line: SquadLine;
  readonly season: SeasonPicture | null;
  readonly loadSpeed: LinePicture | null;
  readonly sets: SetsPicture | null;
};
