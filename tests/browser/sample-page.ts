import { cpSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { launchBrowser } from "./browser";
import { type Program, startProgram } from "./program";
import { ready } from "./served-page";

/** A copy of the sample squad, opened in the built program and shown in a real browser. */
export type SamplePage = {
  readonly page: Page;
  /** The copy's folder; saved, the workbook stands beside it as .xlsx. */
  readonly squad: string;
  readonly newPage: () => Promise<Page>;
  /** Ends the program and starts it again with another workbook on the same page. */
  readonly openInstead: (workbook: string) => Promise<void>;
  readonly close: () => Promise<void>;
};

export async function samplePage(): Promise<SamplePage> {
  const folder = mkdtempSync(join(tmpdir(), "holdline-sample-"));
  const squad = join(folder, "Quillbeck");
  cpSync(join(__dirname, "../../sample-sheets"), squad, { recursive: true });
  const browser = await launchBrowser();
  const newPage = () => browser.context.newPage();
  const page = browser.context.pages()[0] ?? (await newPage());
  let program: Program;
  const open = async (workbook: string) => {
    program = startProgram("open", workbook);
    await page.goto(await program.address);
    await ready(page);
  };
  await open(squad);
  return {
    page,
    squad,
    newPage,
    openInstead: async (workbook) => {
      await program.stop();
      await open(workbook);
    },
    close: async () => {
      await browser.close();
      await program.stop();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}
