// @ts-check
/* Tabs of the app tell each other that what is kept was changed. */

const NAME = "beadwright kept";

/** @returns {BroadcastChannel | null} */
function open() {
  try {
    return new BroadcastChannel(NAME);
  } catch {
    return null; // an old browser, or one that stores nothing: the store is read again at the next load
  }
}

const channel = open();

/** What is kept was changed here. */
export function tellTabs() {
  channel?.postMessage("");
}

/** What is kept was changed in another tab. @param {() => void} heard */
export function onOtherTab(heard) {
  channel?.addEventListener("message", heard);
}
