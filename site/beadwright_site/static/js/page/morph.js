// @ts-check
import { morphElements } from "../../vendor/turbo.es2017-esm.js";
import { partHtml } from "../offline/trusted.js";

/** HTML each part was last given, to pass over what is the same. @type {WeakMap<Element, string>} */
const lastHtml = new WeakMap();

/** What the welder has in hand is left alone: the band being dragged, the number being typed, the
 * row of keys standing in the form. @param {Node} node */
function inHand(node) {
  if (!(node instanceof Element)) return false;
  if (node.classList.contains("keys")) return true;
  return (node.classList.contains("band") && node.closest("[data-dragging]") !== null)
    || (node.classList.contains("number") && node.closest("[data-typing]") !== null);
}

/** Attributes set by the welder or from here, never by an answer. */
const OURS = new Set(["open", "inputmode", "data-dragging", "data-typing"]);
addEventListener("turbo:before-morph-attribute", (event) => {
  const { attributeName } = /** @type {CustomEvent} */ (event).detail;
  if (OURS.has(attributeName)) event.preventDefault();
});

/** Whether two trees have the same elements in the same places, so that only attributes and words
 * can differ. @param {Node} ours @param {Node} theirs @returns {boolean} */
function sameShape(ours, theirs) {
  return ours.isEqualNode(theirs)
    || (ours.nodeName === theirs.nodeName && ours.childNodes.length === theirs.childNodes.length
      && [...ours.childNodes].every((node, i) => sameShape(node, /** @type {Node} */ (theirs.childNodes[i]))));
}

/** Give a tree the attributes and words of another of the same shape.
 * @param {Node} ours @param {Node} theirs */
function copyDifferences(ours, theirs) {
  if (ours.isEqualNode(theirs)) return;
  if (!(ours instanceof Element && theirs instanceof Element)) {
    ours.nodeValue = theirs.nodeValue;
    return;
  }
  for (const { name, value } of theirs.attributes) {
    if (ours.getAttribute(name) !== value) ours.setAttribute(name, value);
  }
  for (const { name } of [...ours.attributes]) {
    if (!theirs.hasAttribute(name)) ours.removeAttribute(name);
  }
  ours.childNodes.forEach((node, i) => copyDifferences(node, /** @type {Node} */ (theirs.childNodes[i])));
}

/**
 * A part that holds no entry. If it has the same shape as before, only what differs is changed;
 * else it is put in whole, since matching a hundred beads with others takes too long. Focus stays
 * with the control that has the same `data-place`.
 * @param {Element} current @param {Element} wanted
 */
function putWhole(current, wanted) {
  if (sameShape(current, wanted)) return copyDifferences(current, wanted);
  const active = document.activeElement;
  const place = active && current.contains(active) ? active.getAttribute("data-place") : null;
  current.replaceWith(wanted);
  const successor = place ? wanted.querySelector(`[data-place="${place}"]`) : null;
  if (successor instanceof HTMLElement) successor.focus({ preventScroll: true });
}

/**
 * Put new HTML in the place of the elements of the same ids; focus and what is typed stay.
 * @param {{[id: string]: string}} html outer HTML by element id
 * @param {{live?: boolean}} [how] `live`: skip parts whose HTML is the same as last time
 */
export function put(html, { live = false } = {}) {
  for (const [id, outer] of Object.entries(html)) {
    const current = document.getElementById(id);
    if (!current || (live && lastHtml.get(current) === outer)) continue;
    const template = document.createElement("template");
    template.innerHTML = partHtml(outer);
    const wanted = template.content.firstElementChild;
    if (!wanted) continue;
    if (wanted.hasAttribute("data-whole")) {
      putWhole(current, wanted);
      continue;
    }
    morphElements(current, wanted, {
      // For a field being typed in. On anything else it would leave out all that is inside.
      ignoreActiveValue: document.activeElement instanceof HTMLInputElement
        || document.activeElement instanceof HTMLTextAreaElement,
      callbacks: { beforeNodeMorphed: (/** @type {Node} */ node) => !inHand(node) },
    });
    const now = document.getElementById(id);
    if (now) lastHtml.set(now, outer);
  }
}
