// @ts-check
import { Fault } from "./fault.js";
import { ask } from "./ask_worker.js";
import { SCRIPT, whatAnswers, within } from "./reach.js";

// What browsers throw where the user has blocked what a site may store.
const BLOCKED = new Set(["SecurityError", "NotSupportedError", "InvalidStateError"]);
const REGISTER_MS = 60_000;
const INSTALL_MS = 300_000; // the worker gives up on a dead signal long before

/** The browser's service workers, or why there are none. @returns {ServiceWorkerContainer | Fault} */
export function container() {
  try {
    if (!isSecureContext) return new Fault("insecure");
    return navigator.serviceWorker ?? new Fault("unsupported");
  } catch {
    return new Fault("blocked"); // some browsers throw when storage is off
  }
}

/** @returns {Promise<ServiceWorkerRegistration>} rejects with a Fault */
export async function register() {
  try {
    const asked = navigator.serviceWorker.register(SCRIPT, { updateViaCache: "none" });
    return await within(REGISTER_MS, asked);
  } catch (error) {
    if (error instanceof Fault) throw error;
    const kind = await whatAnswers();
    const refused = error instanceof DOMException && BLOCKED.has(error.name);
    throw new Fault(kind ?? (refused ? "blocked" : "unreachable"), String(error));
  }
}

/**
 * The worker that serves this page, once it does.
 * @param {ServiceWorkerRegistration} registration
 * @returns {Promise<ServiceWorker>}
 */
export async function activated(registration) {
  const first = registration.active ?? registration.waiting ?? registration.installing;
  if (!first) throw new Fault("unreachable", "sw.js");
  await within(INSTALL_MS, untilActive(first));
  // A forced reload bypasses the worker; from here on it serves the page again.
  if (!navigator.serviceWorker.controller) await ask(first, "CLAIM");
  return first;
}

/** @param {ServiceWorker} worker @returns {Promise<void>} */
function untilActive(worker) {
  return new Promise((resolve, reject) => {
    let fault = new Fault("unreachable", "pages");
    const stop = new AbortController();
    const { signal } = stop;
    const look = () => {
      if (worker.state === "activated") resolve();
      else if (worker.state === "redundant") reject(fault);
      else return;
      stop.abort();
    };
    navigator.serviceWorker.addEventListener("message", ({ data }) => {
      if (data?.type === "install-failed") fault = new Fault(data.kind, data.url);
    }, { signal });
    worker.addEventListener("statechange", look, { signal });
    look();
  });
}
