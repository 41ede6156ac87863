// @ts-check
/** A query as a person would write it: slashes stay slashes.
 * @param {Iterable<string[]>} entries pairs of key and text @returns {string} */
export const queryText = (entries) => [...entries]
  .map(([key, text = ""]) => `${key}=${encodeURIComponent(text).replaceAll("%2F", "/")
    .replaceAll("%20", "+")}`)
  .join("&");
