// @ts-check
import { asFault } from "../offline/fault.js";
import { Shelf } from "./shelf.js";

/** @import { Fault } from "../offline/fault.js" */
/** @typedef {{[name: string]: unknown} & {key: string}} Coupon */

const VERSION = 1; // of a record, as the core writes and reads it
const LONGEST = 4_000; // characters of a text, as the core takes them
const TEXTS = ["key", "made", "query", "wire", "dia", "gas", "machine", "welder"];

/** @param {unknown} found */
const isFacts = (found) => typeof found === "object" && found !== null
  && Object.values(found).every((value) => typeof value === "number" && Math.abs(value) < 1e6);

/** Whether the core reads it: of all coupons it is given it refuses none alone.
 * @param {Record<string, unknown>} found */
function isSound(found) {
  return found["version"] === VERSION && Boolean(found["key"]) && isFacts(found["facts"])
    && ["boolean", "undefined"].includes(typeof found["count_odd"])
    && TEXTS.every((name) => String(found[name] ?? "").length <= LONGEST
      && ["string", "undefined"].includes(typeof found[name]));
}

/** A key no other coupon has. Over plain http a browser has no randomUUID. */
export const newKey = () => crypto.randomUUID?.()
  ?? [...crypto.getRandomValues(new Uint32Array(4))].map((part) => part.toString(16)).join("-");

/** @extends {Shelf<Coupon>} */
class Coupons extends Shelf {
  /** Why the page goes on without them. @type {Fault | null} */
  fault = null;

  /** All as the JSON text the core reads; empty for none, or if they cannot be read. */
  async text() {
    try {
      const found = await this.all();
      this.fault = null;
      return found.length ? JSON.stringify(found) : "";
    } catch (error) {
      this.fault = asFault(error);
      return "";
    }
  }
}

// Fixed names: what was kept must be found by every later release.
export const coupons = new Coupons("coupon:", (coupon) => coupon.key, isSound);
