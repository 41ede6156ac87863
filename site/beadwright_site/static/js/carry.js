// @ts-check
/* The job goes along: links back to the page that shows it carry its query. */
const KEY = "beadwright job";

function read() {
  try {
    return sessionStorage.getItem(KEY) ?? "";
  } catch {
    return "";
  }
}

let current = read();

function write() {
  for (const link of document.querySelectorAll("a[data-carry]")) {
    if (link instanceof HTMLAnchorElement) link.search = current;
  }
}

/** @param {string} query the job now shown; empty for the example */
export function carry(query) {
  current = query;
  try {
    sessionStorage.setItem(KEY, query);
  } catch {
    // Storage blocked: it holds until the page is loaded anew.
  }
  write();
}

write();
document.addEventListener("turbo:load", write);
