// @ts-check
/* A row of keys under a length: phones' number pads have no slash. */
const FRACTIONS = ["1/8", "3/16", "1/4", "5/16", "3/8", "1/2", "5/8", "3/4"];
const SIGNS = ["/", "-", "in", "mm", "ga", "⌫"];

/** @returns {HTMLElement} */
function row() {
  const keys = document.createElement("div");
  keys.className = "keys";
  keys.append(...[...FRACTIONS, ...SIGNS].map((key) => {
    const button = document.createElement("button");
    button.type = "button";
    button.textContent = key;
    button.tabIndex = -1; // for fingers; a keyboard has these keys
    if (key === "⌫") button.setAttribute("aria-label", "Delete");
    return button;
  }));
  return keys;
}

/** @param {HTMLInputElement} field @param {string} key */
function press(field, key) {
  const start = field.selectionStart ?? field.value.length;
  const end = field.selectionEnd ?? start;
  if (key === "⌫") field.setRangeText("", start === end ? Math.max(0, start - 1) : start, end, "end");
  else {
    const joined = FRACTIONS.includes(key) && /\d$/.test(field.value.slice(0, start));
    field.setRangeText(joined ? `-${key}` : key, start, end, "end"); // 1 and 1/4 is 1-1/4
  }
  field.dispatchEvent(new Event("input", { bubbles: true }));
  field.dataset["pressed"] = ""; // the browser counts no change made by script
}

/** The row of keys, under whichever length is being typed. */
export class FractionKeys {
  #row = row();
  /** @type {HTMLInputElement | null} */
  #field = null;

  /** @param {HTMLElement} page @param {AbortSignal} signal */
  constructor(page, signal) {
    page.addEventListener("focusin", (event) => this.#entered(event), { signal });
    page.addEventListener("focusout", (event) => this.#left(event), { signal });
    this.#row.addEventListener("pointerdown", (event) => event.preventDefault()); // focus stays
    this.#row.addEventListener("click", (event) => this.#tapped(event));
  }

  /** @param {Event} event */
  #entered({ target }) {
    if (!(target instanceof HTMLInputElement) || target.dataset["fractions"] === undefined) return;
    this.#field = target;
    target.closest(".text")?.after(this.#row);
  }

  /** @param {Event} event */
  #left({ target }) {
    if (!(target instanceof HTMLInputElement) || target.dataset["pressed"] === undefined) return;
    delete target.dataset["pressed"];
    target.dispatchEvent(new Event("change", { bubbles: true }));
  }

  /** @param {Event} event */
  #tapped({ target }) {
    if (!this.#field || !(target instanceof HTMLButtonElement)) return;
    this.#field.focus();
    press(this.#field, target.textContent ?? "");
  }
}
