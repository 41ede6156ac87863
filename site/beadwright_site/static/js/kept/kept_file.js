// @ts-check
import { engine } from "../engine/engine.js";
import { coupons } from "./coupons.js";
import { giveFile } from "./give_file.js";
import { jobs } from "./jobs.js";
import { kept } from "./kept.js";
import { writeRows } from "./shelf.js";

/** @import { Names } from "./kept.js" */
/** @import { Coupon } from "./coupons.js" */
/** @import { Job } from "./jobs.js" */
/** @import { Rows } from "./shelf.js" */
/** @typedef {{what: string, before: string, after: string}} Line */
/** @typedef {{shop: Names, jobs: Job[], coupons: Coupon[], count: number, lines: Line[]}} Changes */

const MOST_BYTES = 5_000_000; // as the core reads; a thousand coupons are a tenth of it

/** @param {string} tag @param {string} text @param {Element[]} children */
function element(tag, text, ...children) {
  const made = document.createElement(tag);
  made.textContent = text;
  made.append(...children);
  return made;
}

/** @param {string} text @param {string} what */
function tap(text, what) {
  const button = element("button", text);
  button.setAttribute("type", "button");
  button.className = "plain";
  button.setAttribute("data-take", what);
  return button;
}

/** All that is kept, out to a file and in from one; what a file would change is shown first. */
class KeptFile {
  /** @type {Changes | null} */
  #wanted = null;
  /** What stood before the file was taken. @type {{shop: Names, rows: Rows} | null} */
  #before = null;

  /** @param {HTMLElement} root */
  constructor(root) {
    this.root = root;
    root.addEventListener("click", (event) => this.#tapped(event));
    root.addEventListener("change", (event) => this.#picked(event));
    root.addEventListener("shown", () => this.#unhide());
    this.#unhide();
  }

  get #preview() {
    return /** @type {HTMLElement} */ (this.root.querySelector("[data-preview]"));
  }

  #unhide() {
    for (const item of this.root.querySelectorAll("[data-kept-out], [data-kept-in]")) {
      if (item instanceof HTMLElement) item.hidden = false;
    }
  }

  /** @param {Event} event */
  #tapped({ target }) {
    const button = target instanceof Element ? target.closest("button") : null;
    const what = button?.dataset["take"];
    if (button?.dataset["keptOut"] !== undefined) void this.#out();
    if (what === "yes") void this.#take();
    if (what === "back") void this.#back();
    if (what === "no") this.#preview.hidden = true;
  }

  async #now() {
    await kept.ready;
    return { shop: kept.now, jobs: await jobs.all(), coupons: await coupons.all() };
  }

  async #out() {
    const all = { kind: "beadwright", version: 1, ...(await this.#now()) };
    const text = `${JSON.stringify(all, null, 1)}\n`;
    await giveFile(new File([text], "beadwright.json", { type: "application/json" }));
  }

  /** @param {Event} event */
  #picked({ target }) {
    if (!(target instanceof HTMLInputElement) || target.type !== "file") return;
    const file = target.files?.[0];
    if (file) void this.#look(file).finally(() => { target.value = ""; });
  }

  /** @param {File} file */
  async #look(file) {
    if (file.size > MOST_BYTES) {
      return this.#refuse(`The file has ${Math.ceil(file.size / 1e6)} MB, at most 5 are read.`);
    }
    this.#show(element("p", "Reading the file…"));
    try {
      const answer = await engine.call("look", { text: await file.text(), ...(await this.#now()) });
      if (!answer.ok) return this.#refuse(answer.reason);
      this.#wanted = answer;
      this.#show(...this.#changes(answer));
    } catch (error) {
      this.#refuse(error instanceof Error ? error.message : "It could not be read.");
    }
  }

  /** @param {string} reason */
  #refuse(reason) {
    this.#show(element("p", `${reason} Nothing was changed.`));
  }

  /** @param {Changes} answer @returns {Element[]} */
  #changes({ count, lines }) {
    if (!count) return [element("p", "The file changes nothing: all of it is kept already.")];
    const rows = lines.map(({ what, before, after }) => element("li", "", element("b", what),
      element("span", before && `${before} → ${after}`)));
    return [element("h2", "What the file changes"), element("ul", "", ...rows),
      tap(`Take over ${count}`, "yes"), tap("Leave all as it is", "no")];
  }

  /** @param {Element[]} parts */
  #show(...parts) {
    this.#preview.replaceChildren(...parts);
    this.#preview.hidden = false;
    this.#preview.scrollIntoView({ block: "nearest" });
  }

  async #take() {
    const wanted = this.#wanted;
    if (!wanted) return;
    const now = await this.#now();
    /** @type {Rows} */
    const rows = [
      ...wanted.jobs.map((job) => /** @type {[string, unknown]} */ ([jobs.name(job), job])),
      ...wanted.coupons.map((each) => /** @type {[string, unknown]} */ ([coupons.name(each), each])),
    ];
    const held = new Map(/** @type {Rows} */ ([
      ...now.jobs.map((job) => [jobs.name(job), job]),
      ...now.coupons.map((each) => [coupons.name(each), each]),
    ]));
    const before = { shop: now.shop, rows: rows.map(([name]) =>
      /** @type {[string, unknown]} */ ([name, held.get(name)])) };
    if (!(await this.#write({ ...now.shop, ...wanted.shop }, rows))) return;
    this.#before = before;
    this.#wanted = null;
    this.#show(element("p", `Taken over: ${wanted.count}.`), tap("Undo", "back"));
  }

  async #back() {
    const before = this.#before;
    if (!before || !(await this.#write(before.shop, before.rows))) return;
    this.#before = null;
    this.#show(element("p", "All is as it was before the file."));
  }

  /** Shop and records in one write: all or nothing. @param {Names} shop @param {Rows} rows */
  async #write(shop, rows) {
    try {
      await writeRows([kept.row(shop), ...rows]);
    } catch {
      this.#refuse("The phone is full, or this browser stores nothing.");
      return false;
    }
    kept.now = shop;
    const page = /** @type {import("../page/answer_page.js").BeadAnswer} */ (this.root);
    await page.ask(page.query);
    return true;
  }
}

/** @type {WeakSet<Element>} */
const begun = new WeakSet();
function begin() {
  const root = document.querySelector('bead-answer[data-page="shop"]');
  if (!(root instanceof HTMLElement) || begun.has(root)) return;
  begun.add(root);
  new KeptFile(root);
}

begin();
document.addEventListener("turbo:load", begin);
