// @ts-check
/* The beat to travel by: when each tick comes, and when the bead ends. */

const LEAST_BETWEEN_S = 0.45; // about two a second: faster is not followed

/** The length from tick to tick: the first of the steps that is not too fast, else the longest.
 * @param {number} travel mm/s @param {readonly number[]} steps mm, short to long @returns {number} */
export const stepFor = (travel, steps) =>
  steps.find((step) => step / travel >= LEAST_BETWEEN_S) ?? /** @type {number} */ (steps.at(-1));

/**
 * Seconds from the bead's start to each tick, and to its end; the end's tone takes a tick's place.
 * @param {number} travel mm/s @param {number} length mm @param {number} step mm
 * @returns {{ticks: number[], end: number}}
 */
export function beatOf(travel, length, step) {
  const end = length / travel;
  const between = step / travel;
  const ticks = [];
  for (let count = 1; count * between < end - between / 4; count++) ticks.push(count * between);
  return { ticks, end };
}
