import { localPage } from "../../words/local-page";

/** The page's frame; everything else is drawn by its script. The nonce lets the add-on's script run. */
export function pageHtml(nonce: string): string {
  return `<!doctype html>
<html lang="en-GB">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width">
<title>${localPage.product}</title>
<link rel="icon" href="data:,">
<link rel="stylesheet" href="page.css">
</head>
<body>
<div id="page" class="loading"><p class="wait" role="status">${localPage.opening}</p></div>
<script src="page.js" nonce="${nonce}"></script>
</body>
</html>
`;
}
