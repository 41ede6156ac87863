// @ts-check
import { engine } from "../engine/engine.js";
import { kept } from "../kept/kept.js";
import { why } from "../kept/kept_words.js";
import { installHint, onInstallChange } from "../offline/home_screen.js";
import { offline } from "../offline/offline.js";
import { storyOf, updateStory, wordOf } from "./phone_words.js";
import { megabytes } from "../offline/fault_words.js";

/** Draws templates/_offline.html. As an element it finds itself again on every page shown. */
class BeadOffline extends HTMLElement {
  #gone = new AbortController();

  connectedCallback() {
    this.#gone = new AbortController();
    const { signal } = this.#gone;
    const draw = () => this.#draw();
    offline.addEventListener("change", draw, { signal });
    engine.addEventListener("state", draw, { signal });
    onInstallChange(draw, signal);
    this.#part("word").addEventListener("click", () => this.#panel.showModal(), { signal });
    this.#panel.addEventListener("click", (event) => this.#tapped(event), { signal });
    // A page kept for going back must not come back with the panel open.
    document.addEventListener("turbo:before-cache", () => this.#panel.close(), { signal });
    kept.addEventListener("news", draw, { signal });
    void kept.ready.then(draw);
    draw();
    offline.begin();
    engine.start();
  }

  disconnectedCallback() {
    this.#gone.abort();
  }

  /** @param {string} name @returns {HTMLElement} */
  #part(name) {
    const found = this.querySelector(`[data-part="${name}"]`);
    if (!(found instanceof HTMLElement)) throw new Error(`_offline.html has no part ${name}`);
    return found;
  }

  get #panel() {
    return /** @type {HTMLDialogElement} */ (this.#part("panel"));
  }

  /** @param {string} name @param {string} text hidden when empty */
  #write(name, text) {
    const part = this.#part(name);
    if (part.textContent !== text) part.textContent = text; // no needless reading aloud
    part.hidden = text === "";
  }

  /** Where a browser stores nothing at all, nothing is lost: that is said where something is kept. */
  get #unread() {
    const { fault } = kept;
    return fault && fault.kind !== "blocked" ? `Not all that your shop keeps is in these numbers. ${why(fault)}` : "";
  }

  #draw() {
    const { state: keep } = offline;
    const { state: update } = offline.updates;
    const word = wordOf(keep, update, engine);
    this.#write("word", word.text);
    this.#part("word").dataset["tone"] = word.tone;
    const story = storyOf(keep, update, engine);
    // A page that asks nothing has no numbers that would follow.
    const notice = this.hasAttribute("data-still") ? "" : story.notice || this.#unread;
    this.#write("notice", notice);
    this.#write("story", story.text);
    this.#write("numbers", story.numbers);
    this.#write("small", story.small);
    this.#write("update", updateStory(update));
    const about = keep.about ?? { storedBytes: 0, bytes: 0, version: "–", id: "–" };
    this.#write("stored", about.bytes === 0 ? "–"
      : `${megabytes(about.storedBytes)} of ${megabytes(about.bytes)}`);
    this.#write("version", about.version);
    this.#write("release", about.id);
    const bar = /** @type {HTMLProgressElement} */ (this.#part("progress"));
    bar.hidden = keep.kind !== "fetching" && update.kind !== "coming";
    bar.value = keep.kind === "fetching" ? keep.percent : update.percent;
    const hint = installHint();
    this.#write("hint", hint && !hint.install ? hint.text : "");
    const served = offline.registered;
    this.#show("take", update.kind === "ready");
    this.#show("retry", keep.kind === "none" || engine.state === "failed");
    this.#show("look", served && update.kind !== "ready", update.kind === "checking");
    this.#show("repair", served, offline.busy);
    this.#show("install", Boolean(hint?.install));
  }

  /** @param {string} name @param {boolean} shown @param {boolean} [busy] */
  #show(name, shown, busy = false) {
    const tap = this.querySelector(`[data-tap="${name}"]`);
    if (!(tap instanceof HTMLButtonElement)) throw new Error(`_offline.html has no tap ${name}`);
    tap.hidden = !shown;
    tap.disabled = busy;
  }

  /** @param {Event} event */
  #tapped(event) {
    if (event.target === this.#panel) return this.#panel.close(); // beside it
    const tap = event.target instanceof Element ? event.target.closest("[data-tap]") : null;
    const what = tap instanceof HTMLElement ? tap.dataset["tap"] : undefined;
    if (what === "close") this.#panel.close();
    else if (what === "take") void offline.updates.take();
    else if (what === "look") void offline.updates.look(true);
    else if (what === "repair") void offline.repair();
    else if (what === "install") void installHint()?.install?.();
    else if (what === "retry") {
      // Everything is stored and still it fails: a stored file may have gone bad.
      if (engine.state === "failed" && offline.state.kind === "ready") void offline.repair();
      else void offline.retry();
      engine.retry();
    }
  }
}

customElements.define("bead-offline", BeadOffline);
