import { bridgeWords } from "../words/bridge";

/** The way from the sidebar to the script: one call by name, one answer. */
export type Bridge = (name: string, message: unknown) => Promise<unknown>;

type Runner = {
  withSuccessHandler(handle: (answer: unknown) => void): Runner;
  withFailureHandler(handle: (error: { readonly message?: string }) => void): Runner;
} & Readonly<Record<string, (message: unknown) => void>>;

declare const google: { readonly script: { readonly run: Runner } } | undefined;

/** The platform's own bridge; the local workbook speaks the same. */
export const scriptBridge: Bridge = (name, message) =>
  new Promise((resolve, reject) => {
    if (typeof google === "undefined") {
      reject(new Error(bridgeWords.notConnected));
      return;
    }
    const runner = google.script.run
      .withSuccessHandler(resolve)
      .withFailureHandler((error) => reject(new Error(sentenceOf(error))));
    const call = runner[name];
    if (call) call.call(runner, message);
    else reject(new Error(bridgeWords.otherVersion));
  });

/** The platform puts "Error: " or "Exception: " before a sentence, and may answer with nothing. */
function sentenceOf(error: { readonly message?: string } | null): string {
  const text = String(error?.message ?? "").replace(/^(?:Error|Exception): /, "");
  return text === "" ? bridgeWords.noAnswer : text;
}
