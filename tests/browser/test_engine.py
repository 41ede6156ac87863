"""The worker behind the numbers: it crashes, starts again, and only the newest input counts."""

import re
import shutil
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest
from playwright.sync_api import Browser, BrowserContext, expect

from beadwright_build.release import write_release
from tests.browser.conftest import SIZE, MakeHost, MakePhone, MakeRelease
from tests.browser.host import Fault, Host
from tests.browser.phone import READY_MS, Phone, RunningPhone, new_phone

WORKER = "static/js/engine/worker.js"
SABOTAGE = b"""
addEventListener("message", (event) => {
  const text = event.data.payload ?? "";
  if (/never.{1,3}ends/.test(text)) for (;;);
  if (!text.includes("crashes")) return;
  event.stopImmediatePropagation();
  throw new Error("crashed");
});
"""
COUNT_ASKED = """
(text) => {
  globalThis.asked = 0;
  const post = Worker.prototype.postMessage;
  Worker.prototype.postMessage = function (message, ...more) {
    if (message.payload?.includes(text)) globalThis.asked += 1;
    return post.call(this, message, ...more);
  };
}
"""
ASK_ALL = """
async ([script, requests]) => {
  const { engine } = await import(script);
  const asked = requests.map(([action, payload, how]) => engine.call(action, payload, how)
    .then((answer) => (answer.ok === true ? "answered" : JSON.stringify(answer)), (e) => e.name));
  return Promise.all(asked);
}
"""


@pytest.fixture(scope="module")
def frail_host(shipped: Path, tmp_path_factory: pytest.TempPathFactory) -> Iterator[Host]:
    """A host of a release whose worker hangs or crashes on certain inputs."""
    site = tmp_path_factory.mktemp("frail") / "site"
    shutil.copytree(shipped, site)
    (site / WORKER).write_bytes(SABOTAGE + (site / WORKER).read_bytes())
    write_release(site)
    host = Host(site)
    host.start()
    yield host
    host.kill()


@pytest.fixture(scope="module")
def frail_context(chromium: Browser, frail_host: Host) -> Iterator[BrowserContext]:
    """A phone that has stored that release."""
    context = chromium.new_context(viewport=SIZE, has_touch=True)
    yield context
    context.close()


@pytest.fixture
def frail(frail_context: BrowserContext, frail_host: Host) -> Iterator[Phone]:
    """A new tab of that phone, its clock in the test's hand."""
    tab = new_phone(frail_context, frail_host.url)
    tab.page.clock.install()
    tab.open()
    tab.expect_ready()
    yield tab
    tab.page.close()


def ask_all(phone: Phone, *requests: list[Any]) -> list[str]:
    script = f"{phone.url}static/js/engine/engine.js"
    answers: list[str] = phone.page.evaluate(ASK_ALL, [script, list(requests)])
    return answers


def begin(phone: Phone, payload: str, latest: str) -> None:
    """Ask without waiting for the answer, which lands in ``window.answers``."""
    phone.page.evaluate(
        """
        async ([script, text, latest]) => {
          const { engine } = await import(script);
          window.answers ??= {};
          engine.call("check", { text }, { latest }).then(
            () => { window.answers[text] = "answered"; },
            (error) => { window.answers[text] = error.kind ?? error.name; });
        }
        """,
        [f"{phone.url}static/js/engine/engine.js", payload, latest],
    )


def answer_to(phone: Phone, payload: str) -> str | None:
    answer: str | None = phone.page.evaluate("(text) => window.answers?.[text] ?? null", payload)
    return answer


