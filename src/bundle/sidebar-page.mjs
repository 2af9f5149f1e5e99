import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { build } from "esbuild";
import { chosenLanguage } from "./other-language.mjs";

/**
 * `dist/Sidebar.html`: one page with its style and script inside. The online host is said to strip
 * text after // or a star inside template literals, so the script is built without any.
 */
export default async function sidebarPage({ root, dist }) {
  const { outputFiles } = await build({
    entryPoints: [join(root, "src/sidebar/main.tsx")],
    bundle: true,
    plugins: [chosenLanguage()],
    write: false,
    minify: true,
    format: "iife",
    target: "es2020",
    supported: { "template-literal": false },
    jsx: "automatic",
    jsxImportSource: "preact",
    charset: "utf8",
    legalComments: "none",
    logLevel: "error",
  });
  const style = await build({
    stdin: {
      contents: ["sidebar/tokens.css", "sidebar/sidebar.css", "pages/pages.css"]
        .map((name) => readFileSync(join(root, "src", name), "utf8"))
        .join("\n"),
      loader: "css",
    },
    write: false,
    minify: true,
    logLevel: "error",
  });
  // Functions as replacements: a "$&" in the script would otherwise be taken for a pattern.
  const page = `<!DOCTYPE html>
<html lang="en-GB">
<head>
<meta charset="utf-8">
<base target="_top">
<title>Holdline</title>
<style>STYLE</style>
</head>
<body>
<div id="pages"></div>
<div id="sidebar"></div>
<script>SCRIPT</script>
</body>
</html>
`
    .replace("STYLE", () => style.outputFiles[0].text)
    .replace("SCRIPT", () => outputFiles[0].text.replace(/<\/script/gi, "<\\/script"));
  writeFileSync(join(dist, "Sidebar.html"), page);
}
