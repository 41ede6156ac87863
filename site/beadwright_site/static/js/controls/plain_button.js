// @ts-check
/** A button as the templates write one, told by its data attribute.
 * @param {string} text @param {string} what name of the attribute, as `weldBack`
 * @param {string} [value] */
export function plainButton(text, what, value = "") {
  const button = document.createElement("button");
  button.type = "button";
  button.className = "plain";
  button.dataset[what] = value;
  button.textContent = text;
  return button;
}
