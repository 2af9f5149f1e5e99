import type { Day } from "../../../src/coaching/calendar/day";

/** Sessions of an athlete who does no other lift: days since the session before, 0 on the first. */
export const gapped = <Session extends { readonly day: Day }>(sessions: readonly Session[]) =>
  sessions.map((one, at) => ({ ...one, gap: one.day - (sessions[at - 1]?.day ?? one.day) }));
