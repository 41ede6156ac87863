// @ts-check
/** @import { BeadAnswer } from "../page/answer_page.js" */

const BURST_MS = 1_500; // a drag, or a few steps of a key, are one change

/** What a setting was before the last change, beside those that followed it. */
export class ChangedSettings {
  /** Number and unit of each setting before the change, by key. @type {Map<string, [string, string]>} */
  #before = new Map();
  #askedAt = -Infinity;

  /** @param {BeadAnswer} page @param {AbortSignal} signal */
  constructor(page, signal) {
    this.page = page;
    page.addEventListener("asked", ({ timeStamp }) => this.#asked(timeStamp), { signal });
    page.addEventListener("shown", () => this.#mark(), { signal });
  }

  get #rows() {
    return [...this.page.querySelectorAll(".set[data-key]")].map((row) => ({
      row,
      key: row.getAttribute("data-key") ?? "",
      number: row.querySelector("[data-type]")?.textContent ?? "",
      unit: row.querySelector(".number span")?.textContent ?? "",
    }));
  }

  /** @param {number} now */
  #asked(now) {
    // What stands on a page just opened is the printed example, not an answer to its address.
    if (this.page.query === "" && location.search !== "") return;
    const burst = now - this.#askedAt < BURST_MS;
    this.#askedAt = now;
    if (burst) return;
    this.#before = new Map(this.#rows.map(({ key, number, unit }) => [key, [number, unit]]));
  }

  /** What was set by hand says so itself. */
  #mark() {
    for (const { row, key, number, unit } of this.#rows) {
      row.querySelector(".was")?.remove();
      const [before, beforeUnit] = this.#before.get(key) ?? [number, unit];
      if (before === number || beforeUnit !== unit || before === "–" || row.querySelector(".let-go")) continue;
      const was = document.createElement("span");
      was.className = "was";
      was.textContent = ` was ${before}`;
      row.querySelector(".word")?.append(was);
    }
  }
}
