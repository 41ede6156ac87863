// @ts-check
import { Bands } from "../controls/bands.js";
import { ChangedSettings } from "../controls/changed_settings.js";
import { ChanceRun } from "../controls/chance_run.js";
import { CouponKeeping } from "../controls/coupon_keeping.js";
import { CouponTimer } from "../controls/coupon_timer.js";
import { FractionKeys } from "../controls/fraction_keys.js";
import { HowLinks } from "../controls/how_links.js";
import { JobForm } from "../controls/job_form.js";
import { Keeping } from "../controls/keeping.js";
import { KeptJobs } from "../controls/kept_jobs.js";
import { ListParts } from "../controls/list_parts.js";
import { NumberEntry } from "../controls/number_entry.js";
import { PassSteps } from "../controls/pass_steps.js";
import { SizeChips } from "../controls/size_chips.js";
import { TakeAlong } from "../controls/take_along.js";
import { WeldList } from "../controls/weld_list.js";
import { engine } from "../engine/engine.js";
import { given } from "../kept/given.js";
import { kept } from "../kept/kept.js";
import { Address } from "./address.js";
import { askPage } from "./asking.js";
import { carry } from "./carry.js";
import { Halves } from "./halves.js";
import { put } from "./morph.js";
import { showRefusals } from "./refusals.js";
import { StateLine } from "./state_line.js";

/** @import { PageParts } from "./asking.js" */
/** @import { Names } from "../kept/kept.js" */
/**
 * How something is asked. `live`: a finger is dragging; `bare`: the page was opened with nothing
 * asked; `names`: in place of what is kept; `parts`: what alone changes, everything without.
 * @typedef {{live?: boolean, bare?: boolean, names?: Names, parts?: string[]}} How
 */

/** Each finds its own elements on the page, or none and does nothing. */
const CONTROLS = [Bands, NumberEntry, FractionKeys, SizeChips, HowLinks, ChanceRun, TakeAlong, PassSteps, CouponKeeping,
  CouponTimer, ChangedSettings, KeptJobs, ListParts, WeldList];

/**
 * A page that follows every change of its form. Its template says what it is made of:
 * `data-page` its name, `data-parts` the ids of its parts; of these `data-live` follow a dragging
 * finger, `data-ahead` are shown a frame before the rest, `data-later` are asked for when the rest
 * stands. `data-query` is what the answer shown is for, empty for what the page was printed with;
 * `data-example` if that is called the example where something cannot be worked out.
 *
 * Events: "asked" when something else is asked, "shown" when its answer stands.
 */
export class BeadAnswer extends HTMLElement {
  #gone = new AbortController();
  #state = new StateLine(this);
  #halves = new Halves(this.#gone.signal);
  /** What was asked last, until it is answered. @type {[string, How] | null} */
  #unanswered = null;
  form = new JobForm();
  /** A tap is being carried out, and asks anew itself. */
  acting = false;

