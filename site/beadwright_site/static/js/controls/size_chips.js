// @ts-check
/** @import { BeadAnswer } from "../page/answer_page.js" */

/** The usual sizes beside a length: one tap writes it. */
export class SizeChips {
  /** @param {BeadAnswer} page @param {AbortSignal} signal */
  constructor(page, signal) {
    page.addEventListener("click", ({ target }) => {
      const chip = target instanceof Element ? target.closest("[data-size]") : null;
      if (!(chip instanceof HTMLButtonElement)) return;
      page.set(chip.dataset["size"] ?? "", chip.value, { live: false });
    }, { signal });
  }
}
