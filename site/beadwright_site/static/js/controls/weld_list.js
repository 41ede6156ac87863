// @ts-check
import { kept } from "../kept/kept.js";
import { Fault } from "../offline/fault.js";
import { sayBriefly } from "./brief_word.js";
import { tellNotKept, untell } from "./kept_notice.js";
import { plainButton } from "./plain_button.js";
import { WeldFields } from "./weld_fields.js";

/** @import { BeadAnswer } from "../page/answer_page.js" */

/** Lines that another tab added after `seen` go behind `text`. @param {string} text @param {string} seen
 * @param {string} stored */
function merged(text, seen, stored) {
  if (!stored || stored === seen || stored === text) return text;
  if (!stored.startsWith(seen)) throw new Fault("newer");
  return `${text}\n${stored.slice(seen.length).trim()}`.trim();
}

/** Adds the job at hand to the list kept on the phone; on the list, edits it line by line. */
export class WeldList {
  /** The list before a line was taken away. @type {string | undefined} */
  #before;
  /** The list on the phone when this page last read or wrote it. */
  #seen = "";
  /** The list came with a link: until the reader says so, their own list is kept. */
  #lent = false;
  /** The rows are still the example's: nothing is edited until those of the link stand. */
  #awaits = false;

  /** @param {BeadAnswer} page @param {AbortSignal} signal */
  constructor(page, signal) {
    this.page = page;
    if (page.page !== "list" && !page.querySelector("[data-add-weld]")) return;
    this.fields = new WeldFields(page, (lines) => this.#put(lines), signal);
    page.addEventListener("click", (event) => void this.#tapped(event), { signal });
    page.addEventListener("change", (event) => this.#changed(event), { signal });
    page.addEventListener("shown", () => {
      this.#awaits = false;
      this.#unhide();
      this.#offer();
      this.#countOn();
    }, { signal });
    const look = () => {
      this.#seen = kept.now["lines"] ?? "";
    };
    const linked = page.page === "list" && /[?&](lines|z)=/.test(location.search);
    this.#awaits = linked && !page.query;
    void kept.ready.then(() => {
      look();
      this.#lent = linked && this.#seen !== "";
      this.#offer();
    });
    kept.addEventListener("news", () => {
      // Lines in the address were changed here: what another tab adds comes in when they are kept.
      if (!new URLSearchParams(location.search).has("lines")) look();
    }, { signal });
    this.#unhide();
  }

  /** A long list is counted some welds at a time, so that no question takes too long. */
  #countOn() {
    if (this.page.querySelector("#total[data-waiting]")) void this.page.ask(this.page.form.query());
  }

  #unhide() {
    if (this.#awaits) return;
    for (const button of this.page.querySelectorAll("[data-weld], [data-add-weld]")) {
      if (button instanceof HTMLElement) button.hidden = false;
    }
  }

  /** @param {Event} event */
  async #tapped({ target }) {
    const button = target instanceof Element ? target.closest("button") : null;
    if (!button) return;
    const { addWeld, weld, weldBack, ownList } = button.dataset;
    if (ownList !== undefined) await this.#takeOver();
    if (addWeld !== undefined) await this.#add(button);
    if (weldBack !== undefined && this.#before !== undefined) await this.#put(this.#before);
    const line = button.closest("li")?.querySelector("input");
    if (weld && line) await this.#edit(weld, this.#inputs.indexOf(line));
  }

  /** Written to the phone before the button says so. @param {HTMLElement} button */
  async #add(button) {
    const line = this.page.querySelector("[data-weld-line]")?.getAttribute("data-weld-line");
    if (!line) return;
    let count = 0;
    try {
      await kept.keep(({ lines: before = "" }) => {
        count = before.split("\n").filter((text) => text.trim()).length + 1;
        return { lines: `${before}${before ? "\n" : ""}Weld ${count}${line}` };
      });
      untell(this.page);
      sayBriefly(button, `On the list: ${count}`);
    } catch (error) {
      tellNotKept(button.parentElement, error, "The job stays on this screen.");
    }
  }

  get #inputs() {
    const found = [...this.page.querySelectorAll("#rows input")];
    return /** @type {HTMLInputElement[]} */ (found);
  }

  get #header() {
    return this.page.querySelector("#rows")?.getAttribute("data-header") ?? "";
  }

  /** @param {string[]} lines */
  #text(lines) {
    return [this.#header, ...lines].filter(Boolean).join("\n");
  }

  /** @param {Event} event */
  #changed({ target }) {
    if (!(target instanceof HTMLElement)) return;
    if (this.#awaits) return;
    if (target.id === "lines") void this.#keep();
    else if (target.dataset["lineOf"]) void this.#put(this.#text(this.#inputs.map((e) => e.value)));
  }

  /** @param {string} how @param {number} at */
  async #edit(how, at) {
    if (how === "edit") return this.fields?.open(at + 1);
    const lines = this.#inputs.map((input) => input.defaultValue);
    const [line = ""] = lines.splice(at, 1);
    this.#before = how === "drop" ? this.#text(this.#inputs.map((e) => e.defaultValue)) : undefined;
    if (how === "up") lines.splice(Math.max(0, at - 1), 0, line);
    if (how === "down") lines.splice(at + 1, 0, line);
    if (how === "copy") lines.splice(at, 0, line, line);
    await this.#put(this.#text(lines));
  }

  /** @param {string} text */
  async #put(text) {
    const back = text !== this.#before ? this.#before : undefined;
    const area = document.getElementById("lines");
    if (!(area instanceof HTMLTextAreaElement)) return;
    area.value = text;
    await this.page.ask(this.page.form.query("lines"));
    await this.#keep();
    this.#before = back;
    if (back !== undefined) this.#offerBack();
  }

  #offerBack(text = "Put the weld back") {
    this.page.querySelector("#rows")?.append(plainButton(text, "weldBack"));
  }

  /** A list from a link and the reader's own are two: the reader says which one the phone keeps. */
  #offer() {
    const rows = this.page.querySelector("#rows"), area = document.getElementById("lines");
    const other = area instanceof HTMLTextAreaElement && area.value.trim() !== this.#seen.trim();
    document.getElementById("lent-list")?.remove();
    if (!this.#lent || !other) return;
    const told = document.createElement("p");
    told.id = "lent-list";
    told.className = "note";
    const button = plainButton("Keep this list in place of mine", "ownList");
    const count = this.#seen.split("\n").filter((text) => text.trim()).length;
    const own = count === 1 ? "Your own list of one line" : `Your own list of ${count} lines`;
    told.append(`This list came with a link. ${own} stays on this phone. `, button);
    rows?.before(told);
  }

  async #takeOver() {
    this.#before = this.#seen;
    this.#lent = false;
    this.#offer();
    await this.#keep();
    this.#offerBack("Put my own list back");
  }

  /** The edited list is the phone's, with what another tab added to it. */
  async #keep() {
    const area = document.getElementById("lines");
    if (this.#lent || !(area instanceof HTMLTextAreaElement)) return;
    const text = area.value.trim();
    let all = text;
    try {
      await kept.keep(({ lines = "" }) => ({ lines: all = merged(text, this.#seen, lines) }));
      this.#seen = all;
      untell(this.page);
    } catch (error) {
      return tellNotKept(this.page.querySelector("#rows"), error, "The list stays on this screen and in its address.");
    }
    if (all !== text) {
      area.value = all;
      await this.page.ask(this.page.form.query("lines"));
    }
    const state = this.page.querySelector("#state");
    if (state) sayBriefly(state, "Kept on this phone");
  }
}
