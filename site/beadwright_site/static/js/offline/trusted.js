// @ts-check
/* The one place where text becomes HTML or the address of a script. A browser with Trusted Types
 * refuses both from anywhere else; one without goes on as ever. */

/** This app's own folder: no script comes from outside it. */
const OWN = new URL("../../../", import.meta.url).href;

/** What no part of an answer holds. A name typed by the welder comes escaped. */
const NEVER = /<(?:script|iframe|object|embed|base|link|meta)\b/i;

const rules = {
  /** @param {string} html @param {boolean} part */
  createHTML(html, part) {
    if (part && NEVER.test(html)) throw new TypeError("a part of a page with a script or a frame in it");
    return html;
  },
  /** @param {string} address */
  createScriptURL(address) {
    if (!new URL(address, document.baseURI).href.startsWith(OWN)) {
      throw new TypeError(`a script from elsewhere: ${address}`);
    }
    return address;
  },
};

/** @typedef {(text: string, part?: boolean) => string} Maker what a sink takes as text */
const { trustedTypes } = /** @type {any} */ (globalThis);
/** @type {{createHTML: Maker, createScriptURL: Maker}} */
const policy = trustedTypes ? trustedTypes.createPolicy("beadwright", rules) : rules;

/** HTML of parts of a page, as the core or a live server wrote them. @param {string} html */
export const partHtml = (html) => policy.createHTML(html, true);

/** HTML of a whole page of this app, fetched from its own host. @param {string} html */
export const pageHtml = (html) => policy.createHTML(html, false);

/** The address of a script of this app. @param {string | URL} address */
export const scriptUrl = (address) => policy.createScriptURL(String(address));
