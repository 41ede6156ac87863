// @ts-check
/**
 * Show what could not be taken where it was typed: on the setting's own row, or in the form.
 * @param {HTMLElement} page @param {{[key: string]: string[]}} errors
 */
export function showRefusals(page, errors) {
  let inForm = Object.keys(errors).length === 0;
  for (const [key, messages] of Object.entries(errors)) {
    const row = page.querySelector(`.set[data-key="${CSS.escape(key)}"]`);
    const word = row?.querySelector(".word");
    if (row && word) {
      row.classList.add("out");
      word.textContent = messages.join(" ");
    } else inForm = true;
  }
  if (inForm) page.querySelector("#change")?.setAttribute("open", "");
  for (const fold of page.querySelectorAll("details.fold:has(.wrong)")) {
    fold.setAttribute("open", "");
  }
}
