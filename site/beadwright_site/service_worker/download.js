// @ts-check
/* One file from the network, checked against its hash. */
import { Fault, asFault } from "./fault.js";
import { BASE, plain, weight } from "./release_list.js";

/** @import { ReleaseFile } from "./release_list.js" */

const STALL_MS = 20_000; // no byte for this long: the signal is gone
const FILE_MS = 240_000; // browsers stop a worker after about five minutes
const GZIP_GAIN = 16_384; // with less to save, the packed copy is not worth one more request
/** How each page of ours begins. */
const HEAD = "<!doctype html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n"
  + "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src '";
const HEAD_BYTES = HEAD.length;
const GZIP_MARK = [0x1f, 0x8b]; // first two bytes of a packed file

/** Bytes of each file under way, weighed as they travel. @type {Map<string, number>} */
export const arriving = new Map();

/** @param {BufferSource} bytes */
export async function sha256(bytes) {
  const digest = new Uint8Array(await crypto.subtle.digest("SHA-256", bytes));
  return Array.from(digest, (byte) => byte.toString(16).padStart(2, "0")).join("");
}

/** @param {BlobPart[]} parts @param {ReleaseFile} file @returns {Promise<Uint8Array<ArrayBuffer>>} */
async function unpacked(parts, file) {
  const blob = new Blob(parts);
  const mark = new Uint8Array(await blob.slice(0, 2).arrayBuffer());
  // A host may have unpacked the .gz already; go by the bytes, not by the name.
  if (GZIP_MARK.some((byte, at) => mark[at] !== byte)) return new Uint8Array(await blob.arrayBuffer());
  try {
    const stream = blob.stream().pipeThrough(new DecompressionStream("gzip"));
    return new Uint8Array(await new Response(stream).arrayBuffer());
  } catch {
    throw new Fault("short", file.url, "the packed copy ends early");
  }
}

/** Whether HTML is a page of ours, if only the beginning of it: its policy names what we name.
 * @param {Uint8Array<ArrayBuffer>} bytes */
async function ours(bytes) {
  const head = await new Blob([bytes.slice(0, HEAD_BYTES)]).text();
  return head.startsWith(HEAD.slice(0, head.length));
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
    if (html && !(await ours(bytes))) throw new Fault("portal", file.url, "a page, but not ours");
    throw new Fault(bytes.length < file.bytes ? "short" : "changed", file.url, `${bytes.length} B`);
  } finally {
    clearTimeout(whole);
    clearTimeout(stall);
  }
}

/** Every address worth trying, cheapest first. @param {ReleaseFile} file */
export async function fetchChecked(file) {
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
