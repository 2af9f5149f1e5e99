import { sidebarBridge } from "./sidebar-bridge";

/** An HTML page of the script project with the bridge as its first script, all allowed by the nonce. */
export function sandboxedPage(html: string, nonce: string): string {
  const page = new DOMParser().parseFromString(html, "text/html");
  const bridge = page.createElement("script");
  bridge.textContent = `(${sidebarBridge})();`;
  page.head.prepend(bridge);
  for (const script of page.querySelectorAll("script")) script.setAttribute("nonce", nonce);
  return `<!doctype html>${page.documentElement.outerHTML}`;
}
