// ../../tmp/side/look.ts
var import_node_fs4 = require("node:fs");

// tests/browser/browser.ts
var import_node_child_process = require("node:child_process");
var import_node_fs = require("node:fs");
var import_node_os = require("node:os");
var import_node_path = require("node:path");
var import_playwright_core = require("playwright-core");
async function launchBrowser() {
  const finder = (0, import_node_path.join)(__dirname, "find-chromium.mjs");
  const found = JSON.parse((0, import_node_child_process.execFileSync)(process.execPath, [finder], { encoding: "utf8" }));
  const profile = (0, import_node_fs.mkdtempSync)((0, import_node_path.join)((0, import_node_os.tmpdir)(), "holdline-browser-"));
  const environment = Object.entries(process.env).flatMap(
    ([name, value]) => value === void 0 ? [] : [[name, value]]
  );
  const context = await import_playwright_core.chromium.launchPersistentContext(profile, {
    executablePath: found.executablePath,
    args: [...found.args],
    env: { ...Object.fromEntries(environment), ...found.env },
    headless: true,
    viewport: { width: 1280, height: 800 },
    locale: "en-GB"
  });
  return {
    context,
    close: async () => {
      await context.close();
      (0, import_node_fs.rmSync)(profile, { recursive: true, force: true });
    }
  };
}

// tests/browser/program.ts
var import_node_child_process2 = require("node:child_process");
var import_node_fs2 = require("node:fs");
var import_node_path2 = require("node:path");
var built = (0, import_node_path2.join)(__dirname, "../../dist/local/holdline.cjs");
function startProgram(...args) {
  if (!(0, import_node_fs2.existsSync)(built)) throw new Error("Run npm run build first: the program is missing.");
  const program = (0, import_node_child_process2.spawn)(process.execPath, [built, ...args]);
  let said = "";
  let complaint = "";
  program.stderr.on("data", (text) => {
    complaint += String(text);
  });
  const ended = new Promise((resolve) => program.on("exit", resolve));
  const address = new Promise((resolve, reject) => {
    program.stdout.on("data", (text) => {
      said += String(text);
      const found = /http:\/\/\S+/.exec(said);
      if (found) resolve(found[0]);
    });
    void ended.then((status) => reject(new Error(`It ended with ${status}: ${complaint}`)));
  });
  return {
    address,
    stop: async () => {
      program.kill("SIGINT");
      return { status: await ended, said };
    }
  };
}

// tests/browser/served-page.ts
var import_node_path4 = require("node:path");

// tests/local-host/built.ts
var import_node_fs3 = require("node:fs");
var import_node_path3 = require("node:path");
var built2 = (0, import_node_path3.join)(__dirname, "../../dist/local/node.cjs");
if (!(0, import_node_fs3.existsSync)(built2)) throw new Error("Run npm run build first: these tests use the built host.");
var local = require(built2);

// tests/browser/served-page.ts
var dist = (0, import_node_path4.join)(__dirname, "../../dist");
async function ready(page) {
  await page.waitForSelector(".grid canvas[id^=univer-sheet-main-canvas]");
  await until(() => page.evaluate(() => globalThis.holdline !== void 0));
}
async function until(question) {
  const end = performance.now() + 6e4;
  while (!await question()) {
    if (performance.now() > end) throw new Error("This did not come about within a minute.");
    await new Promise((resolve) => setTimeout(resolve, 50));
  }
}

// ../../tmp/side/look.ts
(async () => {
  const dir = (0, import_node_fs4.mkdtempSync)("/tmp/side/wb-");
  (0, import_node_fs4.cpSync)("/work/main/sample-sheets", dir + "/Q", { recursive: true });
  const program = startProgram("open", dir + "/Q");
  const { context, close } = await launchBrowser();
  try {
    const page = context.pages()[0] ?? await context.newPage();
    page.on("console", (m) => {
      if (m.type() === "error") console.log("C", m.text());
    });
    await page.goto(await program.address);
    await ready(page);
    await page.getByRole("button", { name: "Holdline" }).click();
    await page.getByRole("menuitem").first().click();
    const inside = page.frameLocator("aside.sidebar iframe");
    await inside.getByRole("navigation").waitFor();
    const shot = async (n) => {
      await page.waitForTimeout(600);
      await page.screenshot({ path: `/tmp/side/${n}.png` });
    };
    const frames = () => page.frames().filter((f) => f !== page.mainFrame());
    const axe = async (n) => {
      for (const f of frames()) {
        const r = await f.evaluate(`(async()=>{${(0, import_node_fs4.readFileSync)("/work/main/node_modules/axe-core/axe.min.js", "utf8")};
          const m=document.querySelector("#sidebar"); if(!m) return null;
          const r=await axe.run(document);return {w:document.documentElement.scrollWidth, c:document.documentElement.clientWidth, v:r.violations.map(v=>v.id+" "+v.impact+" "+v.nodes.length+" "+v.nodes[0].html.slice(0,120))}})()`).catch((e) => String(e).slice(0, 200));
        if (r) console.log(n, JSON.stringify(r, null, 1));
      }
    };
    const t0 = Date.now();
    await inside.locator("main[aria-busy=false]").waitFor({ timeout: 6e4 });
    console.log("week ready ms", Date.now() - t0);
    await shot("week");
    await axe("week");
    for (const v of ["Squad", "Rows", "Set up"]) {
      await inside.getByRole("navigation").getByRole("button", { name: new RegExp("^" + v) }).click();
      await inside.locator("main[aria-busy=false]").waitFor({ timeout: 6e4 });
      await shot(v.replace(" ", ""));
      await axe(v);
    }
    await inside.getByRole("navigation").getByRole("button", { name: "Next week" }).click();
    const first = inside.locator("button.row").first();
    if (await first.count()) {
      await inside.getByRole("button", { name: /Tomas/ }).click();
      await inside.locator("main[aria-busy=false]").waitFor({ timeout: 6e4 });
      await page.setViewportSize({ width: 1280, height: 1800 });
      await shot("athlete");
      await axe("athlete");
      await page.setViewportSize({ width: 1280, height: 800 });
      await inside.getByRole("button", { name: /All athletes/ }).click();
      await inside.getByRole("button", { name: /^Write \d+ rows/ }).click();
      await inside.locator("main[aria-busy=false]").waitFor({ timeout: 6e4 });
      await page.waitForTimeout(3e3);
      await inside.locator("main[aria-busy=false]").waitFor({ timeout: 6e4 });
      await shot("written");
      await page.evaluate(() => {
        const b = globalThis.holdline.engine.book;
        b.setActiveSheet(b.getSheetByName("Next week"));
      });
      await page.waitForTimeout(2e3);
      await shot("weektab");
    }
  } finally {
    await close();
    await program.stop();
  }
})().catch((e) => {
  console.error(e);
  process.exitCode = 1;
});
