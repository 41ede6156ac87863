// @ts-check
const ROUNDING = 1e-6; // of a step: an end that lies on a step counts, however it was rounded
const SIXTEENTHS = 16; // the finest part of an inch on a shop rule

/** The scale of one band, as the template wrote it, and numbers on it. */
export class BandScale {
  /** @param {HTMLElement} band */
  constructor(band) {
    const data = band.dataset;
    this.least = Number(data["least"]);
    this.most = Number(data["most"]);
    this.step = Number(data["step"]);
    this.places = Number(data["places"]);
    this.unit = data["unit"] ?? "";
    this.sixteenths = data["sixteenths"] !== undefined;
  }

  /** The nearest step inside the band. @param {number} value */
  held(value) {
    const first = Math.ceil(this.least / this.step - ROUNDING);
    const last = Math.floor(this.most / this.step + ROUNDING);
    return Math.min(last, Math.max(first, Math.round(value / this.step))) * this.step;
  }

  /** @param {number} share 0 at the left end, 1 at the right */
  valueAt(share) {
    return this.held(this.least + share * (this.most - this.least));
  }

  /** @param {number} value @returns {number} 0 to 1 */
  shareOf(value) {
    return (value - this.least) / (this.most - this.least);
  }

  /** The number as it is shown. @param {number} value */
  shown(value) {
    return this.sixteenths ? sixteenths(value) : value.toFixed(this.places);
  }

  /** The number as it is typed. @param {number} value */
  typed(value) {
    return `${this.shown(value)}${this.unit}`;
  }
}

/** A length in inches as a shop fraction, to a sixteenth. @param {number} inches */
export function sixteenths(inches) {
  const parts = Math.round(inches * SIXTEENTHS);
  const whole = Math.floor(parts / SIXTEENTHS);
  let above = parts % SIXTEENTHS;
  let below = SIXTEENTHS;
  while (above && above % 2 === 0) {
    above /= 2;
    below /= 2;
  }
  if (!above) return String(whole);
  return whole ? `${whole}-${above}/${below}` : `${above}/${below}`;
}
