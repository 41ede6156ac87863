// @ts-check
import { coupons } from "./coupons.js";
import { jobs } from "./jobs.js";
import { kept } from "./kept.js";

/** @import { Names } from "./kept.js" */

/** What a page is asked with: what the shop keeps, on Coupons also every kept coupon and job.
 * @param {string} page @returns {Promise<Names>} */
export async function given(page) {
  await kept.ready;
  const text = page === "coupons" || page === "card" ? await coupons.text() : "";
  const names = text ? { ...kept.now, coupons: text } : kept.now;
  if (page !== "coupons") return names;
  const found = await jobs.all().catch(() => []); // without them the page is as good
  return found.length ? { ...names, jobs: JSON.stringify(found) } : names;
}
