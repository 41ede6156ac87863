// @ts-check
import { morphElements } from "../../vendor/turbo.es2017-esm.js";

/** HTML each part was last given. @type {WeakMap<Element, string>} */
const given = new WeakMap();

/** What the welder has in hand is left alone: the band being dragged, the number being typed, the
 * row of keys standing in the form. @param {Node} node */
function inHand(node) {
  if (!(node instanceof Element)) return false;
  if (node.classList.contains("keys")) return true;
  return (node.classList.contains("band") && node.closest("[data-dragging]") !== null)
    || (node.classList.contains("number") && node.closest("[data-typing]") !== null);
}

const OURS = new Set(["open", "data-dragging", "data-typing"]);
addEventListener("turbo:before-morph-attribute", (event) => {
  const { attributeName } = /** @type {CustomEvent} */ (event).detail;
  if (OURS.has(attributeName)) event.preventDefault();
});

/** Of the same build, so that only attributes and words differ. What is equal is passed over.
 * @param {Node} ours @param {Node} theirs @returns {boolean} */
function alike(ours, theirs) {
  return ours.isEqualNode(theirs)
    || (ours.nodeName === theirs.nodeName && ours.childNodes.length === theirs.childNodes.length
      && [...ours.childNodes].every((node, i) => alike(node, /** @type {Node} */ (theirs.childNodes[i]))));
}

/** @param {Node} ours @param {Node} theirs of the same build */
function redress(ours, theirs) {
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
  ours.childNodes.forEach((node, i) => redress(node, /** @type {Node} */ (theirs.childNodes[i])));
}

/**
 * A part that holds no entry: of the same build as before, only what differs is changed; else it
 * is put in whole, for to match a hundred beads with others takes too long. Focus stays with the
 * control that holds the same place.
 * @param {Element} current @param {Element} wanted
 */
function putWhole(current, wanted) {
  if (alike(current, wanted)) return redress(current, wanted);
  const active = document.activeElement;
  const place = active && current.contains(active) ? active.getAttribute("data-place") : null;
  current.replaceWith(wanted);
  const heir = place ? wanted.querySelector(`[data-place="${place}"]`) : null;
  if (heir instanceof HTMLElement) heir.focus({ preventScroll: true });
}

/**
 * Put new HTML in the place of the elements of the same ids; focus and what is typed stay.
 * @param {{[id: string]: string}} html outer HTML by element id
 * @param {{live?: boolean}} [how] `live`: skip parts whose HTML is the same as last time
 */
export function put(html, { live = false } = {}) {
  for (const [id, outer] of Object.entries(html)) {
    const current = document.getElementById(id);
    if (!current || (live && given.get(current) === outer)) continue;
    const template = document.createElement("template");
    template.innerHTML = outer;
    const wanted = template.content.firstElementChild;
    if (!wanted) continue;
    if (wanted.hasAttribute("data-whole")) {
      putWhole(current, wanted);
      continue;
    }
    morphElements(current, wanted, {
      // For a field being typed in. On anything else it would leave out all that is inside.
      ignoreActiveValue: document.activeElement instanceof HTMLInputElement,
      callbacks: { beforeNodeMorphed: (/** @type {Node} */ node) => !inHand(node) },
    });
    const now = document.getElementById(id);
    if (now) given.set(now, outer);
  }
}
