import { askedFor, UsageError } from "./arguments";
import { checkCommand } from "./check-command";
import { formulaCommand } from "./formula-command";
import { help } from "./help";
import { openCommand } from "./open-command";
import { squadCommand } from "./squad-command";
import { Refused, type Surroundings } from "./surroundings";

/** Runs the program; returns its exit status: 0 done, 1 problems or refused, 2 wrong usage. */
export async function commandLine(argv: readonly string[], around: Surroundings): Promise<number> {
  try {
    const asked = askedFor(argv);
    switch (asked.command) {
      case "help":
        around.out(help);
        return 0;
      case "squad":
        return await squadCommand(asked, around);
      case "formula":
        return await formulaCommand(asked, around);
      case "check":
        return await checkCommand(asked, around);
      case "open":
        return await openCommand(asked, around);
      case "start": {
        const status = await squadCommand(asked, around);
        return asked.serve && status === 0 ? await openCommand(asked, around) : status;
      }
    }
  } catch (error) {
    if (error instanceof UsageError) {
      around.err(`${error.message}\n\n${help}`);
      return 2;
    }
    if (!(error instanceof Refused)) throw error;
    around.err(`${error.message}\n`);
    return 1;
  }
}
