// @ts-check
import { Shelf } from "./shelf.js";

/** @typedef {{[name: string]: unknown} & {key: string}} Coupon */

/** @extends {Shelf<Coupon>} */
class Coupons extends Shelf {
  /** All as the JSON text the core reads; empty for none. */
  async text() {
    const found = await this.all();
    return found.length ? JSON.stringify(found) : "";
  }
}

// Fixed names: what was kept must be found by every later release.
export const coupons = new Coupons("coupon:", (coupon) => coupon.key);
