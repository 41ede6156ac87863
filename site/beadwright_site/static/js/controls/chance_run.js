// @ts-check
import { engine } from "../engine/engine.js";
import { kept } from "../kept/kept.js";

/** @import { BeadAnswer } from "../page/answer_page.js" */

const FIRST_CHUNK = 25; // draws
const LEAST_CHUNK = 5;
const MOST_CHUNK = 1_000;
const CHUNK_MS = 60; // short, so that nothing asked meanwhile waits

/** The chance that switching pays, drawn chunk by chunk; to stop is to ask no more. */
export class ChanceRun {
  #token = {};
  #done = 0;
  /** Draws of the whole run, as the tapped button says. */
  #draws = 0;

  /** @param {BeadAnswer} page @param {AbortSignal} signal */
  constructor(page, signal) {
    this.page = page;
    page.addEventListener("click", (event) => this.#tapped(event), { signal });
    page.addEventListener("asked", () => this.drop(), { signal });
    signal.addEventListener("abort", () => this.drop());
  }

  /** Forget the draws: they are for a job that is no longer shown. */
  drop() {
    this.#token = {};
    this.#done = 0;
  }

  /** @param {Event} event */
  #tapped(event) {
    const button = event.target instanceof Element ? event.target.closest("[data-chance]") : null;
    if (!(button instanceof HTMLButtonElement)) return;
    event.preventDefault();
    const wanted = button.dataset["chance"];
    if (wanted === "start") this.#draws = Number(button.value);
    if (wanted === "stop") this.#stop(button);
    else void this.#run(wanted === "on" ? this.#done : 0);
  }

  /** @param {HTMLElement} button */
  #stop(button) {
    this.#token = {};
    button.dataset["chance"] = "on";
    button.textContent = "Go on";
  }

  /** @param {number} from */
  async #run(from) {
    const token = {};
    this.#token = token;
    this.#done = from;
    const way = Number(this.page.querySelector("#chance")?.getAttribute("data-way") ?? 1);
    const query = this.page.query;
    let chunk = FIRST_CHUNK;
    for (let finished = false; !finished;) {
      const began = performance.now();
      const payload = { query, kept: kept.now, way, done: this.#done, chunk, draws: this.#draws };
      const answer = await engine.call("chance", payload).catch(() => null);
      if (token !== this.#token) return;
      if (!answer?.ok) return this.#broken();
      this.page.put(answer.html);
      this.#done = answer.done;
      finished = answer.finished;
      const took = Math.max(performance.now() - began, 1);
      chunk = Math.round(chunk * CHUNK_MS / took);
      chunk = Math.min(MOST_CHUNK, Math.max(LEAST_CHUNK, chunk));
      // The page is drawn and fingers are heard between two chunks.
      await new Promise((resolve) => requestAnimationFrame(resolve));
      if (token !== this.#token) return;
    }
  }

  #broken() {
    const line = this.page.querySelector("#chance .small");
    if (line) line.textContent = "The draws broke off. Draw again.";
  }
}