def wait_for_answer(phone: Phone, payload: str, wanted: str) -> None:
    for _ in range(READY_MS // 50):
        if answer_to(phone, payload) is not None:
            break
        phone.page.wait_for_timeout(50)
    assert answer_to(phone, payload) == wanted


def end_of_waiting(phone: Phone, payload: str) -> None:
    """Let the clock run until an answer, or the reason for none, has come."""
    for _ in range(240):
        if answer_to(phone, payload) is not None:
            return
        phone.page.clock.run_for(500)
        phone.page.wait_for_timeout(20)
    pytest.fail(f"nothing came of {payload}")


def test_only_the_newest_input_is_worked(running: RunningPhone) -> None:
    running.open()
    running.expect_ready()
    same = {"latest": "job"}
    answers = ask_all(running, *[["check", {"step": step}, same] for step in range(20)])
    assert answers == ["AbortError"] * 19 + ["answered"]


def test_a_dragging_finger_still_sees_answers(running: RunningPhone) -> None:
    running.open()
    running.expect_ready()
    live = {"latest": "job", "live": True}
    answers = ask_all(running, *[["check", {"step": step}, live] for step in range(20)])
    # The first already runs and lands; of those that wait only the last is left.
    assert answers == ["answered"] + ["AbortError"] * 18 + ["answered"]


def test_inputs_of_different_parts_do_not_push_each_other_out(running: RunningPhone) -> None:
    running.open()
    running.expect_ready()
    answers = ask_all(running, ["check", {}, {"latest": "one"}], ["check", {}, {"latest": "two"}])
    assert answers == ["answered", "answered"]


def test_what_is_asked_before_the_start_is_answered_after_it(tab: Phone) -> None:
    tab.open()
    assert tab.ask("check", {})["ok"] is True


def test_an_unknown_request_is_an_answer_not_a_crash(running: RunningPhone) -> None:
    running.open()
    running.expect_ready()
    refused = running.ask("no such action", {})
    assert "failed" in refused
    assert running.ask("check", {})["ok"] is True
    running.expect_word("^works offline$")


def test_a_sum_nobody_waits_for_any_more_is_ended_and_the_newest_answered(frail: Phone) -> None:
    begin(frail, "never ends", "job")
    begin(frail, "newer", "job")
    assert answer_to(frail, "newer") is None
    end_of_waiting(frail, "newer")
    assert answer_to(frail, "newer") == "answered"
    assert answer_to(frail, "never ends") == "AbortError"
    expect(frail.part("notice")).to_be_hidden()


def test_an_edit_ends_what_was_asked_for_later(frail: Phone) -> None:
    begin(frail, "never ends", "later")
    begin(frail, "edit", "job")
    end_of_waiting(frail, "edit")
    assert answer_to(frail, "edit") == "answered"
    wait_for_answer(frail, "never ends", "halted")


def test_a_sum_that_never_ends_is_asked_once_and_has_one_reason(frail: Phone) -> None:
    frail.page.evaluate(COUNT_ASKED, "never ends")
    begin(frail, "never ends", "job")
    end_of_waiting(frail, "never ends")
    assert answer_to(frail, "never ends") == "hang"
    frail.expect_running()
    assert frail.page.evaluate("asked") == 1
    expect(frail.part("notice")).to_be_hidden()
    assert frail.ask("check", {})["ok"] is True


def test_a_long_sum_says_how_long_and_is_stopped_by_a_button(frail: Phone) -> None:
    page = frail.page
    page.evaluate(COUNT_ASKED, "never")
    page.locator("#change > summary").click()
    plate = page.locator('input[name="plate"]')
    plate.fill("never ends")
    plate.press("Tab")
    state = page.locator("#state")
    for _ in range(40):
        page.clock.run_for(250)
        if "2 s" in (state.text_content() or ""):
            break
    expect(state).to_have_text(re.compile(r"^Working… 2 s Stop$"))
    button = state.get_by_role("button", name="Stop")
    box = button.bounding_box()
    assert box is not None
    assert box["height"] >= 48
    button.click()
    expect(state).to_have_text(re.compile(r"^Stopped\. Shown: example, "))
    expect(plate).to_have_value("never ends")
    frail.expect_running()
    assert page.evaluate("asked") == 1
    plate.fill("1/2in")
    plate.press("Tab")
    expect(state).to_have_text("Your job", timeout=READY_MS)
    assert "plate=1/2in" in page.url


def test_an_input_that_stops_the_worker_twice_is_refused(frail: Phone) -> None:
    begin(frail, "crashes", "job")
    wait_for_answer(frail, "crashes", "refused")
    frail.expect_running()
    assert frail.ask("check", {})["ok"] is True


@pytest.mark.long(reason="the worker is stopped and started again until it is given up")
def test_a_worker_that_keeps_crashing_is_left_alone_until_asked(frail: Phone) -> None:
    for text in ("crashes", "crashes twice"):
        begin(frail, text, "job")
        wait_for_answer(frail, text, "refused")
    frail.expect_word("^stopped: keeps stopping$")
    begin(frail, "newest", "job")
    frail.tap("retry")
    wait_for_answer(frail, "newest", "answered")
    frail.expect_ready()


def test_a_start_that_hangs_is_given_up(
    make_host: MakeHost, make_phone: MakePhone, make_release: MakeRelease
) -> None:
    silent = make_release({WORKER: lambda _: b"addEventListener('message', () => { for (;;); });"})
    phone = make_phone(make_host(silent).url)
    phone.page.clock.install()
    phone.open()
    phone.expect_word("^works offline$")
    expect(phone.part("numbers")).to_have_text("starting")
    phone.page.clock.run_for(95_000)
    phone.expect_word("^stopped: did not start$")
    expect(phone.part("notice")).to_contain_text("Tap Retry")


def test_a_wrong_known_answer_keeps_the_numbers_back(
    make_host: MakeHost, make_phone: MakePhone, make_release: MakeRelease
) -> None:
    off = make_release({WORKER: lambda data: data.replace(b".ok!==true", b".ok===true")})
    phone = make_phone(make_host(off).url)
    phone.open()
    phone.expect_word("^stopped: self-check failed$")


def test_a_missing_worker_script_is_told(make_host: MakeHost, make_phone: MakePhone) -> None:
    host = make_host(faults={WORKER: Fault(status=404)})
    phone = make_phone(host.url)
    phone.page.add_init_script("delete Navigator.prototype.serviceWorker")
    phone.open()
    phone.expect_word("^stopped: did not start$")
    host.faults.clear()
    phone.tap("retry")
    phone.expect_running()


def test_no_code_is_ever_sent_to_the_worker(shipped: Path) -> None:
    scripts = (shipped / "static/js").rglob("*.js")
    for script in scripts:
        text = script.read_text()
        for door in ("eval(", "new Function", "runPython", "run_js"):
            assert door not in text, f"{door} in {script.name}"
