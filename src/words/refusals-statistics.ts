import type { Refusal } from "../outcome";

type Facts = Refusal["facts"];
const inRow = (row: string | number | undefined) => (row === undefined ? "" : ` in row ${row}`);

/** Why a row of numbers gives no figure. */
export const statisticsRefusals = {
  "values-too-few": ({ found, needed }: Facts) =>
    `At least ${needed} values are needed (found: ${found}).`,
  "value-not-finite": ({ place }: Facts) => `Value ${place} is not a number.`,
  "value-not-above-zero": ({ place }: Facts) =>
    `Value ${place} is not above zero, and has no logarithm.`,
  "values-all-equal": ({ found }: Facts) =>
    `All ${found} values are the same, so nothing can be told from their spread.`,
  "value-missing": ({ name }: Facts) =>
    `${name} is blank: fill it in, or leave its row out of the range.`,
  "trials-too-few": ({ athletes, trials }: Facts) =>
    `Two athletes with two trials each are the least: give one athlete a row and one trial a column (rows: ${athletes}, columns: ${trials}).`,
  "trials-without-error": () =>
    "Every athlete changed by the same from trial to trial, so no error can be told: is a column a copy?",
  "lengths-differ": ({ first, second }: Facts) =>
    `The two columns have ${first} and ${second} values: give as many in each.`,
  "share-impossible": ({ share }: Facts) => `A share of ${share} is not between 0 and 1.`,
  "degrees-impossible": ({ degrees }: Facts) =>
    `${degrees} degrees of freedom are not possible: there are too few values.`,
  "probability-impossible": ({ place }: Facts) => `Probability ${place} is not between 0 and 1.`,
  "exertion-impossible": ({ exertion, row }: Facts) =>
    `An exertion of ${exertion}${inRow(row)} is not possible: give it from 0 to 10.`,
  "minutes-impossible": ({ minutes, row }: Facts) =>
    `A run of ${minutes} minutes${inRow(row)} is not possible: give its length, or clear the row of a run not done.`,
  "run-not-rated": ({ row }: Facts) =>
    `The run in row ${row} has no exertion or no minutes that can be used, so the week's load would read too low: fill in both.`,
  "load-unvarying": ({ days }: Facts) =>
    `All ${days} days have the same run load, so monotony cannot be told.`,
} as const;
