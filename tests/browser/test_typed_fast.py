"""Entries changed faster than a slow phone answers: none goes back to what it was."""

from urllib.parse import parse_qs, urlsplit

from playwright.sync_api import expect

from tests.browser.phone import READY_MS, RunningPhone

BEFORE_THE_REST = """
async () => {
  const page = document.querySelector("bead-answer");
  const entry = (key) => page.querySelector(`#job-form input[name="${key}"]`);
  const change = (key, text) => {
    entry(key).value = text;
    entry(key).dispatchEvent(new Event("change", { bubbles: true }));
  };
  const shown = () => new Promise((done) => page.addEventListener("shown", done, { once: true }));
  const frame = requestAnimationFrame;
  const held = [];
  globalThis.requestAnimationFrame = (call) => held.push(call);
  const first = shown();
  change("plate", "3/4in");
  await first;
  globalThis.requestAnimationFrame = frame;
  const next = shown();
  change("leg", "5/8in");
  for (const call of held) call(performance.now());
  await new Promise((done) => setTimeout(done));
  const between = entry("leg").value;
  await next;
  return [held.length, between];
}
"""


def test_an_entry_changed_before_the_rest_of_an_answer_stands_keeps_its_text(
    running: RunningPhone,
) -> None:
    """Passes puts its first screen a frame ahead of the rest, which holds the form."""
    page = running.page
    running.open("passes/?joint=tee&plate=1/2in&leg=3/8in")
    expect(page.locator("#state")).to_have_text("Your job", timeout=READY_MS)
    held, between = page.evaluate(BEFORE_THE_REST)
    assert held
    assert between == "5/8in"
    expect(page.locator("#state")).to_have_text("Your job", timeout=READY_MS)
    expect(page.locator("#job-form input[name='leg']")).to_have_value("5/8in")
    asked = parse_qs(urlsplit(page.url).query)
    assert (asked["plate"], asked["leg"]) == (["3/4in"], ["5/8in"])


WHILE_IT_READS = """
async ([kept, engines]) => {
  const { coupons } = await import(kept);
  const { engine } = await import(engines);
  const page = document.querySelector("bead-answer");
  const entry = (key) => page.querySelector(`#job-form input[name="${key}"]`);
  const change = (key, text) => {
    entry(key).value = text;
    entry(key).dispatchEvent(new Event("change", { bubbles: true }));
  };
  const post = Worker.prototype.postMessage;
  const asked = new Promise((done) => {
    Worker.prototype.postMessage = function (...message) { done(() => post.apply(this, message)); };
  });
  change("parts", "24");
  const send = await asked;
  Worker.prototype.postMessage = post;
  const text = coupons.text;
  const read = new Promise((done) => {
    coupons.text = () => new Promise((found) => done(() => found(text.call(coupons))));
  });
  change("shop_rate", "1/h");
  const go = await read;
  coupons.text = text;
  const answered = engine.call("page", { page: "cost", query: "", kept: {} });
  send();
  await answered;  // and so is what was asked before it
  await new Promise((done) => setTimeout(done));
  const between = entry("shop_rate").value;
  go();
  return between;
}
"""


def test_an_entry_changed_while_the_phone_reads_what_is_kept_keeps_its_text(
    running: RunningPhone,
) -> None:
    """The older answer comes in while the newer question waits for the kept coupons."""
    page = running.page
    running.open("cost/")
    running.expect_ready()
    kept, engine = (
        f"{running.url}static/js/{name}.js" for name in ("kept/coupons", "engine/engine")
    )
    assert page.evaluate(WHILE_IT_READS, [kept, engine]) == "1/h"
    page.wait_for_url("**shop_rate=1**", timeout=READY_MS)
    expect(page.locator("#job-form input[name='shop_rate']")).to_have_value("1/h")
    asked = parse_qs(urlsplit(page.url).query)
    assert (asked["parts"], asked["shop_rate"]) == (["24"], ["1/h"])


KEPT_ELSEWHERE = """
async (kept) => {
  const { kept: shelf } = await import(kept);
  const page = document.querySelector("bead-answer");
  const field = page.querySelector('#job-form input[name="plate"]');
  field.value = "5/8in";
  field.dispatchEvent(new Event("change", { bubbles: true }));
  shelf.dispatchEvent(new Event("news"));
}
"""


def test_what_another_tab_keeps_does_not_take_the_place_of_what_was_just_typed(
    running: RunningPhone,
) -> None:
    page = running.page
    running.open("?plate=3/8in&leg=1/4in")
    expect(page.locator("#state")).to_have_text("Your job", timeout=READY_MS)
    page.evaluate(KEPT_ELSEWHERE, f"{running.url}static/js/kept/kept.js")
    expect(page.locator("#job-form input[name='plate']")).to_have_value("5/8in")
    page.wait_for_url("**plate=5/8in**", timeout=READY_MS)
    expect(page.locator("#state")).to_have_text("Your job", timeout=READY_MS)
