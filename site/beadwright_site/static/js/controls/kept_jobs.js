// @ts-check
import { jobs } from "../kept/jobs.js";
import { kept } from "../kept/kept.js";
import { unreadWords, why } from "../kept/kept_words.js";
import { asFault } from "../offline/fault.js";
import { sayBriefly } from "./brief_word.js";
import { tellNotKept, untell } from "./kept_notice.js";
import { plainButton } from "./plain_button.js";

/** @import { BeadAnswer } from "../page/answer_page.js" */
/** @import { Job } from "../kept/jobs.js" */

const LONGEST = 200;

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
    kept.addEventListener("news", () => this.#typing || void this.#draw(), { signal });
    void this.#draw();
  }

  get #list() {
    return document.querySelector("#jobs");
  }

  /** Drawn anew, the list would lose a name half typed. */
  get #typing() {
    return document.activeElement instanceof HTMLInputElement && this.#list?.contains(document.activeElement);
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
    } catch (error) {
      this.#open();
      this.#tell(error, keepJob === undefined ? "The list is as it was." : "The job stays on this screen and in its "
        + "address.");
    }
  }

  /** @param {unknown} error @param {string} stays */
  #tell(error, stays) {
    tellNotKept(this.#list?.querySelector("summary"), error, stays);
  }

  /** @param {HTMLElement} button */
  async #keep(button) {
    const { page, query, form } = this.page;
    const line = this.page.querySelector("[data-line]")?.getAttribute("data-line");
    const job = { page, query: query || form.query(), name: line || document.title,
      made: new Date().toISOString() };
    const old = await jobs.change(jobs.keyOf(job), (found) => found ?? job);
    if (this.#list) untell(this.#list);
    sayBriefly(button, old ? "Kept already" : "Kept on this phone");
    if (!old) await this.#draw();
    this.#open();
  }

  /** @param {Event} event */
  async #named({ target }) {
    if (!(target instanceof HTMLInputElement) || !target.dataset["nameJob"]) return;
    const name = target.value.trim();
    if (!name) return;
    try {
      // Removed in another tab meanwhile, it stays removed.
      await jobs.change(target.dataset["nameJob"], (job) => job && { ...job, name });
      const line = this.#list?.querySelector("summary");
      if (line) sayBriefly(line, "Name kept");
      if (this.#list) untell(this.#list);
    } catch (error) {
      this.#tell(error, "The name you typed stays in its field.");
    }
  }

  #open() {
    this.#list?.setAttribute("open", "");
    this.#list?.scrollIntoView({ block: "nearest" });
  }

  async #draw() {
    const summary = document.createElement("summary");
    try {
      const found = (await jobs.all()).sort((a, b) => b.made.localeCompare(a.made));
      summary.textContent = `Kept jobs (${found.length})`;
      const rows = found.map((job) => row(job));
      if (jobs.unread) rows.unshift(line(unreadWords(jobs.unread, "job")));
      if (this.#dropped) rows.unshift(plainButton(`Put back ${this.#dropped.name}`, "backJob"));
      if (!rows.length) rows.push(line("None yet. A tap on “Keep this job” keeps the one shown."));
      this.#list?.replaceChildren(summary, ...rows);
    } catch (error) {
      summary.textContent = "Kept jobs";
      this.#list?.replaceChildren(summary, line(`They cannot be read. ${why(asFault(error))}`));
    }
  }
}

/** @param {string} text @returns {HTMLElement} */
function line(text) {
  const made = document.createElement("p");
  made.textContent = text;
  return made;
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
  made.append(plainButton("Remove", "dropJob", jobs.keyOf(job)));
  return made;
}
