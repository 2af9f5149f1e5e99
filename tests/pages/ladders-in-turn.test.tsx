import render from "preact-render-to-string";
import type { PrintedPages } from "../../src/actions/page-messages";
import { serveRequest } from "../../src/actions/requests";
import { Pages } from "../../src/pages/pages";
import { sampleClub } from "./sample-club";

const tomas = "Tomas Reyerson";
/** Tomas thrusts on the Thursdays after his last Tuesdays' squats. */
const thrusting = ([head = [], ...rows]: unknown[][]) => {
  const squat = rows.find((row) => row.includes(tomas) && row.includes("work"))!;
  const thrust = (day: string, set: number) => {
    const own: Readonly<Record<string, unknown>> = {
      Date: day,
      Exercise: "hip thrust",
      Set: set,
      Reps: 5,
      "Load (kg)": 110,
      "Rep speeds (m/s)": "",
    };
    return squat.map((cell, at) => own[String(head[at])] ?? cell);
  };
  const days = ["2026-05-28", "2026-06-04", "2026-06-11", "2026-06-18", "2026-06-25"];
  return [head, ...rows, ...days.flatMap((day) => [1, 2, 3].map((set) => thrust(day, set)))];
};

test("on the page of charts each lift done in turn has its own weeks ahead, by its name", () => {
  const given = { today: "2026-06-28", kind: "pictures", monday: "2026-06-29", changes: [] };
  const pages = serveRequest(sampleClub({ Sets: thrusting }), "printPages", given) as PrintedPages;
  const [page] = pages.kind === "pictures" ? pages.pictures : [];
  const [one, other] = page!.athletes;
  expect([one!, other!].map(({ ahead }) => ahead.map(({ lift }) => lift))).toEqual([
    ["back squat", "hip thrust"],
    ["back squat"],
  ]);
  const text = render(<Pages pages={pages} />);
  expect(text).toContain("<figcaption>Back squat: the weeks ahead if all goes well, kg<");
  expect(text).toContain("<figcaption>The weeks ahead if all goes well, sets × reps and kg<");
  const steps = one!.ahead[1]!.steps.map(({ week, block, loadKg }) => `${week} ${block} ${loadKg}`);
  expect(steps.length).toBeGreaterThan(2);
  expect(text).toContain(
    `>Hip thrust: the weeks ahead if all goes well, kg<br/>${steps.join("; ")}<`,
  );
});
