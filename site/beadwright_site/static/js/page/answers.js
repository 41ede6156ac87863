// @ts-check
import { engine } from "../engine/engine.js";
import { kept } from "../kept/kept.js";

/** What follows a dragging finger; the rest comes when it lets go. */
const FOLLOWING = ["state", "settings", "facts", "notes", "setup", "map"];
const REST = ["units-switch", "joint", "job-form", "aims", "how"];

/**
 * @typedef {{ok: boolean, query: string, title: string, html: {[id: string]: string},
 *   errors: {[field: string]: string[]}}} Shown
 */

/**
 * Ask whoever serves the page. A plain web host answers every query with the same page; only the
 * live app answers the query itself.
 * @param {string} query @returns {Promise<Shown | null>}
 */
async function askServer(query) {
  const response = await fetch(`?${query}`, { headers: { accept: "text/html" } });
  const page = new DOMParser().parseFromString(await response.text(), "text/html");
  const answer = page.querySelector("bead-dial-in");
  if (!(answer instanceof HTMLElement) || !answer.dataset["query"]) return null;
  const refused = answer.dataset["refused"] !== undefined;
  const ids = refused ? ["state", "job-form"] : [...FOLLOWING, ...REST];
  const html = Object.fromEntries(ids.map((id) => [id, page.getElementById(id)?.outerHTML ?? ""]));
  return { ok: !refused, query: answer.dataset["query"], title: page.title, html, errors: {} };
}

/** Resolves when the engine has failed, unless the answer is in first.
 * @param {AbortSignal} answered @returns {Promise<void>} */
function failure(answered) {
  return new Promise((resolve) => {
    const look = () => {
      if (engine.state === "failed") resolve();
    };
    engine.addEventListener("state", look, { signal: answered });
    look();
  });
}

/**
 * Ask for a page's parts: of the engine, or, where it cannot run, of a live server.
 * @param {string} page @param {string} query
 * @param {{live?: boolean}} how `live`: a finger is dragging
 * @returns {Promise<Shown>} rejects with an AbortError if something newer was asked
 */
export async function askPage(page, query, { live = false }) {
  await kept.ready; // the shop's own machine counts from the first answer on
  return new Promise((resolve, reject) => {
    const payload = { page, query, kept: kept.now, ...(live ? { parts: FOLLOWING } : {}) };
    const answered = new AbortController();
    engine.call("page", payload, { latest: "page", live }).then(resolve, reject)
      .finally(() => answered.abort());
    void failure(answered.signal)
      .then(() => askServer(query))
      .then((answer) => answer && resolve(answer))
      .catch(() => {}); // no signal: the engine's own word stands
  });
}
