// @ts-check
import { Fault, asFault } from "../offline/fault.js";
import { Host } from "./host.js";
import { Queue } from "./queue.js";
import { offline } from "../offline/offline.js";

/** @typedef {"idle" | "fetching" | "starting" | "ready" | "failed"} State */

// What keeps a file from coming.
const OF_FILES = new Set(["unreachable", "slow", "portal", "short", "missing", "server"]);
// With these the worker may still start: from the network, or from what is stored.
const GO_ON = new Set(["full", "silent", "incomplete"]);
// A worker that crashes more often than this within the window will go on crashing.
const RESTARTS = 3;
const RESTART_WINDOW_MS = 60_000;
// A sum that takes longer is told, and may be stopped.
const LONG_MS = 1_000;
const RELOADED = "beadwright reloaded for";

/** Reloaded past the store, a page can come from a newer release than the numbers that are stored.
 * @param {string | undefined} core name of the core that started */
function sameRelease(core) {
  const wanted = document.querySelector('meta[name="core"]')?.getAttribute("content");
  return !wanted || wanted === core;
}

/** An ordinary reload shows the stored page, which is of the same release as the stored numbers.
 * @param {string | undefined} core */
function reloadOnce(core) {
  try {
    if (sessionStorage.getItem(RELOADED) === core) return; // it did not help
    sessionStorage.setItem(RELOADED, core ?? "");
  } catch {
    return; // nothing can be remembered: no reload that may never end
  }
  location.reload();
}

/**
 * Runs the core's answers in a worker, and starts it again when it crashes.
 *
 * Event "state", a CustomEvent with detail {state, detail}: `detail` is the percent while fetching,
 * a Fault when failed, and when ready after a crash the Fault that caused it, else null.
 * Event "long": the sum that runs has taken `seconds`, told every second.
 */
class Engine extends EventTarget {
  /** @type {State} */
  state = "idle";
  /** @type {number | Fault | null} */
  detail = null;
  /** Name of the core that runs. @type {string | undefined} */
  core;
  #queue = new Queue();
  /** @type {Host | null} */
  #host = null;
  /** Seconds the running sum has taken; 0 until that is long. */
  seconds = 0;
  /** How long the last start took [ms]: a sum nobody waits for is cheaper to let end before that. */
  #startMs = 0;
  #clock = 0;
  /** When it crashed lately. @type {number[]} */
  #crashes = [];

