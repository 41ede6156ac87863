// @ts-check
import { Fault, asFault } from "./fault.js";
import { ask } from "./ask_worker.js";
import { whatAnswers, within } from "./reach.js";

/** @import { About } from "./ask_worker.js" */
/**
 * @typedef {{kind: "none" | "checking" | "current" | "coming" | "ready" | "taking" | "failed",
 *   percent: number, about: About | null, fault: Fault | null}} UpdateState
 */

const QUIET_MS = 300_000; // looks that nobody asked for: at most one in five minutes
const LOOK_MS = 20_000;
const TAKEN_MS = 3_000; // an answer to what was half typed may take so long

/** Finds a newer release, has it stored whole, and hands over only when told to. */
export class Updates {
  /** @type {ServiceWorkerRegistration | null} */
  #registration = null;
  #lastLook = -Infinity;
  #handOver = false;
  /** @type {UpdateState} */
  state = { kind: "none", percent: 0, about: null, fault: null };

  /** @param {() => void} changed */
  constructor(changed) {
    this.changed = changed;
  }

  /** @param {Partial<UpdateState>} more */
  #set(more) {
    this.state = { ...this.state, fault: null, ...more };
    this.changed();
  }

  /** @param {ServiceWorkerRegistration} registration */
  watch(registration) {
    if (this.#registration === registration) return;
    this.#registration = registration;
    registration.addEventListener("updatefound", () => this.#follow(registration.installing));
    if (registration.active) this.#follow(registration.installing);
    if (registration.waiting) void this.#offer(registration.waiting);
  }

  /** @param {ServiceWorker | null} coming */
  #follow(coming) {
    if (!coming || !this.#registration?.active) return; // the first install is no update
    this.#set({ kind: "coming", percent: 0 });
    coming.addEventListener("statechange", () => {
      if (coming.state === "installed") void this.#offer(coming);
      if (coming.state === "redundant" && this.state.kind === "coming") this.#set({ kind: "none" });
    });
  }

  /** News from a release that is being stored. @param {{[key: string]: any}} news */
  hear(news) {
    if (!news["replaces"]) return;
    if (news["type"] === "installing") {
      this.#set({ kind: "coming", percent: Math.floor((100 * news["done"]) / news["total"]) });
    } else if (news["type"] === "install-failed") {
      this.#set({ kind: "failed", fault: new Fault(news["kind"], news["url"]) });
    }
  }

  /** @param {ServiceWorker} waiting */
  async #offer(waiting) {
    try {
      // Stored at install; asked again, since the browser may have cleared files since.
      const about = await ask(waiting, "ENSURE");
      this.#set({ kind: "ready", percent: 100, about });
    } catch (error) {
      this.#set({ kind: "failed", fault: asFault(error) });
    }
  }

  /** Look for a newer release. @param {boolean} [asked] by a tap: look now, and say what came of it */
  async look(asked = false) {
    const registration = this.#registration;
    if (!registration || (!asked && Date.now() - this.#lastLook < QUIET_MS)) return;
    if (registration.installing || this.state.kind === "taking") return;
    if (registration.waiting) return void (await this.#offer(registration.waiting));
    this.#lastLook = Date.now();
    if (asked) this.#set({ kind: "checking" });
    try {
      await updated(registration, asked);
      if (asked && this.state.kind === "checking") this.#set({ kind: "current" });
    } catch (error) {
      this.#lastLook = -Infinity; // it did not get through, so it does not count
      if (asked) this.#set({ kind: "failed", fault: asFault(error) });
    }
  }

  /** Hand over to the release that waits; the page reloads when it is in charge. */
  async take() {
    const waiting = this.#registration?.waiting;
    if (!waiting) return;
    this.#handOver = true;
    this.#set({ kind: "taking" });
    try {
      await ask(waiting, "TAKE");
    } catch (error) {
      this.#handOver = false;
      this.#set({ kind: "failed", fault: asFault(error) });
    }
  }

  /** One reload when another release takes over; none when the first one starts to serve. */
  reloadOnHandOver() {
    const container = navigator.serviceWorker;
    let served = container.controller !== null;
    let reloading = false;
    container.addEventListener("controllerchange", () => {
      if ((served || this.#handOver) && !reloading) {
        reloading = true;
        void typedTaken().then(() => location.reload()); // the job is in the address by then
      }
      served = true;
    });
  }
}

/** What is half typed is taken as it stands, as if its field were left: the answer puts it in the
 * address. */
async function typedTaken() {
  const field = document.activeElement;
  if (!(field instanceof HTMLInputElement || field instanceof HTMLTextAreaElement)) return;
  let taken = false;
  const once = { capture: true, once: true };
  document.addEventListener("change", () => { taken = true; }, once);
  const answered = new Promise((resolve) => document.addEventListener("shown", resolve, once));
  field.blur();
  if (taken) await within(TAKEN_MS, answered).catch(() => {});
}

/** @param {ServiceWorkerRegistration} registration @param {boolean} asked */
async function updated(registration, asked) {
  try {
    await within(LOOK_MS, registration.update());
  } catch (error) {
    if (!asked) throw error; // nobody waits for the reason
    const kind = error instanceof Fault ? error.kind : await whatAnswers();
    if (kind) throw new Fault(kind, String(error));
    // The script is there: this look was tied to an older one that failed. Look once more.
    await within(LOOK_MS, registration.update());
  }
}
