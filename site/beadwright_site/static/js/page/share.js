// @ts-check
import { sayBriefly } from "../controls/brief_word.js";
import { JobForm } from "../controls/job_form.js";
import { plainButton } from "../controls/plain_button.js";
import { queryText } from "../controls/query_text.js";
import { engine } from "../engine/engine.js";
import { ENDING, giveFile } from "../kept/give_file.js";
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
    if (!document.querySelector("[data-job-file]")) button.after(plainButton("Save as a file", "jobFile"));
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

/** The engine makes a query the same on another phone; without it all entries are told.
 * @param {boolean} short whether a long one is packed @returns {Promise<string>} */
async function shared(short) {
  const tell = tick()?.checked ?? false, query = typed(tell), page = pageName();
  if (engine.state !== "ready" || !page) return query;
  const made = await engine.call("link", { page, query, kept: await given(page), tell, short });
  return made.query;
}

function pageName() {
  const page = document.querySelector("bead-answer");
  return page instanceof HTMLElement ? page.dataset["page"] ?? "" : "";
}

async function link() {
  const url = new URL(location.href);
  url.hash = "";
  url.search = await shared(true);
  return url.href;
}

/** The job alone, in the same kind of file as all that is kept. @param {Element} button */
async function save(button) {
  const line = document.querySelector("[data-line]")?.getAttribute("data-line");
  const job = { page: pageName(), query: await shared(false), name: line || document.title,
    made: new Date().toISOString() };
  const file = { kind: "beadwright", version: 1, shop: {}, jobs: [job], coupons: [] };
  const text = `${JSON.stringify(file, null, 1)}\n`;
  sayBriefly(button, await giveFile(
    new File([text], `${job.page}${ENDING}`, { type: "application/json" })));
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
  const button = target instanceof Element ? target.closest("[data-share], [data-job-file]") : null;
  if (button) void (button.matches("[data-share]") ? share(button) : save(button));
});
