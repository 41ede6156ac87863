// @ts-check
import { Fault } from "../offline/fault.js";
import { scriptUrl } from "../offline/trusted.js";

/** @typedef {{news: string, loaded?: number}} News */
/**
 * @typedef {{id: number, limit: number, left: number, overdue: string,
 *   resolve: (text: string) => void, reject: (fault: Fault) => void}} Pending
 */

const TICK_MS = 1_000;
const BOOT_TICKS = 45; // without a byte or a step
const CALL_TICKS = 40; // the longest sum takes a slow phone half as long; it can be stopped before

// A phone with this little memory or this few cores is given more time to start.
const SLOW_MEMORY_GB = 2;
const SLOW_CORES = 4;
const SLOW_BOOT = 2; // times the ticks

function slowPhone() {
  const { deviceMemory } = /** @type {{deviceMemory?: number}} */ (navigator);
  const little = deviceMemory !== undefined && deviceMemory <= SLOW_MEMORY_GB;
  const cores = navigator.hardwareConcurrency; // 0 or nothing where it is not told
  return little || (cores > 0 && cores <= SLOW_CORES);
}

/** One worker, from its start to its end. It answers one request at a time; after a fatal fault it
 * answers no more. */
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
    this.#worker = new Worker(scriptUrl(new URL("./worker.js", import.meta.url)), { type: "module" });
    this.#worker.addEventListener("message", ({ data }) => this.#hear(data));
    this.#worker.addEventListener("error", (event) => {
      event.preventDefault(); // told through the fault, not in the console
      this.#die(new Fault("crash", event.message || "the worker did not load"));
    });
    this.#worker.addEventListener("messageerror", () => this.#die(new Fault("crash", "bad message")));
    // Counted in ticks, not by the clock: a phone that sleeps in a pocket is not a hang.
    this.#clock = setInterval(() => this.#tick(), TICK_MS);
  }

  /** Start Python and have it answer the known job. @returns {Promise<string>} */
  boot() {
    return this.#send({ name: "boot" }, BOOT_TICKS * (slowPhone() ? SLOW_BOOT : 1), "nostart");
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
