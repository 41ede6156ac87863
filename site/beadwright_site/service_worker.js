// @ts-check
/// <reference lib="webworker" />
/*
 * Keeps the whole app on the phone, by content: each file is stored under the SHA-256 of its bytes.
 *
 * Two groups. The shell (pages, styles, scripts) is stored while this worker installs, whole or not
 * at all. The runtime (the calculator) comes when the page asks with ENSURE, two files at a time,
 * and resumes file by file. A worker that replaces another stores both groups before it counts as
 * installed, so an update that is offered, or that the browser takes by itself once every tab is
 * shut, is always complete.
 *
 * Nothing is stored that does not hash to what the release list says: a sign-in page of the shop's
 * network, a cut file or a file of another release is refused, with the reason.
 * What the welder saved (IndexedDB) is never touched from here.
 */
"use strict";

/**
 * @typedef {{url: string, sha256: string, bytes: number, gz_bytes: number | null, type: string,
 *   group: "shell" | "runtime"}} ReleaseFile
 * @typedef {{type: string, [more: string]: unknown}} News
 */

/**
 * The build puts the release list between the two marks.
 * @type {{id: string, version: string, files: ReleaseFile[]}}
 */
const RELEASE = /*RELEASE*/ {"id": "", "version": "", "files": []} /*END*/;

const worker = /** @type {ServiceWorkerGlobalScope} */ (/** @type {unknown} */ (self));
const BASE = new URL("./", worker.location.href);
// The folder is part of the name: two copies on one host must not sweep each other's caches.
const OWN = `beadwright ${BASE.pathname} `;
const BLOBS = `${OWN}blobs-1`;

const STALL_MS = 20_000; // no byte for this long: the signal is gone
const FILE_MS = 240_000; // browsers stop a worker after about five minutes
const BEAT_MS = 1_000; // how often a waiting page hears that work goes on
const GZIP_GAIN = 16_384; // below this a packed copy is not worth a second name
const SHELL_LANES = 4;
const RUNTIME_LANES = 2;
const JS_POLICY = "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; connect-src 'self'";

/** Page addresses with and without index.html are one entry. @param {string} path */
const plain = (path) => path.replace(/(^|\/)index\.html$/, "$1");
const FILES = new Map(RELEASE.files.map((file) => [plain(file.url), file]));
const SHELL = RELEASE.files.filter((file) => file.group === "shell");
/** @param {ReleaseFile} file */
const weight = (file) => file.gz_bytes ?? file.bytes;

/** Why a file was not stored. `kind` is one of the keys the page has words for. */
class Fault extends Error {
  /** @param {string} kind @param {string} url @param {string} [detail] */
  constructor(kind, url, detail = "") {
    super(`${kind}: ${url} ${detail}`);
    this.kind = kind;
    this.url = url;
  }
}

/** @param {unknown} error @param {string} url @returns {Fault} */
function asFault(error, url) {
  if (error instanceof Fault) return error;
  const name = error instanceof Error ? error.name : "";
  if (name === "QuotaExceededError") return new Fault("full", url);
  if (name === "AbortError" || name === "TimeoutError") return new Fault("slow", url);
  if (error instanceof TypeError) return new Fault("unreachable", url, error.message);
  return new Fault("broken", url, String(error));
}

// ---------------------------------------------------------------- fetching and checking

/** Bytes of each file under way, weighed as they travel. @type {Map<string, number>} */
const arriving = new Map();
/** @typedef {Promise<Uint8Array<ArrayBuffer>>} Bytes */
/** @type {Map<string, {bytes: Bytes, stored: Bytes}>} */
const underWay = new Map();

/** @param {string} sha256 */
const blobKey = (sha256) => new URL(`__blob/${sha256}`, BASE).href;

/** @param {BufferSource} bytes */
async function sha256(bytes) {
  const digest = new Uint8Array(await crypto.subtle.digest("SHA-256", bytes));
  return Array.from(digest, (byte) => byte.toString(16).padStart(2, "0")).join("");
}

/** @param {BlobPart[]} parts @param {ReleaseFile} file @returns {Promise<Uint8Array<ArrayBuffer>>} */
async function unpacked(parts, file) {
  const blob = new Blob(parts);
  const mark = new Uint8Array(await blob.slice(0, 2).arrayBuffer());
  // A host may have unpacked the .gz already; go by the bytes, not by the name.
  if (mark[0] !== 0x1f || mark[1] !== 0x8b) return new Uint8Array(await blob.arrayBuffer());
  try {
    const stream = blob.stream().pipeThrough(new DecompressionStream("gzip"));
    return new Uint8Array(await new Response(stream).arrayBuffer());
  } catch {
    throw new Fault("short", file.url, "the packed copy ends early");
  }
}

