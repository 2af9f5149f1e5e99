import { settingInUse } from "../../../../src/coaching/hold/measures/setting-in-use";
import { squadIndex } from "../../../../src/coaching/series/squad-index";
import { liftingSet, sessionDay } from "../../series/invented-season";

/** One set a session with the tools named, and the tool in use as of a session. */
const inUse = (tools: string, asOf: number) => {
  const sets = [...tools].map((tool, session) =>
    liftingSet({ day: sessionDay(session), loadKg: 60, repSpeeds: [0.7], tool }),
  );
  const [athlete] = squadIndex({ sets }, sessionDay(tools.length)).athletes.values();
  const [lift] = athlete!.lifts.values();
  return settingInUse(lift!, sessionDay(asOf))?.tool;
};

test("the tool of the baseline is in use while one of the last two sessions had it", () => {
  expect(inUse("aaaa", 1)).toBe("a");
  expect(inUse("aabab", 1)).toBe("a");
  expect(inUse("aaab", 1)).toBe("a");
  expect(inUse("aabb", 1)).toBeUndefined();
  expect(inUse("aaabb", 2)).toBeUndefined();
  expect(inUse("aabb", 3)).toBe("b");
});

test("before the first set no tool is in use", () => {
  expect(inUse("aa", -1)).toBeUndefined();
});
