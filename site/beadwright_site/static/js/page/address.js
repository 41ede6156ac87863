// @ts-check
// Browsers refuse more than 100 changes of the address in ten seconds: at most 50 are written at once
// and, one a rest, 33 later.
const SPAN_MS = 10_000;
const AT_ONCE = 50;
const REST_MS = 300;

/** Writes the job into the address: at rest, never faster than the browser lets it be changed. */
export class Address {
  /** @type {string | null} what is still to be written */
  #due = null;
  #path = location.pathname;
  /** When it was written lately. @type {number[]} */
  #times = [];
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
    this.#times = this.#times.filter((at) => performance.now() - at < SPAN_MS);
    if (!moving && this.#times.length < AT_ONCE) this.#write();
    else this.#timer = setTimeout(() => this.#write(), REST_MS);
  }

  #write() {
    clearTimeout(this.#timer);
    if (this.#due === null || location.pathname !== this.#path) return; // or another page came
    this.#times.push(performance.now());
    try {
      history.replaceState(history.state, "", location.pathname + (this.#due && `?${this.#due}`));
      this.#due = null;
    } catch {
      this.#timer = setTimeout(() => this.#write(), REST_MS); // refused: it is tried until it stands
    }
  }
}
