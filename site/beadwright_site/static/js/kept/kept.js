// @ts-check
import { promisifyRequest } from "../../vendor/idb-keyval.js";
import { asFault, Fault } from "../offline/fault.js";
import { onOtherTab } from "./other_tabs.js";
import { putRows } from "./shelf.js";
import { note, read, write } from "./store.js";

/** @import { Rows } from "./shelf.js" */
/** @typedef {{[name: string]: string}} Names */
/** @typedef {{query: string, line: string}} LastJob */

// Fixed names: what was kept must be found by every later release.
const SHOP = "shop";
const ASIDE = "unreadable shop";
const lastKey = (/** @type {string} */ page) => `last-${page}`;
/** Where the first releases kept the last job of Dial in. */
const OLD_LAST = "last-job";

/** @param {unknown} found @returns {found is {[name: string]: unknown}} */
const isEntries = (found) => typeof found === "object" && found !== null && !Array.isArray(found);

/** Entries this release can read. @param {unknown} found @returns {Names} */
function names(found) {
  if (!isEntries(found)) return {};
  return /** @type {Names} */ (Object.fromEntries(
    Object.entries(found).filter(([, text]) => typeof text === "string")));
}

/** @template T @param {{[name: string]: T}} all @returns {{[name: string]: T}} without the blank ones */
const filled = (all) => Object.fromEntries(Object.entries(all).filter(([, text]) => text !== ""));

/** The last job of Dial in moves to where those of all pages are. */
async function moveOldLast() {
  const old = await read((kept) => promisifyRequest(kept.get(OLD_LAST)));
  if (old === undefined) return;
  await note(async (kept) => {
    const newer = await promisifyRequest(kept.get(lastKey("dial-in")));
    putRows(kept, [[lastKey("dial-in"), newer ?? old], [OLD_LAST, undefined]]);
  });
}

/** What the shop keeps on this phone; every page is asked with it. Event "news": another tab kept
 * something, here or in the records. */
class Kept extends EventTarget {
  /** What counts: what is on the phone, and what could not be written there. @type {Names} */
  now = {};
  /** Not written, but counted while the app is open, and written with the next. @type {Names} */
  #held = {};
  /** Why not all of it could be read. @type {Fault | null} */
  fault = null;
  ready = this.#read();

  constructor() {
    super();
    onOtherTab(() => void this.#readAgain(true));
    // A tab that the browser put to sleep has heard nothing.
    document.addEventListener("visibilitychange", () => document.hidden || void this.#readAgain(false));
  }

  /** @param {boolean} told by another tab */
  async #readAgain(told) {
    const before = JSON.stringify(this.now);
    await this.#read();
    if (told || JSON.stringify(this.now) !== before) this.dispatchEvent(new Event("news"));
  }

  async #read() {
    try {
      const found = await read((kept) => promisifyRequest(kept.get(SHOP)));
      this.#stands(found);
    } catch (error) {
      this.fault = asFault(error);
    }
  }

  /** @param {unknown} found what is on the phone */
  #stands(found) {
    const read = names(found);
    const lacks = found !== undefined
      && (!isEntries(found) || Object.keys(read).length < Object.keys(found).length);
    this.fault = lacks ? new Fault("unreadable") : null;
    this.now = filled({ ...read, ...this.#held });
  }

  /**
   * Keep entries; a blank one is forgotten. Call it from a tap. Resolves when they are on the phone,
   * else rejects with a Fault.
   * @param {Names | ((now: Names) => Names)} changes made to what is on the phone by then
   * @param {{rows?: Rows, hold?: boolean}} [how] `rows`: written with them, all or nothing; `hold`:
   *   if they cannot be written, they count while the app is open
   */
  async keep(changes, { rows = [], hold = false } = {}) {
    const change = typeof changes === "function" ? changes : () => changes;
    const held = this.#held;
    try {
      const found = await write(async (kept) => {
        const old = await promisifyRequest(kept.get(SHOP));
        if (old !== undefined && !isEntries(old)) kept.put(old, ASIDE); // nothing is written over
        // What this release cannot read, a later one wrote: it stays.
        const before = { ...(isEntries(old) ? old : {}), ...held };
        const after = filled({ ...before, ...change(names(before)) });
        putRows(kept, [[SHOP, after], ...rows]);
        return after;
      });
      if (held === this.#held) this.#held = {};
      this.#stands(found);
    } catch (error) {
      if (hold) this.#held = { ...this.#held, ...change(this.now) };
      this.now = filled({ ...this.now, ...this.#held });
      throw error;
    }
  }

  /** @param {string} page @param {LastJob} job */
  async keepLast(page, job) {
    await note((kept) => kept.put(job, lastKey(page)));
  }

  /** @param {string} page @returns {Promise<LastJob | null>} */
  async last(page) {
    try {
      await moveOldLast();
      const found = await read((kept) => promisifyRequest(kept.get(lastKey(page))));
      return typeof found?.query === "string" && typeof found?.line === "string" ? found : null;
    } catch {
      return null;
    }
  }
}

export const kept = new Kept();