/** One try at one address. @param {ReleaseFile} file @param {URL} url @param {RequestCache} cache */
async function download(file, url, cache) {
  const stop = new AbortController();
  const whole = setTimeout(() => stop.abort(), FILE_MS);
  let stall = setTimeout(() => stop.abort(), STALL_MS);
  try {
    const init = /** @type {RequestInit} */ ({ cache, mode: "same-origin", signal: stop.signal });
    const response = await fetch(url, init);
    if (!response.ok) {
      throw new Fault(response.status < 500 ? "missing" : "server", file.url, `${response.status}`);
    }
    const html = (response.headers.get("content-type") ?? "").startsWith("text/html");
    if (html && !file.type.startsWith("text/html")) throw new Fault("portal", file.url);
    if (!response.body) throw new Fault("short", file.url, "no body");
    const full = url.pathname.endsWith(".gz") ? weight(file) : file.bytes;
    const reader = response.body.getReader();
    /** @type {Uint8Array<ArrayBuffer>[]} */
    const parts = [];
    let got = 0;
    for (let part = await reader.read(); !part.done; part = await reader.read()) {
      clearTimeout(stall);
      stall = setTimeout(() => stop.abort(), STALL_MS);
      parts.push(part.value);
      got += part.value.length;
      arriving.set(file.sha256, Math.min(1, got / full) * weight(file));
    }
    const bytes = await unpacked(parts, file);
    if ((await sha256(bytes)) === file.sha256) return bytes;
    if (html) throw new Fault("portal", file.url, "a page, but not ours");
    throw new Fault(bytes.length < file.bytes ? "short" : "changed", file.url, `${bytes.length} B`);
  } finally {
    clearTimeout(whole);
    clearTimeout(stall);
  }
}

/** Every address worth trying, cheapest first. @param {ReleaseFile} file */
async function fetchChecked(file) {
  const raw = new URL(plain(file.url), BASE); // as a page asks for it
  /** @type {[URL, RequestCache][]} */
  const tries = [[raw, "no-cache"], [raw, "reload"]];
  const gain = file.gz_bytes === null ? 0 : file.bytes - file.gz_bytes;
  if (gain > GZIP_GAIN && !raw.pathname.endsWith("/") && "DecompressionStream" in self) {
    tries.unshift([new URL(`${file.url}.gz`, BASE), "no-cache"]);
  }
  /** @type {Fault | undefined} */
  let last;
  for (const [url, cache] of tries) {
    try {
      return await download(file, url, cache);
    } catch (error) {
      last = asFault(error, file.url);
      if (last.kind === "unreachable" || last.kind === "slow") break; // no signal: stop asking
    }
  }
  throw last ?? new Fault("broken", file.url);
}

/** @param {ReleaseFile} file @param {BodyInit} body */
function ourResponse(file, body) {
  const script = file.type.includes("javascript");
  const text = script || file.type.startsWith("text/");
  const headers = new Headers({
    "content-type": text && !file.type.includes("charset") ? `${file.type}; charset=utf-8` : file.type,
    "content-length": String(file.bytes),
    "x-content-type-options": "nosniff",
    "x-beadwright-checked": file.sha256,
  });
  // A worker takes its policy from its own script's headers; a bare host sends none.
  if (script) headers.set("content-security-policy", JS_POLICY);
  return new Response(body, { headers });
}

/** Fetch, check and store one file; whoever asks meanwhile shares the same download.
 * @param {ReleaseFile} file */
function obtain(file) {
  const already = underWay.get(file.sha256);
  if (already) return already;
  const bytes = fetchChecked(file);
  const stored = bytes.then(async (sound) => {
    const blobs = await caches.open(BLOBS);
    await blobs.put(blobKey(file.sha256), ourResponse(file, sound));
    return sound;
  }).finally(() => {
    underWay.delete(file.sha256);
    arriving.delete(file.sha256);
  });
  stored.catch(() => {}); // told by whoever waits for it; a page served without storing does not
  const work = { bytes, stored };
  underWay.set(file.sha256, work);
  return work;
}

// ---------------------------------------------------------------- the set as a whole

/** @returns {Promise<Set<string>>} */
async function storedHashes() {
  const blobs = await caches.open(BLOBS);
  return new Set((await blobs.keys()).map((request) => request.url.slice(-64)));
}

