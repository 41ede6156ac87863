// @ts-check
import { Fault } from "./fault.js";

/** The service worker's script, at the app's root. */
export const SCRIPT = new URL("../../../sw.js", import.meta.url);

/** @template T @param {number} ms @param {Promise<T>} work @returns {Promise<T>} */
export function within(ms, work) {
  return new Promise((resolve, reject) => {
    const timer = setTimeout(() => reject(new Fault("slow")), ms);
    work.then(resolve, reject).finally(() => clearTimeout(timer));
  });
}

/**
 * Why the browser would not take the worker's script: it says little, so look at what comes.
 * @returns {Promise<string | null>} a fault's kind, or null if a script comes as it should
 */
export async function whatAnswers() {
  try {
    const response = await fetch(SCRIPT, { cache: "no-store" });
    const type = response.headers.get("content-type") ?? "";
    if (response.ok && type.includes("javascript")) return null;
    if (response.ok) return type.startsWith("text/html") ? "portal" : "mistyped";
    return response.status < 500 ? "missing" : "server";
  } catch {
    return "unreachable";
  }
}
