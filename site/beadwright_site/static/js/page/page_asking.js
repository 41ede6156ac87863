// @ts-check
import { engine } from "../engine/engine.js";
import { kept } from "../kept/kept.js";

/** @import { Names } from "../kept/kept.js" */

/**
 * @typedef {{ok: boolean, query: string, title: string, html: {[id: string]: string},
 *   errors: {[field: string]: string[]}}} Shown
 */

/** Resolves when the engine has failed. @returns {Promise<void>} */
function failure() {
  return new Promise((resolve) => {
    const look = () => {
      if (engine.state !== "failed") return;
      engine.removeEventListener("state", look);
      resolve();
    };
    engine.addEventListener("state", look);
    look();
  });
}

/** A plain web host answers every query with the same page; only the live app answers the query.
 * @param {string} query @returns {Promise<Shown | null>} */
async function askServer(query) {
  const response = await fetch(`?${query}`, { headers: { accept: "text/html" } });
  const page = new DOMParser().parseFromString(await response.text(), "text/html");
  const answer = page.querySelector("bead-answer");
  if (!(answer instanceof HTMLElement) || (query && !answer.dataset["query"])) return null;
  const ok = answer.dataset["refused"] === undefined;
  /** @type {{[id: string]: string}} */
  const html = {};
  for (const id of (answer.dataset["parts"] ?? "").split(" ")) {
    const part = page.getElementById(id);
    if (part && (ok || part.childNodes.length > 0)) html[id] = part.outerHTML;
  }
  return { ok, query: answer.dataset["query"] ?? "", title: page.title, html, errors: {} };
}

/**
 * Ask for a page's parts: of the engine, or, where it cannot run, of a live server.
 * @param {string} page @param {string} query
 * @param {{names?: Names | undefined, parts?: string[] | undefined, latest?: string}} [how]
 *   `names`: in place of what is kept; `parts`: which to draw, all without; `latest`: an older
 *   question of the same key is dropped
 * @returns {Promise<Shown>} rejects with an AbortError if something newer was asked
 */
export function askPage(page, query, { names = kept.now, parts, latest = "page" } = {}) {
  return new Promise((resolve, reject) => {
    const payload = { page, query, kept: names, ...(parts ? { parts } : {}) };
    engine.call("page", payload, { latest }).then(resolve, reject);
    void failure()
      .then(() => askServer(query))
      .then((answer) => answer && resolve(answer))
      .catch(() => {}); // no signal: the engine's own word stands
  });
}
