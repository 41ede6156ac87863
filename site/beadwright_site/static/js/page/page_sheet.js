// @ts-check
/* The sheet of further pages: a tap beside it, on a button in it, or Escape shuts it. */

/** @param {Event} event */
function shut({ type, target }) {
  for (const sheet of document.querySelectorAll("details[data-more][open]")) {
    const inside = target instanceof Element && sheet.contains(target) && !target.closest("button");
    if (type === "keydown" || !inside) sheet.removeAttribute("open");
  }
}

document.addEventListener("click", shut);
document.addEventListener("keydown", (event) => {
  if (event.key === "Escape") shut(event);
});
