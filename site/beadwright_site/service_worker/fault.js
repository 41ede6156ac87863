// @ts-check
/** Why a file was not stored. `kind` is one of the keys the page has words for. */
export class Fault extends Error {
  /** @param {string} kind @param {string} url @param {string} [detail] */
  constructor(kind, url, detail = "") {
    super(`${kind}: ${url} ${detail}`);
    this.kind = kind;
    this.url = url;
  }
}

/** @param {unknown} error @param {string} url @returns {Fault} */
export function asFault(error, url) {
  if (error instanceof Fault) return error;
  const name = error instanceof Error ? error.name : "";
  if (name === "QuotaExceededError") return new Fault("full", url);
  if (name === "SecurityError") return new Fault("blocked", url);
  if (name === "AbortError" || name === "TimeoutError") return new Fault("slow", url);
  if (error instanceof TypeError) return new Fault("unreachable", url, error.message);
  return new Fault("broken", url, String(error));
}
