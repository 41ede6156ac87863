// @ts-check
import { promisifyRequest } from "../../vendor/idb-keyval.js";
import { askToKeep } from "../offline/lasting_storage.js";
import { store } from "./kept.js";

/** @typedef {{[name: string]: unknown} & {key: string}} Coupon */

// A fixed name: what was kept must be found by every later release.
const PREFIX = "coupon:";
const ALL = () => IDBKeyRange.bound(PREFIX, `${PREFIX}\uffff`);

/** Kept coupons, one entry of the store each: a write that breaks off loses none of the others. */
class Coupons {
  /** @returns {Promise<Coupon[]>} */
  async all() {
    try {
      return await store("readonly", (kept) => promisifyRequest(kept.getAll(ALL())));
    } catch {
      return []; // this browser stores nothing
    }
  }

  /** All as the JSON text the core reads; empty for none. */
  async text() {
    const found = await this.all();
    return found.length ? JSON.stringify(found) : "";
  }

  /** Resolves when it is written; rejects where it could not be. @param {Coupon} coupon */
  async keep(coupon) {
    await store("readwrite", (kept) => {
      kept.put(coupon, PREFIX + coupon.key);
      kept.transaction.commit();
      return promisifyRequest(kept.transaction);
    });
    void askToKeep().catch(() => null);
  }

  /** @param {string} key @returns {Promise<Coupon | undefined>} what was dropped */
  async drop(key) {
    const found = (await this.all()).find((coupon) => coupon.key === key);
    await store("readwrite", (kept) => {
      kept.delete(PREFIX + key);
      kept.transaction.commit();
      return promisifyRequest(kept.transaction);
    });
    return found;
  }
}

export const coupons = new Coupons();
