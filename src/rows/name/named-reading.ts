import type { Reading } from "../reading";
import { type NameAnswers, withNames } from "./name-answers";

/** Names replaced where the coach has answered; tables without athletes stay as they are. */
export function named<Row>(reading: Reading<Row>, answers: NameAnswers): Reading<Row> {
  if (answers.same.length === 0) return reading;
  const records = reading.records as readonly (Row & { readonly athlete: string })[];
  return typeof records[0]?.athlete === "string"
    ? { ...reading, records: withNames(records, answers) }
    : reading;
}
