// @ts-check
import { Fault } from "./fault.js";

/**
 * @typedef {{id: string, version: string, files: number, bytes: number, storedFiles: number,
 *   storedBytes: number, complete: boolean, dropped?: number}} About
 * @typedef {{done?: number, total?: number}} Progress
 */

const SILENCE_MS = 15_000; // the worker speaks every second while it works

/**
 * Ask the service worker for something and wait, as long as it keeps talking.
 * @param {ServiceWorker} worker
 * @param {"ABOUT" | "ENSURE" | "REPAIR" | "TAKE" | "CLAIM"} type
 * @param {(news: Progress) => void} [onNews]
 * @returns {Promise<About>} rejects with a Fault; "silent" if the browser stopped the worker
 */
export function ask(worker, type, onNews = () => {}) {
  return new Promise((resolve, reject) => {
    const { port1: ours, port2: theirs } = new MessageChannel();
    /** @param {() => void} settle */
    const end = (settle) => {
      clearTimeout(timer);
      ours.close();
      settle();
    };
    const silence = () => end(() => reject(new Fault("silent", type)));
    let timer = setTimeout(silence, SILENCE_MS);
    ours.onmessage = ({ data }) => {
      clearTimeout(timer);
      if (data.type === "done") end(() => resolve(data));
      else if (data.type === "failed") end(() => reject(new Fault(data.kind, data.url)));
      else {
        timer = setTimeout(silence, SILENCE_MS);
        onNews(data);
      }
    };
    worker.postMessage({ type }, [theirs]);
  });
}
