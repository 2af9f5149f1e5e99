import { readFileSync } from "node:fs";
import { join } from "node:path";

const dist = join(__dirname, "../../dist");
const bridge = `<script>
  const call = (done, failed) => new Proxy({}, { get: (_, name) =>
    name === "withSuccessHandler" ? (next) => call(next, failed)
    : name === "withFailureHandler" ? (next) => call(done, next)
    : (message) => window.ask(name, JSON.stringify(message)).then(
        (answer) => done(JSON.parse(answer)), (error) => failed({ message: error.message })) });
  window.google = { script: { run: call() } };
</script>`;

/** The built sidebar, whose calls of the script's functions go to the page's own `ask`. */
export const framedSidebar = (): string =>
  readFileSync(join(dist, "Sidebar.html"), "utf8").replace(/<head>/, () => `<head>${bridge}`);
