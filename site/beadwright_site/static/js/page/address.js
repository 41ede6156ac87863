// @ts-check
const REST_MS = 300; // browsers refuse more than some ten changes of the address a second

/** Writes the job into the address: at rest, never faster than the browser lets it be changed. */
export class Address {
  /** @type {string | null} what is still to be written */
  #due = null;
  #path = location.pathname;
  #last = -Infinity;
  #timer = 0;

  /** @param {AbortSignal} signal */
  constructor(signal) {
    addEventListener("pagehide", () => this.#write(), { signal });
    document.addEventListener("turbo:before-visit", () => this.#write(), { signal });
    signal.addEventListener("abort", () => clearTimeout(this.#timer)); // another page stands now
  }

  /** @param {string} query @param {boolean} moving a finger is dragging: wait until it rests */
  show(query, moving) {
    this.#due = query;
    clearTimeout(this.#timer);
    if (!moving && performance.now() - this.#last > REST_MS) this.#write();
    else this.#timer = setTimeout(() => this.#write(), REST_MS);
  }

  #write() {
    clearTimeout(this.#timer);
    if (this.#due === null || location.pathname !== this.#path) return; // or another page came
    this.#last = performance.now();
    try {
      history.replaceState(history.state, "", location.pathname + (this.#due && `?${this.#due}`));
      this.#due = null;
    } catch {
      this.#timer = setTimeout(() => this.#write(), REST_MS); // refused: it is tried until it stands
    }
  }
}
