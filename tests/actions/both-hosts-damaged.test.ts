import { recallWords } from "../../src/words/remembered";
import { monday, today, tomas } from "../faults/small-club";
import { type Scenario, scenarios } from "../faults/writing-actions";
import { isAnswer } from "./both-hosts-contract";
import { type Refused, refusedOnBothHosts } from "./refused-on-both-hosts";

// Nothing is put over what was remembered and can no longer be read, by any request that would.
const week = { today, monday, changes: [{ athlete: tomas, sets: 3 }], athletes: null };
const answering = ({ request, name, prepare, message }: Scenario): Refused => ({
  request,
  why: `${name}, and the answers are damaged`,
  message,
  damaged: "answers",
  sentence: recallWords.damaged.answers,
  prepare: (book) => {
    book.ask("answerName", { today, written: "T. R.", athlete: tomas, same: true });
    prepare?.(book);
  },
});
const weeks = (["next week", "week changes"] as const).flatMap((damaged) =>
  (["writeWeek", "takeBackWeek"] as const).map(
    (request): Refused => ({
      request,
      why: `${damaged} is damaged`,
      prepare: (book) => book.ask("writeWeek", week),
      message: () => (request === "writeWeek" ? week : { today, monday }),
      damaged,
      sentence: recallWords.damaged[damaged],
    }),
  ),
);
const season: Refused = {
  request: "writeSeason",
  why: "season is damaged",
  prepare: (book) => book.ask("writeSeason", { today }),
  message: () => ({ today }),
  damaged: "season",
  sentence: recallWords.damaged.season,
};
const answers = scenarios
  .filter((one) => isAnswer(one) && one.request !== "forgetDamaged")
  .map(answering);

for (const one of [...weeks, season, ...answers]) refusedOnBothHosts(one);
