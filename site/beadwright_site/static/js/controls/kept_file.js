// @ts-check
import { engine } from "../engine/engine.js";
import { coupons } from "../kept/coupons.js";
import { ENDING, giveFile } from "../kept/give_file.js";
import { jobs } from "../kept/jobs.js";
import { kept } from "../kept/kept.js";
import { notKept, why } from "../kept/kept_words.js";
import { asFault } from "../offline/fault.js";
import { plainButton } from "./plain_button.js";

/** @import { Names } from "../kept/kept.js" */
/** @import { Coupon } from "../kept/coupons.js" */
/** @import { Job } from "../kept/jobs.js" */
/** @import { Rows } from "../kept/shelf.js" */
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
    if (what === "yes" && this.#wanted) void this.#once(this.#take(this.#wanted), "yes");
    if (what === "back" && this.#before) void this.#once(this.#back(this.#before), "back");
    if (what === "no") this.#preview.hidden = true;
  }

  /** @param {Promise<void>} act @param {string} what the tap that does it again */
  async #once(act, what) {
    for (const button of this.#preview.querySelectorAll("button")) button.disabled = true;
    try {
      await act;
    } catch (error) {
      const fault = asFault(error);
      this.#show(element("p", `${notKept(fault)} ${why(fault)}`), plainButton("Tap again", "take", what));
    }
  }

  async #now() {
    await kept.ready;
    return { shop: kept.now, jobs: await jobs.all(), coupons: await coupons.all() };
  }

  async #out() {
    let now = { shop: kept.now, jobs: /** @type {Job[]} */ ([]), coupons: /** @type {Coupon[]} */ ([]) };
    let lacks = "";
    try {
      now = await this.#now();
      const unread = jobs.unread + coupons.unread;
      if (unread) lacks = `The file lacks ${unread} that cannot be read; they stay on this phone.`;
    } catch (error) {
      lacks = `The file has the shop alone: jobs and coupons cannot be read. ${why(asFault(error))}`;
    }
    const text = `${JSON.stringify({ kind: "beadwright", version: 1, ...now }, null, 1)}\n`;
    await giveFile(new File([text], `shop${ENDING}`, { type: "application/json" }));
    if (lacks) this.#show(element("p", lacks));
  }

  /** @param {Event} event */
  #picked({ target }) {
    if (!(target instanceof HTMLInputElement) || target.type !== "file") return;
    const file = target.files?.[0];
    if (file) void this.look(file).finally(() => { target.value = ""; });
  }

  /** Show what a file would change. @param {File} file */
  async look(file) {
    if (file.size > MOST_BYTES) {
      return this.#refuse(`The file has ${Math.ceil(file.size / 1e6)} MB, at most 5 are read.`);
    }
    this.#show(element("p", "Reading the file…"));
    try {
      const now = await this.#now();
      const answer = await engine.call("look", { text: await file.text(), ...now });
      if (!answer.ok) return this.#refuse(answer.reason);
      this.#wanted = answer;
      this.#show(...this.#changes(answer));
    } catch (error) {
      this.#refuse(why(asFault(error)));
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
      plainButton(`Take over ${count}`, "take", "yes"), plainButton("Leave all as it is", "take", "no")];
  }

  /** @param {Element[]} parts */
  #show(...parts) {
    this.#preview.replaceChildren(...parts);
    this.#preview.hidden = false;
    this.#preview.scrollIntoView({ block: "nearest" });
  }

  /** @param {Changes} wanted */
  async #take(wanted) {
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
    const shop = Object.fromEntries(Object.keys(wanted.shop).map((name) => [name, now.shop[name] ?? ""]));
    const before = { shop, rows: rows.map(([name]) =>
      /** @type {[string, unknown]} */ ([name, held.get(name)])) };
    await this.#write(wanted.shop, rows);
    this.#before = before;
    this.#wanted = null;
    this.#show(element("p", `Taken over: ${wanted.count}.`), plainButton("Undo", "take", "back"));
  }

  /** @param {{shop: Names, rows: Rows}} before */
  async #back(before) {
    await this.#write(before.shop, before.rows);
    this.#before = null;
    this.#show(element("p", "All is as it was before the file."));
  }

  /** Shop and records in one write: all or nothing. @param {Names} shop @param {Rows} rows */
  async #write(shop, rows) {
    await kept.keep(shop, { rows });
    const page = /** @type {import("../page/answer_page.js").BeadAnswer} */ (this.root);
    await page.ask(page.query);
  }
}

/** @type {WeakSet<Element>} */
const begun = new WeakSet();
function begin() {
  const root = document.querySelector('bead-answer[data-page="shop"]');
  if (!(root instanceof HTMLElement) || begun.has(root)) return;
  begun.add(root);
  const file = new KeptFile(root);
  // A file opened from the phone's own files, where the app is installed and the browser tells.
  /** @type {{launchQueue?: {setConsumer: (take: (opened: {files: FileSystemFileHandle[]}) => void) => void}}} */
  const { launchQueue } = /** @type {any} */ (window);
  launchQueue?.setConsumer(({ files: [handle] }) => {
    if (handle) void handle.getFile().then((opened) => file.look(opened));
  });
}

begin();
document.addEventListener("turbo:load", begin);
