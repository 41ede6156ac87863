// @ts-check
/** @import { BeadAnswer } from "../page/answer_page.js" */

/** Tap a setting's number to type it. */
export class NumberEntry {
  /** @param {BeadAnswer} page @param {AbortSignal} signal */
  constructor(page, signal) {
    this.page = page;
    page.addEventListener("click", (event) => this.#tap(event), { signal });
    page.addEventListener("keydown", (event) => this.#key(event), { signal });
    page.addEventListener("focusout", (event) => this.#leave(event), { signal });
  }

  /** @param {Event} event */
  #tap(event) {
    const tapped = event.target instanceof Element ? event.target : null;
    const row = tapped?.closest("[data-type], .set .name") ? tapped.closest(".set") : null;
    const field = row?.querySelector(".number input");
    if (!(row instanceof HTMLElement) || !(field instanceof HTMLInputElement)) return;
    row.dataset["typing"] = "";
    field.disabled = false;
    field.value = row.querySelector("[data-type]")?.textContent?.replace("–", "") ?? "";
    field.dataset["before"] = field.value;
    field.focus();
    field.select();
  }

  /** @param {KeyboardEvent} event */
  #key(event) {
    const field = event.target;
    if (!(field instanceof HTMLInputElement) || !field.closest("[data-typing]")) return;
    if (event.key === "Escape") field.value = field.dataset["before"] ?? "";
    if (event.key === "Escape" || event.key === "Enter") {
      event.preventDefault();
      field.blur();
    }
  }

  /** @param {Event} event */
  #leave(event) {
    const field = event.target;
    const row = field instanceof HTMLInputElement ? field.closest("[data-typing]") : null;
    if (!(field instanceof HTMLInputElement) || !(row instanceof HTMLElement)) return;
    delete row.dataset["typing"];
    field.disabled = true;
    if (field.value.trim() === field.dataset["before"]) return;
    this.page.set(row.dataset["key"] ?? "", field.value.trim(), { live: false });
  }
}
