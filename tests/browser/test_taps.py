"""The built page in a browser: fingers, keys and typing, answered by the engine on the phone.

The page's rules forbid evaluating strings, so waits are for text and attributes.
"""

import re
from urllib.parse import urlsplit

import pytest
from playwright.sync_api import Browser, Page, expect

from beadwright import units
from beadwright.api import answer
from tests.browser.dialled import JOB, START_MS, asked, number, open_job
from tests.browser.host import Host
from tests.browser.phone import go_to


@pytest.fixture
def host(steady_host: Host) -> Host:
    return steady_host


@pytest.fixture
def page(dialled: Page) -> Page:
    return dialled


def shown_by_core(page: Page, key: str) -> str:
    found = answer("dial-in", urlsplit(page.url).query).dialled
    at = ("wfs", "volts", "travel", "ctwd").index(key)
    setting = found.settings.all()[at]
    assert setting.value is not None
    return units.show(setting.value, setting.measure, found.job.units)


def test_the_answer_is_the_core_s_for_the_address(page: Page) -> None:
    for key in ("wfs", "volts", "travel", "ctwd"):
        assert number(page, key) == shown_by_core(page, key)


def test_until_the_answer_is_there_the_numbers_are_not_taken_for_it(
    chromium: Browser, host: Host
) -> None:
    context = chromium.new_context()
    page = context.new_page()
    page.goto(f"{host.url}?{JOB}", wait_until="commit")
    # Before scripts run the page says it is an example, then that it works; never "Your job".
    expect(page.locator("#state")).to_have_text(re.compile("Example job|Working"))
    if page.locator("#state").inner_text() == "Working…":
        expect(page.locator("bead-answer")).to_have_class(re.compile("working"))
    expect(page.locator("#state")).to_have_text("Your job", timeout=START_MS)
    assert number(page, "wfs") == shown_by_core(page, "wfs")
    context.close()


def test_a_drag_sets_by_hand_and_all_else_follows(page: Page) -> None:
    before = number(page, "travel")
    thumb = page.locator("#set-wfs .thumb").bounding_box()
    assert thumb is not None
    x, y = thumb["x"] + thumb["width"] / 2, thumb["y"] + thumb["height"] / 2
    page.mouse.move(x, y)
    page.mouse.down()
    for step in range(8):
        page.mouse.move(x - 5 * step, y)
        page.wait_for_timeout(30)
    expect(page.locator("#set-travel [data-type]")).not_to_have_text(before)  # while it drags
    page.mouse.up()
    expect(page.locator("#set-wfs .word")).to_have_text("by hand")
    expect(page.locator("#wfs")).to_have_value(re.compile(r"\d+in/min"))
    expect(page).to_have_url(re.compile("wfs="))  # written when the finger rests
    for key in ("wfs", "volts", "travel"):
        expect(page.locator(f"#set-{key} [data-type]")).to_have_text(shown_by_core(page, key))
    assert units.read(asked(page)["wfs"], "wire_feed") < units.read("395in/min", "wire_feed")


def test_letting_go_gives_the_setting_back(page: Page) -> None:
    ours = number(page, "volts")
    page.focus("#set-volts .band")
    page.keyboard.press("ArrowDown")
    expect(page.locator("#set-volts .word")).to_have_text("by hand")
    page.click("#set-volts .let-go")
    expect(page.locator("#set-volts .let-go")).to_have_count(0)
    assert number(page, "volts") == ours
    assert "volts" not in asked(page)


def test_keys_step_and_speak(page: Page) -> None:
    band = page.locator("#set-travel .band")
    now = float(band.get_attribute("aria-valuenow") or "")
    band.focus()
    page.keyboard.press("ArrowRight")
    page.keyboard.press("PageUp")
    expect(page.locator("#travel")).to_have_value(f"{round(now, 1) + 0.6:.1f}in/min")
    expect(band).to_have_attribute("aria-valuetext", re.compile(r"in/min, window .*, by hand"))
    expect(band).to_be_focused()
    page.focus("#set-volts .band")
    page.keyboard.press("End")
    expect(page.locator("#set-volts .word")).to_have_text(re.compile("over"))


def test_a_number_is_typed_by_tapping_it(page: Page) -> None:
    page.click("#set-ctwd [data-type]")
    page.keyboard.type("5/8")
    page.keyboard.press("Enter")
    expect(page.locator("#set-ctwd .word")).to_have_text("by hand")
    assert number(page, "ctwd") == "5/8"
    assert asked(page)["ctwd"] == "5/8in"


def test_what_cannot_be_taken_is_said_on_its_row_and_the_last_answer_stays(page: Page) -> None:
    page.click("#set-wfs [data-type]")
    page.keyboard.type("fast")
    page.keyboard.press("Enter")
    expect(page.locator("#set-wfs .word")).to_contain_text("“fast”")
    expect(page.locator("#state")).to_contain_text("last good answer, Tee, 2F, plate 3/8 in")
    expect(page.locator("#change")).not_to_have_attribute("open", "")
    assert number(page, "wfs") == "425"
    page.click("#set-wfs [data-type]")
    page.keyboard.type("300")
    page.keyboard.press("Enter")
    expect(page.locator("#state")).to_have_text("Your job")


