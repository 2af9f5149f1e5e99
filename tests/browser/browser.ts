import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { type BrowserContext, chromium } from "playwright-core";

type Found = {
  readonly executablePath: string;
  readonly args: readonly string[];
  readonly env: Readonly<Record<string, string>>;
};

/** A Chromium with a profile of its own, gone when closed; `textPx` is the reader's own size of text. */
export async function launchBrowser({ textPx = 16 }: { readonly textPx?: number } = {}): Promise<{
  readonly context: BrowserContext;
  readonly close: () => Promise<void>;
}> {
  const finder = join(__dirname, "find-chromium.mjs");
  const found = JSON.parse(execFileSync(process.execPath, [finder], { encoding: "utf8" })) as Found;
  const profile = mkdtempSync(join(tmpdir(), "holdline-browser-"));
  const environment = Object.entries(process.env).flatMap(([name, value]) =>
    value === undefined ? [] : [[name, value] as const],
  );
  const context = await chromium.launchPersistentContext(profile, {
    executablePath: found.executablePath,
    args: [...found.args, `--blink-settings=defaultFontSize=${textPx}`],
    env: { ...Object.fromEntries(environment), ...found.env },
    headless: true,
    viewport: { width: 1280, height: 800 },
    locale: "en-GB",
  });
  return {
    context,
    close: async () => {
      await context.close();
      rmSync(profile, { recursive: true, force: true });
    },
  };
}
