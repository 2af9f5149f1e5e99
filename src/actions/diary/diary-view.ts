import { type Day, isoFromDay } from "../../coaching/calendar/day";
import { askAbout } from "../../coaching/diary/ask-about";
import { diaryTimeline } from "../../coaching/diary/diary-timeline";
import { type Finding, oddSize } from "../../coaching/diary/finding";
import { racesOf } from "../../coaching/diary/races-of";
import { seededChance } from "../../coaching/diary/seeded-chance";
import { symptomDays } from "../../coaching/diary/symptom-day";
import { type UnusualDay, unusualDays } from "../../coaching/diary/unusual-day";
import {
  type DiaryOfAthlete,
  itemsOfAthlete,
  whatDiffered,
} from "../../coaching/diary/what-differed";
import { sessionStarts } from "../../coaching/diary/written-after";
import { athleteNamed } from "../../coaching/record/athlete-named";
import { nameKey } from "../../coaching/record/name-key";
import { dayWords } from "../../words/days";
import {
  findingWords,
  isNoLink,
  noLinksWords,
  nothingStoodOut,
  symptomWordsOf,
  unusualDayParts,
  unusualValueWords,
} from "../../words/diary";
import { diaryViewWords, sizeWords, timelineWords } from "../../words/diary-view";
import type { DayToAsk, DiaryPicture, DiaryView } from "../messages";
import { type StateOfSquad, stateOfSquad } from "../squad/state-of-squad";
import type { Workbook } from "../workbook";
import { diaryAnswerPlace } from "./diary-answer-place";

/** One athlete's diary beside the season: what to look at first, days to ask about, what differed. */
export function diaryView(workbook: Workbook, today: Day, athlete: string): DiaryView {
  return diaryViewOf(stateOfSquad(workbook, today), athlete);
}

function diaryViewOf(state: StateOfSquad, athlete: string): DiaryView {
  const own = diaryOf(state, athlete);
  const { rows } = state.read;
  const about = athleteNamed(rows.athletes, athlete);
  const days = unusualDays({ ...own, races: racesOf(rows.races, athlete, about ?? null) });
  const symptoms = symptomDays(own.diary, state.asOf);
  // The same seed as the formula's: sidebar and cell give the same figures.
  const chance = seededChance(`${nameKey(athlete)} ${state.asOf}`);
  const items = whatDiffered(itemsOfAthlete(own), chance);
  return {
    athlete,
    first: symptoms.length === 0 ? "" : symptomWordsOf(symptoms),
    picture: pictureOf(own, days),
    days: askAbout(days, state.asOf).map((day) => dayToAsk(state, athlete, day)),
    noDays: days.length === 0 ? diaryViewWords.noDays : "",
    items: itemsSaid(items).map(({ item, words }) => ({
      item,
      words: state.numbers.marked(words),
    })),
    noItems: items.length === 0 ? diaryViewWords.noItems : "",
  };
}

/** Each item that says something in a sentence of its own, those without a link in one. */
function itemsSaid(items: readonly Finding[]): readonly DiaryView["items"][number][] {
  const without = items.filter(isNoLink);
  const together = without.length > 1 ? without : [];
  return [
    ...items
      .filter((finding) => !together.includes(finding))
      .map((finding) => ({ item: finding.item, words: findingWords(finding) })),
    ...(together.length > 0
      ? [{ item: diaryViewWords.others, words: noLinksWords(together) }]
      : []),
  ];
}

function diaryOf({ read, asOf, hold, index }: StateOfSquad, athlete: string): DiaryOfAthlete {
  const key = nameKey(athlete);
  const ofAthlete = <Row extends { readonly athlete: string }>(list: readonly Row[]) =>
    list.filter((row) => nameKey(row.athlete) === key);
  return {
    athlete,
    hold: hold.of(athlete),
    diary: index.of(athlete)?.diary ?? [],
    runs: ofAthlete(read.rows.runs).filter(({ day }) => day <= asOf),
    starts: sessionStarts(ofAthlete(read.rows.sets)),
  };
}

function pictureOf(own: DiaryOfAthlete, days: readonly UnusualDay[]): DiaryPicture | null {
  const timeline = diaryTimeline(own, days);
  const { sessions, marks } = timeline;
  const [first] = sessions;
  const last = sessions[sessions.length - 1];
  if (!first || !last) return null;
  return {
    athlete: own.athlete,
    from: isoFromDay(first.day),
    to: isoFromDay(Math.max(last.day, ...marks.map(({ day }) => day))),
    sessions: sessions.map((one) => ({ ...one, day: isoFromDay(one.day) })),
    band: oddSize,
    marks: marks.map((one) => ({ ...one, day: isoFromDay(one.day) })),
    inWords: timelineWords(own.athlete, timeline),
  };
}

function dayToAsk(state: StateOfSquad, athlete: string, one: UnusualDay): DayToAsk {
  const place = diaryAnswerPlace(state.read, athlete, one.day);
  const parts = unusualDayParts(one);
  const { marked } = state.numbers;
  const found = typeof place !== "string";
  return {
    day: isoFromDay(one.day),
    dayWords: dayWords(one.day),
    value: marked(unusualValueWords(one)),
    size: marked(sizeWords(one.size)),
    stoodOut: (parts.length > 0 ? parts : [nothingStoodOut]).map(marked),
    answerTo: found ? place.cell : null,
    noAnswer: found ? "" : place,
  };
}
