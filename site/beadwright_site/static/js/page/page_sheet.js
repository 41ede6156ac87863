// @ts-check
/* The sheet of further pages: a tap beside it or Escape shuts it. */

/** @param {Event} event */
function shut(event) {
  for (const sheet of document.querySelectorAll("details[data-more][open]")) {
    if (event.type === "keydown" || !(event.target instanceof Node && sheet.contains(event.target))) {
      sheet.removeAttribute("open");
    }
  }
}

document.addEventListener("click", shut);
document.addEventListener("keydown", (event) => {
  if (event.key === "Escape") shut(event);
});
