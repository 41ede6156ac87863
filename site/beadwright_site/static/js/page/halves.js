// @ts-check
import { put } from "./morph.js";

/**
 * Puts an answer on the page in two halves: what the first screen shows, then, a frame later, the
 * rest. The rest holds the form, so an entry that is changed before it stands comes first: the rest
 * is put at once, and the entry keeps what was typed.
 */
export class Halves {
  /** Parts not yet put. @type {{[id: string]: string}} */
  #rest = {};

  /** @param {AbortSignal} signal */
  constructor(signal) {
    this.signal = signal;
    // Before all else that reads the form or sets an entry of it.
    addEventListener("change", ({ target }) => this.finish(target), { signal, capture: true });
  }

  /** @param {string} id @returns {boolean} whether a part is still to be put */
  waits(id) {
    return id in this.#rest;
  }

  /** Put the rest now. @param {EventTarget | null} [typed] the entry that was just changed */
  finish(typed) {
    const rest = this.#rest;
    this.#rest = {};
    if (Object.keys(rest).length === 0) return;
    const field = typed instanceof HTMLInputElement || typed instanceof HTMLTextAreaElement ? typed : null;
    const { value, checked } = /** @type {HTMLInputElement} */ (field ?? {});
    put(rest);
    if (!field) return;
    if (field.type === "radio" || field.type === "checkbox") {
      /** @type {HTMLInputElement} */ (field).checked = checked;
    } else field.value = value;
  }

  /** @param {{[id: string]: string}} html outer HTML by id of the part
   * @param {string[]} ahead ids of the parts of the first screen */
  put(html, ahead) {
    /** @param {boolean} first */
    const half = (first) => Object.fromEntries(
      Object.entries(html).filter(([id]) => ahead.includes(id) === first));
    this.drop();
    put(half(true));
    const rest = this.#rest = half(false);
    requestAnimationFrame(() => setTimeout(() => {
      if (rest === this.#rest && !this.signal.aborted) this.finish();
    }));
  }

  /** A whole newer answer takes the place of the rest. */
  drop() {
    this.#rest = {};
  }
}
