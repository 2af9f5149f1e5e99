// Prints, as JSON, which Chromium to start and how: the one HOLDLINE_CHROMIUM names, the machine's own, or
// the one installed by npm, which needs nothing of a Linux machine. A program by itself, as the package
// cannot be required.
import { existsSync, mkdirSync, readFileSync, rmSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { setTimeout as pause } from "node:timers/promises";

const own = [
  process.env.HOLDLINE_CHROMIUM ?? "",
  "/usr/bin/chromium",
  "/usr/bin/chromium-browser",
  "/usr/bin/google-chrome",
  "/Applications/Chromium.app/Contents/MacOS/Chromium",
  "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
];
const flags = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

const found = own.find((path) => existsSync(path));
if (found) print({ executablePath: found, args: flags, env: {} });
else {
  const main = createRequire(import.meta.url).resolve("@sparticuz/chromium");
  const { version } = JSON.parse(readFileSync(join(dirname(main), "../package.json"), "utf8"));
  // Unpacked into the folder for what is temporary, where another user's may lie, or another version.
  process.env.TMPDIR = join(tmpdir(), `holdline-chromium-${version}-${process.getuid?.() ?? 0}`);
  mkdirSync(tmpdir(), { recursive: true });
  // Test files start at once, and each would unpack over the others.
  const lock = join(tmpdir(), "lock");
  for (let waited = 0; !taken(lock) && waited < 60_000; waited += 200) await pause(200);
  const { default: chromium, inflate } = await import("@sparticuz/chromium");
  const libraries = await inflate(join(dirname(main), "../bin/al2023.tar.br"));
  print({
    executablePath: await chromium.executablePath(),
    // Two of its own arguments would switch off what the tests are to prove, or end with the first page.
    args: [
      ...chromium.args.filter(
        (arg) => !/disable-web-security|single-process|allow-running-insecure|headless/.test(arg),
      ),
      ...flags,
    ],
    env: { LD_LIBRARY_PATH: join(libraries, "lib") },
  });
  rmSync(lock, { recursive: true, force: true });
}

function taken(lock) {
  try {
    mkdirSync(lock);
    return true;
  } catch {
    return false;
  }
}

function print(chromium) {
  process.stdout.write(JSON.stringify(chromium));
}
