"""Passes on a phone: bead by bead without a reload, played, other plans, a print."""

import re
from pathlib import Path

from playwright.sync_api import Locator, Page, expect

from beadwright import units
from beadwright.api import answer_csv
from beadwright.pages import PAGES
from beadwright.passes.passes_page import passes_answer
from beadwright_site.pages.passes.bead_words import aim_words
from beadwright_site.pages.passes.view import headline_of
from tests.browser.conftest import MakePhone
from tests.browser.host import Host
from tests.browser.phone import ASKED_LATER, READY_MS, Phone, RunningPhone
from tests.browser.test_cost import ready, write

EXAMPLE_QUERY = "plate=3/4in&leg=5/8in&position=2F&wire=ER70S-6&dia=0.045in&gas=90/10"

PATH = f"passes/?{EXAMPLE_QUERY}"
BEADS = len(passes_answer(EXAMPLE_QUERY).found.beads)
LONG = "plate=4in&joint=v&position=1G&travel_by=robot"


def card(page: Page) -> Locator:
    return page.locator("#bead")


def feed_of(query: str) -> str:
    """What the core feeds the bead looked at with."""
    laid = passes_answer(query).bead.laid
    assert laid is not None
    return units.show(laid.point.feed_m_s, "wire_feed", "us")


def test_a_tap_on_a_bead_shows_it_without_a_reload(running: RunningPhone) -> None:
    page = ready(running, PATH)
    expect(page.locator("#plan h1")).to_have_text(headline_of(passes_answer(EXAMPLE_QUERY).found))
    loads = running.loads
    page.locator('.stack a[data-step="2"]').click()
    expect(card(page)).to_contain_text(f"Bead 2 of {BEADS}", timeout=READY_MS)
    found = passes_answer(f"{EXAMPLE_QUERY}&at=2")
    expect(card(page)).to_contain_text(aim_words(found.found, found.bead))
    expect(card(page).locator(".big b").first).to_have_text(feed_of(f"{EXAMPLE_QUERY}&at=2"))
    expect(page.locator('.stack a[data-step="2"]')).to_have_class(re.compile("now"))
    expect(page.locator('.stack a[data-step="3"]')).to_have_class(re.compile("open"))
    expect(page.locator("#schedule .now")).to_contain_text("2–3")
    assert "at=2" in page.url
    assert running.loads == loads
    page.locator(".steps .lay").click()
    expect(card(page)).to_contain_text(f"Bead 3 of {BEADS}", timeout=READY_MS)
    page.locator("#schedule a").first.click()
    expect(card(page)).to_contain_text(f"Bead 1 of {BEADS}", timeout=READY_MS)
    assert not running.complaints


def test_played_it_goes_from_the_first_bead_to_the_last_and_stops(running: RunningPhone) -> None:
    page = ready(running, PATH)
    page.evaluate(
        "globalThis.seen = []; new MutationObserver(() => {"
        " const now = document.querySelector('#bead h2 b').textContent;"
        " if (seen.at(-1) !== now) seen.push(now); })"
        ".observe(document.getElementById('bead'),"
        " {subtree: true, childList: true, characterData: true})"
    )
    play = page.locator("[data-play]")
    expect(play).to_have_text("Play")
    play.click()
    expect(play).to_have_text("Stop")
    expect(play).to_have_text("Play", timeout=READY_MS)
    assert page.evaluate("seen") == [f"Bead {n} of {BEADS}" for n in range(1, BEADS + 1)]
    play.click()
    expect(card(page)).to_contain_text(f"Bead 2 of {BEADS}", timeout=READY_MS)
    play.click()  # stopped on the way
    held = card(page).locator("h2").inner_text()
    page.wait_for_timeout(1200)
    assert card(page).locator("h2").inner_text() == held


def test_no_link_of_the_printed_example_can_be_tapped_once_the_job_asked_for_stands(
    tab: Phone,
) -> None:
    """Parts put in a frame after the others keep their links held until then."""
    tab.page.add_init_script(
        "globalThis.open = []; document.addEventListener('shown', () => {"
        " for (const link of document.querySelectorAll('bead-answer section a[href*=\"?\"]'))"
        "  if (!link.closest('[inert]') && !link.getAttribute('href').includes('plate=3/4in'))"
        "   globalThis.open.push(link.getAttribute('href')); }, {capture: true})"
    )
    page = ready(tab, PATH)
    expect(card(page)).to_contain_text(f"Bead {BEADS} of {BEADS}", timeout=READY_MS)
    assert page.evaluate("open") == []


def test_no_step_of_the_printed_example_is_followed_while_the_engine_starts(tab: Phone) -> None:
    """A tap on the example's next bead asked for the example, and the job of the link was lost."""
    tab.page.add_init_script(ASKED_LATER)
    tab.open(PATH)
    expect(tab.page.locator("#picture[inert]")).to_be_visible()
    assert tab.page.locator("bead-answer a[data-step]").evaluate_all(
        "links => links.length > 1 && links.every(link => link.closest('[inert]'))"
    )
    tab.page.evaluate("askNow()")
    expect(card(tab.page)).to_contain_text(f"Bead {BEADS} of {BEADS}", timeout=READY_MS)
    tab.page.locator(".steps .lay").click()
    expect(card(tab.page)).to_contain_text(f"Bead 1 of {BEADS}", timeout=READY_MS)


