// @ts-check
import { stepLabel, stepped } from "./size_steps.js";

/* A pad under a length: sixteenths, figures and units, so that a glove needs no phone keyboard. */
const FRACTIONS = ["1/16", "1/8", "3/16", "1/4", "5/16", "3/8", "7/16", "1/2", "9/16", "5/8", "11/16",
  "3/4", "13/16", "7/8", "15/16"];
const FIGURES = ["1", "2", "3", "4", "5", "6", "7", "8", "9", "0", "."];
const UNITS = ["in", "mm", "ga"];
const DELETE = "⌫";
const KEYBOARD = "abc";

/** @param {string} text @param {string} [name] for a screen reader, where the text is none */
function keyOf(text, name) {
  const button = document.createElement("button");
  button.type = "button";
  button.textContent = text;
  button.tabIndex = -1; // for fingers; a keyboard has these keys
  if (name) button.setAttribute("aria-label", name);
  return button;
}

/** @param {HTMLInputElement} field @param {string} key @param {boolean} fresh nothing written yet */
function press(field, key, fresh) {
  const { value } = field;
  const start = field.selectionStart ?? value.length;
  const end = field.selectionEnd ?? start;
  const before = value.slice(0, start);
  if (key === DELETE) {
    field.setRangeText("", start === end ? Math.max(0, start - 1) : start, end, "end");
  } else if (UNITS.includes(key)) {
    field.value = value.replace(/\s*[a-z"]*\s*$/i, "") + key;
  } else if (FRACTIONS.includes(key)) {
    const whole = !fresh && /^[1-9]\d*$/.test(before.trim()); // 1 and 1/4 is 1-1/4
    field.value = whole ? `${before.trim()}-${key}` : key;
  } else if (fresh) field.value = key;
  else field.setRangeText(key, start, end, "end");
}

/** The pad, under whichever length is being typed. */
export class FractionKeys {
  #less = keyOf("", "One step less");
  #more = keyOf("", "One step more");
  #pad = this.#made();
  /** @type {HTMLInputElement | null} */
  #field = null;
  /** What stands in the field was there before: a key takes its place. */
  #fresh = true;

  /** @param {HTMLElement} page @param {AbortSignal} signal */
  constructor(page, signal) {
    page.addEventListener("focusin", (event) => this.#entered(event), { signal });
    page.addEventListener("focusout", (event) => this.#left(event), { signal });
    page.addEventListener("input", ({ target }) => {
      if (target === this.#field) this.#fresh = false;
    }, { signal });
    this.#pad.addEventListener("pointerdown", (event) => event.preventDefault()); // focus stays
    this.#pad.addEventListener("click", (event) => this.#tapped(event));
  }

  #made() {
    const pad = document.createElement("div");
    pad.className = "keys";
    pad.append(this.#less, this.#more, ...[...FRACTIONS, ...FIGURES, ...UNITS].map((key) => keyOf(key)),
      keyOf(DELETE, "Delete"), keyOf(KEYBOARD, "Keyboard"));
    return pad;
  }

  /** @param {Event} event */
  #entered({ target }) {
    if (!(target instanceof HTMLInputElement) || target.dataset["fractions"] === undefined) return;
    if (target !== this.#field) target.inputMode = "none"; // the pad is here: no keyboard over it
    this.#field = target;
    this.#fresh = true;
    target.closest(".text")?.after(this.#pad);
    this.#labelSteps();
  }

  /** @param {Event} event */
  #left({ target }) {
    if (!(target instanceof HTMLInputElement) || target.dataset["pressed"] === undefined) return;
    delete target.dataset["pressed"];
    target.dispatchEvent(new Event("change", { bubbles: true }));
  }

  #labelSteps() {
    if (!this.#field) return;
    const step = stepLabel(this.#field);
    this.#less.textContent = `− ${step}`;
    this.#more.textContent = `+ ${step}`;
  }

  /** @param {Event} event */
  #tapped({ target }) {
    const field = this.#field;
    if (!field || !(target instanceof HTMLButtonElement)) return;
    field.focus();
    if (target.textContent === KEYBOARD) return this.#useKeyboard(field);
    const steps = target === this.#less || target === this.#more;
    if (steps) field.value = stepped(field, target === this.#more ? 1 : -1);
    else press(field, target.textContent ?? "", this.#fresh);
    field.dispatchEvent(new Event("input", { bubbles: true }));
    this.#labelSteps();
    // The browser counts no change made by script. A step is whole at once, a figure when it is left.
    if (steps) field.dispatchEvent(new Event("change", { bubbles: true }));
    else field.dataset["pressed"] = "";
  }

  /** @param {HTMLInputElement} field */
  #useKeyboard(field) {
    field.inputMode = "text";
    field.blur();
    field.focus();
  }
}
