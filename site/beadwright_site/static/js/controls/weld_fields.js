// @ts-check
import { engine } from "../engine/engine.js";
import { given } from "../kept/given.js";
import { withUnit } from "./bare_number.js";

/** @import { BeadAnswer } from "../page/answer_page.js" */

const PREFIX = "weld.";

/** One weld of the list as a form of its own: each entry changes the line, and the list follows. */
export class WeldFields {
  /** @param {BeadAnswer} page @param {(lines: string) => Promise<void>} change puts a changed list
   * @param {AbortSignal} signal */
  constructor(page, change, signal) {
    this.page = page;
    this.change = change;
    this.#dialog?.addEventListener("change", (event) => void this.#changed(event), { signal });
    this.#dialog?.addEventListener("click", ({ target }) => {
      const beside = target === this.#dialog;
      if (beside || (target instanceof HTMLElement && target.matches("[data-close]"))) this.#dialog?.close();
    }, { signal });
    document.addEventListener("turbo:before-cache", () => this.#dialog?.close(), { signal });
  }

  get #dialog() {
    const found = this.page.querySelector("#weld-dialog");
    return found instanceof HTMLDialogElement ? found : null;
  }

  /** @param {number} number place of the weld in the list, 1 for the first */
  async open(number) {
    await this.#draw(number);
    if (this.page.isConnected) this.#dialog?.showModal();
  }

  /** @param {number} number @param {{key?: string, value?: string}} [entry] set anew
   * @returns {Promise<{ok: boolean, lines: string}>} */
  async #draw(number, entry = {}) {
    const query = this.page.form.query();
    const kept = await given("list");
    const { ok, lines, html } = await engine.call("weld", { query, kept, number, ...entry });
    if (html) this.page.put({ "weld-fields": html });
    return { ok, lines };
  }

  /** @param {Event} event */
  async #changed({ target }) {
    if (!(target instanceof HTMLInputElement) || !target.name.startsWith(PREFIX)) return;
    const number = Number(this.#dialog?.querySelector("form")?.getAttribute("data-number"));
    const value = target.type === "text" ? withUnit(target) : target.value;
    const { ok, lines } = await this.#draw(number, { key: target.name.slice(PREFIX.length), value });
    if (ok) await this.change(lines);
  }
}