def test_a_wrong_entry_is_marked_in_the_form_and_the_others_kept(page: Page) -> None:
    page.click("#change > summary")
    page.fill("#plate", "abc")
    page.press("#plate", "Tab")
    expect(page.locator("#wrong-plate")).to_contain_text("abc")
    expect(page.locator("#plate")).to_have_attribute("aria-invalid", "true")
    expect(page.locator("#leg")).to_have_value("5/16in")
    assert page.input_value("#plate") == "abc"
    page.fill("#plate", "1/2")
    page.press("#plate", "Tab")
    expect(page.locator("#state")).to_have_text("Your job")
    expect(page.locator("#plate")).to_have_value("1/2in")
    expect(page.locator("#change")).to_have_attribute("open", "")  # it does not shut by itself


def test_the_row_of_keys_writes_fractions(page: Page) -> None:
    page.click("#change > summary")
    page.fill("#leg", "1")
    page.focus("#leg")
    page.click(".keys button:text-is('1/4')")
    expect(page.locator("#leg")).to_have_value("1-1/4")
    page.click(".keys button[aria-label=Delete]")
    page.keyboard.type("8")
    page.press("#leg", "Tab")
    expect(page.locator("#joint")).to_contain_text("1-1/8 in")
    assert asked(page)["leg"] == "1-1/8in"


def test_changing_units_converts_nothing_typed(page: Page) -> None:
    page.click("#change > summary")
    page.click("#group-joint > summary")
    page.fill("#gap", "1/8")
    page.click("#group-show > summary")
    page.click("#field-units label >> nth=1")
    expect(page.locator("#joint")).to_contain_text("9.5 mm")
    expect(page.locator("#gap")).to_have_value("1/8in")
    assert asked(page)["gap"] == "1/8in"
    assert asked(page)["units"] == "si"


def test_the_job_comes_along_to_other_pages_and_back(page: Page) -> None:
    go_to(page, "Method")
    expect(page.locator("h1")).to_have_text("Method")
    go_to(page, "Dial in")
    expect(page.locator("#state")).to_have_text("Your job")
    assert asked(page)["leg"] == "5/16in"
    assert number(page, "wfs") == shown_by_core(page, "wfs")


def test_a_bare_visit_offers_the_last_job(page: Page, host: Host) -> None:
    open_job(page, host, "plate=1/2in&leg=3/8in")
    page.goto(host.url)
    link = page.locator("[data-last]")
    expect(link).to_contain_text("plate 1/2 in, leg 3/8 in")
    expect(page.locator("#state")).to_have_text("Example job")
    link.click()
    expect(page.locator("#state")).to_have_text("Your job", timeout=START_MS)
    assert asked(page) == {"plate": "1/2in", "leg": "3/8in"}


def test_a_way_out_opens_a_shut_window(page: Page, host: Host) -> None:
    open_job(page, host, "plate=3/8in&machine_amps=190A")
    expect(page.locator("#settings")).to_contain_text("Two limits conflict")
    page.click(".way >> nth=0")
    expect(page.locator(".way")).to_have_count(0)
    assert re.fullmatch(r"\d+", number(page, "wfs"))


def test_theme_is_switched_and_kept(page: Page, host: Host) -> None:
    page.click("[data-theme-switch]")
    chosen = page.locator("html").get_attribute("data-theme")
    assert chosen in ("dark", "daylight")
    page.goto(f"{host.url}method/")
    expect(page.locator("html")).to_have_attribute("data-theme", chosen)


def test_everything_to_tap_is_large_enough_for_a_glove(page: Page) -> None:
    page.click("#change > summary")
    for fold in page.locator("#job-form .fold > summary").all():
        fold.click()
    page.focus("#plate")  # with the pad under it
    page.click("#how > summary")
    page.click("nav.bar summary")
    small: list[tuple[str, float, float]] = []
    for target in page.locator("a, button, summary, .choice label, .text input, .band").all():
        box = target.bounding_box()
        if target.is_visible() and box is not None and min(box["width"], box["height"]) < 48:
            small.append((target.inner_text()[:30], box["width"], box["height"]))
    # A citation in a sentence is as long as its words; it is still 48 px high.
    assert [each for each in small if each[2] < 47.5 or each[1] < 30] == []


def test_the_four_settings_and_the_picture_are_on_one_screen(page: Page) -> None:
    bar = page.locator("nav.bar").bounding_box()
    assert bar is not None
    for part in ("#joint svg", "#set-wfs", "#set-volts", "#set-travel", "#set-ctwd"):
        box = page.locator(part).bounding_box()
        assert box is not None
        assert box["y"] >= 0
        assert box["y"] + box["height"] <= bar["y"], part


@pytest.mark.parametrize("width", [320, 360, 390, 1280])
def test_nothing_is_wider_than_the_screen(page: Page, width: int) -> None:
    page.set_viewport_size({"width": width, "height": 800})
    page.click("#change > summary")
    assert page.evaluate("() => document.documentElement.scrollWidth") <= width
