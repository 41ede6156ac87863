// @ts-check
import { notKept, why } from "../kept/kept_words.js";
import { asFault } from "../offline/fault.js";

/** Say something right after an element; it stands until the next of its name, or untell.
 * @param {Element | null | undefined} place @param {string} head @param {string} text
 * @param {string} [name] */
export function tell(place, head, text, name = "kept") {
  if (!place?.parentElement) return;
  untell(place.parentElement, name);
  const told = document.createElement("p");
  told.className = "note stop";
  told.setAttribute("role", "alert");
  told.dataset["told"] = name;
  const first = document.createElement("b");
  first.textContent = head;
  told.append(first, ` ${text}`);
  place.after(told);
}

/** That something was not kept, why, and what to do. @param {Element | null | undefined} place
 * @param {unknown} error @param {string} stays what becomes of it meanwhile */
export function tellNotKept(place, error, stays) {
  const fault = asFault(error);
  tell(place, notKept(fault), `${why(fault)} ${stays}`);
  place?.nextElementSibling?.scrollIntoView({ block: "nearest" });
}

/** @param {Element} root @param {string} [name] */
export function untell(root, name = "kept") {
  for (const told of root.querySelectorAll(`[data-told="${name}"]`)) told.remove();
}
