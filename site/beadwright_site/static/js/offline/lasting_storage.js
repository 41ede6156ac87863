// @ts-check
const ASKED = "beadwright asked to keep"; // where it was opened when the browser was last asked

/**
 * Ask the browser not to clear what the welder saved. Call it once something was: some browsers ask
 * the user, and nobody should be asked without a reason to be seen. It asks once; and once more when
 * the app stands on the home screen, since browsers then promise what they did not before.
 */
export async function askToKeep() {
  const storage = navigator.storage; // absent in some engines
  if (!storage?.persist || !storage.persisted || await storage.persisted()) return;
  const where = matchMedia("(display-mode: standalone)").matches ? "home screen" : "tab";
  if (localStorage.getItem(ASKED) === where) return;
  localStorage.setItem(ASKED, where);
  await storage.persist();
}
