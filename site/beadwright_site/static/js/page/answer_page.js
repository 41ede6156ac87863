// @ts-check
import { carry } from "./carry.js";
import { ChanceRun } from "../controls/chance_run.js";
import { engine } from "../engine/engine.js";
import { JobForm } from "../controls/job_form.js";
import { kept } from "../kept/kept.js";
import { Keeping } from "../controls/keeping.js";
import { standKeys } from "../controls/fraction_keys.js";
import { put } from "./morph.js";
import { askPage } from "./page_asking.js";
import { PassSteps } from "../controls/pass_steps.js";
import { TakeAlong } from "../controls/take_along.js";

/** @import { Shown } from "./page_asking.js" */

const SLOW_MS = 150; // an answer sooner than this needs no word

/** A page of money: it follows every change of its form. */
export class BeadAnswer extends HTMLElement {
  #gone = new AbortController();
  #word = 0;
  /** Parts not yet put in. @type {{[id: string]: string}} */
  #rest = {};
  form = new JobForm();

  connectedCallback() {
    this.#gone = new AbortController();
    const { signal } = this.#gone;
    standKeys(this, signal);
    this.chance = new ChanceRun(this, signal);
    this.keeping = new Keeping(this, signal);
    new TakeAlong(this, signal);
    new PassSteps(this, signal);
    this.addEventListener("change", (event) => this.#changed(event), { signal });
    this.addEventListener("submit", (event) => this.#submitted(event), { signal });
    document.addEventListener("click", (event) => this.#tapped(event), { signal });
    engine.addEventListener("state", () => this.#turned(), { signal });
    void this.#open();
    engine.start();
  }

  disconnectedCallback() {
    clearTimeout(this.#word);
    this.#gone.abort();
  }

  get page() {
    return this.dataset["page"] ?? "";
  }

  get query() {
    return this.dataset["query"] ?? "";
  }

  get #state() {
    return /** @type {HTMLElement} */ (this.querySelector("#state"));
  }

  get #line() {
    return this.querySelector("[data-line]")?.getAttribute("data-line") ?? "";
  }

  /** The address may hold a job this page was not made for, and the phone prices it does not know. */
  async #open() {
    const asked = location.search.slice(1);
    const answered = this.dataset["refused"] !== undefined || this.query !== "" || !asked;
    if (!answered) this.form.awaits(asked);
    await kept.ready;
    if (!this.isConnected) return;
    if (location.search.slice(1) !== asked) return; // something was typed and answered meanwhile
    if (!answered) await this.ask(this.form.query());
    else if (Object.keys(kept.now).length) await this.ask(asked);
    else carry(this.query);
    if (!asked) void this.#offerLast();
  }

  async #offerLast() {
    const last = await kept.last(this.page);
    const link = this.querySelector("[data-last]");
    if (!last?.query || !(link instanceof HTMLAnchorElement) || location.search) return;
    link.search = last.query;
    link.dataset["query"] = last.query;
    link.textContent = `Back to your last: ${last.line}`;
    link.hidden = false;
  }

  /** Parts asked for first; undefined for all.  @returns {string[] | undefined} */
  get #first() {
    const later = this.dataset["later"]?.split(" ");
    return later && this.dataset["parts"]?.split(" ").filter((part) => !later.includes(part));
  }

  /**
   * @param {string} query @param {import("../kept/kept.js").Names} [names]
   * @param {string[]} [parts] what alone changes; without them everything does
   * @returns {Promise<boolean>}
   */
  async ask(query, names, parts) {
    this.chance?.drop();
    this.#waiting();
    try {
      const shown = await askPage(this.page, query, { names, parts: parts ?? this.#first });
      this.#show(shown);
      if (shown.ok && !parts) void this.#askLater(names);
      return shown.ok;
    } catch (error) {
      if (error instanceof DOMException && error.name === "AbortError") return false;
      this.#fault(error);
      return false;
    }
  }

  /** What takes long to work out follows when the rest stands.
   * @param {import("../kept/kept.js").Names} [names] */
  async #askLater(names) {
    const { later } = this.dataset;
    if (!later) return;
    const { query } = this;
    this.classList.add("waits-more");
    const how = { names, parts: later.split(" "), latest: "later" };
    const shown = await askPage(this.page, query, how).catch(() => null);
    if (!shown?.ok || query !== this.query) return;
    put(shown.html);
    this.classList.remove("waits-more");
  }

  #waiting() {
    clearTimeout(this.#word);
    const say = () => {
      this.classList.add("working");
      this.#state.textContent = engine.state === "failed"
        ? `Not worked out. Shown: last good answer, ${this.#line}` : "Working…";
    };
    // What stands here is not what the address asks for: say so before anybody reads it.
    if (engine.state === "ready") this.#word = setTimeout(say, SLOW_MS);
    else say();
  }

  #turned() {
    if (this.classList.contains("working")) this.#waiting();
  }

