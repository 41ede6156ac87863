// @ts-check
/** @import { BeadAnswer } from "../page/answer_page.js" */

const KEY = "beadwright list parts";

/** Parts of one list read so far: text of the welds by number of the part.
 * @typedef {{mark: string, lines: {[part: string]: string}}} Read */

/** @param {string} mark @returns {Read} */
function readSoFar(mark) {
  try {
    const held = JSON.parse(localStorage.getItem(KEY) ?? "");
    if (held.mark === mark) return held;
  } catch {
    // Nothing held, nothing readable, or storage blocked: it begins with this part.
  }
  return { mark, lines: {} };
}

/** A long list comes from several codes, each opened on its own: what was read is put together. */
export class ListParts {
  /** @param {BeadAnswer} page @param {AbortSignal} signal */
  constructor(page, signal) {
    if (page.page !== "list") return;
    page.addEventListener("shown", () => this.#join(page), { signal });
  }

  /** @param {BeadAnswer} page */
  #join(page) {
    const asked = new URLSearchParams(page.form.query());
    const [here = "", count = "", mark = ""] = (asked.get("part") ?? "").split("/");
    if (!/^\d+$/.test(here)) return; // no part, or already put together
    const header = page.querySelector("#rows")?.getAttribute("data-header") ?? "";
    const text = asked.get("lines") ?? "";
    const read = readSoFar(mark);
    read.lines[here] = header && text.startsWith(header) ? text.slice(header.length).trim() : text;
    try {
      localStorage.setItem(KEY, JSON.stringify(read));
    } catch {
      return; // one part at a time, then: the page says which it is
    }
    const parts = Object.keys(read.lines).map(Number).sort((a, b) => a - b);
    if (parts.length < 2) return;
    const lines = parts.map((part) => read.lines[part] ?? "");
    asked.set("lines", [header, ...lines].filter(Boolean).join("\n"));
    asked.set("part", parts.length < Number(count) ? `${parts.join(",")}/${count}/${mark}` : "");
    void page.ask(asked.toString());
  }
}
