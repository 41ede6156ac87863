// @ts-check
import { BandScale } from "./band_scale.js";

/** @import { BeadAnswer } from "../page/answer_page.js" */
/** @typedef {{row: HTMLElement, band: HTMLElement, scale: BandScale, from: number, off: number,
 *   moved: boolean, text: string}} Drag */

const GRASP_PX = 36; // nearer the thumb than this, the finger takes it where it is
const SLACK_PX = 4; // a finger that moves less taps, or begins to scroll
const PAGE_STEPS = 5; // of Page Up and Page Down

/** @type {Record<string, (scale: BandScale, now: number) => number>} */
const KEYS = {
  ArrowRight: (scale, now) => now + scale.step,
  ArrowUp: (scale, now) => now + scale.step,
  ArrowLeft: (scale, now) => now - scale.step,
  ArrowDown: (scale, now) => now - scale.step,
  PageUp: (scale, now) => now + PAGE_STEPS * scale.step,
  PageDown: (scale, now) => now - PAGE_STEPS * scale.step,
  Home: (scale) => scale.least,
  End: (scale) => scale.most,
};

/** Fingers and keys on the bands. */
export class Bands {
  /** @type {Drag | null} */
  #drag = null;
  #frame = 0;

  /** @param {BeadAnswer} page @param {AbortSignal} signal */
  constructor(page, signal) {
    this.page = page;
    page.addEventListener("pointerdown", (event) => this.#down(event), { signal });
    page.addEventListener("pointermove", (event) => this.#move(event), { signal });
    page.addEventListener("pointerup", (event) => this.#up(event.clientX), { signal });
    page.addEventListener("pointercancel", () => this.#up(null), { signal });
    page.addEventListener("click", (event) => this.#letGo(event), { signal });
    page.addEventListener("keydown", (event) => this.#key(event, true), { signal });
    page.addEventListener("keyup", (event) => this.#key(event, false), { signal });
  }

  /** @param {Event} event */
  #bandOf(event) {
    const band = event.target instanceof Element ? event.target.closest("[role=slider]") : null;
    const row = band?.closest(".set");
    if (!(band instanceof HTMLElement) || !(row instanceof HTMLElement)) return null;
    return { band, row, now: Number(band.getAttribute("aria-valuenow")) };
  }

  /** The link to let go of a setting vanishes with the answer: focus moves to its band.
   * @param {Event} event */
  #letGo(event) {
    const link = event.target instanceof Element ? event.target.closest(".set a[data-query]") : null;
    const band = link?.closest(".set")?.querySelector(".band");
    if (band instanceof HTMLElement) band.focus({ preventScroll: true });
  }

  /** @param {PointerEvent} event */
  #down(event) {
    const found = this.#bandOf(event);
    if (!found || event.button !== 0) return;
    const { band, row, now } = found;
    const scale = new BandScale(band);
    const { left, width } = band.getBoundingClientRect();
    const off = event.clientX - (left + scale.shareOf(now) * width);
    const taken = Math.abs(off) < GRASP_PX ? off : 0;
    this.#drag = { row, band, scale, from: event.clientX, off: taken, moved: false, text: "" };
    band.setPointerCapture(event.pointerId);
  }

  /** @param {PointerEvent} event */
  #move(event) {
    const drag = this.#drag;
    if (!drag || (!drag.moved && Math.abs(event.clientX - drag.from) < SLACK_PX)) return;
    drag.moved = true;
    drag.row.dataset["dragging"] = "";
    this.#follow(drag, event.clientX);
  }

  /** @param {number | null} x null: the browser took over, to scroll */
  #up(x) {
    const drag = this.#drag;
    if (!drag) return;
    if (!drag.moved && x !== null) this.#follow(drag, x);
    cancelAnimationFrame(this.#frame);
    delete drag.row.dataset["dragging"];
    this.#drag = null;
    if (drag.text) this.page.set(drag.row.dataset["key"] ?? "", drag.text, { live: false });
  }

  /** @param {Drag} drag @param {number} x */
  #follow(drag, x) {
    const { left, width } = drag.band.getBoundingClientRect();
    const value = drag.scale.valueAt((x - drag.off - left) / width);
    const text = drag.scale.typed(value);
    if (text === drag.text) return;
    drag.text = text;
    draw(drag.row, drag.band, drag.scale, value);
    cancelAnimationFrame(this.#frame);
    this.#frame = requestAnimationFrame(() =>
      this.page.set(drag.row.dataset["key"] ?? "", text, { live: true }));
  }

  /** A held key goes on stepping; the whole answer comes when it is let go.
   * @param {KeyboardEvent} event @param {boolean} live */
  #key(event, live) {
    const found = this.#bandOf(event);
    const move = KEYS[event.key];
    if (!found || !move || event.altKey || event.ctrlKey || event.metaKey) return;
    event.preventDefault();
    const scale = new BandScale(found.band);
    const value = live ? scale.held(move(scale, found.now)) : found.now;
    if (live) draw(found.row, found.band, scale, value);
    this.page.set(found.row.dataset["key"] ?? "", scale.typed(value), { live });
  }
}

/** The finger's own band moves at once; the rest follows with the answer.
 * @param {HTMLElement} row @param {HTMLElement} band @param {BandScale} scale @param {number} value */
function draw(row, band, scale, value) {
  band.setAttribute("aria-valuenow", String(value));
  band.setAttribute("aria-valuetext", scale.typed(value));
  band.querySelector(".thumb")?.setAttribute("cx", `${100 * scale.shareOf(value)}%`);
  const number = row.querySelector("[data-type]");
  if (number) number.textContent = scale.shown(value);
}
