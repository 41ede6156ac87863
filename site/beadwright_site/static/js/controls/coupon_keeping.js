// @ts-check
import { engine } from "../engine/engine.js";
import { coupons } from "../kept/coupons.js";
import { given } from "../kept/given.js";
import { kept } from "../kept/kept.js";
import { sayBriefly } from "./brief_word.js";

/** @import { BeadAnswer } from "../page/answer_page.js" */
/** @import { Coupon } from "../kept/coupons.js" */

/** Wire, size, gas, machine and hand that own numbers are of. @param {string} text */
const whose = (text) => text.split(",").filter((part, at) => at < 3 || /^(at|by)=/.test(part)).join(",");

/** Keeps the coupon at hand, takes one away and back, and puts what they taught to use. */
export class CouponKeeping {
  /** The coupon taken away last, until the next is kept. @type {Coupon | undefined} */
  #dropped;
  #busy = false;

  /** @param {BeadAnswer} page @param {AbortSignal} signal */
  constructor(page, signal) {
    this.page = page;
    if (page.page !== "coupons") return;
    page.addEventListener("click", (event) => this.#tapped(event), { signal });
    page.addEventListener("shown", () => this.#unhide(), { signal });
    this.#unhide();
  }

  get #own() {
    return this.page.querySelector("#learned")?.getAttribute("data-own") ?? "";
  }

  /** Own numbers of other wires and gases, as kept. */
  get #others() {
    const name = (/** @type {string} */ text) => text.split(",").slice(0, 3).join(",");
    const now = this.page.querySelector("#learned")?.getAttribute("data-way") ?? "";
    return (kept.now["own"] ?? "").split(";").filter((text) => text && name(text) !== now);
  }

  /** True if the numbers that count are of this wire, gas, machine and hand. */
  get #used() {
    const own = this.#own;
    return own !== "" && (kept.now["own"] ?? "").split(";").some((text) => whose(text) === whose(own));
  }

  #unhide() {
    for (const button of this.page.querySelectorAll(
      "[data-keep-coupon], [data-drop-coupon], [data-use-own]")) {
      if (button instanceof HTMLElement) button.hidden = false;
    }
    const use = this.page.querySelector("[data-use-own]");
    if (use) use.textContent = this.#used ? "Go back to print on every page" : "Use your numbers on every page";
  }

  /** @param {Event} event */
  #tapped({ target }) {
    const button = target instanceof Element ? target.closest("button") : null;
    if (!button || this.#busy) return;
    const { keepCoupon, dropCoupon, useOwn, backCoupon } = button.dataset;
    if (keepCoupon !== undefined) void this.#once(() => this.#keep());
    if (dropCoupon) void this.#once(() => this.#drop(dropCoupon));
    if (backCoupon !== undefined) void this.#once(() => this.#back());
    if (useOwn !== undefined) void this.#once(() => this.#use(!this.#used));
  }

  /** @param {() => Promise<unknown>} act */
  async #once(act) {
    this.#busy = true;
    try {
      await act();
    } catch {
      this.#say("Not kept: this browser stores nothing, or the phone is full");
    } finally {
      this.#busy = false;
    }
  }

  /** @param {string} text */
  #say(text) {
    const state = this.page.querySelector("#state");
    if (state) sayBriefly(state, text);
  }

  async #keep() {
    const query = this.page.form.query();
    if (!(await this.page.ask(query))) return;
    const { kept: names, ...asked } = {
      query: this.page.query, kept: await given("coupons"),
      key: crypto.randomUUID(), made: new Date().toISOString(),
    };
    const answer = await engine.call("coupon", { ...asked, page: "coupons", kept: names });
    if (!answer.ok) return void this.#say(Object.values(answer.errors).flat().join(" "));
    await coupons.keep(answer.record);
    this.#dropped = undefined;
    const { machine, welder } = answer.record;
    await kept.keep({ machine, welder }); // who welds on what stands for the next one
    await this.#again(this.#without(this.page.query));
    this.#say("Kept on this phone");
  }

  /** The next coupon starts with the same joint, machine and welder. @param {string} query */
  #without(query) {
    const measured = new Set(this.page.dataset["measured"]?.split(" "));
    const entries = [...new URLSearchParams(query)].filter(([key]) => !measured.has(key));
    return new URLSearchParams(entries).toString();
  }

  /** @param {string} key */
  async #drop(key) {
    this.#dropped = await coupons.drop(key);
    await this.#again(this.page.query);
    const back = document.createElement("button");
    back.type = "button";
    back.className = "plain";
    back.dataset["backCoupon"] = "";
    back.textContent = "Put the coupon back";
    this.page.querySelector("#log")?.append(back);
  }

  async #back() {
    if (this.#dropped) await coupons.keep(this.#dropped);
    this.#dropped = undefined;
    await this.#again(this.page.query);
  }

  /** Ask anew; numbers in use follow what the coupons say now. @param {string} query */
  async #again(query) {
    const used = this.#used;
    await this.page.ask(query);
    if (used) await this.#use(true);
  }

  /** @param {boolean} on */
  async #use(on) {
    const all = on && this.#own ? [...this.#others, this.#own] : this.#others;
    await kept.keep({ own: all.join(";") });
    this.#unhide();
    this.#say(on ? "Your numbers count on every page" : "Every page is as published");
  }
}
