// @ts-check
/* The rate of short circuits, read from the pops of an arc. */
import { BIN_S } from "./arc_ear.js";
import { quantile, spread } from "./sound_measures.js";

const LEAST_S = 1;
const REST_BINS = 6; // 3 ms: no two shorts come closer
const OVER_MEDIAN = 4; // a pop's energy over the hiss between
const LEAST_RATE = 15;
const MOST_RATE = 250; // beyond it pops cannot be told apart

/** @typedef {{low: number, high: number}} Band */
/**
 * @typedef {{rate: Band, spread: Band}} ShortRate
 * Shorts a second, and how unevenly they come: the spread of the time between two over its mean.
 * Each as the band the true one stands in.
 */

/** @param {number} middle @param {number} off share of it @returns {Band} */
const band = (middle, off) => ({ low: middle * (1 - off), high: middle * (1 + off) });

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
  const uneven = spread(gaps);
  // How far so many, so uneven, may stand from the true figure; and a tenth for pops that merge.
  const off = (/** @type {number} */ share) => (1.96 * share) / Math.sqrt(gaps.length) + 0.1;
  return { rate: band(rate, off(uneven)), spread: band(uneven, off(Math.sqrt(0.5 + uneven ** 2))) };
}
