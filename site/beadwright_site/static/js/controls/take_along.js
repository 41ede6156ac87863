// @ts-check
import { engine } from "../engine/engine.js";
import { coupons } from "../kept/coupons.js";
import { giveFile } from "../kept/give_file.js";
import { countsCoupons, given } from "../kept/given.js";
import { why } from "../kept/kept_words.js";
import { sayBriefly } from "./brief_word.js";
import { tell, untell } from "./kept_notice.js";

/** @import { BeadAnswer } from "../page/answer_page.js" */

const TYPES = { csv: "text/csv", json: "application/json" };

/** Print, and files made of the worker's own answer. */
export class TakeAlong {
  /** @param {BeadAnswer} page @param {AbortSignal} signal */
  constructor(page, signal) {
    this.page = page;
    page.addEventListener("click", (event) => this.#tapped(event), { signal });
    page.addEventListener("shown", () => this.#unhide(), { signal });
    this.#unhide();
  }

  #unhide() {
    for (const button of this.page.querySelectorAll("[data-print], [data-export]")) {
      if (button instanceof HTMLElement) button.hidden = false;
    }
  }

  /** @param {Event} event */
  #tapped({ target }) {
    const button = target instanceof Element ? target.closest("[data-print], [data-export]") : null;
    if (!(button instanceof HTMLElement)) return;
    if (button.dataset["print"] !== undefined) print();
    else void this.#export(button);
  }

  /** @param {HTMLElement} button */
  async #export(button) {
    const kind = button.dataset["export"] === "csv" ? "csv" : "json";
    try {
      const text = await this.#text(kind);
      const name = `${button.dataset["name"] ?? "answer"}.${kind}`;
      sayBriefly(button, await giveFile(new File([text], name, { type: TYPES[kind] })));
      untell(this.page);
    } catch (error) {
      tell(button.parentElement, "Not saved.", error instanceof Error ? error.message : "");
    }
  }

  /** @param {"csv" | "json"} kind */
  async #text(kind) {
    const { page, query } = this.page;
    const chance = this.page.querySelector("#chance[data-drawn]");
    const draws = kind === "json" && chance instanceof HTMLElement ? chance.dataset["draws"] : "";
    const asked = draws ? [query, `draws=${draws}`].filter(Boolean).join("&") : query;
    const shop = await given(page);
    if (countsCoupons(page) && coupons.fault) throw new Error(`The coupons cannot be read. ${why(coupons.fault)}`);
    const answer = await engine.call(kind, { page, query: asked, kept: shop });
    if (answer.errors) throw new Error("An entry cannot be taken.");
    // The mark at the front lets a spreadsheet read the signs right.
    return kind === "csv" ? `\ufeff${answer.csv}` : `${JSON.stringify(answer, null, 2)}\n`;
  }
}
