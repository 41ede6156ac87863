// @ts-check
/* The files stored on this phone, each under the SHA-256 of its bytes. */
import { arriving, fetchChecked, sha256 } from "./download.js";
import { Fault } from "./fault.js";
import { BASE, RELEASE } from "./release_list.js";

/** @import { ReleaseFile } from "./release_list.js" */

// The folder is part of the name: two copies on one host must not remove each other's caches.
const OWN = `beadwright ${BASE.pathname} `;
const BLOBS = `${OWN}blobs-1`;
const HASH_LENGTH = 64; // hex digits of a SHA-256
const JS_POLICY = "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; connect-src 'self'; "
  + "require-trusted-types-for 'script'; trusted-types 'none'";

/** @typedef {Promise<Uint8Array<ArrayBuffer>>} Bytes */
/** @type {Map<string, {bytes: Bytes, stored: Bytes}>} */
const underWay = new Map();

/** @param {string} sha256 */
const blobKey = (sha256) => new URL(`__blob/${sha256}`, BASE).href;

/** The hash a stored file is named by. @param {Request} request */
const hashOf = (request) => request.url.slice(-HASH_LENGTH);

/** A store that has not answered by then is gone on without. */
export const STORE_MS = 5_000;

/** @returns {Promise<Cache>} rejects with a Fault where the store does not answer */
function opened() {
  return new Promise((resolve, reject) => {
    const timer = setTimeout(() => reject(new Fault("silent", "store")), STORE_MS);
    caches.open(BLOBS).then(resolve, reject).finally(() => clearTimeout(timer));
  });
}

/** @param {ReleaseFile} file @param {BodyInit} body */
export function ourResponse(file, body) {
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
export function obtain(file) {
  const already = underWay.get(file.sha256);
  if (already) return already;
  const bytes = fetchChecked(file);
  const stored = bytes.then(async (sound) => {
    const blobs = await opened();
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

/** The file as stored, if it is. @param {ReleaseFile} file */
export async function storedFile(file) {
  const blobs = await opened();
  return blobs.match(blobKey(file.sha256));
}

/** @returns {Promise<Set<string>>} */
export async function storedHashes() {
  const blobs = await opened();
  return new Set((await blobs.keys()).map(hashOf));
}

/** Drop every stored blob whose bytes are no longer what its name says. */
export async function dropDamaged() {
  const blobs = await opened();
  let dropped = 0;
  for (const request of await blobs.keys()) {
    const response = await blobs.match(request);
    const sound = response && (await sha256(await response.arrayBuffer())) === hashOf(request);
    if (!sound && (await blobs.delete(request))) dropped += 1;
  }
  return dropped;
}

/** Remove what this release does not use, in our own caches only. */
export async function removeUnused() {
  const wanted = new Set(RELEASE.files.map((file) => file.sha256));
  const blobs = await opened();
  for (const request of await blobs.keys()) {
    if (!wanted.has(hashOf(request))) await blobs.delete(request);
  }
  for (const name of await caches.keys()) {
    if (name.startsWith(OWN) && name !== BLOBS) await caches.delete(name);
  }
}
