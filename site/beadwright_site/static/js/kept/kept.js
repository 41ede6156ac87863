// @ts-check
import { createStore, get, set } from "../../vendor/idb-keyval.js";
import { askToKeep } from "../offline/lasting_storage.js";

/** @typedef {{[name: string]: string}} Names */
/** @typedef {{query: string, line: string}} Last */

// Fixed names: what was kept must be found by every later release.
const store = () => createStore("beadwright", "kept");
const SHOP = "shop";

/** @param {unknown} found @returns {Names} */
function names(found) {
  if (typeof found !== "object" || found === null) return {};
  return Object.fromEntries(Object.entries(found).filter(([, text]) => typeof text === "string"));
}

/** What the shop keeps on this phone; every page is asked with it. */
class Kept {
  /** @type {Names} */
  now = {};
  /** False where this browser stores nothing: it holds for the visit. */
  lasting = true;
  ready = this.#read();

  async #read() {
    try {
      this.now = names(await get(SHOP, store()));
    } catch {
      this.lasting = false;
    }
  }

  /** Keep entries; a blank one is let go. Call it from a tap. @param {Names} changes */
  async keep(changes) {
    const first = Object.keys(this.now).length === 0;
    const all = { ...this.now, ...changes };
    this.now = Object.fromEntries(Object.entries(all).filter(([, text]) => text));
    if (first) void askToKeep().catch(() => null);
    await this.#write(SHOP, this.now);
  }

  /** @param {string} key @param {unknown} value */
  async #write(key, value) {
    try {
      await set(key, value, store());
    } catch {
      this.lasting = false; // private mode or a full phone
    }
  }

  /** @param {string} page @param {Last} last */
  async keepLast(page, last) {
    await this.#write(`last-${page}`, last);
  }

  /** @param {string} page @returns {Promise<Last | null>} */
  async last(page) {
    try {
      const found = await get(`last-${page}`, store());
      return typeof found?.query === "string" && typeof found?.line === "string" ? found : null;
    } catch {
      return null;
    }
  }
}

export const kept = new Kept();
