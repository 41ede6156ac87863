// @ts-check
/* The phone's own store: what is written is on the phone by the time it is said so, or it is said
 * why not. */
import { createStore } from "../../vendor/idb-keyval.js";
import { Fault } from "../offline/fault.js";
import { askToKeep } from "../offline/lasting_storage.js";
import { tellTabs } from "./other_tabs.js";

// Fixed names: what was kept must be found by every later release.
const BASE = "beadwright";
const ROWS = "kept";
const READ_MS = 3_000; // a store that has not answered by then is gone on without
const READ_AGAIN_MS = 500; // one that was silent before is not waited for as long
const WRITE_MS = 6_000;

let rows = createStore(BASE, ROWS);
let patience = READ_MS;

/** Where nothing may be stored, opening fails in one of these ways, by browser; or "denied" is said. */
const BLOCKED = new Set(["SecurityError", "ReferenceError", "TypeError", "InvalidStateError"]);

/** Why the store did not do it: full, blocked, silent, or failed with its own words.
 * @param {unknown} error @param {boolean} opened @returns {Fault} */
function faultOf(error, opened) {
  if (error instanceof Fault) return error;
  const { name, message } = error instanceof Error ? error : { name: "", message: String(error) };
  if (name === "QuotaExceededError") return new Fault("full");
  if (!opened && (BLOCKED.has(name) || /denied/i.test(message))) return new Fault("blocked");
  return new Fault("failed", message);
}

/** @param {IDBTransaction} running @returns {Promise<unknown>} */
function completed(running) {
  return new Promise((resolve, reject) => {
    running.oncomplete = resolve;
    running.onabort = () => reject(running.error ?? new Error("broken off"));
  });
}

/** @returns {Promise<IDBDatabase>} */
async function base() {
  const open = () => rows("readonly", (found) => found.transaction.db);
  try {
    return await open();
  } catch (error) {
    if (!(error instanceof DOMException && error.name === "InvalidStateError")) throw error;
    rows = createStore(BASE, ROWS); // the browser dropped the connection: a new one
    return open();
  }
}

/**
 * One step of the store, all of it or nothing.
 * @template T @param {IDBTransactionMode} mode @param {IDBTransactionOptions} how @param {number} ms
 * @param {(rows: IDBObjectStore) => T | Promise<T>} act
 * @returns {Promise<T>} rejects with a Fault
 */
async function step(mode, how, ms, act) {
  let late = false;
  /** @type {IDBTransaction | undefined} */
  let running;
  const work = async () => {
    const found = await base();
    if (late) throw new Fault("silent"); // not to be done behind the back of who was told
    running = found.transaction(ROWS, mode, how);
    const done = completed(running);
    done.catch(() => null);
    const result = await act(running.objectStore(ROWS));
    if (mode === "readwrite") running.commit?.();
    await done;
    return result;
  };
  let timer = 0;
  const silence = new Promise((_, reject) => {
    timer = window.setTimeout(() => reject(new Fault("silent")), ms);
  });
  try {
    return /** @type {T} */ (await Promise.race([work(), silence]));
  } catch (error) {
    late = true;
    try {
      running?.abort(); // of several rows, none
    } catch {
      // It is over already.
    }
    throw faultOf(error, running !== undefined);
  } finally {
    clearTimeout(timer);
  }
}

/** @template T @param {(rows: IDBObjectStore) => T | Promise<T>} act @returns {Promise<T>} */
export async function read(act) {
  try {
    const found = await step("readonly", {}, patience, act);
    patience = READ_MS;
    return found;
  } catch (error) {
    if (error instanceof Fault && error.kind === "silent") patience = READ_AGAIN_MS;
    throw error;
  }
}

/** Resolves when it is on the phone, past a flat battery too. What `act` reads of the rows, no other
 * tab changes before it has written. @template T @param {(rows: IDBObjectStore) => T | Promise<T>} act
 * @returns {Promise<T>} */
export async function write(act) {
  const result = await step("readwrite", { durability: "strict" }, WRITE_MS, act);
  tellTabs();
  void askToKeep().catch(() => null); // there is something to lose now
  return result;
}

/** What is good to have and no loss without; in the same step as asked for, so that a page left
 * right after has it. @param {(rows: IDBObjectStore) => unknown} act */
export async function note(act) {
  await step("readwrite", {}, WRITE_MS, act).catch(() => null);
}
