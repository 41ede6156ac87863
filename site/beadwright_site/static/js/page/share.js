// @ts-check
import { sayBriefly } from "../controls/brief_word.js";
import { JobForm } from "../controls/job_form.js";
import { queryText } from "../controls/query_text.js";
import { LATER_WAY } from "./carry.js";


/** @returns {HTMLInputElement | null} the tick that lets prices and names leave */
const tick = () => document.querySelector("[data-tell]");

/** Whether an entry leaves only when ticked. @param {string} key */
function isPrivate(key) {
  const page = document.querySelector("bead-answer");
  const keys = page instanceof HTMLElement ? page.dataset["private"]?.split(" ") : [];
  return keys?.includes(key.replace(LATER_WAY, "")) ?? false;
}

function show() {
  for (const button of document.querySelectorAll("[data-share]")) {
    if (!(button instanceof HTMLElement)) continue;
    button.hidden = false;
    const page = document.querySelector("bead-answer");
    if (tick() || !(page instanceof HTMLElement) || !page.dataset["private"]) continue;
    const label = document.createElement("label");
    const box = document.createElement("input");
    box.type = "checkbox";
    box.dataset["tell"] = "";
    label.append(box, " with prices and names");
    button.after(label);
  }
}

/** Every entry is in it, also those left at our defaults: they may change, the link must not. What
 * is private is not, until it is ticked. */
function link() {
  const url = new URL(location.href);
  url.hash = "";
  const entries = [...new URLSearchParams(new JobForm().query())];
  url.search = queryText(tick()?.checked ? entries : entries.filter(([key]) => !isPrivate(key)));
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
