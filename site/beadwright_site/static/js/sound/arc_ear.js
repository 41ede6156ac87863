// @ts-check
/* When an arc burns, from sound alone: loud, steady, rough, and not regular as a machine is. */
import { meanOf, quantile, regularity, spread } from "./sound_measures.js";

/** @typedef {{kind: "ready" | "poor" | "on" | "off", at: number}} Heard */

export const BIN_S = 0.0005; // fine enough to part shorts 5 ms from each other
const FRAME_BINS = 20; // 10 ms
const FRAME_S = BIN_S * FRAME_BINS;
export const LEARN_S = 3;
const JUDGE_S = 0.4; // a hammer has died down by then, a hiss of speech is over
const GAP_S = 0.4; // an arc that stutters shorter than this has not stopped
const DIP_S = 0.05; // a candidate may dip so long
const RECENT_S = 3; // what is loud now and is no arc

const KEPT_S = 60; // of an arc; a long one is not kept whole

const OVER_FLOOR_DB = 12;
const OVER_NOISE_DB = 6;
const UNDER_OWN_DB = 10; // an arc further off than one's own
const OFF_DB = 10; // under the arc's own level
const MOST_SWAY_DB = 9; // an arc keeps its level; a hammer falls, speech rises and falls
const LEAST_ROUGH = 0.2; // a pure tone has none
const MOST_REGULAR = 0.55; // shorts come unevenly, a grinder's turns do not
const QUIET_DB = -90; // below this the microphone gives nothing

/** The high band of the sound as energies of half a millisecond. */
class Bins {
  #low = 0;
  #low2 = 0;
  #sum = 0;
  #count = 0;

  /** @param {number} rate samples a second */
  constructor(rate) {
    this.size = Math.max(1, Math.round(rate * BIN_S));
    this.keep = Math.exp((-2 * Math.PI * 3000) / rate); // what lies under 3 kHz is taken off
  }

  /** @param {Float32Array} samples @param {(energy: number) => void} take */
  feed(samples, take) {
    for (const sample of samples) {
      this.#low += (1 - this.keep) * (sample - this.#low);
      const once = sample - this.#low;
      this.#low2 += (1 - this.keep) * (once - this.#low2);
      const high = once - this.#low2;
      this.#sum += high * high;
      this.#count += 1;
      if (this.#count < this.size) continue;
      take(this.#sum / this.size);
      this.#sum = 0;
      this.#count = 0;
    }
  }
}

/** Hears one arc go on and off. Feed it samples; it gives back what it heard. */
export class ArcEar {
  #bins;
  /** Energies of the last half second or more. @type {number[]} */
  #recent = [];
  /** Levels of frames that were no arc, for RECENT_S. @type {number[]} */
  #noise = [];
  /** Levels of the frames since the candidate began, or of the arc. @type {number[]} */
  #since = [];
  #frame = 0;
  #began = -1;
  #under = 0;
  #floor = 0;
  #own = -Infinity;
  #burning = false;
  /** Energies of the arc burning or of the last one, for the rate of shorts. @type {number[]} */
  arc = [];

  /** @param {number} rate samples a second */
  constructor(rate) {
    this.#bins = new Bins(rate);
  }

  /** @param {Float32Array} samples @returns {Heard[]} */
  feed(samples) {
    /** @type {Heard[]} */
    const heard = [];
    this.#bins.feed(samples, (energy) => {
      this.#recent.push(energy);
      if (this.#burning) this.arc.push(energy);
      if (this.#recent.length % FRAME_BINS === 0) this.#step(heard);
    });
    return heard;
  }

  /** Seconds heard so far. */
  get now() {
    return this.#frame * FRAME_S;
  }

  /** One frame. @param {Heard[]} heard */
  #step(heard) {
    const level = 10 * Math.log10(meanOf(this.#recent.slice(-FRAME_BINS)) + 1e-15);
    const most = FRAME_BINS * Math.round(1 / FRAME_S);
    if (this.#recent.length > 2 * most) this.#recent = this.#recent.slice(-most);
    this.#frame += 1;
    const { now } = this;
    if (now <= LEARN_S) return this.#learn(level, now, heard);
    if (this.#burning) return this.#whileOn(level, now, heard);
    this.#whileOff(level, now, heard);
  }

  /** @param {number} level @param {number} now @param {Heard[]} heard */
  #learn(level, now, heard) {
    this.#noise.push(level);
    if (this.#frame !== Math.round(LEARN_S / FRAME_S)) return;
    this.#floor = quantile(this.#noise, 0.5);
    heard.push({ kind: this.#floor < QUIET_DB ? "poor" : "ready", at: now });
  }

  get #threshold() {
    return Math.max(this.#floor + OVER_FLOOR_DB, quantile(this.#noise, 0.95) + OVER_NOISE_DB,
      this.#own - UNDER_OWN_DB);
  }

  /** @param {number} level @param {number} now @param {Heard[]} heard */
  #whileOff(level, now, heard) {
    const loud = level > this.#threshold;
    if (this.#began < 0) {
      if (loud) this.#begin(level, now);
      else this.#remember(level);
      return;
    }
    this.#since.push(level);
    this.#under = loud ? 0 : this.#under + 1;
    if (this.#under * FRAME_S > DIP_S) return this.#drop();
    if (this.#since.length * FRAME_S < JUDGE_S) return;
    if (!this.#isArc()) return this.#drop();
    this.#burning = true;
    this.#under = 0;
    this.arc = this.#recent.slice(-this.#since.length * FRAME_BINS);
    heard.push({ kind: "on", at: this.#began });
  }

  /** @param {number} level @param {number} now */
  #begin(level, now) {
    this.#began = now - FRAME_S;
    this.#since = [level];
    this.#under = 0;
  }

  /** It was no arc: what was heard counts as the shop's noise. */
  #drop() {
    for (const level of this.#since) this.#remember(level);
    this.#began = -1;
  }

  /** @param {number} level */
  #remember(level) {
    this.#noise.push(level);
    if (this.#noise.length > RECENT_S / FRAME_S) this.#noise.shift();
  }

  /** Loud for long enough already: steady, rough and uneven? */
  #isArc() {
    const bins = this.#recent.slice(-this.#since.length * FRAME_BINS);
    const parts = [];
    for (let at = 0; at + 5 <= this.#since.length; at += 5) {
      parts.push(meanOf(this.#since.slice(at, at + 5)));
    }
    const sway = Math.max(...parts) - Math.min(...parts);
    return sway <= MOST_SWAY_DB && spread(bins) >= LEAST_ROUGH && regularity(bins) <= MOST_REGULAR;
  }

  /** @param {number} level @param {number} now @param {Heard[]} heard */
  #whileOn(level, now, heard) {
    this.#since.push(level);
    if (this.#since.length > (2 * KEPT_S) / FRAME_S) {
      this.#since = this.#since.slice(-KEPT_S / FRAME_S);
      this.arc = this.arc.slice(-KEPT_S / BIN_S);
    }
    const own = quantile(this.#since.slice(-200), 0.5);
    this.#under = level < own - OFF_DB ? this.#under + 1 : 0;
    if (this.#under * FRAME_S < GAP_S) return;
    const at = now - this.#under * FRAME_S;
    this.#own = quantile(this.#since.slice(0, -this.#under), 0.5);
    this.arc = this.arc.slice(0, -this.#under * FRAME_BINS);
    this.#burning = false;
    this.#began = -1;
    this.#noise = this.#since.slice(-this.#under);
    heard.push({ kind: "off", at });
  }
}
