// @ts-check
/** What was typed for another mix goes when a usual one is tapped.
 * @param {Event} event */
function tapped({ target }) {
  if (!(target instanceof HTMLInputElement) || target.type !== "radio" || !target.form) return;
  const line = target.form.querySelector(`[data-other="${CSS.escape(target.name)}"]`);
  if (line instanceof HTMLInputElement) line.value = "";
}

// Before any page reads its form.
document.addEventListener("change", tapped, { capture: true });
