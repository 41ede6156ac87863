// @ts-check
const SAID_MS = 2_500; // long enough to read, short enough to tap again

/** Say something in an element for a moment; then what stood there stands there again.
 * @param {Element} element @param {string} text */
export function sayBriefly(element, text) {
  const before = element.textContent;
  element.textContent = text;
  setTimeout(() => {
    if (element.textContent === text) element.textContent = before;
  }, SAID_MS);
}
