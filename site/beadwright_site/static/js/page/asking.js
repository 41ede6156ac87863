// @ts-check
import { engine } from "../engine/engine.js";
import { given } from "../kept/given.js";
import { pageHtml } from "../offline/trusted.js";

/** @import { Names } from "../kept/kept.js" */

/**
 * What a page shows for a query: HTML by element id, or what cannot be taken, by key.
 * @typedef {{ok: boolean, query: string, title: string, html: {[id: string]: string},
 *   errors: {[key: string]: string[]}}} PageParts
 */

/** Resolves when the engine has failed, unless the answer comes first.
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

/** A plain web host answers every query with the same page; only the live app answers the query.
 * @param {string} query @param {AbortSignal} answered @returns {Promise<PageParts | null>} */
async function askServer(query, answered) {
  const response = await fetch(`?${query}`, { headers: { accept: "text/html" }, signal: answered });
  const page = new DOMParser().parseFromString(pageHtml(await response.text()), "text/html");
  const answer = page.querySelector("bead-answer");
  if (!(answer instanceof HTMLElement) || !answer.dataset["query"]) return null;
  const ok = answer.dataset["refused"] === undefined;
  /** @type {{[id: string]: string}} */
  const html = {};
  for (const id of (answer.dataset["parts"] ?? "").split(" ")) {
    const part = page.getElementById(id);
    if (part && (ok || part.childNodes.length > 0)) html[id] = part.outerHTML;
  }
  return { ok, query: answer.dataset["query"], title: page.title, html, errors: {} };
}

/** What the engine says, or, where it cannot run, a live server.
 * @param {{page: string, query: string, kept: Names, parts?: string[]}} payload
 * @param {{latest: string, live: boolean}} how @returns {Promise<PageParts>} */
function firstAnswer(payload, how) {
  return new Promise((resolve, reject) => {
    const answered = new AbortController();
    engine.call("page", payload, how).then(resolve, reject)
      .finally(() => answered.abort());
    void failure(answered.signal)
      .then(() => askServer(payload.query, answered.signal))
      .then((answer) => answer && resolve(answer))
      .catch(() => {}); // no signal: what the engine says counts
  });
}

/** How many questions of each `latest` were asked. @type {Map<string, number>} */
const turns = new Map();

/** The turn of the newest question of each `latest` that no dragging finger asks: no older answer
 * is shown after it, for it would set back what was typed since. @type {Map<string, number>} */
const firm = new Map();

const newer = () => new DOMException("something newer was asked", "AbortError");

/**
 * Ask for a page's parts: of the engine, or, where it cannot run, of a live server.
 * @param {string} page @param {string} query
 * @param {{names?: Names | undefined, parts?: string[] | undefined, latest?: string,
 *   live?: boolean | undefined}} [how] `names`: in place of what is kept; `parts`: which to draw,
 *   all without; `latest`: an older question of the same key is dropped; `live`: a finger is
 *   dragging
 * @returns {Promise<PageParts>} rejects with an AbortError if something newer was asked
 */
export async function askPage(page, query, { names, parts, latest = "page", live = false } = {}) {
  const turn = (turns.get(latest) ?? 0) + 1;
  turns.set(latest, turn);
  if (!live) firm.set(latest, turn);
  const shop = names ?? await given(page); // it counts from the first answer on
  // What the phone keeps may come late, for a page that is left by now: it takes nobody's place.
  if (turns.get(latest) !== turn) throw newer();
  const payload = { page, query, kept: shop, ...(parts ? { parts } : {}) };
  const answer = await firstAnswer(payload, { latest, live });
  if ((firm.get(latest) ?? 0) > turn) throw newer(); // asked, and not yet come to the engine
  return answer;
}
