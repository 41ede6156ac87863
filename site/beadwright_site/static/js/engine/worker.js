// @ts-check
/// <reference lib="webworker" />
/*
 * The module worker that runs the Python core. It takes {id, name, ...} for a name in TABLE, and
 * answers {id, result} or {id, error, fatal}. Data goes in and out as JSON text; no code is ever
 * sent here or run from a string.
 */
import { fetchWhole } from "./runtime_files.js";
import { Fault, asFault } from "../offline/fault.js";

/**
 * @typedef {{id: number, name: string, action?: string, payload?: string}} Request
 * @typedef {(action: string, payload: string) => string} PhoneCall
 */

const RUNTIME = new URL("../../../runtime/", import.meta.url);
const FILES = ["pyodide.asm.wasm", "stdlib.zip", "libs.zip", "app.zip"];

/** @type {PhoneCall | null} */
let phoneCall = null;
/** @type {Function | null} */
let PythonError = null;

/** @param {number} id @param {string} phase */
function fetchAll(id, phase) {
  let loaded = 0;
  return Promise.all(FILES.map((name) => fetchWhole(new URL(name, RUNTIME), (bytes) => {
    loaded += bytes;
    postMessage({ id, news: phase, loaded });
  })));
}

/**
 * Answer the runtime's own fetches with bytes already here and found whole.
 * @param {Map<string, [Uint8Array<ArrayBuffer>, string]>} ready
 */
function serveFromMemory(ready) {
  const network = self.fetch.bind(self);
  /** @type {typeof fetch} */
  const answer = async (input, init) => {
    const url = input instanceof Request ? input.url : String(input);
    const [bytes, type] = ready.get(url) ?? [];
    if (!bytes) return network(input, init);
    ready.delete(url); // once: the memory is wanted back
    return new Response(bytes, { headers: { "content-type": type ?? "" } });
  };
  self.fetch = answer;
}

/** @param {Request} request */
async function boot({ id }) {
  const [wasm, stdlib, libs, app] = await fetchAll(id, "fetching");
  if (!wasm || !stdlib || !libs || !app) throw new Fault("missing");
  const { info, core } = await (await fetch(new URL("manifest.json", RUNTIME))).json();
  const stdLibURL = new URL("stdlib.zip", RUNTIME).href;
  serveFromMemory(new Map([
    [new URL("pyodide.asm.wasm", RUNTIME).href, [wasm, "application/wasm"]],
    [stdLibURL, [stdlib, "application/zip"]],
  ]));
  postMessage({ id, news: "starting" });
  const { loadPyodide } = await import(new URL("pyodide.mjs", RUNTIME).href);
  const python = await loadPyodide({
    indexURL: RUNTIME.href,
    stdLibURL,
    lockFileContents: { info, packages: {} },
    packageBaseUrl: RUNTIME.href,
    env: { HOME: "/", PYTHONPATH: "/lib/app.zip:/lib/libs.zip", PYTHONHASHSEED: "0" },
    fsInit: async (/** @type {{writeFile(path: string, data: Uint8Array): void}} */ FS) => {
      FS.writeFile("/lib/libs.zip", libs);
      FS.writeFile("/lib/app.zip", app);
    },
  });
  PythonError = python.ffi.PythonError;
  phoneCall = /** @type {PhoneCall} */ (python.pyimport("beadwright_site.phone").call);
  const check = JSON.parse(phoneCall("check", "{}"));
  if (check.ok !== true) throw new Fault("wrong", JSON.stringify(check));
  return JSON.stringify({ ...check, core });
}

/** @param {Request} request */
function call({ action = "", payload = "{}" }) {
  if (!phoneCall) throw new Fault("broken", "called before the start");
  return phoneCall(action, payload);
}

/** @type {Record<string, (request: Request) => string | Promise<string>>} */
const TABLE = { boot, call };

addEventListener("message", async ({ data }) => {
  const request = /** @type {Request} */ (data);
  try {
    const entry = TABLE[request.name];
    if (!entry) throw new Fault("broken", `no such request: ${request.name}`);
    postMessage({ id: request.id, result: await entry(request) });
  } catch (error) {
    // After an exception of Python the worker is sound; after any other fault it may not be.
    const sound = PythonError !== null && error instanceof PythonError;
    const { kind, message } = asFault(error);
    postMessage({ id: request.id, error: { kind, message }, fatal: !sound });
  }
});
