import { execFileSync } from "node:child_process";
import { copyFileSync, cpSync, existsSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

const root = join(__dirname, "../..");
const folder = mkdtempSync(join(tmpdir(), "holdline-push-"));

afterAll(() => rmSync(folder, { recursive: true, force: true }));

test("a push sends the script, the sidebar's page and the manifest, and nothing else", () => {
  if (!existsSync(join(root, "dist/local"))) {
    execFileSync(process.execPath, [join(root, "src/bundle/build.mjs")], { cwd: root });
  }
  cpSync(join(root, "dist"), join(folder, "dist"), { recursive: true });
  copyFileSync(join(root, ".claspignore"), join(folder, ".claspignore"));
  writeFileSync(join(folder, ".clasp.json"), '{ "scriptId": "none", "rootDir": "dist" }');
  // It answers without an account and without a network: only files on disk are looked at.
  const answer = execFileSync(
    join(root, "node_modules/.bin/clasp"),
    ["show-file-status", "--json"],
    {
      cwd: folder,
      encoding: "utf8",
      env: { ...process.env, HOME: folder },
    },
  );
  const { filesToPush } = JSON.parse(answer) as { filesToPush: string[] };
  const sidebar = existsSync(join(root, "src/bundle/sidebar-page.mjs"))
    ? ["dist/Sidebar.html"]
    : [];
  expect(filesToPush.sort()).toEqual([...sidebar, "dist/appsscript.json", "dist/code.js"]);
});
