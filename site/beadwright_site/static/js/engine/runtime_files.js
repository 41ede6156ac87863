// @ts-check
import { Fault } from "../offline/fault.js";

/** @typedef {Uint8Array<ArrayBuffer>} Bytes */

const WASM_MARK = [0x00, 0x61, 0x73, 0x6d];
const WASM_HEADER = 8; // mark and version
const LAST_SHIFT = 28; // a length has at most five groups of seven bits
const ZIP_END = [0x50, 0x4b, 0x05, 0x06]; // mark of the record at the end
const ZIP_END_LEAST = 22; // bytes of that record
const ZIP_END_MOST = ZIP_END_LEAST + 65_535; // with the longest comment behind it

/**
 * Fetch one runtime file whole and make sure it is what its name says. Needed before the start:
 * a missing, cut or mistyped wasm file would leave the start hanging without a word.
 * @param {URL} url
 * @param {(bytes: number) => void} arrived called with each part's size
 * @returns {Promise<Bytes>} rejects with a Fault
 */
export async function fetchWhole(url, arrived) {
  const name = url.pathname.slice(url.pathname.lastIndexOf("/") + 1);
  /** @type {Response} */
  let response;
  const parts = [];
  try {
    response = await fetch(url);
    const kind = response.headers.get("x-beadwright-fault"); // the service worker's reason
    if (kind) throw new Fault(kind, name);
    if (!response.ok) throw new Fault(response.status < 500 ? "missing" : "server", name);
    if (!response.body) throw new Fault("short", name);
    const reader = response.body.getReader();
    for (let part = await reader.read(); !part.done; part = await reader.read()) {
      parts.push(part.value);
      arrived(part.value.length);
    }
  } catch (error) {
    if (error instanceof Fault) throw error;
    throw new Fault("unreachable", `${name}: ${error}`);
  }
  const bytes = new Uint8Array(await new Blob(parts).arrayBuffer());
  // Checked against its hash when it was stored; only a file straight from the network is in doubt.
  if (response.headers.has("x-beadwright-checked")) return bytes;
  const type = response.headers.get("content-type") ?? "";
  if (type.startsWith("text/html")) throw new Fault("portal", name);
  if (name.endsWith(".wasm") && !wholeWasm(bytes)) throw new Fault("short", name);
  if (name.endsWith(".zip") && !wholeZip(bytes)) throw new Fault("short", name);
  return bytes;
}

/** @param {Bytes} bytes @param {number[]} mark @param {number} at */
const marked = (bytes, mark, at) => mark.every((byte, i) => bytes[at + i] === byte);

/** Walk the sections: their lengths must end exactly where the file does. @param {Bytes} bytes */
export function wholeWasm(bytes) {
  if (!marked(bytes, WASM_MARK, 0)) return false;
  let at = WASM_HEADER;
  while (at < bytes.length) {
    at += 1; // the section's kind
    let size = 0;
    for (let shift = 0; ; shift += 7) {
      const byte = bytes[at];
      if (byte === undefined || shift > LAST_SHIFT) return false;
      at += 1;
      size += (byte & 0x7f) * 2 ** shift;
      if (byte < 0x80) break;
    }
    at += size;
  }
  return at === bytes.length;
}

/** @param {Bytes} bytes */
export function wholeZip(bytes) {
  const first = Math.max(0, bytes.length - ZIP_END_MOST);
  for (let at = bytes.length - ZIP_END_LEAST; at >= first; at -= 1) {
    if (marked(bytes, ZIP_END, at)) return true;
  }
  return false;
}
