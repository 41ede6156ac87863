"""The bar at the foot: every page a tap or two away, with scripts and without."""

from playwright.sync_api import expect

from tests.browser.conftest import MakePhone
from tests.browser.host import Host
from tests.browser.phone import RunningPhone

SHEET = "nav.bar .sheet"


def test_the_sheet_opens_and_shuts(running: RunningPhone) -> None:
    running.open()
    page = running.page
    sheet = page.locator(SHEET)
    expect(sheet).to_be_hidden()
    page.locator("nav.bar summary").click()
    expect(sheet.get_by_text("Method")).to_be_visible()
    page.keyboard.press("Escape")
    expect(sheet).to_be_hidden()
    page.locator("nav.bar summary").click()
    page.locator("header").click(position={"x": 4, "y": 4})
    expect(sheet).to_be_hidden()


def test_the_sheet_stands_on_the_bar_and_off_the_edges(running: RunningPhone) -> None:
    running.page.set_viewport_size({"width": 360, "height": 640})
    running.open()
    running.page.locator("nav.bar summary").click()
    sheet = running.page.locator(SHEET).bounding_box()
    bar = running.page.locator("nav.bar").bounding_box()
    assert sheet is not None
    assert bar is not None
    assert 0 <= sheet["x"] <= sheet["x"] + sheet["width"] <= 360
    assert abs(sheet["y"] + sheet["height"] - bar["y"]) < 2


def test_a_page_on_the_sheet_is_reached_without_scripts_and_marked(
    steady_host: Host, make_phone: MakePhone
) -> None:
    phone = make_phone(steady_host.url, java_script_enabled=False)
    phone.open()
    page = phone.page
    page.locator("nav.bar summary").click()
    page.locator(SHEET).get_by_text("Method").click()
    expect(page.locator("h1")).to_have_text("Method")
    expect(page.locator("nav.bar details[data-here]")).to_be_visible()


def test_on_a_desktop_every_page_lies_in_the_bar(running: RunningPhone) -> None:
    running.page.set_viewport_size({"width": 1280, "height": 800})
    running.open()
    expect(running.page.locator("nav.bar summary")).to_be_hidden()
    boxes = [link.bounding_box() for link in running.page.locator("nav.bar a").all()]
    assert len({round(box["y"]) for box in boxes if box is not None}) == 1
    assert None not in boxes
