// @ts-check
/**
 * @typedef {Event & {prompt(): Promise<void>}} InstallPrompt
 * @typedef {{text: string, install: (() => Promise<void>) | null}} InstallHint
 */

/** @type {InstallPrompt | null} */
let offered = null;
const changed = new EventTarget();

addEventListener("beforeinstallprompt", (event) => {
  event.preventDefault(); // shown in the panel, when asked for, not over the numbers
  offered = /** @type {InstallPrompt} */ (event);
  changed.dispatchEvent(new Event("change"));
});
addEventListener("appinstalled", () => {
  offered = null;
  changed.dispatchEvent(new Event("change"));
});

/** @param {() => void} listener @param {AbortSignal} signal */
export const onInstallChange = (listener, signal) =>
  changed.addEventListener("change", listener, { signal });

const standsAlone = () =>
  matchMedia("(display-mode: standalone)").matches ||
  /** @type {{standalone?: boolean}} */ (navigator).standalone === true;

// Tablets of the same make call themselves a desktop computer, but have touch points.
const handHeldWithShareSheet = () =>
  /iPhone|iPad|iPod/.test(navigator.userAgent) ||
  (/Macintosh/.test(navigator.userAgent) && navigator.maxTouchPoints > 1);

/** How to put the app on the home screen, or null when it is there. @returns {InstallHint | null} */
export function installHint() {
  if (standsAlone()) return null;
  if (offered) {
    const prompt = offered;
    return { text: "Put it on the home screen.", install: () => prompt.prompt() };
  }
  if (handHeldWithShareSheet()) {
    return {
      text: "Share, then Add to Home Screen. Open the icon once with signal: it keeps its own "
        + "files, apart from this tab.",
      install: null,
    };
  }
  return { text: "Browser menu, then Install or Add to home screen.", install: null };
}