/** What this release is and how much of it is here. */
async function about() {
  const here = await storedHashes();
  const stored = RELEASE.files.filter((file) => here.has(file.sha256));
  const sum = (/** @type {ReleaseFile[]} */ files) => files.reduce((all, f) => all + f.bytes, 0);
  return {
    id: RELEASE.id, version: RELEASE.version,
    files: RELEASE.files.length, bytes: sum(RELEASE.files),
    storedFiles: stored.length, storedBytes: sum(stored),
    complete: RELEASE.files.length > 0 && stored.length === RELEASE.files.length,
  };
}

/** Store what is missing of `files`. The first fault stops new downloads, finished files stay.
 * @param {ReleaseFile[]} files @param {number} lanes @param {(news: News) => void} tell */
async function ensure(files, lanes, tell) {
  const here = await storedHashes();
  const missing = [...new Map(files.map((file) => [file.sha256, file])).values()]
    .filter((file) => !here.has(file.sha256));
  if (missing.length === 0) return;
  const total = files.reduce((sum, file) => sum + weight(file), 0);
  const report = () => {
    const left = missing.reduce((sum, file) => (here.has(file.sha256) ? sum : sum + weight(file)
      - (arriving.get(file.sha256) ?? 0)), 0);
    tell({ type: "progress", id: RELEASE.id, done: Math.round(total - left), total });
  };
  const beat = setInterval(report, BEAT_MS);
  report();
  /** @type {Fault | undefined} */
  let fault;
  const queue = [...missing];
  const lane = async () => {
    for (let file = queue.shift(); file && !fault; file = queue.shift()) {
      try {
        await obtain(file).stored;
        here.add(file.sha256);
        report();
      } catch (error) {
        fault ??= asFault(error, file.url);
      }
    }
  };
  await Promise.all(Array.from({ length: lanes }, lane));
  clearInterval(beat);
  if (fault) throw fault;
}

/** Drop every stored blob whose bytes are no longer what its name says. */
async function dropDamaged() {
  const blobs = await caches.open(BLOBS);
  let dropped = 0;
  for (const request of await blobs.keys()) {
    const response = await blobs.match(request);
    const sound = response && (await sha256(await response.arrayBuffer())) === request.url.slice(-64);
    if (!sound && (await blobs.delete(request))) dropped += 1;
  }
  return dropped;
}

/** Remove what this release does not use, in our own caches only. */
async function sweep() {
  const wanted = new Set(RELEASE.files.map((file) => file.sha256));
  const blobs = await caches.open(BLOBS);
  for (const request of await blobs.keys()) {
    if (!wanted.has(request.url.slice(-64))) await blobs.delete(request);
  }
  for (const name of await caches.keys()) {
    if (name.startsWith(OWN) && name !== BLOBS) await caches.delete(name);
  }
}

// ---------------------------------------------------------------- life

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
  event.waitUntil(sweep().then(() => worker.clients.claim()));
});

// ---------------------------------------------------------------- what pages may ask

/** One job serves every page that asks; all of them hear its progress. @type {Promise<void> | null} */
let ensuring = null;
/** @type {Set<(news: News) => void>} */
const listeners = new Set();

/** @param {(news: News) => void} tell */
async function ensureAll(tell) {
  listeners.add(tell);
  ensuring ??= ensure(RELEASE.files, RUNTIME_LANES, (news) => {
    for (const listener of listeners) listener(news);
  }).finally(() => {
    ensuring = null;
  });
  await ensuring.finally(() => listeners.delete(tell));
}

/** @type {Record<string, (tell: (news: News) => void) => Promise<object>>} */
const REQUESTS = {
  ABOUT: about,
  ENSURE: async (tell) => {
    await ensureAll(tell);
    return about();
  },
  REPAIR: async (tell) => {
    const beat = setInterval(() => tell({ type: "progress", id: RELEASE.id }), BEAT_MS);
    const dropped = await dropDamaged().finally(() => clearInterval(beat));
    await ensureAll(tell);
    return { ...(await about()), dropped };
  },
  TAKE: async () => {
    const state = await about();
    // Looked at again at the last moment: the browser may have cleared storage since it was offered.
    if (!state.complete) throw new Fault("incomplete", "");
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

// ---------------------------------------------------------------- serving

/** @param {ReleaseFile} file */
async function serve(file) {
  const blobs = await caches.open(BLOBS);
  const kept = await blobs.match(blobKey(file.sha256));
  if (kept) return kept;
  try {
    return ourResponse(file, await obtain(file).bytes); // even when the phone is too full to keep it
  } catch (error) {
    const { kind } = asFault(error, file.url);
    const headers = { "content-type": "text/plain; charset=utf-8", "x-beadwright-fault": kind };
    const said = "Not stored on this phone, and not to be had now. Try again with signal.";
    return new Response(said, { status: 503, headers });
  }
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
  } else if (page) event.respondWith(notFound());
});
