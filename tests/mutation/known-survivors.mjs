import { readdirSync, readFileSync } from "node:fs";

const folder = new URL("known-survivors/", import.meta.url);

/**
 * Faults that no test can notice, from one list a folder of the sources: file, what stands there (once,
 * or once within a part of one line), what the fault makes of it on one line, and why none can.
 */
export const knownSurvivors = () =>
  readdirSync(folder).flatMap((list) => JSON.parse(readFileSync(new URL(list, folder), "utf8")));
