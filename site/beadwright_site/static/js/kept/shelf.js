// @ts-check
import { promisifyRequest } from "../../vendor/idb-keyval.js";
import { within } from "../offline/reach.js";
import { askToKeep } from "../offline/lasting_storage.js";
import { STORE_MS, store } from "./kept.js";

/** What to write by its name in the store; undefined takes it out. @typedef {[string, unknown][]} Rows */

/** All of it or nothing, committed in the same step as asked for. Rejects where it could not be.
 * @param {Rows} rows */
export async function writeRows(rows) {
  await store("readwrite", (kept) => {
    for (const [name, value] of rows) {
      if (value === undefined) kept.delete(name);
      else kept.put(value, name);
    }
    kept.transaction.commit();
    return promisifyRequest(kept.transaction);
  });
  void askToKeep().catch(() => null);
}

/** Records of one kind, one entry of the store each: a write that breaks off loses none of the
 * others. @template T */
export class Shelf {
  /** @param {string} prefix @param {(record: T) => string} keyOf */
  constructor(prefix, keyOf) {
    this.prefix = prefix;
    this.keyOf = keyOf;
  }

  /** @param {T} record its name in the store */
  name(record) {
    return this.prefix + this.keyOf(record);
  }

  /** @returns {Promise<T[]>} */
  async all() {
    const range = IDBKeyRange.bound(this.prefix, `${this.prefix}\uffff`);
    try {
      return await within(STORE_MS, store("readonly", (kept) => promisifyRequest(kept.getAll(range))));
    } catch {
      return []; // this browser stores nothing, or its store does not answer
    }
  }

  /** Resolves when it is written; rejects where it could not be. @param {T} record */
  async keep(record) {
    await writeRows([[this.name(record), record]]);
  }

  /** @param {string} key @returns {Promise<T | undefined>} what was dropped */
  async drop(key) {
    const found = (await this.all()).find((record) => this.keyOf(record) === key);
    await writeRows([[this.prefix + key, undefined]]);
    return found;
  }
}
