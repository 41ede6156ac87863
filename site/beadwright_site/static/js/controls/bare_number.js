// @ts-check
/* A number without a unit is in the page's own units. The core tells one by the same rules, in
 * `units.is_bare_number`; tests/bare_numbers.json holds both to them. */

const LONGEST_TEXT = 40; // no quantity is longer, and none longer is read

/** @type {{[sign: string]: string}} */
const FRACTIONS = {
  "¼": "1/4", "½": "1/2", "¾": "3/4", "⅛": "1/8", "⅜": "3/8", "⅝": "5/8", "⅞": "7/8",
  "⅓": "1/3", "⅔": "2/3",
};
// Before or behind a price; it is no unit.
const CURRENCY = /^\s*(?:[$€£¥₹]|[A-Z]{3}\b)\s*|\s*[$€£¥₹]\s*(?=\/|$)/g;
// 1,200 may be 1.2 or 1200: it is not read as a number.
const THOUSANDS = /^[+-]?[1-9]\d{0,2},\d{3}(?!\d)/;
const MIXED = /^[+-]?(?:\d{1,9}[ -]\d{1,6}|\d{1,9})\/(?!0+$)\d{1,6}$/; // 1 1/4, 1-1/4, 3/8
const DECIMAL = /^[+-]?(?=\.?\d)\d{0,9}\.?\d{0,30}$/; // 0.375, .375, 9.

/** Fold what phones and people type into plain characters. @param {string} text */
function plain(text) {
  return text
    .replace(/[¼½¾⅛⅜⅝⅞⅓⅔]/g, (sign) => ` ${FRACTIONS[sign]}`)
    .replace(/[‐‑‒–—−]/g, "-")
    .replaceAll("⁄", "/")
    .replace(/\s+/g, " ")
    .trim()
    .replace(/ ?([-/]) ?/g, "$1");
}

/** @param {string} text as typed */
export function isBareNumber(text) {
  const number = plain(text.replace(CURRENCY, ""));
  if (text.length > LONGEST_TEXT || THOUSANDS.test(number)) return false;
  const decimal = number.includes(".") ? number : number.replace(/^([^,]*),([^,]*)$/, "$1.$2");
  return MIXED.test(decimal) || DECIMAL.test(decimal);
}

/** What a field asks, with its unit: it then means the same whatever units a page shows.
 * @param {HTMLInputElement} field @returns {string} */
export function withUnit(field) {
  const text = field.value.trim();
  const unit = field.dataset["unit"];
  return field.type === "text" && unit && isBareNumber(text) ? text + unit : text;
}
