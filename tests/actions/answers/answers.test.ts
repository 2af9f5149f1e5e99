import { answerName, forgetName } from "../../../src/actions/answers/answer-name";
import { answerTable } from "../../../src/actions/answers/answer-tab";
import { recallAnswers } from "../../../src/actions/answers/answers";
import { memoryWorkbook } from "../memory-workbook";

// The memory workbook refuses a value the platform would refuse: more than 9 kB.
test("answers of a long season are all kept, past what the platform takes in one value", () => {
  const book = memoryWorkbook({ Sets: [["Athlete"]] });
  const spellings = Array.from(
    { length: 150 },
    (_, i) => `T. Reyerson, spelling ${i} of the squad`,
  );
  for (const written of spellings) answerName(book, written, "Tomas Reyerson", true);
  answerTable(book, 100, "Sets");
  forgetName(book, spellings[3]!);
  const { names, tables } = recallAnswers(book);
  expect(names.same.map(({ written }) => written)).toEqual(spellings.filter((_, i) => i !== 3));
  expect(tables.get(100)).toBe("Sets");
});
