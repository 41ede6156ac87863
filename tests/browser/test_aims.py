"""The aim buttons and the plane of feed and volts on the phone, answered by its engine."""

import re
from urllib.parse import urlsplit

import pytest
from playwright.sync_api import Page, expect

from beadwright import units
from beadwright.api import answer
from beadwright.setting.aim_results import aim_results
from beadwright.setting.aims import AIMS
from beadwright.setting.dial_in_page import DialInAnswer
from tests.browser.dialled import JOB, asked, number, open_job
from tests.browser.host import Host
from tests.told import in_words


@pytest.fixture
def host(steady_host: Host) -> Host:
    return steady_host


@pytest.fixture
def page(dialled: Page) -> Page:
    return dialled


def core(page: Page) -> DialInAnswer:
    return answer("dial-in", urlsplit(page.url).query)


def tap_aim(page: Page, name: str) -> None:
    """Tap an aim and wait until it is the one marked."""
    page.locator("#aims a").filter(has_text=name).click()
    expect(page.locator("#aims a[aria-current]")).to_contain_text(name)


@pytest.mark.parametrize("aim", [aim for aim in AIMS if aim != "balanced"])
def test_a_tapped_aim_sets_feed_and_volts_and_goes_into_the_address(page: Page, aim: str) -> None:
    [promised] = [r for r in aim_results(core(page).dialled.plan) if r.aim == aim]
    assert promised.volts is not None
    tap_aim(page, in_words(AIMS[promised.aim]))
    feed = units.show(promised.feed_m_s, "wire_feed", "us")
    expect(page.locator("#set-wfs [data-type]")).to_have_text(feed)
    volts = units.show(promised.volts, "volts", "us")
    expect(page.locator("#set-volts [data-type]")).to_have_text(volts)
    assert asked(page)["aim"] == aim
    assert asked(page)["leg"] == "5/16in"


def test_balanced_leads_back_and_leaves_no_word_in_the_address(page: Page) -> None:
    before = number(page, "wfs")
    tap_aim(page, "Fastest")
    expect(page.locator("#set-wfs [data-type]")).not_to_have_text(before)
    tap_aim(page, "Balanced")
    expect(page.locator("#set-wfs [data-type]")).to_have_text(before)
    assert "aim" not in asked(page)


def test_an_aim_is_kept_in_a_link(page: Page, host: Host) -> None:
    open_job(page, host, f"{JOB}&aim=least-heat")
    expect(page.locator("#aims a[aria-current]")).to_contain_text("Coolest")
    set_ = core(page).dialled.settings.wire_feed.value
    assert set_ is not None
    assert number(page, "wfs") == units.show(set_, "wire_feed", "us")


def test_the_buttons_say_time_and_heat_and_take_a_glove(page: Page) -> None:
    found = page.locator("#aims a")
    expect(found).to_have_count(4)
    for each in found.all():
        expect(each).to_have_text(re.compile(r"(time|a weld), .*heat"))
        box = each.bounding_box()
        assert box is not None
        assert box["height"] >= 48
        assert box["width"] >= 48


def test_feed_and_volts_by_hand_leave_nothing_to_aim(page: Page, host: Host) -> None:
    open_job(page, host, f"{JOB}&wfs=350in/min&volts=28V")
    expect(page.locator("#aims a")).to_have_count(0)
    expect(page.locator("#aims")).to_contain_text("Set one")
    page.click("#set-volts .let-go")
    expect(page.locator("#aims a")).to_have_count(4)


def test_soft_edges_are_hatched_and_told(page: Page) -> None:
    soft = page.locator("#map polygon.soft")
    expect(soft).to_have_count(len(core(page).window_map.soft))
    for each in soft.all():
        box = each.bounding_box()
        assert box is not None
        assert box["width"] > 1
        assert box["height"] > 1
    caption = page.locator("#map p")
    expect(caption).to_contain_text("one mode gives way to the next, good to 1 V")
    expect(caption).to_contain_text("Where spray starts is good to 20%")


def test_the_dot_moves_with_the_aim_and_stays_in_the_outline(page: Page) -> None:
    dot = page.locator("#map circle.thumb")
    before = dot.get_attribute("cx")
    assert before is not None
    tap_aim(page, "Fastest")
    expect(dot).not_to_have_attribute("cx", before)
    spot, room = dot.bounding_box(), page.locator("#map polygon.window").bounding_box()
    assert spot is not None
    assert room is not None
    middle = spot["x"] + spot["width"] / 2
    assert room["x"] - 1 <= middle <= room["x"] + room["width"] + 1


@pytest.mark.parametrize(
    ("query", "said", "unsaid"),
    [
        (f"{JOB}&gas=75/25", "No spray here: solid wire does not spray", "Where spray starts"),
        (f"{JOB}&transfer=pulse", "the machine sets its own volts", "Outlined"),
        (f"{JOB}&position=3F-up&transfer=spray", "No spray here: spray runs out", "Outlined"),
    ],
)
def test_the_caption_follows_the_job(
    page: Page, host: Host, query: str, said: str, unsaid: str
) -> None:
    open_job(page, host, query)
    expect(page.locator("#map p")).to_contain_text(said)
    expect(page.locator("#map p")).not_to_contain_text(unsaid)
