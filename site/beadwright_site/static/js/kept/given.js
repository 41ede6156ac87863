// @ts-check
import { coupons } from "./coupons.js";
import { kept } from "./kept.js";

/** @import { Names } from "./kept.js" */

/** What a page is asked with: what the shop keeps, and on Coupons every kept coupon.
 * @param {string} page @returns {Promise<Names>} */
export async function given(page) {
  await kept.ready;
  const text = page === "coupons" || page === "card" ? await coupons.text() : "";
  return text ? { ...kept.now, coupons: text } : kept.now;
}
