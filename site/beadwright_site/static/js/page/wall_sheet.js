// @ts-check
/* The wall sheet: its three wires are worked out on the phone whenever one of them is changed. */
import { engine } from "../engine/engine.js";
import { kept } from "../kept/kept.js";
import { asFault } from "../offline/fault.js";
import { longWord } from "../offline/fault_words.js";
import { partHtml } from "../offline/trusted.js";

class BeadWall extends HTMLElement {
  connectedCallback() {
    this.addEventListener("change", () => this.#changed());
    this.addEventListener("submit", (event) => {
      event.preventDefault();
      this.#changed();
    });
    void this.#begin();
  }

  /** The sheet that came with the page stands unless the address or the shop says otherwise. */
  async #begin() {
    await kept.ready;
    const query = location.search.slice(1);
    if (query || Object.keys(kept.now).length > 0) await this.#show(query);
  }

  /** What stands in the form, as a query. */
  get #typed() {
    const entries = [...new FormData(this.querySelector("form") ?? undefined)];
    const typed = entries.map(([key, text]) => [key, String(text).trim()]);
    return new URLSearchParams(typed.filter(([, text]) => text)).toString();
  }

  #changed() {
    const query = this.#typed;
    history.replaceState(history.state, "", `?${query}`);
    void this.#show(query);
  }

  /** @param {string} query */
  async #show(query) {
    this.setAttribute("aria-busy", "true");
    const before = this.#typed;
    try {
      const { html } = await engine.call("wall", { query, kept: kept.now }, { latest: "wall" });
      if (this.#typed !== before) return; // typed on meanwhile: that must not be written over
      const at = this.contains(document.activeElement) ? document.activeElement : null;
      const name = at?.getAttribute("name");
      this.innerHTML = partHtml(html);
      const same = name ? this.querySelector(`[name="${name}"]`) : null;
      if (same instanceof HTMLElement) same.focus();
    } catch (error) {
      if (error instanceof Error && error.name === "AbortError") return; // asked anew meanwhile
      const told = this.querySelector("[data-wall-fault]");
      if (told instanceof HTMLElement) {
        told.textContent = longWord(asFault(error));
        told.hidden = false;
      }
    }
    this.removeAttribute("aria-busy");
  }
}

customElements.define("bead-wall", BeadWall);
