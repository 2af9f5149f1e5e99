import type { Realm } from "../host";

/** What a browser's realm has and the platform's does not: a script that leans on it must fail here too. */
const absent = [
  "fetch",
  "XMLHttpRequest",
  "WebSocket",
  "setTimeout",
  "setInterval",
  "requestAnimationFrame",
  "URL",
  "TextEncoder",
  "TextDecoder",
  "atob",
  "btoa",
  "crypto",
  "performance",
  "structuredClone",
];

/** Evaluates a script in a frame of its own, without tools that the platform does not give. */
export function scriptRealm(
  globals: Readonly<Record<string, unknown>>,
  source: string,
  nonce: string,
): Realm {
  const frame = document.createElement("iframe");
  frame.hidden = true;
  frame.title = "Script";
  document.body.append(frame);
  const realm = frame.contentWindow as unknown as Record<string, unknown> | null;
  const page = frame.contentDocument;
  if (!realm || !page) throw new Error("The browser gave the script no frame of its own.");
  for (const name of absent) Object.defineProperty(realm, name, { value: undefined });
  Object.assign(realm, globals);
  const script = page.createElement("script");
  script.nonce = nonce;
  script.textContent = `${source}\n//# sourceURL=code.js`;
  page.head.append(script);
  return realm;
}
