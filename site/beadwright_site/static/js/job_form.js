// @ts-check
import "./other_mix.js";

const BARE = /^[\d\s.,/-]+$/;

/** The form as a query and back. It is looked up anew each time: its content is morphed. */
export class JobForm {
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

  /** As a person would write it: slashes stay slashes. */
  query() {
    return [...this.entries()]
      .map(([key, value]) => `${key}=${encodeURIComponent(value).replaceAll("%2F", "/")
        .replaceAll("%20", "+")}`)
      .join("&");
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

  /** Bare numbers were meant in the units shown until now: write those behind them. */
  fixUnits() {
    for (const field of this.element.elements) {
      if (!(field instanceof HTMLInputElement) || field.type !== "text") continue;
      const unit = field.dataset["unit"] ?? "";
      if (unit && field.value.trim() && BARE.test(field.value)) field.value += unit;
    }
  }
}
