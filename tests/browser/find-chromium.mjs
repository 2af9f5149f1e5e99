// Prints, as JSON, which Chromium to start and how: the machine's own, or the one installed by npm,
// which needs nothing of the machine. A program by itself, as the package cannot be required.
import { existsSync, mkdirSync, rmSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { setTimeout as pause } from "node:timers/promises";

const own = ["/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome"];
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
  // Test files start at once, and each would unpack over the others.
  const lock = join(tmpdir(), "holdline-chromium.lock");
  for (let waited = 0; !taken(lock) && waited < 60_000; waited += 200) await pause(200);
  const { default: chromium, inflate } = await import("@sparticuz/chromium");
  const main = createRequire(import.meta.url).resolve("@sparticuz/chromium");
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
