// @ts-check
/** @import { BeadAnswer } from "../page/answer_page.js" */

const WHOLE_MS = 12_000; // a plan is played in no more than this
const LEAST_MS = 130; // a bead is shown no shorter
const MOST_MS = 800; // and no longer

const still = matchMedia("(prefers-reduced-motion: reduce)");

/** Bead by bead: a tap on a bead, on a step, or the plan played from bead to bead. */
export class PassSteps {
  #timer = 0;
  #playing = false;

  /** @param {BeadAnswer} page @param {AbortSignal} signal */
  constructor(page, signal) {
    this.page = page;
    if (page.dataset["stepped"] === undefined) return;
    page.addEventListener("click", (event) => this.#tapped(event), { signal });
    page.addEventListener("shown", () => this.#label(), { signal });
    signal.addEventListener("abort", () => this.#stop());
    this.#label();
  }

  get #button() {
    return this.page.querySelector("[data-play]");
  }

  /** The button comes anew with every answer. */
  #label() {
    const button = this.#button;
    if (!(button instanceof HTMLElement)) return;
    button.hidden = still.matches;
    button.textContent = this.#playing ? "Stop" : "Play";
  }

  /** @param {MouseEvent} event */
  #tapped(event) {
    if (event.button !== 0 || event.ctrlKey || event.metaKey || event.shiftKey) return;
    const target = event.target instanceof Element ? event.target : null;
    const link = target?.closest("a[data-step]");
    if (link instanceof SVGElement) event.stopPropagation(); // Turbo knows no links in pictures
    if (link) {
      event.preventDefault();
      this.#stop();
      void this.#go(link.getAttribute("href") ?? "");
    } else if (target?.closest("[data-play]")) {
      if (this.#playing) this.#stop();
      else this.#play();
    } else if (target?.closest("a[data-query], input, button")) {
      this.#stop(); // another plan is asked for
    }
  }

  /** @param {string} href @returns {Promise<boolean>} */
  #go(href) {
    const parts = (this.page.dataset["stepped"] ?? "").split(" ");
    return this.page.ask(href.replace(/^\?/, ""), { parts });
  }

  #stop() {
    clearTimeout(this.#timer);
    this.#playing = false;
    this.#label();
  }

  /** From the bead shown to the last; from the last, all over again. */
  #play() {
    const count = Number(this.#button?.getAttribute("data-count") ?? 1);
    const pause = Math.min(MOST_MS, Math.max(LEAST_MS, WHOLE_MS / count));
    const next = () => this.page.querySelector('.steps [rel="next"]');
    const step = async () => {
      const link = next();
      if (!this.#playing || !link || !(await this.#go(link.getAttribute("href") ?? ""))) {
        return this.#stop();
      }
      if (!this.#playing) return;
      this.#timer = setTimeout(step, pause);
    };
    this.#playing = true;
    this.#label();
    if (next()) return void step();
    const first = this.page.querySelector(".steps .lay")?.getAttribute("href") ?? "";
    void this.#go(first).then((ok) => {
      if (ok && this.#playing) this.#timer = setTimeout(step, pause);
    });
  }
}