def test_who_wants_no_motion_is_offered_steps_only(tab: Phone) -> None:
    tab.page.emulate_media(reduced_motion="reduce")
    page = ready(tab, PATH)
    expect(page.locator("[data-play]")).to_be_hidden()
    page.locator(".steps .lay").click()
    expect(card(page)).to_contain_text(f"Bead 1 of {BEADS}", timeout=READY_MS)


def test_more_passes_and_what_other_plans_cost(running: RunningPhone) -> None:
    page = ready(running, f"{PATH}&at=2")
    page.get_by_label("One pass more").click()
    after = f"{EXAMPLE_QUERY}&passes={BEADS + 1}"
    expect(page.locator("#plan h1")).to_have_text(
        headline_of(passes_answer(after).found), timeout=READY_MS
    )
    expect(card(page)).to_contain_text(f"Bead {BEADS + 1} of {BEADS + 1}")
    assert "at=" not in page.url
    expect(page.locator("#others .same")).to_contain_text(f"{BEADS + 1} passes", timeout=READY_MS)
    expect(page.locator("bead-answer.waits-more")).to_have_count(0)
    page.locator("#others a", has_text="Fewest").click()
    expect(page.locator("#plan h1")).to_contain_text(f"{BEADS} passes", timeout=READY_MS)
    expect(page.locator("#others .same")).to_contain_text("Fewest", timeout=READY_MS)


def test_feed_by_hand_gives_the_count_and_a_wrong_entry_is_told(running: RunningPhone) -> None:
    page = ready(running, PATH)
    write(page, "wfs", "290")
    after = f"{EXAMPLE_QUERY}&wfs=290in/min"
    expect(page.locator("#plan h1")).to_have_text(
        headline_of(passes_answer(after).found), timeout=READY_MS
    )
    write(page, "passes", "many")
    expect(page.locator("#wrong-passes")).to_contain_text("many", timeout=READY_MS)
    expect(page.locator("#state")).to_contain_text("last good answer")
    expect(page.locator('input[name="wfs"]')).to_have_value("290in/min")


def test_the_job_comes_from_dial_in_and_goes_on_to_heat(running: RunningPhone) -> None:
    page = ready(running, "?plate=1in&joint=v&position=1G")
    page.locator("#facts a", has_text="passes").click()
    expect(page.locator("#plan h1")).to_contain_text("9 passes", timeout=READY_MS)
    expect(page.locator("#state")).to_have_text("Your job")
    page.locator("#bead a", has_text="Preheat").click()
    expect(page.locator("#start")).to_contain_text("V groove", timeout=READY_MS)
    assert "plate=1in" in page.url
    assert "at=" not in page.url


def test_the_schedule_as_csv_is_the_core_s(running: RunningPhone, tmp_path: Path) -> None:
    page = ready(running, "passes/")
    with page.expect_download() as caught:
        page.locator('[data-export="csv"]').click()
    assert caught.value.suggested_filename == "passes.csv"
    caught.value.save_as(tmp_path / "file.csv")
    text = (tmp_path / "file.csv").read_bytes().decode("utf-8-sig")
    assert text == answer_csv("passes", PAGES["passes"].example)


def test_the_plan_prints_on_one_sheet(running: RunningPhone) -> None:
    page = ready(running, "passes/?plate=1in&joint=v&position=1G")
    for sheet in ("A4", "Letter"):
        assert len(re.findall(rb"/Type\s*/Page\b", page.pdf(format=sheet))) == 1, sheet


def test_without_scripts_the_frozen_page_has_a_true_plan(
    steady_host: Host, make_phone: MakePhone
) -> None:
    phone = make_phone(steady_host.url, java_script_enabled=False)
    phone.open("passes/")
    found = passes_answer(PAGES["passes"].example).found
    expect(phone.page.locator("#plan h1")).to_have_text(headline_of(found))
    expect(phone.page.locator(".stack a")).to_have_count(len(found.beads))
    expect(phone.page.locator("#others li")).not_to_have_count(0)


def test_everything_fits_and_can_be_hit_at_360(running: RunningPhone) -> None:
    running.page.set_viewport_size({"width": 360, "height": 740})
    page = ready(running, f"passes/?{LONG}&at=60")
    page.evaluate("for (const d of document.querySelectorAll('details')) d.open = true")
    assert page.evaluate("document.documentElement.scrollWidth") <= 360
    small = page.evaluate(
        "() => [...document.querySelectorAll('nav a, button, summary, input, .choice span,"
        " .steps a, #count a, #schedule a, .plans a, .way')]"
        ".filter((e) => e.checkVisibility({visibilityProperty: true}))"
        ".map((e) => [e.outerHTML.slice(0, 80), e.getBoundingClientRect()])"
        ".filter(([, r]) => r.height > 0 && (r.height < 47.5 || r.width < 47.5))"
        ".map(([html]) => html)"
    )
    assert small == []
