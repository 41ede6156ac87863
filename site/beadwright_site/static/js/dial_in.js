// @ts-check
import { askPage } from "./answers.js";
import { Bands } from "./bands.js";
import { carry } from "./carry.js";
import { engine } from "./engine.js";
import { JobForm } from "./job_form.js";
import { standKeys } from "./keys.js";
import { put } from "./morph.js";
import { NumberEntry } from "./number_entry.js";
import { keepLastJob, lastJob } from "./storage.js";

/** @import { Shown } from "./answers.js" */

const SLOW_MS = 150; // an answer sooner than this needs no word

/** The page that follows every change of the job. */
class BeadDialIn extends HTMLElement {
  #gone = new AbortController();
  #form = new JobForm();
  #word = 0;

  connectedCallback() {
    this.#gone = new AbortController();
    const { signal } = this.#gone;
    /** @type {import("./bands.js").SetByHand} */
    const set = (key, text, how) => {
      this.#form.set(key, text);
      void this.#ask(this.#form.query(), how);
    };
    new Bands(this, set, signal);
    new NumberEntry(this, set, signal);
    standKeys(this, signal);
    this.addEventListener("change", (event) => this.#changed(event), { signal });
    this.addEventListener("submit", (event) => this.#submitted(event), { signal });
    document.addEventListener("click", (event) => this.#tapped(event), { signal });
    engine.addEventListener("state", () => this.#engineTurned(), { signal });
    this.#open();
    engine.start();
  }

  disconnectedCallback() {
    clearTimeout(this.#word);
    this.#gone.abort();
  }

  get #state() {
    return /** @type {HTMLElement} */ (this.querySelector("#state"));
  }

  get #line() {
    return this.querySelector("#joint")?.getAttribute("data-line") ?? "";
  }

  /** The address may hold a job this page was not made for: a static host answers all alike. */
  #open() {
    const asked = location.search.slice(1);
    const answered = this.dataset["query"] || this.dataset["refused"] !== undefined;
    if (!asked) void this.#offerLast();
    else if (answered) carry(this.dataset["query"] ?? "");
    else void this.#ask(asked, { live: false });
  }

  async #offerLast() {
    const job = await lastJob();
    const link = this.querySelector("[data-last]");
    if (!job?.query || !(link instanceof HTMLAnchorElement) || location.search) return;
    link.search = job.query;
    link.dataset["query"] = job.query;
    link.textContent = `Back to your last job: ${job.line}`;
    link.hidden = false;
  }

  /** @param {string} query @param {{live: boolean}} how */
  async #ask(query, how) {
    if (!how.live || engine.state !== "ready") this.#waiting();
    try {
      this.#show(await askPage("dial-in", query, how), how);
    } catch (error) {
      if (error instanceof DOMException && error.name === "AbortError") return; // a newer one runs
      this.#fault(error);
    }
  }

  #waiting() {
    clearTimeout(this.#word);
    const say = () => {
      this.classList.add("working");
      this.#state.textContent = this.#failed ? `Not worked out. Shown: ${this.#shownJob}` : "Working…";
    };
    // What stands here is not what the address asks for: say so before anybody reads it.
    if (engine.state === "ready") this.#word = setTimeout(say, SLOW_MS);
    else say();
  }

  get #failed() {
    return engine.state === "failed";
  }

  get #shownJob() {
    return `${this.dataset["query"] ? "last good answer" : "example"}, ${this.#line}`;
  }

  #engineTurned() {
    if (this.classList.contains("working")) this.#waiting();
  }

  /** @param {Shown} shown @param {{live: boolean}} how */
  #show(shown, how) {
    clearTimeout(this.#word);
    this.classList.remove("working");
    const { state, ...parts } = shown.html;
    put(parts, how);
    if (state) put({ state }); // always: its word may have been changed from here
    this.classList.toggle("stale", !shown.ok);
    this.#form.element.classList.toggle("refused", !shown.ok);
    history.replaceState(history.state, "", `${location.pathname}?${shown.query}`);
    if (!shown.ok) {
      this.#state.textContent += `. Shown: ${this.#shownJob}`;
      this.querySelector("#change")?.setAttribute("open", "");
      return;
    }
    delete this.dataset["refused"];
    this.dataset["query"] = shown.query;
    document.title = `${shown.title} · Beadwright`;
    const link = this.querySelector("[data-last]");
    if (link instanceof HTMLElement) link.hidden = true;
    carry(shown.query);
    if (!how.live) void keepLastJob({ query: shown.query, line: this.#line });
  }

  /** @param {unknown} error */
  #fault(error) {
    clearTimeout(this.#word);
    this.classList.remove("working");
    this.classList.add("stale");
    const why = error instanceof Error ? error.message : String(error);
    this.#state.textContent = `That broke: ${why}. Shown: ${this.#shownJob}`;
  }

  /** @param {Event} event */
  #changed({ target }) {
    if (!(target instanceof HTMLInputElement) || target.form !== this.#form.element) return;
    if (target.name === "units") this.#form.fixUnits();
    void this.#ask(this.#form.query(), { live: false });
  }

  /** @param {Event} event */
  #submitted(event) {
    event.preventDefault();
    void this.#ask(this.#form.query(), { live: false });
    this.querySelector("#change")?.removeAttribute("open");
    this.#state.focus({ preventScroll: true });
    this.scrollIntoView({ block: "start" });
  }

  /** @param {MouseEvent} event */
  #tapped(event) {
    if (event.defaultPrevented || event.button !== 0 || event.ctrlKey || event.metaKey) return;
    const link = event.target instanceof Element ? event.target.closest("a") : null;
    if (!link) return;
    const query = link.dataset["query"];
    if (query !== undefined) {
      event.preventDefault();
      void this.#ask(query, { live: false });
    } else if (link.hash.startsWith("#how-") && link.getAttribute("href")?.startsWith("#")) {
      event.preventDefault(); // stays on the page, whatever the address says by now
      this.querySelector("#how")?.setAttribute("open", "");
      document.getElementById(link.hash.slice(1))?.scrollIntoView({ block: "center" });
    }
  }
}

customElements.define("bead-dial-in", BeadDialIn);
