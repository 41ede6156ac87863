// @ts-check
/* One step more or less of a length: 1/16 in, 1 mm, one gauge. */
const NUMBER = /^(?:(\d+)[ -])?(\d+)\/(\d+)$|^(\d*[.,]?\d+)$/;
const LENGTH = /([.,]?\d[\d /.,-]*?)\s*(in|mm|ga|")?$/;
const SIXTEENTHS = 16;

/** @param {string} text as typed @returns {number | null} */
function numberOf(text) {
  const found = NUMBER.exec(text.trim());
  if (!found) return null;
  const [, whole, over, under, decimal] = found;
  return decimal ? Number(decimal.replace(",", ".")) : Number(whole ?? 0) + Number(over) / Number(under);
}

/** What a field holds, or what its blank means. @param {HTMLInputElement} field */
function held(field) {
  const unit = field.dataset["unit"] ?? "in";
  const text = field.value.trim() || field.placeholder;
  const found = LENGTH.exec(text);
  if (!found) return { number: field.value.trim() ? null : 0, unit };
  return { number: numberOf(found[1] ?? ""), unit: (found[2] ?? unit).replace("\"", "in") };
}

/** @param {number} count of sixteenths of an inch @returns {string} */
function inches(count) {
  const whole = Math.floor(count / SIXTEENTHS);
  let over = count % SIXTEENTHS;
  let under = SIXTEENTHS;
  while (over && over % 2 === 0) [over, under] = [over / 2, under / 2];
  const part = over ? `${over}/${under}` : "";
  return `${[whole || "", part].filter(Boolean).join("-")}in`;
}

/** @param {HTMLInputElement} field @returns {string} how long a step is */
export function stepLabel(field) {
  const { unit } = held(field);
  return unit === "in" ? "1/16" : `1 ${unit}`;
}

/** What the field holds after a step; as it is where it cannot be read or nothing would be left.
 * @param {HTMLInputElement} field @param {1 | -1} way 1: more, -1: less @returns {string} */
export function stepped(field, way) {
  const { number, unit } = held(field);
  if (number === null) return field.value;
  const along = unit === "ga" ? -way : way; // a higher gauge is a thinner sheet
  const count = unit === "in" ? number * SIXTEENTHS : number;
  const next = along > 0 ? Math.floor(count + 1e-6) + 1 : Math.ceil(count - 1e-6) - 1;
  if (next < 1) return field.value;
  return unit === "in" ? inches(next) : `${next}${unit}`;
}