  connectedCallback() {
    this.#gone = new AbortController();
    const { signal } = this.#gone;
    this.address = new Address(signal);
    this.#halves = new Halves(signal);
    for (const Control of CONTROLS) new Control(this, signal);
    this.keeping = new Keeping(this, signal);
    this.addEventListener("change", (event) => this.#changed(event), { signal });
    this.addEventListener("submit", (event) => this.#submitted(event), { signal });
    document.addEventListener("click", (event) => this.#tapped(event), { signal });
    engine.addEventListener("state", () => this.#state.engineChanged(), { signal });
    engine.addEventListener("long", () => this.#state.tookLong(), { signal });
    kept.addEventListener("news", () => this.#askAgain(), { signal });
    void this.#open();
    document.documentElement.classList.remove("working"); // set by asked_job.js
    engine.start();
  }

  disconnectedCallback() {
    this.#state.stop();
    this.#gone.abort();
  }

  get page() {
    return this.dataset["page"] ?? "";
  }

  get query() {
    return this.dataset["query"] ?? "";
  }

  /** @param {string} name @returns {string[] | undefined} element ids the template lists */
  #listed(name) {
    return this.dataset[name]?.split(" ");
  }

  /** The address may hold a job this page was not made for, since a static host answers every
   * query alike; and the phone may keep a machine and prices it does not know. */
  async #open() {
    const asked = location.search.slice(1);
    if (asked && !this.query && this.dataset["refused"] === undefined) {
      this.form.awaits(asked);
      this.#holdLinks();
      return void this.ask(asked);
    }
    const shop = await given(this.page);
    if (!this.isConnected || location.search.slice(1) !== asked) return; // asked anew meanwhile
    if (Object.keys(shop).length > 0) await this.ask(asked, { bare: !asked });
    else carry(this.query);
    if (!asked) await this.#offerLast();
  }

  /** Another tab kept something that may count here. What is typed and was refused stays. */
  #askAgain() {
    if (this.acting || this.keeping?.waits || this.classList.contains("stale")) return;
    if (this.#unanswered) return void this.ask(...this.#unanswered); // typed, and not yet in the address
    const asked = location.search.slice(1); // until it is answered, the page has no query of its own
    void this.ask(asked && (this.query || asked), { bare: !asked });
  }

  /** What leads to a job of the printed example (a link, Play) is not followed until the asked job
   * stands. A link in a picture knows no `inert`: what the picture lies in is held. */
  #holdLinks() {
    for (const id of this.#listed("parts") ?? []) {
      for (const leads of document.querySelectorAll(`#${id} :is(a[data-query], a[href*="?"], [data-play])`)) {
        (leads.closest("svg")?.parentElement ?? leads).toggleAttribute("inert", true);
      }
    }
  }

  /** Links of a part that is put in a frame later are freed then, with it.
   * @param {string[] | undefined} parts that stand now; undefined: all */
  #freeLinks(parts = this.#listed("parts") ?? []) {
    for (const id of parts.filter((part) => !this.#halves.waits(part))) {
      for (const held of document.querySelectorAll(`#${id}[inert], #${id} [inert]`)) held.removeAttribute("inert");
    }
  }

  /** A page opened bare shows an example: offer the way back to the last job. */
  async #offerLast() {
    const last = await kept.last(this.page);
    const link = this.querySelector("[data-last]");
    if (!last?.query || !(link instanceof HTMLAnchorElement) || location.search) return;
    link.search = last.query;
    link.dataset["query"] = last.query;
    link.textContent = `Back to your last${link.dataset["last"]}: ${last.line}`;
    link.hidden = false;
  }

  /** Parts asked for first; undefined for all.  @returns {string[] | undefined} */
  get #first() {
    const later = this.#listed("later");
    return later && this.#listed("parts")?.filter((part) => !later.includes(part));
  }

  /** Set one entry. @param {string} key @param {string} text @param {How} how */
  set(key, text, how) {
    this.#halves.finish();
    this.form.set(key, text);
    void this.ask(this.form.query(key), how);
  }

  /** @param {string} query @param {How} [how] @returns {Promise<boolean>} whether it was answered */
  async ask(query, how = {}) {
    this.#halves.finish();
    if (!how.live) this.#unanswered = [query, how];
    this.dispatchEvent(new Event("asked"));
    if (!how.live || engine.state !== "ready") this.#state.waiting();
    const parts = how.parts ?? (how.live ? this.#listed("live") : this.#first);
    try {
      const answer = await askPage(this.page, query, { ...how, parts });
      if (!this.isConnected) return false;
      this.#show(answer, how);
      this.#freeLinks(parts);
      if (answer.ok && !how.parts) void this.#askLater(how.names);
      return answer.ok;
    } catch (error) {
      const newer = error instanceof DOMException && error.name === "AbortError";
      if (newer) return false;
      this.#unanswered = null;
      this.#state.broke(error);
      return false;
    }
  }

  /** What takes long to work out follows when the rest stands. @param {Names} [names] */
  async #askLater(names) {
    const parts = this.#listed("later");
    if (!parts) return;
    const { query } = this;
    this.classList.add("waits-more");
    const answer = await askPage(this.page, query, { names, parts, latest: "later" })
      .catch(() => null);
    if (!answer?.ok || query !== this.query) return;
    put(answer.html);
    this.#freeLinks(parts);
    this.classList.remove("waits-more");
  }

  /** Put drawn parts in place. @param {{[id: string]: string}} html */
  put(html) {
    put(html);
  }

  /** @param {PageParts} answer @param {boolean} live */
  #putAnswer({ ok, html }, live) {
    const ahead = ok ? this.#listed("ahead") : undefined; // a refusal is told at once and whole
    if (ahead) return this.#halves.put(html, ahead);
    const { state, ...others } = html;
    this.#halves.drop();
    put(others, { live });
    if (state) put({ state }); // always: its word may have been changed from here
  }

  /** @param {PageParts} answer @param {How} how */
  #show(answer, { live = false, bare = false }) {
    this.form.stands();
    if (!live) this.#unanswered = null;
    this.#putAnswer(answer, live);
    this.#state.settled(answer.ok);
    const { query } = answer;
    if (!bare) this.address?.show(query, live);
    this.dispatchEvent(new Event("shown"));
    if (!answer.ok) return showRefusals(this, answer.errors);
    delete this.dataset["refused"];
    this.dataset["query"] = query;
    document.title = `${answer.title} · Beadwright`;
    if (live) return; // links and memory wait until the finger lets go
    carry(query);
    if (bare || !query) return;
    this.querySelector("[data-last]")?.setAttribute("hidden", "");
    void kept.keepLast(this.page, { query, line: this.#state.job });
  }

  /** @param {Event} event */
  #changed({ target }) {
    const lines = target instanceof HTMLTextAreaElement;
    if (!(target instanceof HTMLInputElement || lines) || target.form !== this.form.element) return;
    if (lines) return void this.ask(this.form.query(target.name));
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
    this.#state.element.focus({ preventScroll: true });
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
