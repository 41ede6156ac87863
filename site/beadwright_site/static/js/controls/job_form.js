// @ts-check
import { withUnit } from "./bare_number.js";
import "./other_mix.js";
import { queryText } from "./query_text.js";

/** The form as a query and back. It is looked up anew each time: its content is morphed. */
export class JobForm {
  /** What the address asks while the form still stands with another job.
   * @type {URLSearchParams | null} */
  #address = null;

  /** The leg is the example's: no thumb wrote it yet. */
  #lent = false;

  /** Until an answer stands, what is typed goes on top of this. @param {string} query */
  awaits(query) {
    this.#address = new URLSearchParams(query);
  }

  /** An answer stands, and its form with it. */
  stands() {
    this.#address = null;
  }

  /** @returns {HTMLFormElement} */
  get element() {
    const form = document.getElementById("job-form");
    if (!(form instanceof HTMLFormElement)) throw new Error("the page has no job-form");
    return form;
  }

  /** Entries that are not blank, in the form's order. @returns {Map<string, string>} */
  entries() {
    const found = new Map();
    for (const [key, value] of new FormData(this.element)) {
      if (typeof value === "string" && value.trim()) found.set(key, value.trim());
    }
    return found;
  }

  /** @param {string} [changed] the entry just changed */
  query(changed) {
    const address = this.#address;
    if (this.#loses(changed)) {
      this.set("leg", "");
      address?.delete("leg");
    }
    if (!address) return queryText(this.entries());
    if (changed) address.set(changed, this.value(changed));
    return queryText([...address].filter(([, value]) => value));
  }

  /** Another plate has another leg, unless a leg was written. @param {string} [changed] */
  #loses(changed) {
    const leg = this.element.querySelector("[data-lent]");
    leg?.removeAttribute("data-lent");
    this.#lent ||= leg !== null;
    const loses = this.#lent && (changed === "plate" || changed === "plate2");
    if (loses || changed === "leg") this.#lent = false;
    return loses;
  }

  /** @param {string} key @returns {string} */
  value(key) {
    return this.entries().get(key) ?? "";
  }

  /** @param {string} key @param {string} text */
  set(key, text) {
    const field = this.element.elements.namedItem(key);
    if (field instanceof HTMLInputElement || field instanceof RadioNodeList) field.value = text;
  }

  /** Write the units shown until now behind the numbers that were typed without. */
  fixUnits() {
    for (const field of this.element.elements) {
      if (field instanceof HTMLInputElement && field.type === "text") field.value = withUnit(field);
    }
  }
}
