// @ts-check
import { createStore, get, set } from "../../vendor/idb-keyval.js";

/** @typedef {{query: string, line: string}} LastJob */

// Fixed names: what was kept must be found by every later release.
const kept = () => createStore("beadwright", "kept");
const LAST = "last-job";

/** @param {LastJob} job */
export async function keepLastJob(job) {
  try {
    await set(LAST, job, kept());
  } catch {
    // Private mode or a full phone: the address bar still holds the job.
  }
}

/** @returns {Promise<LastJob | null>} */
async function lastJob() {
  try {
    const job = await get(LAST, kept());
    return typeof job?.query === "string" && typeof job?.line === "string" ? job : null;
  } catch {
    return null;
  }
}

/** A page opened bare shows the example: offer the way back. @param {HTMLElement} page */
export async function offerLastJob(page) {
  const job = await lastJob();
  const link = page.querySelector("[data-last]");
  if (!job?.query || !(link instanceof HTMLAnchorElement) || location.search) return;
  link.href = `?${job.query}`;
  link.dataset["query"] = job.query;
  link.textContent = `Back to your last job: ${job.line}`;
  link.hidden = false;
}
