// @ts-check
/// <reference lib="webworker" />
/**
 * @typedef {{url: string, sha256: string, bytes: number, gz_bytes: number | null, type: string,
 *   group: "shell" | "runtime"}} ReleaseFile
 * @typedef {{id: string, version: string, files: ReleaseFile[]}} Release
 */

export const worker = /** @type {ServiceWorkerGlobalScope} */ (/** @type {unknown} */ (self));

/** The build writes the list into the first line of the script.
 * @type {Release} */
export const RELEASE = /** @type {any} */ (self).RELEASE;

/** The folder the app lives in. */
export const BASE = new URL("./", worker.location.href);

/** Page addresses with and without index.html are one entry. @param {string} path */
export const plain = (path) => path.replace(/(^|\/)index\.html$/, "$1");

/** Files by the path a page asks for them. */
export const FILES = new Map(RELEASE.files.map((file) => [plain(file.url), file]));

/** Pages, styles and scripts: installed whole or not at all. */
export const SHELL = RELEASE.files.filter((file) => file.group === "shell");

/** Bytes a file is counted with in progress: packed, if it has a packed copy.
 * @param {ReleaseFile} file */
export const weight = (file) => file.gz_bytes ?? file.bytes;
