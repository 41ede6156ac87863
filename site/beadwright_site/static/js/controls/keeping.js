// @ts-check
import { kept } from "../kept/kept.js";
import { withUnit } from "./bare_number.js";
import { sayBriefly } from "./brief_word.js";
import { tellNotKept, untell } from "./kept_notice.js";

/** @import { BeadAnswer } from "../page/answer_page.js" */
/** @import { Names } from "../kept/kept.js" */

const HELD = "What you typed counts until the app is closed: save it as a file below.";
const TYPED = "What you typed stays in its fields and in the page's address.";

/**
 * Keeps what is asked once. On Shop an entry is kept as soon as it holds; on the other pages a
 * price is tried first, and kept by a tap.
 */
export class Keeping {
  /** Entries changed and not yet found right. @type {Names} */
  #pending = {};

  /** @param {BeadAnswer} page @param {AbortSignal} signal */
  constructor(page, signal) {
    this.page = page;
    page.addEventListener("click", (event) => this.#tapped(event), { signal });
    page.addEventListener("shown", () => this.#unhide(), { signal });
    this.#unhide();
  }

  /** Whether something typed is not yet found right or kept. */
  get waits() {
    return Object.keys(this.#pending).length > 0;
  }

  #unhide() {
    for (const button of this.page.querySelectorAll("[data-keep-all]")) {
      if (button instanceof HTMLElement) button.hidden = false;
    }
  }

  /** @param {HTMLInputElement} field @returns {boolean} true if the entry is the shop's, not the job's */
  takes(field) {
    const name = field.dataset["keep"];
    if (this.page.page !== "shop") return false;
    if (name) this.#pending[name] = withUnit(field);
    void this.#try(field);
    return true;
  }

  /** @param {HTMLInputElement} field */
  async #try(field) {
    const pending = this.#pending;
    const names = { ...kept.now, ...pending };
    if (!(await this.page.ask(this.#jobQuery(), { names })) || pending !== this.#pending) return;
    this.#pending = {};
    if (!Object.keys(pending).length) return;
    if (await this.#keep(pending, field.closest(".text, .choice, .other"), HELD)) this.#say();
  }

  /** @param {Names} names @param {Element | null} place @param {string} stays
   * @returns {Promise<boolean>} whether it is on the phone */
  async #keep(names, place, stays) {
    try {
      await kept.keep(names, { hold: stays === HELD });
      untell(this.page);
      return true;
    } catch (error) {
      tellNotKept(place, error, stays);
      return false;
    }
  }

  /** The job's part of the query: what the form holds past what is kept, and what came typed. */
  #jobQuery() {
    const form = this.page.form.element;
    const query = new URLSearchParams();
    for (const field of form.elements) {
      if (!(field instanceof HTMLInputElement) || !field.value.trim()) continue;
      if (field.type === "radio" && !field.checked) continue;
      if (!field.dataset["keep"]) query.set(field.name, withUnit(field));
    }
    for (const [key, text] of new URLSearchParams(this.page.query)) {
      const name = form.elements.namedItem(key);
      const shops = name instanceof RadioNodeList
        || (name instanceof HTMLInputElement && name.dataset["keep"] !== undefined);
      if (shops && !(key in this.#pending)) query.set(key, text);
    }
    return query.toString();
  }

  #say() {
    const state = this.page.querySelector("#state");
    if (!state) return;
    sayBriefly(state, "Kept on this phone");
  }

  /** @param {Event} event */
  #tapped({ target }) {
    const button = target instanceof Element ? target.closest("[data-keep-all]") : null;
    if (button) void this.#keepAll(button);
  }

  /** @param {Element} button */
  async #keepAll(button) {
    /** @type {Names} */
    const found = {};
    const form = this.page.form;
    for (const field of form.element.elements) {
      if (!(field instanceof HTMLInputElement) || !field.dataset["keep"]) continue;
      if (field.type === "text" && field.value.trim()) {
        found[field.dataset["keep"]] = withUnit(field);
      }
    }
    if (!(await this.page.ask(form.query()))) return; // what is wrong is not kept
    if (!(await this.#keep(found, button.parentElement, TYPED))) return;
    for (const field of form.element.querySelectorAll("[data-keep]")) {
      const name = field instanceof HTMLInputElement ? field.dataset["keep"] : undefined;
      // An entry counts before what is kept; blank, it lets the kept one count.
      if (name && name in found && field instanceof HTMLInputElement && field.type === "text") {
        field.value = "";
      }
    }
    await this.page.ask(form.query());
    this.#say();
  }
}
