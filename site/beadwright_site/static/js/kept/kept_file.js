// @ts-check
import { engine } from "../engine/engine.js";
import { giveFile } from "./give_file.js";
import { kept } from "./kept.js";

/** @import { Names } from "./kept.js" */

const KIND = "beadwright shop";
const MOST_BYTES = 200_000; // what a shop keeps is a few thousand

/** @param {string} tag @param {string} text @param {Element[]} children */
function element(tag, text, ...children) {
  const made = document.createElement(tag);
  made.textContent = text;
  made.append(...children);
  return made;
}

/** What is kept, out to a file and in from one; what a file would change is shown first. */
class KeptFile {
  /** @type {Names} */
  #wanted = {};

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
    if (button?.dataset["keptOut"] !== undefined) void this.#out();
    if (button?.dataset["take"] === "yes") void this.#take();
    if (button?.dataset["take"] === "no") this.#preview.hidden = true;
  }

  async #out() {
    const text = `${JSON.stringify({ kind: KIND, version: 1, kept: kept.now }, null, 2)}\n`;
    await giveFile(new File([text], "beadwright-shop.json", { type: "application/json" }));
  }

  /** @param {Event} event */
  #picked({ target }) {
    if (!(target instanceof HTMLInputElement) || target.type !== "file") return;
    const file = target.files?.[0];
    if (file) void this.#look(file).finally(() => { target.value = ""; });
  }

  /** @param {File} file */
  async #look(file) {
    /** @type {unknown} */
    let found = null;
    try {
      found = file.size < MOST_BYTES ? JSON.parse(await file.text()) : null;
    } catch {
      // said below
    }
    const data = /** @type {{kind?: unknown, kept?: unknown} | null} */ (found);
    if (data?.kind !== KIND || typeof data.kept !== "object" || data.kept === null) {
      return this.#show(element("p", "This is no file of what a shop keeps. Nothing was changed."));
    }
    const answer = await engine.call("keep", { kept: data.kept });
    this.#wanted = answer.kept;
    this.#show(...this.#changes(answer));
  }

  /** @param {{kept: Names, errors: {[name: string]: string[]}, labels: Names}} answer */
  #changes({ kept: wanted, errors, labels }) {
    const rows = Object.entries(wanted)
      .filter(([name, text]) => kept.now[name] !== text)
      .map(([name, text]) => element("li", "", element("b", labels[name] ?? name),
        element("span", `${kept.now[name] ?? "not kept"} → ${text}`)));
    const wrong = Object.entries(errors)
      .map(([name, texts]) => element("li", `${name}: left out. ${texts.join(" ")}`));
    const list = element("ul", "", ...rows, ...wrong);
    if (!rows.length) return [element("p", "The file changes nothing."), list];
    const yes = element("button", `Take over ${rows.length}`);
    const no = element("button", "Leave all as it is");
    for (const [button, word] of /** @type {[HTMLElement, string][]} */ ([[yes, "yes"], [no, "no"]])) {
      button.setAttribute("type", "button");
      button.className = "plain";
      button.dataset["take"] = word;
    }
    return [element("h2", "What the file changes"), list, yes, no];
  }

  /** @param {Element[]} parts */
  #show(...parts) {
    this.#preview.replaceChildren(...parts);
    this.#preview.hidden = false;
    this.#preview.scrollIntoView({ block: "nearest" });
  }

  async #take() {
    await kept.keep(this.#wanted);
    this.#show(element("p", `Taken over: ${Object.keys(this.#wanted).length} entries.`));
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
  new KeptFile(root);
}

begin();
document.addEventListener("turbo:load", begin);
