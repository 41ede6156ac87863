// @ts-check
/* The set of files as a whole: how much of it is here, and storing what is missing. */
import { arriving } from "./download.js";
import { asFault } from "./fault.js";
import { RELEASE, weight } from "./release_list.js";
import { obtain, storedHashes } from "./store.js";

/** @import { Fault } from "./fault.js" */
/** @import { ReleaseFile } from "./release_list.js" */
/** @typedef {{type: string, [more: string]: unknown}} News */

export const BEAT_MS = 1_000; // how often a waiting page hears that work goes on
/** Runtime files fetched at a time: large ones, on a weak signal. */
export const RUNTIME_LANES = 2;

/** What this release is and how much of it is here. */
export async function about() {
  const here = await storedHashes();
  const stored = RELEASE.files.filter((file) => here.has(file.sha256));
  const sum = (/** @type {ReleaseFile[]} */ files) => files.reduce((all, f) => all + f.bytes, 0);
  return {
    id: RELEASE.id, version: RELEASE.version,
    files: RELEASE.files.length, bytes: sum(RELEASE.files),
    storedFiles: stored.length, storedBytes: sum(stored),
    complete: RELEASE.files.length > 0 && stored.length === RELEASE.files.length,
  };
}

/** Store what is missing of `files`. The first fault stops new downloads, finished files stay.
 * @param {ReleaseFile[]} files @param {number} lanes @param {(news: News) => void} tell */
export async function ensure(files, lanes, tell) {
  const here = await storedHashes();
  const missing = [...new Map(files.map((file) => [file.sha256, file])).values()]
    .filter((file) => !here.has(file.sha256));
  if (missing.length === 0) return;
  const total = files.reduce((sum, file) => sum + weight(file), 0);
  const report = () => {
    const left = missing.reduce((sum, file) => (here.has(file.sha256) ? sum : sum + weight(file)
      - (arriving.get(file.sha256) ?? 0)), 0);
    tell({ type: "progress", id: RELEASE.id, done: Math.round(total - left), total });
  };
  const beat = setInterval(report, BEAT_MS);
  report();
  /** @type {Fault | undefined} */
  let fault;
  const queue = [...missing];
  const lane = async () => {
    for (let file = queue.shift(); file && !fault; file = queue.shift()) {
      try {
        await obtain(file).stored;
        here.add(file.sha256);
        report();
      } catch (error) {
        fault ??= asFault(error, file.url);
      }
    }
  };
  await Promise.all(Array.from({ length: lanes }, lane));
  clearInterval(beat);
  if (fault) throw fault;
}

/** One job serves every page that asks; all of them hear its progress. @type {Promise<void> | null} */
let ensuring = null;
/** @type {Set<(news: News) => void>} */
const listeners = new Set();

/** @param {(news: News) => void} tell */
export async function ensureAll(tell) {
  listeners.add(tell);
  ensuring ??= ensure(RELEASE.files, RUNTIME_LANES, (news) => {
    for (const listener of listeners) listener(news);
  }).finally(() => {
    ensuring = null;
  });
  await ensuring.finally(() => listeners.delete(tell));
}
