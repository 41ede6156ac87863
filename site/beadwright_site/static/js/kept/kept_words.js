// @ts-check
import { longWord } from "../offline/fault_words.js";

/** @import { Fault } from "../offline/fault.js" */

/** Why, and what to do. @type {Record<string, string>} */
const WHY = {
  full: "The phone has no room: free some, then tap again.",
  blocked: "This browser stores nothing here: leave private mode or allow site data, then open the page anew.",
  silent: "The store on this phone does not answer: close other tabs, then open the page anew.",
  newer: "Another tab changed it: tap Weld list in the bar to see that list, and change it there.",
  unreadable: "It is damaged or of a newer release, and is left as it is: tap Check for update.",
  failed: "The store on this phone failed, as it does where no room is left: free some, close other tabs, open the page "
    + "anew.",
};

/** Why, and what to do; the store's own words at the end. @param {Fault} fault */
export const why = (fault) => `${WHY[fault.kind] ?? longWord(fault)}${fault.detail ? ` (${fault.detail})` : ""}`;

/** What to say first where something was to be written. @param {Fault} fault */
export const notKept = (fault) => (fault.kind === "silent" ? "Perhaps not kept." : "Not kept.");

/** @param {number} count @param {string} what */
export const unreadWords = (count, what) => `${count} kept ${what}${count > 1 ? "s" : ""} cannot be read. Damaged or of a `
  + "newer release, and left on this phone as found: tap Check for update.";
