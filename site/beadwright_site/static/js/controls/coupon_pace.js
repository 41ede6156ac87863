// @ts-check
import { beatOf, stepFor } from "../sound/pace.js";
import { PacePlayer } from "../sound/pace_player.js";

/** @import { BeadAnswer } from "../page/answer_page.js" */

/** A beat at the planned travel, bead after bead; it starts with the arc, heard or tapped. */
export class CouponPace {
  #player = new PacePlayer();
  #bead = 0;
  on = false;

  /** @param {BeadAnswer} page @param {HTMLElement} box @param {() => void} changed */
  constructor(page, box, changed) {
    this.page = page;
    this.box = box;
    this.changed = changed;
  }

  /** What is planned now: mm/s of each bead, mm to weld, mm from tick to tick. */
  get #plan() {
    const data = document.getElementById("learned")?.dataset ?? {};
    const numbers = (/** @type {string} */ name) => (data[name] ?? "").split(" ").filter(Boolean).map(Number);
    const names = (data["stepNames"] ?? "").split(",");
    return { travels: numbers("beads"), length: Number(data["length"]), steps: numbers("steps"), names };
  }

  /** @param {number} passed seconds the arc burns already, or -1 */
  async toggle(passed) {
    if (this.on) return this.off();
    this.on = true;
    this.#bead = 0;
    await this.#player.open(); // now: it is a tap
    this.#say();
    if (passed >= 0) this.begin(passed);
    this.changed();
  }

  off() {
    this.on = false;
    this.#player.close();
    this.#say();
    this.changed();
  }

  /** The arc is on. @param {number} passed seconds since */
  begin(passed) {
    if (!this.on) return;
    const { travels, length, steps } = this.#plan;
    const travel = travels[this.#bead];
    if (!travel || !length) return;
    this.#player.play(beatOf(travel, length, stepFor(travel, steps)), passed, () => this.#ended());
    this.#say();
  }

  /** The arc is off. */
  hush() {
    this.#player.hush();
  }

  /** A bead is welded. */
  next() {
    if (!this.on) return;
    const { travels } = this.#plan;
    this.#bead = (this.#bead + 1) % Math.max(1, travels.length);
    this.#say();
  }

  #ended() {
    this.#tell("End of the bead");
  }

  /** @param {string} text */
  #tell(text) {
    const said = this.box.querySelector("[data-paced]");
    if (said) said.textContent = text;
  }

  #say() {
    const button = this.box.querySelector("[data-pace]");
    if (button) button.textContent = this.on ? "Beat off" : "Beat to travel by";
    const { travels, steps, names } = this.#plan;
    const travel = travels[this.#bead];
    if (!this.on) return this.#tell("");
    if (!travel) return this.#tell("No travel is planned here: see Dial in.");
    const step = names[steps.indexOf(stepFor(travel, steps))];
    const which = travels.length > 1 ? `Bead ${this.#bead + 1} of ${travels.length}: a` : "A";
    this.#tell(`${which} tick each ${step}, another tone at the end. It starts with the arc or your tap.`);
  }
}
