// @ts-check
/** @import { Fault } from "./fault.js" */

/**
 * What to say for each kind of fault: [few words for the header, what it means and what to do].
 * @type {Record<string, [string, string]>}
 */
const WORDS = {
  // Keeping the app on the phone.
  unsupported: ["old browser", "This browser cannot keep the app. Bring the browser up to date."],
  insecure: ["plain http", "Opened over plain http. Open the https address to keep the app."],
  blocked: ["storage blocked", "The browser blocks storage here. Leave private mode, or allow it."],
  unreachable: ["no signal", "No signal. What came is kept; the rest follows when signal is back."],
  slow: ["weak signal", "Signal too weak. What came is kept. Step outside and tap Retry."],
  portal: ["sign-in page", "The network answers with a page of its own. Sign in to it, then Retry."],
  mistyped: ["wrong file type", "The server gives a script another type than a script's, and the "
    + "browser refuses it. Tell whoever keeps the site."],
  short: ["file cut short", "A file came cut short and was refused. Tap Retry."],
  changed: ["wrong file", "A file is not the one this release lists. Tap Check for update."],
  missing: ["file missing", "A file is missing on the server. Tap Check for update."],
  server: ["server error", "The server answered with an error. Try again later."],
  full: ["phone full", "The phone has no room. Free some, then tap Retry."],
  incomplete: ["files cleared", "The browser cleared some files. Tap Repair with signal."],
  silent: ["store silent", "The store on this phone stopped answering. Tap Retry."],
  // Running the numbers.
  nowasm: ["no WebAssembly", "This browser cannot run the numbers (no WebAssembly). The answer "
    + "shown is for the job printed with it and will not follow your changes."],
  noworker: ["old browser", "This browser is too old to run the numbers. Bring it up to date."],
  nostart: ["did not start", "The numbers did not start. Tap Retry, or Repair if it comes back."],
  wrong: ["self-check failed", "The start-up check came out wrong, so nothing is shown. Tap Repair."],
  releases: ["two releases", "The page is newer than the numbers on this phone, so nothing is worked "
    + "out. Bring the app up to date: tap the red word on top, then the update."],
  hang: ["too long", "This sum took too long and was stopped. Change the job."],
  halted: ["stopped", "Stopped."],
  crash: ["stopped", "The numbers stopped. Started again."],
  refused: ["input refused", "That input stopped the numbers twice. Change it."],
  stopping: ["keeps stopping", "The numbers keep stopping. Close other tabs, then tap Retry."],
  broken: ["fault", "Something broke. Tap Retry; if it comes back, tap Repair."],
};

/** @param {Fault | {kind: string}} fault a few words, for the header */
export const shortWord = (fault) => (WORDS[fault.kind] ?? WORDS["broken"] ?? [""])[0];

/** @param {Fault | {kind: string}} fault a sentence or two, for the panel */
export const longWord = (fault) => (WORDS[fault.kind] ?? WORDS["broken"] ?? ["", ""])[1];

/** @param {unknown} error in words, where it is a fault that has some; else as it came */
export function reasonOf(error) {
  const { kind, message } = /** @type {{kind?: string, message?: string}} */ (error ?? {});
  return WORDS[kind ?? ""]?.[1] ?? `That broke: ${message ?? error}`;
}

/** Megabytes as written on a data plan. @param {number} bytes */
export const megabytes = (bytes) => `${(bytes / 1e6).toFixed(1)} MB`;
