// @ts-check
/* The rate of short circuits, read from the pops of an arc. */
import { BIN_S } from "./arc_ear.js";
import { meanOf, quantile, spread } from "./sound_measures.js";

const LEAST_S = 1;
const REST_BINS = 6; // 3 ms: no two shorts come closer
const OVER_MEDIAN = 4; // a pop's energy over the hiss between
const LEAST_RATE = 15;
const MOST_RATE = 250; // beyond it pops cannot be told apart

/**
 * @typedef {{rate: number, low: number, high: number, steady: number}} ShortRate
 * `rate` a second, the band it was found in, and how evenly they come: spread of the time between
 * two over its mean.
 */

/**
 * Return what was found, or null where the sound is too poor to say.
 * @param {number[]} bins energies of half a millisecond while the arc burned
 * @returns {ShortRate | null}
 */
export function shortRate(bins) {
  const lasted = bins.length * BIN_S;
  if (lasted < LEAST_S) return null;
  const hiss = quantile(bins, 0.5);
  /** @type {number[]} */
  const pops = [];
  let last = -REST_BINS;
  for (const [at, energy] of bins.entries()) {
    const peak = energy > OVER_MEDIAN * hiss && energy >= (bins[at - 1] ?? 0)
      && energy >= (bins[at + 1] ?? 0);
    if (!peak || at - last < REST_BINS) continue;
    pops.push(at);
    last = at;
  }
  const rate = pops.length / lasted;
  if (rate < LEAST_RATE || rate > MOST_RATE) return null;
  const gaps = pops.slice(1).map((at, number) => (at - /** @type {number} */ (pops[number])) * BIN_S);
  const steady = spread(gaps);
  // How far so many, so uneven, may stand from the true rate; and a tenth for pops that merge.
  const off = (1.96 * steady) / Math.sqrt(gaps.length) + 0.1;
  return { rate, low: rate * (1 - off), high: rate * (1 + off), steady: meanOf([steady]) };
}
