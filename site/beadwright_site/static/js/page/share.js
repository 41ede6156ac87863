// @ts-check
import { sayBriefly } from "../controls/brief_word.js";
import { JobForm } from "../controls/job_form.js";
import { queryText } from "../controls/query_text.js";
import { engine } from "../engine/engine.js";
import { given } from "../kept/given.js";
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

/** The form's entries, without what is private until it is ticked.  @param {boolean} tell */
function typed(tell) {
  const entries = [...new URLSearchParams(new JobForm().query())];
  return queryText(tell ? entries : entries.filter(([key]) => !isPrivate(key)));
}

/** The engine makes a link short, and the same on another phone; without it all entries are told. */
async function link() {
  const page = document.querySelector("bead-answer");
  const url = new URL(location.href);
  url.hash = "";
  const tell = tick()?.checked ?? false, query = typed(tell);
  url.search = query;
  if (engine.state !== "ready" || !(page instanceof HTMLElement)) return url.href;
  const name = page.dataset["page"] ?? "";
  /** @type {{query: string}} */
  const made = await engine.call("link", { page: name, query, kept: await given(name), tell });
  url.search = made.query;
  return url.href;
}

/** @param {Element} button */
async function share(button) {
  const url = await link().catch(() => location.href);
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
