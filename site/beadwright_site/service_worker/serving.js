// @ts-check
/* Answering the app's own requests from what is stored. */
import { asFault } from "./fault.js";
import { BASE, FILES, plain, worker } from "./release_list.js";
import { STORE_MS, obtain, ourResponse, storedFile } from "./store.js";

/** @import { ReleaseFile } from "./release_list.js" */

/** Folders of what is not kept on the phone: schemas, for programs, and long license texts. */
const NOT_KEPT = ["schema/", "licences/"];

/** The stored file, or none where the store fails or does not answer. @param {ReleaseFile} file
 * @returns {Promise<Response | undefined>} */
function fromStore(file) {
  return new Promise((resolve) => {
    const timer = setTimeout(resolve, STORE_MS);
    storedFile(file).then(resolve, () => resolve(undefined)).finally(() => clearTimeout(timer));
  });
}

/** @param {ReleaseFile} file */
async function serve(file) {
  const stored = await fromStore(file);
  if (stored) return stored;
  try {
    return ourResponse(file, await obtain(file).bytes); // even when the phone is too full to keep it
  } catch (error) {
    return notHad(error, file.url);
  }
}

/** @param {unknown} error @param {string} url */
function notHad(error, url) {
  const { kind } = asFault(error, url);
  const headers = { "content-type": "text/plain; charset=utf-8", "x-beadwright-fault": kind };
  const said = "Not stored on this phone, and not to be had now. Try again with signal.";
  return new Response(said, { status: 503, headers });
}

async function notFound() {
  const file = FILES.get("404.html");
  if (!file) return new Response("No such page.", { status: 404 });
  const found = await serve(file);
  if (!found.ok) return found;
  // Its links are written for the top folder; say so, since it may stand in for any depth.
  const html = (await found.text()).replace(/<head[^>]*>/i, `$&<base href="${BASE.href}">`);
  return new Response(html, { status: 404, headers: { "content-type": "text/html; charset=utf-8" } });
}

worker.addEventListener("fetch", (event) => {
  const { request } = event;
  const url = new URL(request.url);
  if (request.method !== "GET" || request.headers.has("range")) return;
  if (url.origin !== BASE.origin || !url.pathname.startsWith(BASE.pathname)) return;
  const path = plain(url.pathname.slice(BASE.pathname.length));
  const file = FILES.get(path);
  // Not `mode === "navigate"`: links followed inside the app are plain fetches that want HTML.
  const page = (request.headers.get("accept") ?? "").includes("text/html");
  if (file) event.respondWith(serve(file));
  else if (page && FILES.has(`${path}/`)) {
    event.respondWith(Response.redirect(`${BASE.href}${path}/${url.search}`, 302));
  } else if (NOT_KEPT.some((folder) => path.startsWith(folder))) {
    event.respondWith(fetch(request).catch((error) => notHad(error, path)));
  } else if (page) event.respondWith(notFound());
});