  /** @param {State} state @param {number | Fault | null} [detail] */
  #set(state, detail = null) {
    this.state = state;
    this.detail = detail;
    this.dispatchEvent(new CustomEvent("state", { detail: { state, detail } }));
  }

  /** Start once; later calls do nothing. */
  start() {
    if (this.state === "idle") void this.#start(null);
  }

  /** Start again after a failure, by a tap or because the files are here now. */
  retry() {
    if (this.state !== "failed") return;
    this.#crashes = [];
    void this.#start(null);
  }

  /**
   * Ask for an answer. Waits until the engine is ready, also through a failure and a retry.
   * @param {string} action one of the core's named actions: "page", "json", "check"
   * @param {object} payload
   * @param {{latest?: string, live?: boolean}} [how] `latest`: only the newest request of this key
   *   counts, an older one rejects with an AbortError. `live` as well: an older one that already
   *   runs may still answer, for a finger that is dragging.
   * @returns {Promise<any>} the answer; rejects with a Fault if the core raised an error
   */
  call(action, payload, { latest, live = false } = {}) {
    return new Promise((resolve, reject) => {
      this.#queue.add({ action, payload: JSON.stringify(payload), latest, live, tries: 0,
        dropped: false, resolve, reject });
      this.start();
      if (this.state === "ready") void this.#run();
    });
  }

  /** End the sum that runs, by a tap: its asker is told that it was stopped. */
  stop() {
    const { running } = this.#queue;
    if (this.state !== "ready" || !running) return;
    this.#drop(new Fault("halted"));
  }

  /** End the sum that runs, with the reason its asker is told. It is not asked again; what else
   * waits is. @param {Fault} reason */
  #drop(reason) {
    this.#queue.running?.reject(reason);
    this.#queue.done();
    this.#host?.end();
    this.#host = null;
    void this.#start(null);
  }

  /** @param {number} began */
  #watch(began) {
    clearInterval(this.#clock);
    this.seconds = 0;
    const host = this.#host;
    this.#clock = setInterval(() => {
      if (host !== this.#host) return this.#watched();
      const took = performance.now() - began;
      this.seconds = Math.floor(took / 1_000);
      if (this.#queue.idle && took > Math.max(LONG_MS, this.#startMs)) this.#drop(new Fault("halted"));
      else this.dispatchEvent(new Event("long"));
    }, LONG_MS);
  }

  #watched() {
    clearInterval(this.#clock);
    this.seconds = 0;
  }

  /** @param {Fault | null} crash what ended the worker before, null if there was none */
  async #start(crash) {
    this.#watched();
    this.#set("fetching", 0);
    try {
      if (typeof WebAssembly !== "object") throw new Fault("nowasm");
      if (typeof Worker !== "function") throw new Fault("noworker");
      await this.#files();
      this.#set("starting");
      const host = new Host(() => {});
      this.#host = host;
      host.onDeath = (fault) => this.#crashed(fault);
      const began = performance.now();
      const { core } = JSON.parse(await host.boot());
      this.#startMs = performance.now() - began;
      if (!sameRelease(core)) {
        this.#fail(new Fault("releases", core));
        return reloadOnce(core);
      }
      this.core = core;
      this.#set("ready", crash);
    } catch (error) {
      const fault = asFault(error);
      const silent = fault.kind === "crash" || fault.kind === "broken";
      // Files that could not be stored could not be read either: one fault, one reason.
      const cause = OF_FILES.has(offline.state.fault?.kind ?? "") ? offline.state.fault : null;
      return this.#fail(silent ? cause ?? new Fault("nostart", fault.message) : fault);
    }
    void this.#run();
  }

  /** Wait for the files to be stored, so that they come over the air once. Where nothing can be
   * stored, the worker fetches them itself. */
  async #files() {
    const mirror = () => {
      if (offline.state.kind === "fetching") this.#set("fetching", offline.state.percent);
    };
    offline.addEventListener("change", mirror);
    const fault = await offline.settled();
    offline.removeEventListener("change", mirror);
    const served = "serviceWorker" in navigator && navigator.serviceWorker?.controller;
    if (fault && served && !GO_ON.has(fault.kind)) throw fault;
  }

  async #run() {
    const host = this.#host;
    if (this.#queue.running || !host) return;
    for (let next = this.#queue.take(); next; next = this.#queue.take()) {
      next.tries += 1;
      this.#watch(performance.now());
      try {
        const answer = JSON.parse(await host.call(next.action, next.payload));
        if (answer.error) next.reject(new Fault(answer.error.type, answer.error.message));
        else next.resolve(answer);
        this.#queue.done();
      } catch (error) {
        const fault = /** @type {Fault & {fatal?: boolean}} */ (asFault(error));
        if (fault.fatal && fault.kind === "hang") return this.#drop(fault); // once is enough
        if (fault.fatal) return this.#crashed(fault);
        next.reject(fault);
        this.#queue.done();
      }
    }
    this.#watched();
  }

  /** @param {Fault} fault */
  #crashed(fault) {
    if (this.#queue.running && this.#queue.running.tries > 1) {
      this.#queue.running.reject(new Fault("refused", fault.message)); // it crashed on this twice
      this.#queue.done();
    }
    this.#queue.putBack();
    const now = Date.now();
    this.#crashes = [...this.#crashes.filter((at) => now - at < RESTART_WINDOW_MS), now];
    if (this.#crashes.length > RESTARTS) this.#fail(new Fault("stopping", fault.message));
    else void this.#start(fault);
  }

  /** @param {Fault} fault */
  #fail(fault) {
    this.#host?.end();
    this.#host = null;
    this.#set("failed", fault);
  }
}

export const engine = new Engine();

// What kept it from starting may be over: the files are whole now, or the signal is back.
offline.addEventListener("stored", () => engine.retry());
addEventListener("online", () => {
  if (engine.detail instanceof Fault && engine.detail.kind === "unreachable") engine.retry();
});
