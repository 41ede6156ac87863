// @ts-check
/**
 * @typedef {{action: string, payload: string, latest: string | undefined, live: boolean,
 *   tries: number, dropped: boolean, resolve: (answer: any) => void,
 *   reject: (error: unknown) => void}} Request
 */

const superseded = () => new DOMException("a newer input took its place", "AbortError");

/** Key of what is asked for when the rest of a page stands: an edit makes it worthless. */
export const LATER = "later";

/** Requests in the order asked, one running at a time; of each `latest` key only the newest. */
export class Queue {
  /** @type {Request[]} */
  #waiting = [];
  /** @type {Request | null} */
  running = null;

  /** @param {Request} request */
  add(request) {
    if (request.latest !== undefined) this.#supersede(request.latest, request.live);
    this.#waiting.push(request);
  }

  /** @param {string} key @param {boolean} live */
  #supersede(key, live) {
    this.#waiting = this.#waiting.filter((older) => {
      if (older.latest === key) older.reject(superseded());
      return older.latest !== key;
    });
    // A finger that keeps moving would otherwise never see an answer: a live one may still land.
    if (this.running?.latest === key && !live) {
      this.running.dropped = true;
      this.running.reject(superseded());
    }
  }

  /** @returns {Request | null} the next to run, now running */
  take() {
    this.running = this.#waiting.shift() ?? null;
    return this.running;
  }

  /** Whether nobody waits any more for what is running: something newer was asked. */
  get idle() {
    const { running } = this;
    if (!running) return false;
    return running.dropped || (running.latest === LATER && this.#waiting.some((r) => r.latest !== LATER));
  }

  /** The running one is over. */
  done() {
    this.running = null;
  }

  /** The worker died under the running one: it goes first again, unless something newer is asked.
   * @returns {Request | null} what was running */
  putBack() {
    const request = this.running;
    this.running = null;
    if (!request || request.dropped) return request;
    if (request.latest !== undefined && this.#waiting.some((r) => r.latest === request.latest)) {
      request.reject(superseded());
    } else this.#waiting.unshift(request);
    return request;
  }

  get empty() {
    return this.#waiting.length === 0 && this.running === null;
  }
}
