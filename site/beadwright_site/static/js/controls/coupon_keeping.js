// @ts-check
import { engine } from "../engine/engine.js";
import { coupons, newKey } from "../kept/coupons.js";
import { countsCoupons, given } from "../kept/given.js";
import { kept } from "../kept/kept.js";
import { unreadWords, why } from "../kept/kept_words.js";
import { sayBriefly } from "./brief_word.js";
import { tell, tellNotKept, untell } from "./kept_notice.js";
import { plainButton } from "./plain_button.js";

/** @import { BeadAnswer } from "../page/answer_page.js" */
/** @import { Coupon } from "../kept/coupons.js" */

/** Wire, size, gas, machine and hand that own numbers are of. @param {string} text */
const whose = (text) => text.split(",").filter((part, at) => at < 3 || /^(at|by)=/.test(part)).join(",");

const TYPED = "What you typed stays on this screen and in its address.";

/** Keeps the coupon at hand, takes one away and back, and puts what they taught to use. */
export class CouponKeeping {
  /** The coupon taken away last, until the next is kept. @type {Coupon | undefined} */
  #dropped;
  /** The coupon tried last: tried again, it is the same one. */
  #tried = { query: "", key: "" };

  /** @param {BeadAnswer} page @param {AbortSignal} signal */
  constructor(page, signal) {
    this.page = page;
    if (countsCoupons(page.page)) page.addEventListener("shown", () => this.#tellUnread(), { signal });
    if (page.page !== "coupons") return;
    page.addEventListener("click", (event) => this.#tapped(event), { signal });
    page.addEventListener("shown", () => this.#unhide(), { signal });
    this.#unhide();
  }

  /** Coupons that do not count since they cannot be read. */
  #tellUnread() {
    const log = this.page.querySelector("#log, #notes");
    if (coupons.fault) tell(log, "Kept coupons do not count now.", why(coupons.fault), "unread");
    else if (coupons.unread) tell(log, "Not all count.", unreadWords(coupons.unread, "coupon"), "unread");
    else untell(this.page, "unread");
  }

  get #own() {
    return this.page.querySelector("#learned")?.getAttribute("data-own") ?? "";
  }

  /** Own numbers of other wires and gases, as kept. @param {string} [own] */
  #others(own = kept.now["own"] ?? "") {
    const name = (/** @type {string} */ text) => text.split(",").slice(0, 3).join(",");
    const now = this.page.querySelector("#learned")?.getAttribute("data-way") ?? "";
    return own.split(";").filter((text) => text && name(text) !== now);
  }

  /** True if the numbers that count are of this wire, gas, machine and hand. */
  get #used() {
    const own = this.#own;
    return own !== "" && (kept.now["own"] ?? "").split(";").some((text) => whose(text) === whose(own));
  }

  #unhide() {
    for (const button of this.page.querySelectorAll(
      "[data-keep-coupon], [data-drop-coupon], [data-count-coupon], [data-use-own]")) {
      if (button instanceof HTMLElement) button.hidden = false;
    }
    const use = this.page.querySelector("[data-use-own]");
    if (use) use.textContent = this.#used ? "Go back to print on every page" : "Use your numbers on every page";
  }

  /** @param {Event} event */
  #tapped({ target }) {
    const button = target instanceof Element ? target.closest("button") : null;
    if (!button || this.page.acting) return;
    const { keepCoupon, dropCoupon, countCoupon, useOwn, backCoupon } = button.dataset;
    const log = this.page.querySelector("#log");
    const asItWas = "All is as it was.";
    if (keepCoupon !== undefined) void this.#once(() => this.#keep(), button.parentElement, TYPED);
    if (dropCoupon) void this.#once(() => this.#drop(dropCoupon), log, asItWas);
    if (countCoupon) void this.#once(() => this.#count(countCoupon), log, asItWas);
    if (backCoupon !== undefined) void this.#once(() => this.#back(), log, asItWas);
    if (useOwn !== undefined) void this.#once(() => this.#use(!this.#used), button.parentElement, asItWas);
  }

  /** @param {() => Promise<unknown>} act @param {Element | null} place @param {string} stays */
  async #once(act, place, stays) {
    this.page.acting = true;
    untell(this.page);
    try {
      await act();
    } catch (error) {
      tellNotKept(place, error, stays);
    } finally {
      this.page.acting = false;
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
    if (this.#tried.query !== this.page.query) this.#tried = { query: this.page.query, key: newKey() };
    const answer = await engine.call("coupon", {
      ...this.#tried, page: "coupons", kept: await given("coupons"), made: new Date().toISOString(),
    });
    if (!answer.ok) return void this.#say(Object.values(answer.errors).flat().join(" "));
    const { machine, welder } = answer.record; // who welds on what stands for the next one
    await kept.keep({ machine, welder }, { rows: [[coupons.name(answer.record), answer.record]] });
    this.#dropped = undefined;
    this.#tried = { query: "", key: "" };
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
    this.page.querySelector("#log")?.append(plainButton("Put the coupon back", "backCoupon"));
  }

  /** Have a coupon count that was set aside as odd: the same one, with what its welder says.
   * @param {string} key */
  async #count(key) {
    const held = (await coupons.all()).find((coupon) => coupon.key === key);
    if (!held) return;
    const query = new URLSearchParams(String(held["query"]));
    query.set("count_odd", "yes");
    const answer = await engine.call("coupon", {
      query: query.toString(), key, page: "coupons", kept: await given("coupons"), made: held["made"],
    });
    if (!answer.ok) return void this.#say(Object.values(answer.errors).flat().join(" "));
    await coupons.keep(answer.record);
    await this.#again(this.page.query);
    this.#say("It counts now");
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
    if (!used) return;
    await this.#use(true).catch((error) => tellNotKept(this.page.querySelector("#learned"), error,
      "On the other pages your numbers are as before this tap."));
  }

  /** @param {boolean} on */
  async #use(on) {
    const own = on ? this.#own : "";
    await kept.keep((now) => ({ own: [...this.#others(now["own"] ?? ""), own].filter(Boolean).join(";") }));
    this.#unhide();
    this.#say(on ? "Your numbers count on every page" : "Every page is as published");
  }
}
