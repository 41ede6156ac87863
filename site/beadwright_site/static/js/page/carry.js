// @ts-check
/* What was typed goes along: each link to a page carries the entries that page knows. */
import { queryText } from "../controls/query_text.js";

const KEY = "beadwright job";
/** Keys of the second to fourth way on Cost. */
export const LATER_WAY = /^[bcd]_/;

function read() {
  try {
    return sessionStorage.getItem(KEY) ?? "";
  } catch {
    return "";
  }
}

let current = read();

/** Keys of a page, as its link in the bar names them; null where they are not known.
 * @param {string} path @returns {((key: string) => boolean) | null} */
function keysOf(path) {
  for (const link of document.querySelectorAll("nav a[data-keys]")) {
    if (!(link instanceof HTMLAnchorElement) || plain(link.pathname) !== plain(path)) continue;
    const keys = new Set(link.dataset["keys"]?.split(" "));
    return (key) => keys.has(key) || (keys.has("*") && LATER_WAY.test(key));
  }
  return null;
}

/** @param {string} path */
const plain = (path) => path.replace(/index\.html$/, "");

function write() {
  const entries = [...new URLSearchParams(current)];
  for (const link of document.querySelectorAll("a[data-carry]")) {
    if (!(link instanceof HTMLAnchorElement)) continue;
    const known = keysOf(link.pathname);
    link.search = queryText(known ? entries.filter(([key]) => known(key)) : entries);
  }
}

/** What is looked at, not what is welded: it stays on its page. */
const LOOKED_AT = new Set(["at", "lines"]); // the weld list is kept on the phone instead

/**
 * What this page knows is as its query says; what only other pages know stays as it was.
 * @param {string} query the job now shown; empty for the example
 */
export function carry(query) {
  const known = keysOf(location.pathname);
  const others = [...new URLSearchParams(current)].filter(([key]) => known && !known(key));
  const job = [...new URLSearchParams(query), ...others];
  current = queryText(job.filter(([key]) => !LOOKED_AT.has(key)));
  try {
    sessionStorage.setItem(KEY, current);
  } catch {
    // Storage blocked: it holds until the page is loaded anew.
  }
  write();
}

write();
document.addEventListener("turbo:load", write);
