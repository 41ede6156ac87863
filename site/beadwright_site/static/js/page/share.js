// @ts-check
import { sayBriefly } from "../controls/brief_word.js";
import { JobForm } from "../controls/job_form.js";

function show() {
  for (const button of document.querySelectorAll("[data-share]")) {
    if (button instanceof HTMLElement) button.hidden = false;
  }
}

/** Every entry is in it, also those left at our defaults: they may change, the link must not. */
function link() {
  const url = new URL(location.href);
  url.hash = "";
  url.search = new JobForm().query();
  return url.href;
}

/** @param {Element} button */
async function share(button) {
  const url = link();
  let said = "Link copied";
  try {
    if (navigator.share) return await navigator.share({ title: document.title, url });
    await navigator.clipboard.writeText(url);
  } catch (error) {
    if (error instanceof DOMException && error.name === "AbortError") return; // not shared after all
    said = "Copy it from the address bar";
    history.replaceState(history.state, "", url);
  }
  sayBriefly(button, said);
}

show();
document.addEventListener("turbo:load", show);
document.addEventListener("click", ({ target }) => {
  const button = target instanceof Element ? target.closest("[data-share]") : null;
  if (button) void share(button);
});
