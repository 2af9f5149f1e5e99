import { grouped } from "../../../src/coaching/series/grouped";

test("rows by a key keep their order, and keys the order in which they first appear", () => {
  const rows = ["Wren 1", "Ilka 1", "Wren 2"];
  expect([...grouped(rows, (row) => row.split(" ")[0]!)]).toEqual([
    ["Wren", ["Wren 1", "Wren 2"]],
    ["Ilka", ["Ilka 1"]],
  ]);
  expect([...grouped([], String)]).toEqual([]);
});
