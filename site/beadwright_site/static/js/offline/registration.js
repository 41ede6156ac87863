// @ts-check
import { Fault } from "./fault.js";
import { ask } from "./ask_worker.js";
import { SCRIPT, whatAnswers, within } from "./reach.js";
import { scriptUrl } from "./trusted.js";

// What browsers throw where the user has blocked what a site may store.
const BLOCKED = new Set(["SecurityError", "NotSupportedError", "InvalidStateError"]);
const REGISTER_MS = 60_000;
const NEWS_MS = 1_000; // the reason may come after the end it explains
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

/** Why the first install failed, as its worker told. @type {Fault | null} */
let told = null;

/** News from a worker that installs. @param {{[key: string]: any}} news */
export function hearInstall(news) {
  if (news["type"] === "install-failed" && !news["replaces"]) told = new Fault(news["kind"], news["url"]);
}

/** @returns {Promise<Fault>} */
async function installFault() {
  if (!told) await new Promise((resolve) => setTimeout(resolve, NEWS_MS));
  return told ?? new Fault("unreachable", "pages");
}

/** @returns {Promise<ServiceWorkerRegistration>} rejects with a Fault */
export async function register() {
  told = null;
  try {
    const asked = navigator.serviceWorker.register(scriptUrl(SCRIPT), { updateViaCache: "none" });
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
  if (!first) throw await installFault();
  await within(INSTALL_MS, untilActive(first));
  // A forced reload bypasses the worker; from here on it serves the page again.
  if (!navigator.serviceWorker.controller) await ask(first, "CLAIM");
  return first;
}

/** @param {ServiceWorker} worker @returns {Promise<void>} */
function untilActive(worker) {
  return new Promise((resolve, reject) => {
    const stop = new AbortController();
    const { signal } = stop;
    const look = () => {
      if (worker.state === "activated") resolve();
      else if (worker.state === "redundant") void installFault().then(reject);
      else return;
      stop.abort();
    };
    worker.addEventListener("statechange", look, { signal });
    look();
  });
}
