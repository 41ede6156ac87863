// @ts-check
/** @import { BeadAnswer } from "../page/answer_page.js" */

/** A tap on a result unfolds how it was got. */
export class HowLinks {
  /** @param {BeadAnswer} page @param {AbortSignal} signal */
  constructor(page, signal) {
    page.addEventListener("click", (event) => {
      const link = event.target instanceof Element ? event.target.closest('a[href^="#how-"]') : null;
      if (!(link instanceof HTMLAnchorElement) || event.button !== 0) return;
      if (event.ctrlKey || event.metaKey) return;
      event.preventDefault(); // stays on the page, whatever the address says by now
      page.querySelector("#how")?.setAttribute("open", "");
      document.getElementById(link.hash.slice(1))?.scrollIntoView({ block: "center" });
    }, { signal });
  }
}
