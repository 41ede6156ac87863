// @ts-check
/**
 * Ask the browser not to clear what the welder saved. Call it on the first save, from the tap
 * itself: some browsers ask the user, and nobody should be asked without a reason to be seen.
 * @returns {Promise<boolean | null>} kept for good, not promised, or null where it cannot be asked
 */
export async function askToKeep() {
  const storage = navigator.storage; // absent in some engines
  if (!storage?.persist || !storage.persisted) return null;
  return (await storage.persisted()) || storage.persist();
}
