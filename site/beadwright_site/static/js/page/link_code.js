// @ts-check
/* The code of a printed card: a QR code of the link that opens the same job again. */

/** Characters of a link a printed code can hold and a phone still reads at the bench. */
const LONGEST = 600;

/** A code's dark modules as one path. @param {{size: number, get: (x: number, y: number) => boolean}} code */
function path({ size, get }) {
  let drawn = "";
  for (let y = 0; y < size; y += 1) {
    for (let x = 0; x < size; x += 1) if (get(x, y)) drawn += `M${x} ${y}h1v1h-1z`;
  }
  return drawn;
}

class BeadCode extends HTMLElement {
  static observedAttributes = ["data-link"];

  connectedCallback() {
    void this.#draw();
  }

  attributeChangedCallback() {
    if (this.isConnected) void this.#draw();
  }

  /** The page's own address as it is served, with the card's query. */
  get link() {
    const url = new URL(location.href);
    url.hash = "";
    url.search = this.dataset["link"] ?? "";
    return url.href;
  }

  async #draw() {
    const folded = this.closest("details:not([open])");
    if (folded) return folded.addEventListener("toggle", () => void this.#draw(), { once: true });
    const { link } = this;
    if (link.length > LONGEST) {
      const told = document.createElement("p");
      told.textContent = "Too long for a code: share the link instead.";
      return this.replaceChildren(told);
    }
    const { correction, generate } = await import("../../vendor/lean-qr.js");
    if (link !== this.link) return; // asked anew meanwhile
    const { M } = correction;
    const code = generate(link, { minCorrectionLevel: M });
    const svg = document.createElementNS("http://www.w3.org/2000/svg", "svg");
    const quiet = 4;
    svg.setAttribute("viewBox", `${-quiet} ${-quiet} ${code.size + 2 * quiet} ${code.size + 2 * quiet}`);
    svg.setAttribute("role", "img");
    svg.setAttribute("aria-label", this.dataset["name"] ?? "Code that opens this card");
    svg.setAttribute("shape-rendering", "crispEdges");
    const dark = document.createElementNS("http://www.w3.org/2000/svg", "path");
    dark.setAttribute("d", path(code));
    svg.append(dark);
    this.replaceChildren(svg);
  }
}

customElements.define("bead-code", BeadCode);
