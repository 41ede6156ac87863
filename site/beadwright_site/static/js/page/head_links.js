// @ts-check
/* Links in the head are relative to the page they came with. Following a link changes the address
 * first and the head after; icon and manifest must not be looked up from there in between. */
function hold() {
  for (const link of document.querySelectorAll("link[rel~=icon], link[rel=manifest]")) {
    if (link instanceof HTMLLinkElement) link.href = new URL(link.href, document.baseURI).href;
  }
}

hold();
document.addEventListener("turbo:load", hold);
