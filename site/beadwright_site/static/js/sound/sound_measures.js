// @ts-check
/* Measures of a row of energies. */

/** @param {number[]} values @returns {number} */
export const meanOf = (values) => values.reduce((sum, each) => sum + each, 0) / values.length;

/** @param {number[]} values @param {number} share 0 to 1 @returns {number} */
export function quantile(values, share) {
  const sorted = [...values].sort((one, other) => one - other);
  return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? -Infinity;
}

/** Standard deviation over the mean. @param {number[]} values @returns {number} */
export function spread(values) {
  const mean = meanOf(values);
  const squares = meanOf(values.map((each) => (each - mean) ** 2));
  return mean > 0 ? Math.sqrt(squares) / mean : 0;
}

const LEAST_LAG = 4; // 2 ms: 500 turns a second
const MOST_LAG = 100; // 50 ms: 20 a second

/**
 * How regularly energies come and go: the highest autocorrelation at 20 to 500 a second. One for a
 * machine's even turns, little for what comes by chance.
 * @param {number[]} bins energies of half a millisecond @returns {number}
 */
export function regularity(bins) {
  const roots = bins.map(Math.sqrt);
  const mean = meanOf(roots);
  const off = roots.map((each) => each - mean);
  const own = off.reduce((sum, each) => sum + each * each, 0);
  let most = 0;
  for (let lag = LEAST_LAG; lag <= Math.min(MOST_LAG, off.length / 2); lag++) {
    let sum = 0;
    for (let at = lag; at < off.length; at++) sum += /** @type {number} */ (off[at]) * /** @type {number} */ (off[at - lag]);
    // Fewer pairs at a longer lag: as if there were as many.
    most = Math.max(most, (sum / own) * (off.length / (off.length - lag)));
  }
  return own > 0 ? most : 1;
}
