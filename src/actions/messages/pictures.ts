/** A series of one measure, percent of its own baseline. */
export type SeasonSeries = {
  readonly name: string;
  /** Half-width of its band, percent: two of this measure's own wobbles. */
  readonly band: number;
  readonly points: readonly { readonly day: string; readonly percent: number }[];
  /** Below its baseline the value itself is longer: contact time. */
  readonly turned?: boolean;
};

export type SeasonPicture = {
  readonly athlete: string;
  readonly from: string;
  readonly to: string;
  readonly series: readonly SeasonSeries[];
  readonly since: {
    readonly from: string;
    readonly day: string;
    readonly to: string;
    readonly way: "low" | "high";
  } | null;
  readonly races: readonly {
    readonly day: string;
    readonly name: string;
    readonly matters: string;
  }[];
  /** The whole picture in one or two sentences. */
  readonly inWords: string;
};

export type LinePicture = {
  readonly exercise: string;
  readonly points: readonly {
    readonly loadKg: number;
    readonly speed: number;
    readonly latest: boolean;
  }[];
  readonly line: readonly {
    readonly loadKg: number;
    readonly speed: number;
    readonly low: number;
    readonly high: number;
  }[];
  readonly inWords: string;
};

export type SetsPicture = {
  readonly day: string;
  readonly sets: readonly {
    readonly set: number;
    readonly percent: number;
    readonly usual: number | null;
    readonly low: number | null;
    readonly high: number | null;
  }[];
  readonly inWords: string;
};
