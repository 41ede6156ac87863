// @ts-check
import { createStore, del, get, promisifyRequest, set } from "../../vendor/idb-keyval.js";
import { Fault } from "../offline/fault.js";
import { within } from "../offline/reach.js";
import { askToKeep } from "../offline/lasting_storage.js";

/** @typedef {{[name: string]: string}} Names */
/** @typedef {{query: string, line: string}} LastJob */

// Fixed names: what was kept must be found by every later release.
export const store = createStore("beadwright", "kept");
const SHOP = "shop";
export const STORE_MS = 3_000; // a store that has not answered by then is gone on without
const lastKey = (/** @type {string} */ page) => `last-${page}`;
/** Where the first releases kept the last job of Dial in. */
const OLD_LAST = "last-job";

/** @param {unknown} found @returns {Names} */
function names(found) {
  if (typeof found !== "object" || found === null) return {};
  return Object.fromEntries(Object.entries(found).filter(([, text]) => typeof text === "string"));
}

/** The last job of Dial in moves to where those of all pages are. */
async function moveOldLast() {
  const old = await get(OLD_LAST, store);
  if (old === undefined) return;
  const newer = await get(lastKey("dial-in"), store);
  if (newer === undefined) await set(lastKey("dial-in"), old, store);
  await del(OLD_LAST, store);
}

/** What the shop keeps on this phone; every page is asked with it. */
class Kept {
  /** @type {Names} */
  now = {};
  /** False where this browser stores nothing: it holds for the visit. */
  lasting = true;
  /** The store did not answer, and what is in it was never read: it must not be written over. */
  unread = false;
  ready = this.#read();

  async #read() {
    try {
      this.now = names(await within(STORE_MS, get(SHOP, store)));
    } catch (error) {
      this.unread = error instanceof Fault; // it did not answer; else this browser stores nothing
      this.lasting = false;
    }
  }

  /** Keep entries; a blank one is forgotten. Call it from a tap. @param {Names} changes */
  async keep(changes) {
    const first = Object.keys(this.now).length === 0;
    const all = { ...this.now, ...changes };
    this.now = Object.fromEntries(Object.entries(all).filter(([, text]) => text));
    if (first) void askToKeep().catch(() => null);
    if (this.unread) this.lasting = false;
    else await this.#write(SHOP, this.now);
  }

  /** Committed at once, in the same step as asked for: a page left right after loses nothing.
   * @param {string} key @param {unknown} value */
  async #write(key, value) {
    try {
      await within(STORE_MS, store("readwrite", (kept) => {
        kept.put(value, key);
        kept.transaction.commit();
        return promisifyRequest(kept.transaction);
      }));
      this.lasting = true;
    } catch {
      this.lasting = false; // private mode or a full phone
    }
  }

  /** What the shop keeps as the store has it. @param {Names} shop @returns {[string, Names]} */
  row(shop) {
    return [SHOP, shop];
  }

  /** @param {string} page @param {LastJob} job */
  async keepLast(page, job) {
    await this.#write(lastKey(page), job);
  }

  /** @param {string} page @returns {Promise<LastJob | null>} */
  async last(page) {
    try {
      await moveOldLast();
      const found = await get(lastKey(page), store);
      return typeof found?.query === "string" && typeof found?.line === "string" ? found : null;
    } catch {
      return null;
    }
  }
}

export const kept = new Kept();
