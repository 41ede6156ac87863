// @ts-check
import { promisifyRequest } from "../../vendor/idb-keyval.js";
import { read, write } from "./store.js";

/** What to write by its name in the store; undefined takes it out. @typedef {[string, unknown][]} Rows */

/** @param {IDBObjectStore} kept @param {Rows} rows */
export function putRows(kept, rows) {
  for (const [name, value] of rows) {
    if (value === undefined) kept.delete(name);
    else kept.put(value, name);
  }
}

/** Records of one kind, one entry of the store each: a write that breaks off loses none of the
 * others. Whatever could not be done rejects with a Fault. @template T */
export class Shelf {
  /** Records found last that are not what they should be: left as they are, and not counted. */
  unread = 0;

  /** @param {string} prefix @param {(record: T) => string} keyOf
   * @param {(found: Record<string, unknown>) => boolean} sound whether a record is what it should be */
  constructor(prefix, keyOf, sound) {
    this.prefix = prefix;
    this.keyOf = keyOf;
    this.sound = sound;
  }

  /** @param {T} record its name in the store */
  name(record) {
    return this.prefix + this.keyOf(record);
  }

  /** @param {unknown} found @param {IDBValidKey} name @returns {found is T} */
  #isSound(found, name) {
    return typeof found === "object" && found !== null
      && this.sound(/** @type {Record<string, unknown>} */ (found))
      && this.name(/** @type {T} */ (found)) === name;
  }

  /** @returns {Promise<T[]>} */
  async all() {
    const range = IDBKeyRange.bound(this.prefix, `${this.prefix}\uffff`);
    const [names, found] = await read((kept) => Promise.all([
      promisifyRequest(kept.getAllKeys(range)), promisifyRequest(kept.getAll(range))]));
    const sound = found.filter((record, at) => this.#isSound(record, names[at] ?? ""));
    this.unread = found.length - sound.length;
    return sound;
  }

  /** @param {T} record */
  async keep(record) {
    await write((kept) => putRows(kept, [[this.name(record), record]]));
  }

  /** Change one as it is in the store by then. @param {string} key
   * @param {(old: T | undefined) => T | undefined} change what is to stand there; undefined: nothing
   * @returns {Promise<T | undefined>} what stood there */
  async change(key, change) {
    return write(async (kept) => {
      const name = this.prefix + key;
      /** @type {T | undefined} */
      const old = await promisifyRequest(kept.get(name));
      putRows(kept, [[name, change(old)]]);
      return old;
    });
  }

  /** @param {string} key @returns {Promise<T | undefined>} what was dropped */
  async drop(key) {
    return this.change(key, () => undefined);
  }
}
