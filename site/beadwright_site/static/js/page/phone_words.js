// @ts-check
import { Fault } from "../offline/fault.js";
import { longWord, shortWord } from "../offline/fault_words.js";

/** @import { KeepState } from "../offline/offline.js" */
/** @import { UpdateState } from "../offline/updates.js" */
/** @typedef {{state: string, detail: number | Fault | null}} EngineState */
/** @typedef {"plain" | "ok" | "accent" | "stop"} Tone */

/** Faults of files that the host no longer has. */
const REPLACED = new Set(["changed", "missing", "incomplete"]);

/**
 * The word in the header: what matters most right now.
 * @param {KeepState} keep @param {UpdateState} update @param {EngineState} engine
 * @returns {{text: string, tone: Tone}}
 */
export function wordOf(keep, update, engine) {
  const fault = engine.state === "failed" && engine.detail instanceof Fault ? engine.detail : null;
  if (update.kind === "taking") return { text: "updating…", tone: "accent" };
  if (fault && keep.kind !== "fetching") return { text: `stopped: ${shortWord(fault)}`, tone: "stop" };
  if (update.kind === "ready") return { text: "update ready", tone: "accent" };
  if (keep.kind === "ready") return { text: "works offline", tone: "ok" };
  if (keep.kind === "fetching") return { text: `getting ready ${keep.percent} %`, tone: "plain" };
  if (keep.kind === "none" && keep.fault) {
    return { text: `no offline: ${shortWord(keep.fault)}`, tone: "stop" };
  }
  return { text: "checking…", tone: "plain" };
}

/**
 * What the panel says, and the notice over the page when the numbers do not follow.
 * @param {KeepState} keep @param {UpdateState} update @param {EngineState} engine
 * @returns {{text: string, numbers: string, notice: string, small: string}}
 */
export function storyOf(keep, update, engine) {
  // Where a whole newer release waits, that one mends it: no other button helps.
  /** @param {Fault} one */
  const told = (one) => (update.kind === "ready" && REPLACED.has(one.kind)
    ? "A file of the release in use cannot be had any more. Tap Update." : longWord(one));
  const fault = engine.detail instanceof Fault ? engine.detail : null;
  const texts = {
    checking: "Looking at what is stored.",
    fetching: `Storing the app: ${keep.percent} %. Stay where there is signal.`,
    ready: `Works offline. All ${keep.about?.files ?? ""} files are stored and checked.`,
    none: keep.fault ? told(keep.fault) : "",
  };
  const numbers = {
    idle: "not started", fetching: "waiting for files", starting: "starting", ready: "running",
    failed: fault ? shortWord(fault) : "stopped",
  }[engine.state] ?? engine.state;
  const faults = [keep.fault, fault].filter((one) => one !== null);
  return {
    text: texts[keep.kind],
    numbers,
    notice: fault ? told(fault) : "",
    small: [...new Set(faults.map((one) => one.message))].join(" · "),
  };
}

/** @param {UpdateState} update */
export function updateStory(update) {
  const fault = update.fault ? longWord(update.fault) : "";
  return {
    none: "",
    checking: "Looking for an update…",
    current: "This is the newest release.",
    coming: `Storing an update: ${update.percent} %. Go on working.`,
    ready: `Version ${update.about?.version ?? ""}, release ${update.about?.id ?? ""}, is stored `
      + "and checked. It takes over when you tap Update; your job stays.",
    taking: "Handing over…",
    failed: `The update did not come through. ${fault}`,
  }[update.kind];
}
