// @ts-check
import { Fault } from "../offline/fault.js";

/** @typedef {{news: string, loaded?: number}} News */
/**
 * @typedef {{id: number, limit: number, left: number, overdue: string,
 *   resolve: (text: string) => void, reject: (fault: Fault) => void}} Pending
 */

const TICK_MS = 1_000;
export const BOOT_TICKS = 45; // without a byte or a step; a slow phone gets twice that
export const CALL_TICKS = 8;

const slowPhone = () =>
  (/** @type {{deviceMemory?: number}} */ (navigator).deviceMemory ?? 8) <= 2 ||
  (navigator.hardwareConcurrency || 8) <= 4;

/** One life of the worker. It answers one request at a time, and is dead after any fatal fault. */
export class Host {
  /** @type {Worker} */
  #worker;
  /** @type {Pending | null} */
  #pending = null;
  #lastId = 0;
  #clock;

  /** @param {(news: News) => void} onNews */
  constructor(onNews) {
    this.onNews = onNews;
    this.#worker = new Worker(new URL("./worker.js", import.meta.url), { type: "module" });
    this.#worker.addEventListener("message", ({ data }) => this.#hear(data));
    this.#worker.addEventListener("error", (event) => {
      event.preventDefault(); // told through the fault, not as a stray console line
      this.#die(new Fault("crash", event.message || "the worker did not load"));
    });
    this.#worker.addEventListener("messageerror", () => this.#die(new Fault("crash", "bad message")));
    // Counted in ticks, not by the clock: a phone that sleeps in a pocket is not a hang.
    this.#clock = setInterval(() => this.#tick(), TICK_MS);
  }

  /** Start Python and have it answer the known job. @returns {Promise<string>} */
  boot() {
    return this.#send({ name: "boot" }, BOOT_TICKS * (slowPhone() ? 2 : 1), "nostart");
  }

  /** @param {string} action @param {string} payload JSON @returns {Promise<string>} JSON */
  call(action, payload) {
    return this.#send({ name: "call", action, payload }, CALL_TICKS, "hang");
  }

  end() {
    clearInterval(this.#clock);
    this.#worker.terminate();
  }

  /** @param {object} request @param {number} limit in ticks @param {string} overdue @returns {Promise<string>} */
  #send(request, limit, overdue) {
    return new Promise((resolve, reject) => {
      this.#lastId += 1;
      this.#pending = { id: this.#lastId, limit, left: limit, overdue, resolve, reject };
      this.#worker.postMessage({ id: this.#lastId, ...request });
    });
  }

  #tick() {
    if (!this.#pending || document.visibilityState === "hidden") return;
    this.#pending.left -= 1;
    if (this.#pending.left <= 0) this.#die(new Fault(this.#pending.overdue));
  }

  /** @param {{id: number, result?: string, error?: {kind: string, message: string}, fatal?: boolean} & News} data */
  #hear(data) {
    const pending = this.#pending;
    if (!pending || data.id !== pending.id) return;
    if (data.news) {
      pending.left = pending.limit;
      this.onNews(data);
      return;
    }
    this.#pending = null;
    if (data.result !== undefined) return pending.resolve(data.result);
    const fault = new Fault(data.error?.kind ?? "broken", data.error?.message);
    if (data.fatal) this.end();
    pending.reject(Object.assign(fault, { fatal: data.fatal === true }));
  }

  /** @param {Fault} fault */
  #die(fault) {
    this.end();
    const pending = this.#pending;
    this.#pending = null;
    if (pending) pending.reject(Object.assign(fault, { fatal: true }));
    else this.onDeath(fault);
  }

  /** Called when the worker dies with nothing asked of it. @type {(fault: Fault) => void} */
  onDeath = () => {};
}
