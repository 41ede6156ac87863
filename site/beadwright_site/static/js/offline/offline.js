// @ts-check
import { Fault, asFault } from "./fault.js";
import { ask } from "./ask_worker.js";
import { Updates } from "./updates.js";
import { activated, container, hearInstall, register } from "./registration.js";

/** @import { About, Progress } from "./ask_worker.js" */
/**
 * @typedef {{kind: "checking" | "fetching" | "ready" | "none", percent: number,
 *   fault: Fault | null, about: About | null}} KeepState
 */

const RETRY_MS = [5_000, 15_000, 45_000, 120_000];
// Faults that may pass by themselves. With others, to try again would only use up the data plan.
const PASSING = new Set(["unreachable", "slow", "silent", "server", "portal"]);
const SILENT_TRIES = 3;

/** Keeps the app on the phone and says how much of it is there. Events: "change"; "stored" when all
 * files were found sound or were fetched anew. */
class Offline extends EventTarget {
  /** @type {KeepState} */
  state = { kind: "checking", percent: 0, fault: null, about: null };
  updates = new Updates(() => this.#changed());
  /** Whether a worker of ours is at hand for updates and repair. */
  registered = false;
  #begun = false;
  #working = false;
  #tries = 0;
  /** @type {number | undefined} */
  #timer;

  #changed() {
    this.dispatchEvent(new Event("change"));
  }

  /** @param {Partial<KeepState>} more */
  #set(more) {
    this.state = { ...this.state, fault: null, ...more };
    this.#changed();
  }

  /** Whether something is being stored or checked. */
  get busy() {
    return this.#working;
  }

  /** Start once a visit; later calls do nothing. */
  begin() {
    if (this.#begun) return;
    this.#begun = true;
    const workers = container();
    if (workers instanceof Fault) return this.#set({ kind: "none", fault: workers });
    this.updates.reloadOnHandOver();
    workers.addEventListener("message", ({ data }) => {
      hearInstall(data);
      this.updates.hear(data);
    });
    workers.startMessages();
    for (const [target, type] of /** @type {[EventTarget, string][]} */ ([
      [document, "visibilitychange"], [window, "pageshow"], [window, "focus"], [window, "online"],
    ])) {
      target.addEventListener(type, () => this.#lookAgain());
    }
    void this.retry();
  }

  /** The page came to the front again, or the signal came back. */
  #lookAgain() {
    if (document.visibilityState !== "visible") return;
    void this.updates.look();
    if (this.state.kind === "none" && PASSING.has(this.state.fault?.kind ?? "")) void this.retry(false);
  }

  /** Store what is missing. Safe to call at any time. @param {boolean} [asked] by a tap */
  async retry(asked = true) {
    if (this.#working || container() instanceof Fault) return;
    if (asked && this.state.kind === "none") this.#set({ kind: "checking" });
    await this.#work(async (worker) => {
      let heard = false;
      for (let left = SILENT_TRIES; ; left -= 1) {
        try {
          return await ask(worker, "ENSURE", (news) => {
            heard = true;
            this.#progress(news);
          });
        } catch (error) {
          // The browser stops a worker that runs long. What came is kept; ask again.
          const silent = error instanceof Fault && error.kind === "silent";
          if (!silent || !heard || left <= 1) throw error;
        }
      }
    });
  }

  /** Check every stored file against its hash, drop the bad ones, fetch them again. */
  async repair() {
    if (this.#working || container() instanceof Fault) return;
    await this.#work((worker) => ask(worker, "REPAIR", (news) => this.#progress(news)));
  }

  /** Resolves once the files are here, or with the reason why not. @returns {Promise<Fault | null>} */
  settled() {
    this.begin();
    return new Promise((resolve) => {
      const look = () => {
        if (this.state.kind !== "ready" && this.state.kind !== "none") return;
        this.removeEventListener("change", look);
        resolve(this.state.fault);
      };
      this.addEventListener("change", look);
      look();
    });
  }

  /** @param {(worker: ServiceWorker) => Promise<About>} job */
  async #work(job) {
    clearTimeout(this.#timer);
    this.#working = true;
    /** @type {ServiceWorker | null} */
    let worker = null;
    try {
      // Never wait for the registration when a worker already serves this page.
      const registered = register().then((registration) => this.#registered(registration));
      worker = navigator.serviceWorker.controller;
      if (worker) registered.catch(() => {}); // an offline start; the next look says why
      else worker = await activated(await registered);
      const about = await job(worker);
      this.#tries = 0;
      this.#working = false;
      this.#set({ kind: "ready", percent: 100, about });
      this.dispatchEvent(new Event("stored"));
    } catch (error) {
      const fault = asFault(error);
      const answers = worker && fault.kind !== "silent";
      const about = answers ? await ask(worker, "ABOUT").catch(() => null) : null;
      this.#working = false;
      this.#fail(fault, about ?? this.state.about);
    }
  }

  /** @param {ServiceWorkerRegistration} registration */
  #registered(registration) {
    this.registered = true;
    this.updates.watch(registration);
    void this.updates.look();
    return registration;
  }

  /** @param {Progress} news */
  #progress({ done, total }) {
    if (done === undefined || !total) return this.#changed();
    this.#set({ kind: "fetching", percent: Math.min(99, Math.floor((100 * done) / total)) });
  }

  /** @param {Fault} fault @param {About | null} about */
  #fail(fault, about) {
    this.#set({ kind: "none", fault, about });
    if (fault.kind === "changed" || fault.kind === "missing") void this.updates.look(true);
    if (!PASSING.has(fault.kind)) return;
    const wait = RETRY_MS[Math.min(this.#tries, RETRY_MS.length - 1)];
    this.#tries += 1;
    this.#timer = setTimeout(() => this.#lookAgain(), wait);
  }
}

export const offline = new Offline();
