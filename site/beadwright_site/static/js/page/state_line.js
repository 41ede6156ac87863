// @ts-check
import { plainButton } from "../controls/plain_button.js";
import { engine } from "../engine/engine.js";
import { reasonOf } from "../offline/fault_words.js";

/** @import { BeadAnswer } from "./answer_page.js" */

const SLOW_MS = 150; // an answer sooner than this needs no word

/** The line over the answer: whose job the numbers are for, or why they are not for what is asked. */
export class StateLine {
  #timer = 0;

  /** @param {BeadAnswer} page */
  constructor(page) {
    this.page = page;
  }

  /** @returns {HTMLElement} */
  get element() {
    return /** @type {HTMLElement} */ (this.page.querySelector("#state"));
  }

  /** The job shown, in one line. */
  get job() {
    return this.page.querySelector("[data-line]")?.getAttribute("data-line") ?? "";
  }

  get #shown() {
    if (!this.job) return "";
    const asked = this.page.query !== "" || this.page.dataset["example"] === undefined;
    return `. Shown: ${asked ? "last good answer" : "example"}, ${this.job}`;
  }

  /** Something else is asked than what stands here: say so before anybody reads it. */
  waiting() {
    clearTimeout(this.#timer);
    const say = () => {
      this.page.classList.add("working");
      this.element.textContent = engine.state === "failed"
        ? `Not worked out${this.#shown}` : "Working…";
    };
    if (engine.state === "ready") this.#timer = setTimeout(say, SLOW_MS);
    else say();
  }

  /** The sum takes long: how long so far, and the way to stop it. */
  tookLong() {
    if (!this.page.classList.contains("working")) return;
    const told = this.element.querySelector("[data-seconds]");
    if (told) {
      told.textContent = ` ${engine.seconds} s `;
      return;
    }
    const seconds = document.createElement("span");
    seconds.dataset["seconds"] = "";
    seconds.ariaHidden = "true"; // read out every second, it would drown everything else
    seconds.textContent = ` ${engine.seconds} s `;
    const stop = plainButton("Stop", "stopSum");
    stop.addEventListener("click", () => engine.stop());
    this.element.replaceChildren("Working…", seconds, stop);
  }

  /** The engine started or failed. */
  engineChanged() {
    if (this.page.classList.contains("working")) this.waiting();
  }

  /** @param {boolean} good whether what stands here is the answer to what is asked */
  settled(good) {
    this.stop();
    this.page.classList.remove("working");
    this.page.classList.toggle("stale", !good);
    if (!good) this.element.textContent = `${this.element.textContent?.trim()}${this.#shown}`;
  }

  /** @param {unknown} error */
  broke(error) {
    this.element.textContent = reasonOf(error).replace(/\.$/, "");
    this.settled(false);
  }

  stop() {
    clearTimeout(this.#timer);
  }
}
