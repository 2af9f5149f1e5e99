// Takes the README's pictures from the real program on the sample workbook: `npm run pictures`.
import { execFileSync, spawn } from "node:child_process";
import { mkdirSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { chromium } from "playwright-core";

const here = dirname(fileURLToPath(import.meta.url));
const root = join(here, "../..");
const pictures = join(here, "pictures");
mkdirSync(pictures, { recursive: true });

const program = spawn(process.execPath, ["dist/local/holdline.cjs", "open", "sample-sheets"], {
  cwd: root,
});
const address = await new Promise((resolve, reject) => {
  let said = "";
  const listen = (part) => {
    said += part;
    const found = /http:\/\/127\.0\.0\.1\S+/.exec(said);
    if (found) resolve(found[0]);
  };
  program.stdout.on("data", listen);
  program.stderr.on("data", listen);
  program.on("exit", () => reject(new Error(`The program ended: ${said}`)));
});

const found = JSON.parse(
  execFileSync(process.execPath, [join(here, "find-chromium.mjs")], { encoding: "utf8" }),
);
const profile = mkdtempSync(join(tmpdir(), "holdline-pictures-"));
const context = await chromium.launchPersistentContext(profile, {
  executablePath: found.executablePath,
  args: found.args,
  env: { ...process.env, ...found.env },
  headless: true,
  viewport: { width: 1280, height: 720 },
  locale: "en-GB",
});
try {
  const page = context.pages()[0];
  await page.goto(address);
  await page.waitForSelector(".grid canvas[id^=univer-sheet-main-canvas]", { timeout: 120_000 });
  await page.getByText("Holdline", { exact: true }).first().click();
  await page.getByText("Open sidebar").first().click();
  const sidebar = page.frameLocator("aside.sidebar iframe");
  await sidebar.getByText("Read first").waitFor({ timeout: 120_000 });
  // The grid draws a moment after it has the values.
  await page.waitForTimeout(3000);
  await page.screenshot({ path: join(pictures, "squad-tab.png") });
  await sidebar.getByText("Tomas Reyerson").first().click();
  await sidebar.getByText("All athletes").waitFor({ timeout: 60_000 });
  await page.waitForTimeout(3000);
  await page.screenshot({ path: join(pictures, "one-athlete.png") });
} finally {
  await context.close();
  program.kill();
  rmSync(profile, { recursive: true, force: true });
}
