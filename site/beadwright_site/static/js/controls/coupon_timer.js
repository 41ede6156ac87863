// @ts-check
import { ArcEar } from "../sound/arc_ear.js";
import { Microphone } from "../sound/microphone.js";
import { shortRate } from "../sound/short_rate.js";
import { Awake } from "./awake.js";
import { CouponPace } from "./coupon_pace.js";

/** @import { BeadAnswer } from "../page/answer_page.js" */

const LEAST_S = 2; // shorter is a tack
const SHOWN_MS = 100;
const SILENT = "The microphone gives no sound: is it covered or switched off? Tap instead.";
const GONE = "The phone took the microphone away: listen again, or tap.";

/** Times the arc: by ear, hands free, or by taps on a button a glove hits. */
export class CouponTimer {
  /** @type {Microphone | undefined} */
  #mic;
  /** When the arc began by the page's clock, or -1. */
  #began = -1;
  /** When it began by the ear's clock, or -1 if it was tapped. */
  #heardOn = -1;
  #clock = 0;

  /** @param {BeadAnswer} page @param {AbortSignal} signal */
  constructor(page, signal) {
    this.page = page;
    const box = page.querySelector("#timer");
    if (!(box instanceof HTMLElement)) return;
    this.box = box;
    this.awake = new Awake(signal);
    this.pace = new CouponPace(page, box, () => this.#show());
    box.hidden = false;
    box.addEventListener("click", (event) => this.#tapped(event), { signal });
    signal.addEventListener("abort", () => {
      this.#end();
      this.pace?.off();
    });
  }

  /** @param {string} name @returns {HTMLElement | null | undefined} */
  #at(name) {
    return this.box?.querySelector(`[data-${name}]`);
  }

  /** @param {string} text */
  #say(text) {
    const said = this.#at("heard");
    if (said) said.textContent = text;
  }

  /** @param {Event} event */
  #tapped({ target }) {
    const button = target instanceof Element ? target.closest("button") : null;
    if (button?.dataset["arc"] !== undefined) this.#tap();
    if (button?.dataset["listen"] !== undefined) {
      if (this.#mic) this.#end("Not listening");
      else void this.#listen();
    }
    if (button?.dataset["pace"] !== undefined) void this.pace?.toggle(this.#passed);
    this.#show();
  }

  /** Seconds the arc burns, or -1. */
  get #passed() {
    return this.#began < 0 ? -1 : (performance.now() - this.#began) / 1000;
  }

  #tap() {
    if (this.#began >= 0) return this.#take(this.#passed, "by your taps");
    this.#end("Running. Tap when the arc stops.");
    this.#start(0);
  }

  /** @param {number} passed seconds since the arc began @param {number} [heardOn] */
  #start(passed, heardOn = -1) {
    this.#began = performance.now() - 1000 * passed;
    this.#heardOn = heardOn;
    this.pace?.begin(passed);
    this.#show();
  }

  /** @param {number} seconds @param {string} how */
  #take(seconds, how) {
    this.#began = -1;
    this.pace?.hush();
    if (seconds < LEAST_S) {
      this.#say(`${seconds.toFixed(1)} s is a tack: not timed.`);
      return this.#show();
    }
    this.#end(`${seconds.toFixed(1)} s ${how}`);
    this.pace?.next();
    this.page.set("arc_time", `${seconds.toFixed(1)}s`, {});
    const clock = this.#at("clock");
    if (clock) clock.textContent = `${seconds.toFixed(1)} s`;
  }

  /** Done, or given up: the microphone is let go. @param {string} [text] */
  #end(text) {
    this.#mic?.stop();
    this.#mic = undefined;
    this.#began = -1;
    this.pace?.hush();
    if (text !== undefined) this.#say(text);
    this.#show();
  }

  async #listen() {
    const mic = this.#mic = new Microphone();
    this.#began = -1;
    this.#say("Waiting for the microphone…");
    try {
      /** @type {ArcEar | undefined} */
      let ear;
      const rate = await mic.start((samples) => {
        if (mic === this.#mic && ear) this.#hear(ear, samples);
      }, () => this.#end(GONE));
      if (mic !== this.#mic) return mic.stop(); // given up meanwhile
      ear = new ArcEar(rate);
      this.#say(`Learning the shop's noise… 3 s. ${mic.filtered}`);
    } catch (error) {
      if (mic === this.#mic) this.#end(error instanceof Error ? error.message : "");
    }
    this.#show();
  }

  /** @param {ArcEar} ear @param {Float32Array} samples */
  #hear(ear, samples) {
    for (const { kind, at } of ear.feed(samples)) {
      if (kind === "poor") return this.#end(SILENT);
      if (kind === "ready") this.#say(`Ready: weld. ${this.#mic?.filtered ?? ""}`);
      if (kind === "on") {
        this.#say("Arc on");
        this.#start(ear.now - at, at);
      }
      if (kind === "off" && this.#began >= 0) {
        this.#take(at - this.#heardOn, "heard");
        this.#sayShorts(ear);
      }
    }
  }

  /** As found: a band, no verdict. @param {ArcEar} ear */
  #sayShorts(ear) {
    const said = this.#at("shorts");
    if (!said) return;
    const way = this.page.querySelector("#learned")?.getAttribute("data-transfer");
    const found = way === "short" ? shortRate(ear.arc) : undefined;
    if (found === undefined) said.textContent = "";
    else if (!found) said.textContent = "Shorts: the sound is too poor to say.";
    else {
      const { rate, spread } = found;
      said.textContent = `Shorts heard: ${Math.round(rate.low)} to ${Math.round(rate.high)} a second; the time between `
        + `two varies by ${Math.round(100 * spread.low)} to ${Math.round(100 * spread.high)} %.`;
    }
  }

  #show() {
    const runs = this.#began >= 0;
    this.awake?.want(runs || Boolean(this.#mic) || Boolean(this.pace?.on));
    const tap = this.#at("arc");
    if (tap) tap.textContent = runs ? "Stop" : "Start";
    const listen = this.#at("listen");
    if (listen) listen.textContent = this.#mic ? "Stop listening" : "Listen for the arc";
    this.box?.classList.toggle("runs", runs);
    clearInterval(this.#clock);
    const clock = this.#at("clock");
    if (!runs || !clock) return;
    this.#clock = window.setInterval(() => {
      clock.textContent = `${this.#passed.toFixed(1)} s`;
    }, SHOWN_MS);
  }
}
