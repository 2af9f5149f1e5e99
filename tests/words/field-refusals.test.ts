import { fieldRefusals } from "../../src/words/field-refusals";

test.each(["", "  ", "5x15+5", "5×15 + 2,5", "20"])("a stack typed as %p can be sent", (text) => {
  expect(fieldRefusals.stack(text)).toBe("");
});

test.each(["40 cm", "big box", "15x5x2", "30x5", "5×15+5 (40 cm)"])(
  "a stack typed as %p cannot be read, and how to write it is said",
  (text) => {
    expect(fieldRefusals.stack(text)).toMatch(/^Write the plates from the bottom up as 5x15\+5\./);
  },
);

test.each(["0", "40", "120"])("%s contacts can be sent", (text) => {
  expect(fieldRefusals.contacts(text)).toBe("");
});

test.each(["", "121", "500", "-1", "4.5", "4,5", "1e2"])("%p contacts cannot", (text) => {
  expect(fieldRefusals.contacts(text)).toMatch(/whole number from 0 to 120/);
});
