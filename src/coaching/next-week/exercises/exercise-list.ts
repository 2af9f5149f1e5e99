import type { BodyPart } from "../../availability/body-part";

/** What may be missing for an exercise: something of the room, or a limb. */
export type Missing = "rack" | "plate" | BodyPart;

/** One exercise a session can hold. */
export type Exercise = {
  readonly name: string;
  readonly kind: "warm-up" | "plyometrics" | "jump" | "main lift" | "assistance";
  /** Place in the session: fast and light before slow and heavy. */
  readonly order: number;
  /** Ground contacts of one repetition. */
  readonly contacts: 0 | 1;
  /** On a sore day what makes sore gives way, but for the main lift, of which the load changes. */
  readonly givesWayWhenSore: boolean;
  /** Done instead when it is not available, or gives way. */
  readonly instead: string;
  /** Done instead when one thing is missing. A sore limb is trained on the other side or not at all. */
  readonly without: Readonly<Partial<Record<Missing, string>>>;
};

/** The usual session and its alternatives (common practice, no source), in order. */
export const exerciseList: readonly Exercise[] = [
  {
    name: "bike or rower, 10–15 min, until slightly out of breath",
    kind: "warm-up",
    order: 1,
    contacts: 0,
    givesWayWhenSore: false,
    instead: "brisk walk and mobility",
    without: {},
  },
  {
    name: "hops on and off a plate",
    kind: "plyometrics",
    order: 2,
    contacts: 1,
    givesWayWhenSore: false,
    instead: "skipping rope",
    without: {},
  },
  {
    name: "plate-to-plate drop jump",
    kind: "jump",
    order: 3,
    contacts: 1,
    givesWayWhenSore: true,
    instead: "hops on and off a plate",
    without: { plate: "skipping rope" },
  },
  {
    name: "straight-leg box jump",
    kind: "jump",
    order: 4,
    contacts: 1,
    givesWayWhenSore: false,
    instead: "jump and reach",
    without: {},
  },
  {
    name: "back squat",
    kind: "main lift",
    order: 5,
    contacts: 0,
    givesWayWhenSore: false,
    instead: "leg press",
    without: {
      rack: "leg press",
      leg: "single-leg press, other leg",
      trunk: "leg press",
      arm: "leg press",
    },
  },
  {
    name: "rear-foot-elevated split squat, weight opposite",
    kind: "assistance",
    order: 6,
    contacts: 0,
    givesWayWhenSore: true,
    instead: "step-up",
    without: { leg: "split squat, other leg only", trunk: "step-up", arm: "step-up, no weight" },
  },
  {
    name: "seated twist",
    kind: "assistance",
    order: 7,
    contacts: 0,
    givesWayWhenSore: false,
    instead: "side plank",
    without: { trunk: "side plank", arm: "dead bug" },
  },
];

/** Ground contacts a session: least and most, for novices and trained (common practice, no source). */
export const contactBands = {
  novice: { least: 40, most: 60 },
  trained: { least: 60, most: 100 },
} as const;