  /** What stands on the first screen is shown a frame ahead of the rest, where the page says what
   * that is. A refusal is told at once and whole. @param {Shown} shown */
  #put({ ok, html }) {
    const ahead = ok ? this.dataset["ahead"]?.split(" ") : undefined;
    this.#rest = {};
    if (!ahead) return put(html);
    /** @param {boolean} first */
    const half = (first) => Object.fromEntries(
      Object.entries(html).filter(([id]) => ahead.includes(id) === first));
    put(half(true));
    const rest = this.#rest = half(false);
    requestAnimationFrame(() => setTimeout(() => {
      if (rest === this.#rest && this.isConnected) put(rest);
    }));
  }

  /** @param {Shown} shown */
  #show(shown) {
    clearTimeout(this.#word);
    this.form.stands();
    this.classList.remove("working");
    this.#put(shown);
    this.classList.toggle("stale", !shown.ok);
    this.form.element.classList.toggle("refused", !shown.ok);
    const search = shown.query ? `?${shown.query}` : "";
    history.replaceState(history.state, "", location.pathname + search);
    this.dispatchEvent(new CustomEvent("shown", { detail: shown }));
    if (!shown.ok) {
      this.#state.textContent += this.#line ? `. Shown: last good answer, ${this.#line}` : "";
      this.querySelector("#change")?.setAttribute("open", "");
      for (const wrong of this.querySelectorAll("details.fold:has(.wrong)")) {
        wrong.setAttribute("open", "");
      }
      return;
    }
    delete this.dataset["refused"];
    this.dataset["query"] = shown.query;
    document.title = `${shown.title} · Beadwright`;
    const link = this.querySelector("[data-last]");
    if (link instanceof HTMLElement && shown.query) link.hidden = true;
    carry(shown.query);
    if (shown.query) void kept.keepLast(this.page, { query: shown.query, line: this.#line });
  }

  /** @param {unknown} error */
  #fault(error) {
    clearTimeout(this.#word);
    this.classList.remove("working");
    this.classList.add("stale");
    const why = error instanceof Error ? error.message : String(error);
    this.#state.textContent = `That broke: ${why}. Shown: last good answer, ${this.#line}`;
  }

  /** @param {Event} event */
  #changed({ target }) {
    if (!(target instanceof HTMLInputElement) || target.form !== this.form.element) return;
    if (target.name === "units") this.form.fixUnits();
    if (this.keeping?.takes(target)) return;
    void this.ask(this.form.query(target.name));
  }

  /** @param {Event} event */
  #submitted(event) {
    event.preventDefault();
    const button = event instanceof SubmitEvent ? event.submitter : null;
    if (button instanceof HTMLElement && button.dataset["chance"]) return; // drawn in chunks
    if (this.page === "shop") return void this.ask(this.query);
    void this.ask(this.form.query()).then((ok) => {
      if (!ok) return;
      this.querySelector("#change")?.removeAttribute("open");
      this.scrollIntoView({ block: "start" });
    });
    this.#state.focus({ preventScroll: true });
  }

  /** @param {MouseEvent} event */
  #tapped(event) {
    if (event.defaultPrevented || event.button !== 0 || event.ctrlKey || event.metaKey) return;
    const link = event.target instanceof Element ? event.target.closest("a[data-query]") : null;
    if (!(link instanceof HTMLElement)) return;
    event.preventDefault();
    void this.ask(link.dataset["query"] ?? "");
  }
}

customElements.define("bead-answer", BeadAnswer);
