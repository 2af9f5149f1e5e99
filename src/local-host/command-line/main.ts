import { join } from "node:path";
import { commandLine } from "./command-line";

/** The program as built: `dist/local/holdline.cjs`, its sample beside `dist`. */
const dist = join(__dirname, "..");

// Whoever reads the first lines alone, as `head` does, has heard enough: that is no mistake, and a
// workbook that is served goes on.
for (const stream of [process.stdout, process.stderr])
  stream.on("error", (error: NodeJS.ErrnoException) => {
    if (error.code !== "EPIPE") throw error;
  });

commandLine(process.argv.slice(2), {
  dist,
  sample: join(dist, "../sample-sheets"),
  out: (text) => process.stdout.write(text),
  err: (text) => process.stderr.write(text),
  today: () => {
    const now = new Date();
    const two = (part: number) => String(part).padStart(2, "0");
    return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
  },
  untilStopped: () =>
    new Promise((resolve) => {
      for (const signal of ["SIGINT", "SIGTERM", "SIGHUP"] as const) {
        process.once(signal, () => resolve());
      }
    }),
}).then(
  (status) => {
    process.exitCode = status;
  },
  (error: unknown) => {
    process.stderr.write(`Holdline stopped on a mistake of its own: ${String(error)}\n`);
    process.exitCode = 1;
  },
);
