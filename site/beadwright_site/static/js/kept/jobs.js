// @ts-check
import { Shelf } from "./shelf.js";

/** @typedef {{page: string, query: string, name: string, made: string}} Job */

const TEXTS = ["page", "query", "name", "made"];

// Fixed names: what was kept must be found by every later release.
/** @type {Shelf<Job>} */
export const jobs = new Shelf("job:", ({ page, query }) => `${page}?${query}`,
  (found) => TEXTS.every((name) => typeof found[name] === "string"));
