// @ts-check
import { askPage } from "./answers.js";
import { Bands } from "../controls/bands.js";
import { carry } from "./carry.js";
import { engine } from "../engine/engine.js";
import { JobForm } from "../controls/job_form.js";
import { kept } from "../kept/kept.js";
import { standKeys } from "../controls/fraction_keys.js";
import { put } from "./morph.js";
import { NumberEntry } from "../controls/number_entry.js";
import { showRefusals } from "./refusals.js";
import { StateLine } from "./state_line.js";
import { keepLastJob, offerLastJob } from "../kept/storage.js";

/** @import { Shown } from "./answers.js" */
/** @typedef {{live: boolean, bare?: boolean}} How `live`: a finger is dragging; `bare`: nothing asked */

/** The page that follows every change of the job. */
class BeadDialIn extends HTMLElement {
  #gone = new AbortController();
  #form = new JobForm();
  #state = new StateLine(this);

  connectedCallback() {
    this.#gone = new AbortController();
    const { signal } = this.#gone;
    const set = (/** @type {string} */ key, /** @type {string} */ text, /** @type {How} */ how) => {
      this.#form.set(key, text);
      void this.#ask(this.#form.query(key), how);
    };
    new Bands(this, set, signal);
    new NumberEntry(this, set, signal);
    standKeys(this, signal);
    this.addEventListener("change", (event) => this.#changed(event), { signal });
    this.addEventListener("submit", (event) => this.#submitted(event), { signal });
    document.addEventListener("click", (event) => this.#tapped(event), { signal });
    engine.addEventListener("state", () => this.#state.turned(), { signal });
    this.#open();
    engine.start();
  }

  disconnectedCallback() {
    this.#state.stop();
    this.#gone.abort();
  }

  /** The address may hold a job this page was not made for: a static host answers all alike. */
  #open() {
    const asked = location.search.slice(1);
    const answered = this.dataset["query"] || this.dataset["refused"] !== undefined;
    if (!asked) void this.#openBare();
    else if (answered) carry(this.dataset["query"] ?? "");
    else {
      this.#form.awaits(asked);
      void this.#ask(asked, { live: false });
    }
  }

  /** The printed example stands, unless the shop keeps a wire, a gas or a machine of its own. */
  async #openBare() {
    void offerLastJob(this);
    await kept.ready;
    if (Object.keys(kept.now).length > 0 && !location.search) void this.#ask("", { live: false, bare: true });
  }

  /** @param {string} query @param {How} how `live`: a finger is dragging */
  async #ask(query, how) {
    if (!how.live || engine.state !== "ready") this.#state.waiting();
    try {
      this.#show(await askPage("dial-in", query, how), how);
    } catch (error) {
      if (error instanceof DOMException && error.name === "AbortError") return; // a newer one runs
      this.#state.broke(error);
    }
  }

  /** @param {Shown} shown @param {How} how */
  #show(shown, how) {
    if (!this.isConnected) return;
    this.#form.stands();
    const { state, ...parts } = shown.html;
    put(parts, how);
    if (state) put({ state }); // always: its word may have been changed from here
    this.#state.settled(shown.ok);
    if (!how.bare) {
      history.replaceState(history.state, "", `${location.pathname}?${shown.query}`);
      this.querySelector("[data-last]")?.setAttribute("hidden", "");
    }
    if (!shown.ok) return showRefusals(this, shown.errors);
    delete this.dataset["refused"];
    this.dataset["query"] = shown.query;
    document.title = `${shown.title} · Beadwright`;
    if (how.live) return; // links and memory wait until the finger lets go
    carry(shown.query);
    if (!how.bare) void keepLastJob({ query: shown.query, line: this.#state.job });
  }

  /** @param {Event} event */
  #changed({ target }) {
    if (!(target instanceof HTMLInputElement) || target.form !== this.#form.element) return;
    if (target.name === "units") this.#form.fixUnits();
    void this.#ask(this.#form.query(target.name), { live: false });
  }

  /** @param {Event} event */
  #submitted(event) {
    event.preventDefault();
    this.querySelector("#change")?.removeAttribute("open");
    this.#state.element.focus({ preventScroll: true });
    scrollTo(0, 0);
    void this.#ask(this.#form.query(), { live: false });
  }

  /** @param {MouseEvent} event */
  #tapped(event) {
    if (event.defaultPrevented || event.button !== 0 || event.ctrlKey || event.metaKey) return;
    const link = event.target instanceof Element ? event.target.closest("a") : null;
    const query = link?.dataset["query"];
    if (link && query !== undefined) {
      event.preventDefault();
      const band = link.closest(".set")?.querySelector(".band");
      if (band instanceof HTMLElement) band.focus({ preventScroll: true }); // the link will be gone
      void this.#ask(query, { live: false });
    } else if (link?.getAttribute("href")?.startsWith("#how-")) {
      event.preventDefault(); // stays on the page, whatever the address says by now
      this.querySelector("#how")?.setAttribute("open", "");
      document.getElementById(link.hash.slice(1))?.scrollIntoView({ block: "center" });
    }
  }
}

customElements.define("bead-dial-in", BeadDialIn);
