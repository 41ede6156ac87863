// @ts-check
/* Installing a release, and taking over from the one before. */
import { RUNTIME_LANES, ensure } from "./complete.js";
import { asFault } from "./fault.js";
import { BASE, RELEASE, SHELL, worker } from "./release_list.js";
import { removeUnused } from "./store.js";

/** @import { News } from "./complete.js" */

const SHELL_LANES = 4; // files fetched at a time: many small ones

/** @param {News} news */
async function tellPages(news) {
  const pages = await worker.clients.matchAll({ includeUncontrolled: true, type: "window" });
  for (const page of pages) {
    if (page.url.startsWith(BASE.href)) page.postMessage(news);
  }
}

worker.addEventListener("install", (event) => {
  const replaces = worker.registration.active !== null;
  const files = replaces ? RELEASE.files : SHELL;
  event.waitUntil(
    ensure(files, replaces ? RUNTIME_LANES : SHELL_LANES, (news) => {
      void tellPages({ ...news, type: "installing", replaces });
    }).catch(async (/** @type {unknown} */ error) => {
      const { kind, url } = asFault(error, "");
      await tellPages({ type: "install-failed", id: RELEASE.id, replaces, kind, url });
      throw error;
    }),
  );
});

worker.addEventListener("activate", (event) => {
  event.waitUntil(removeUnused().then(() => worker.clients.claim()));
});
