// @ts-check
/* What a page may ask of the worker. */
import { BEAT_MS, about, ensureAll } from "./complete.js";
import { Fault, asFault } from "./fault.js";
import { RELEASE, worker } from "./release_list.js";
import { dropDamaged } from "./store.js";

/** @import { News } from "./complete.js" */

/** What is stored, as read back: a store may take a file and lose it without a word. */
async function whole() {
  const state = await about();
  if (!state.complete) throw new Fault("incomplete", "");
  return state;
}

/** @type {Record<string, (tell: (news: News) => void) => Promise<object>>} */
const REQUESTS = {
  ABOUT: about,
  ENSURE: async (tell) => {
    await ensureAll(tell);
    return whole();
  },
  REPAIR: async (tell) => {
    const beat = setInterval(() => tell({ type: "progress", id: RELEASE.id }), BEAT_MS);
    const dropped = await dropDamaged().finally(() => clearInterval(beat));
    await ensureAll(tell);
    return { ...(await whole()), dropped };
  },
  TAKE: async () => {
    const state = await whole(); // looked at again: storage may be cleared since it was offered
    await worker.skipWaiting();
    return state;
  },
  CLAIM: async () => {
    await worker.clients.claim();
    return about();
  },
};

worker.addEventListener("message", (event) => {
  const port = event.ports[0];
  const request = REQUESTS[String(event.data?.type)];
  if (!port || !request) return;
  const answered = request((news) => port.postMessage(news)).then(
    (result) => port.postMessage({ type: "done", ...result }),
    (/** @type {unknown} */ error) => {
      const { kind, url, message } = asFault(error, "");
      port.postMessage({ type: "failed", kind, url, message });
    },
  );
  event.waitUntil(answered);
});
