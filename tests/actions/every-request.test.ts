import { requestEffects } from "../../src/actions/messages/request-effects";
import { type RequestName, requests, serveRequest } from "../../src/actions/requests";
import { menuFunctions } from "../../src/actions/server-functions";
import { cellsOf, openServices } from "../faults/held-by-services";
import { smallClub } from "../faults/small-club";
import { looking, scenarios } from "../faults/writing-actions";
import { isAnswer } from "./both-hosts-contract";
import { memoryWorkbook } from "./memory-workbook";

// The lists that the tests of both hosts and those with faults go through; what is in none is forgotten.
const writing = new Set(scenarios.map(({ request }) => request));

test("every request writes and has a scenario, or only looks: a new one is in one of the lists", () => {
  expect([...writing, ...looking].sort()).toEqual(Object.keys(requests).sort());
});

test("what the sidebar is told of a request, that it writes or only looks, is so", () => {
  const said = Object.entries(requestEffects).filter(([, effect]) => effect === "writes");
  expect(said.map(([name]) => name).sort()).toEqual([...writing].sort());
});

test("requests about what is remembered come in pairs, one that takes back what the other said", () => {
  const answers = scenarios.filter(isAnswer).map(({ request }) => request);
  const about = (verb: string) =>
    new Set(answers.flatMap((name) => (name.startsWith(verb) ? name.slice(verb.length) : [])));
  expect([...about("forget")].sort()).toEqual([...about("answer"), "Damaged"].sort());
});

test("a message with more in it than is asked for is refused by both hosts, whatever the request", async () => {
  const book = memoryWorkbook(smallClub());
  const host = await openServices();
  const ways = [
    (name: RequestName) => serveRequest(book, name, { more: 1 }),
    (name: RequestName) => host.run(name, [{ more: 1 }]),
  ];
  const before = [book.all(), host.workbook()];
  for (const name of Object.keys(requests) as RequestName[]) {
    for (const way of ways) expect(() => way(name)).toThrow(/^The sidebar sent .+ cannot be right/);
  }
  expect([book.all(), host.workbook()]).toEqual(before);
  host.dispose();
});

test("of what the menu calls, only highlighting writes, and it leaves what the sidebar's does", async () => {
  const left = async (name: string, args: readonly unknown[]) => {
    const host = await openServices();
    const before = host.workbook();
    host.run(name, args);
    const all = { cells: cellsOf(host), workbook: host.workbook() };
    host.dispose();
    return { ...all, changed: JSON.stringify(before) !== JSON.stringify(all.workbook) };
  };
  const all: Record<string, Awaited<ReturnType<typeof left>>> = {};
  for (const { name } of menuFunctions.filter((one) => one.name !== "openSidebar")) {
    all[name] = await left(name, name === "highlightNow" ? [] : [{ authMode: "FULL" }]);
  }
  expect(Object.keys(all).filter((name) => all[name]!.changed)).toEqual(["highlightNow"]);
  expect(all.highlightNow).toEqual(await left("highlightSquad", [{}]));
});
