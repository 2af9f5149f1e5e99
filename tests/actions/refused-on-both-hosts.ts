import type { KeptMatter } from "../../src/actions/messages";
import type { RequestName } from "../../src/actions/requests";
import type { Message } from "../faults/writing-actions";
import { bothHosts } from "./both-hosts";
import { club } from "./both-hosts-contract";
import type { HeldWorkbook } from "./held-workbook";
import { whatStands } from "./what-stands";

/** A request that cannot be done: how the workbook came there, what was asked, what is said. */
export type Refused = {
  readonly request: RequestName;
  readonly why: string;
  readonly prepare?: (book: HeldWorkbook) => void;
  readonly message: (book: HeldWorkbook) => Message;
  /** What can no longer be read when it is asked. */
  readonly damaged?: KeptMatter;
  readonly sentence: string | RegExp;
};

/** It is refused in the same sentence by both hosts, and leaves all as it is. */
export function refusedOnBothHosts(one: Refused): void {
  describe(`${one.request}: ${one.why}`, () => {
    const said: string[] = [];

    test.each(bothHosts)("on %s: refused, and all is as it was", async (_, open) => {
      const book = await open(club);
      one.prepare?.(book);
      const message = one.message(book);
      if (one.damaged !== undefined) {
        book.damage(one.damaged);
        await book.reopen();
      }
      const before = whatStands(book.tabs(), book.kept());
      for (let turn = 1; turn <= 2; turn++) {
        expect(() => {
          try {
            book.ask(one.request, message);
          } catch (error) {
            said.push((error as Error).message);
            throw error;
          }
        }).toThrow(one.sentence);
        expect(whatStands(book.tabs(), book.kept())).toEqual(before);
      }
      book.close();
    });

    test("both hosts say the same", () => {
      expect(said).toHaveLength(4);
      expect(new Set(said).size).toBe(1);
    });
  });
}
