import * as z from "zod/mini";
import { kept } from "../answers/kept";
import type { SeasonWritten } from "./merge-season";

const stored = z.record(z.string(), z.array(z.string()));

/** What was written into the Season tab. Damaged, all its cells count as the coach's. */
export const seasonKept = kept<SeasonWritten>("season", stored, {});
