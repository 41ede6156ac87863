// @ts-check
import { coupons } from "./coupons.js";
import { jobs } from "./jobs.js";
import { kept } from "./kept.js";

/** @import { Names } from "./kept.js" */

const OF_COUPONS = new Set(["coupons", "card", "cost"]);

/** Whether kept coupons count on a page. @param {string} page */
export const countsCoupons = (page) => OF_COUPONS.has(page);

/** What a page is asked with: what the shop keeps, where coupons count these, on Coupons kept jobs.
 * @param {string} page @returns {Promise<Names>} */
export async function given(page) {
  await kept.ready;
  const text = countsCoupons(page) ? await coupons.text() : "";
  const names = text ? { ...kept.now, coupons: text } : kept.now;
  if (page !== "coupons") return names;
  const found = await jobs.all().catch(() => []); // without them the page is as good
  return found.length ? { ...names, jobs: JSON.stringify(found) } : names;
}
