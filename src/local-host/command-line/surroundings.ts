/** What the program is given by the machine it runs on. */
export type Surroundings = {
  /** Folder of the built program: `code.js` and the sidebar's page. */
  readonly dist: string;
  readonly sample: string;
  readonly out: (text: string) => void;
  readonly err: (text: string) => void;
  /** Today by this machine's clock, ISO. */
  readonly today: () => string;
  /** Ends when the coach stops the program. */
  readonly untilStopped: () => Promise<void>;
};

/** Thrown when there is no answer: its sentence goes to standard error, exit status 1. */
export class Refused extends Error {}
