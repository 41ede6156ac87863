// @ts-check
import { jobs } from "../kept/jobs.js";
import { sayBriefly } from "./brief_word.js";

/** @import { BeadAnswer } from "../page/answer_page.js" */
/** @import { Job } from "../kept/jobs.js" */

const LONGEST = 200;
const FULL = "Not kept: the phone is full, or this browser stores nothing";

/** Keeps the job shown by a tap, and lists those kept: to open, name, remove and put back. */
export class KeptJobs {
  /** The job taken away last. @type {Job | undefined} */
  #dropped;

  /** @param {BeadAnswer} page @param {AbortSignal} signal */
  constructor(page, signal) {
    this.page = page;
    document.addEventListener("click", (event) => void this.#tapped(event), { signal });
    document.addEventListener("change", (event) => void this.#named(event), { signal });
    for (const part of document.querySelectorAll("[data-keep-job], [data-open-jobs], #jobs")) {
      if (part instanceof HTMLElement) part.hidden = false;
    }
    void this.#draw();
  }

  /** @param {Event} event */
  async #tapped({ target }) {
    const button = target instanceof Element ? target.closest("button") : null;
    if (!button) return;
    const { keepJob, openJobs, dropJob, backJob } = button.dataset;
    try {
      if (keepJob !== undefined) await this.#keep(button);
      if (openJobs !== undefined) this.#open();
      if (dropJob !== undefined) this.#dropped = await jobs.drop(dropJob);
      if (backJob !== undefined && this.#dropped) {
        await jobs.keep(this.#dropped);
        this.#dropped = undefined;
      }
      if (dropJob !== undefined || backJob !== undefined) await this.#draw();
    } catch {
      this.#say(FULL);
    }
  }

  /** @param {HTMLElement} button */
  async #keep(button) {
    const { page, query, form } = this.page;
    const line = this.page.querySelector("[data-line]")?.getAttribute("data-line");
    const job = { page, query: query || form.query(), name: line || document.title,
      made: new Date().toISOString() };
    const old = (await jobs.all()).find((each) => jobs.keyOf(each) === jobs.keyOf(job));
    await jobs.keep(old ?? job);
    sayBriefly(button, old ? "Kept already" : "Kept on this phone");
    if (!old) await this.#draw(); // drawn anew, the list would lose a name half typed
    this.#open();
  }

  /** @param {Event} event */
  async #named({ target }) {
    if (!(target instanceof HTMLInputElement) || !target.dataset["nameJob"]) return;
    const job = (await jobs.all()).find((each) => jobs.keyOf(each) === target.dataset["nameJob"]);
    const name = target.value.trim();
    if (!job || !name) return;
    try {
      await jobs.keep({ ...job, name });
      this.#say("Name kept");
    } catch {
      this.#say(FULL);
    }
  }

  /** @param {string} text */
  #say(text) {
    const line = document.querySelector("#jobs summary");
    if (line) sayBriefly(line, text);
  }

  #open() {
    const list = document.querySelector("#jobs");
    list?.setAttribute("open", "");
    list?.scrollIntoView({ block: "nearest" });
  }

  async #draw() {
    const list = document.querySelector("#jobs");
    const kept = (await jobs.all()).sort((a, b) => b.made.localeCompare(a.made));
    const summary = document.createElement("summary");
    summary.textContent = `Kept jobs (${kept.length})`;
    const rows = kept.map((job) => row(job));
    if (this.#dropped) {
      rows.unshift(tap(`Put back ${this.#dropped.name}`, "backJob", ""));
    } else if (!kept.length) {
      rows.push(document.createElement("p"));
      rows[0]?.append("None yet. A tap on “Keep this job” keeps the one shown.");
    }
    list?.replaceChildren(summary, ...rows);
  }
}

/** @param {string} text @param {string} what @param {string} key @returns {HTMLElement} */
function tap(text, what, key) {
  const button = document.createElement("button");
  button.type = "button";
  button.className = "plain";
  button.dataset[what] = key;
  button.textContent = text;
  return button;
}

/** @param {Job} job @returns {HTMLElement} */
function row(job) {
  const made = document.createElement("div");
  const name = document.createElement("input");
  name.value = job.name;
  name.maxLength = LONGEST;
  name.autocomplete = "off";
  name.dataset["nameJob"] = jobs.keyOf(job);
  name.setAttribute("aria-label", "Name of the job");
  made.append(name);
  const page = document.querySelector(`nav.bar a[data-page="${CSS.escape(job.page)}"]`);
  if (page instanceof HTMLAnchorElement) {
    const open = document.createElement("a");
    open.className = "plain";
    open.href = page.pathname;
    open.search = job.query;
    open.textContent = `Open ${page.textContent?.trim()}`;
    made.append(open);
  }
  made.append(tap("Remove", "dropJob", jobs.keyOf(job)));
  return made;
}
