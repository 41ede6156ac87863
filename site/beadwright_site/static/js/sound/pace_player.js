// @ts-check
/* Plays a beat by the audio clock. */

const TICK_HZ = 900; // under what the ear listens to
const END_HZ = 450;
const TICK_S = 0.04;
const END_S = 0.7;
const AHEAD_S = 2.5; // a page out of sight is woken once a second
const LOOK_MS = 200;

/** @typedef {{ticks: number[], end: number}} Beat */

/** One tone, at a time of the audio clock.
 * @param {BaseAudioContext} context @param {number} at @param {number} pitch @param {number} lasts */
export function sound(context, at, pitch, lasts) {
  const tone = context.createOscillator();
  const loud = context.createGain();
  tone.frequency.value = pitch;
  loud.gain.setValueAtTime(0.9, at);
  loud.gain.exponentialRampToValueAtTime(0.001, at + lasts);
  tone.connect(loud).connect(context.destination);
  tone.start(at);
  tone.stop(at + lasts);
  return tone;
}

export class PacePlayer {
  /** @type {AudioContext | undefined} */
  #context;
  #look = 0;
  /** @type {Set<OscillatorNode>} */
  #tones = new Set();
  /** @type {Set<ReturnType<typeof setTimeout>>} */
  #shakes = new Set();

  /** From a tap: a phone lets no page sound by itself. */
  async open() {
    this.#context ??= new AudioContext();
    await this.#context.resume();
  }

  /** @param {Beat} beat @param {number} passed seconds since the bead began @param {() => void} onEnd */
  play({ ticks, end }, passed, onEnd) {
    this.hush();
    const context = this.#context;
    if (!context) return;
    const began = context.currentTime - passed + 0.02;
    let next = ticks.findIndex((at) => at > passed);
    if (next < 0) next = ticks.length;
    let ended = end <= passed;
    const look = () => {
      const until = context.currentTime - began + AHEAD_S;
      for (; next < ticks.length && /** @type {number} */ (ticks[next]) < until; next++) {
        this.#beat(context, began + /** @type {number} */ (ticks[next]), TICK_HZ, TICK_S, 40);
      }
      if (!ended && end < until) {
        ended = true;
        this.#beat(context, began + end, END_HZ, END_S, [200, 80, 200], onEnd);
      }
      if (ended) clearInterval(this.#look);
    };
    this.#look = window.setInterval(look, LOOK_MS);
    look();
  }

  /**
   * @param {AudioContext} context @param {number} at @param {number} pitch @param {number} lasts
   * @param {number | number[]} shake ms @param {() => void} [then]
   */
  #beat(context, at, pitch, lasts, shake, then) {
    const tone = sound(context, at, pitch, lasts);
    this.#tones.add(tone);
    tone.addEventListener("ended", () => this.#tones.delete(tone));
    const timer = setTimeout(() => {
      this.#shakes.delete(timer);
      navigator.vibrate?.(shake);
      then?.();
    }, 1000 * (at - context.currentTime));
    this.#shakes.add(timer);
  }

  hush() {
    clearInterval(this.#look);
    for (const timer of this.#shakes) clearTimeout(timer);
    for (const tone of this.#tones) tone.stop();
    this.#shakes.clear();
    this.#tones.clear();
  }

  close() {
    this.hush();
    void this.#context?.close().catch(() => null);
    this.#context = undefined;
  }
}
