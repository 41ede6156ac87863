"""Cost, Supplies and Shop on a phone: prices kept, draws in chunks, files and sheets to take."""

import csv
import json
import re
from pathlib import Path

import pytest
from playwright.sync_api import Locator, Page, expect

from beadwright.api import answer, answer_csv
from beadwright.pages import PAGES
from beadwright.words.money_text import money_text
from tests.browser.host import Host
from tests.browser.phone import READY_MS, Phone, RunningPhone, go_to
from tests.told import in_words

EXAMPLE = PAGES["cost"].example

OPEN_ROUND = """
(name) => {
  const field = document.querySelector(`input[name='${name}']`);
  for (let at = field; at; at = at.parentElement) if (at.tagName === "DETAILS") at.open = true;
}
"""


def ready(phone: Phone, path: str) -> Page:
    """Open a page and wait until its numbers follow."""
    phone.open(path)
    phone.expect_ready()
    return phone.page


def write(page: Page, name: str, text: str) -> None:
    """Write an entry and leave it, as a thumb does."""
    field = page.locator(f'input[name="{name}"]')
    page.evaluate(OPEN_ROUND, name)
    field.fill(text)
    field.blur()


def big(page: Page) -> Locator:
    """The cost of a part, way by way."""
    return page.locator(".way-card .big")


def part(query: str, way: int) -> str:
    """What the core says a part costs."""
    return f"${answer('cost', query).costs[way].part:.2f}"


def test_a_change_is_followed_and_stands_in_the_address(running: RunningPhone) -> None:
    page = ready(running, "cost/")
    expect(big(page).first).to_have_text(part(EXAMPLE, 0))
    write(page, "labour", "60")
    expect(big(page).first).to_have_text(part(f"{EXAMPLE}&labour=60/h", 0), timeout=READY_MS)
    assert "labour=60" in page.url
    assert not running.complaints


def test_another_plate_has_another_leg_unless_one_was_written(running: RunningPhone) -> None:
    page = ready(running, "cost/")
    leg = page.locator("input[name='leg']")
    write(page, "labour", "60")
    expect(big(page).first).to_have_text(part(f"{EXAMPLE}&labour=60/h", 0), timeout=READY_MS)
    write(page, "plate", "1/4in")
    expect(big(page).first).to_have_text(part("plate=1/4in&labour=60/h", 0), timeout=READY_MS)
    expect(leg).to_have_value("")
    write(page, "leg", "1/4in")
    write(page, "plate", "1/2in")
    written = part("plate=1/2in&leg=1/4in&labour=60/h", 0)
    expect(big(page).first).to_have_text(written, timeout=READY_MS)
    expect(leg).to_have_value("1/4in")


def test_a_wrong_entry_leaves_the_last_good_answer_and_says_so(running: RunningPhone) -> None:
    page = ready(running, "cost/")
    write(page, "labour", "plenty")
    expect(page.locator("#wrong-labour")).to_contain_text("plenty", timeout=READY_MS)
    expect(page.locator("#state")).to_contain_text("last good answer")
    expect(page.locator('input[name="labour"]')).to_have_value("plenty")
    expect(big(page).first).to_have_text(part(EXAMPLE, 0))
    write(page, "labour", "0")
    expect(page.locator("#wrong-labour")).to_have_count(0, timeout=READY_MS)
    expect(big(page).first).to_have_text(part(f"{EXAMPLE}&labour=0/h", 0))


def test_prices_kept_on_shop_outlive_the_page_and_feed_cost(phone: Phone, host: Host) -> None:
    page = ready(phone, "shop/")
    write(page, "labour", "41")
    expect(page.locator("#state")).to_have_text("Kept on this phone", timeout=READY_MS)
    write(page, "wire_price@E70C-6M 0.045in", "3.15")
    expect(page.locator("#job-form")).to_contain_text("Filled in: 2", timeout=READY_MS)
    page.wait_for_timeout(300)  # the phone's store has no signal of its own
    assert "labour" not in page.url
    host.kill()  # all of it without signal
    page.reload()
    phone.expect_ready()
    expect(page.locator('input[name="labour"]')).to_have_value("41/h", timeout=READY_MS)
    go_to(page, "Cost")
    kept = f"{EXAMPLE}&labour=41/h&b_wire_price=3.15/lb"
    for way in (0, 1):
        expect(big(page).nth(way)).to_have_text(part(kept, way), timeout=READY_MS)
    assert "labour" not in page.url
    write(page, "labour", "50")  # tried here, not kept
    expect(big(page).first).to_have_text(part(f"{kept}&labour=50/h", 0), timeout=READY_MS)
    go_to(page, "Shop")
    expect(page.locator('input[name="labour"]')).to_have_value("41/h", timeout=READY_MS)
    assert not [c for c in phone.complaints if "ERR_" not in c and "Failed to load" not in c]


def test_what_is_wrong_is_not_kept(tab: Phone) -> None:
    page = ready(tab, "shop/")
    write(page, "breaker", "nine")
    expect(page.locator("#wrong-breaker")).to_be_visible(timeout=READY_MS)
    page.reload()
    tab.expect_ready()
    expect(page.locator('input[name="breaker"]')).to_have_value("")


def test_prices_tried_on_cost_are_kept_by_a_tap(tab: Phone) -> None:
    page = ready(tab, "cost/")
    write(page, "overhead", "20")
    expect(big(page).first).to_have_text(part(f"{EXAMPLE}&overhead=20/h", 0), timeout=READY_MS)
    page.locator("[data-keep-all]").click()
    expect(page.locator("#state")).to_have_text("Kept on this phone", timeout=READY_MS)
    assert "overhead" not in page.url
    expect(page.locator('input[name="overhead"]')).to_have_attribute("placeholder", "20/h")
    expect(big(page).first).to_have_text(part(f"{EXAMPLE}&overhead=20/h", 0))


def test_the_chance_is_drawn_in_chunks_and_can_be_stopped(running: RunningPhone) -> None:
    page = ready(running, f"cost/?{EXAMPLE}&seed=7")
    page.evaluate(
        "globalThis.seen = []; new MutationObserver(() => {"
        " const bar = document.querySelector('#chance progress');"
        " if (bar) seen.push(bar.value);"
        # Tapped from inside the page: all may be drawn before a tap from outside lands.
        " if (bar?.value > 0 && !globalThis.tapped) {"
        "  globalThis.tapped = true; document.querySelector('[data-chance=stop]').click(); }"
        "}).observe(document.getElementById('chance'),"
        " {subtree: true, childList: true, attributes: true, characterData: true})"
    )
    page.locator('[data-chance="start"]').click()
    expect(page.locator('[data-chance="on"]')).to_have_text("Go on", timeout=READY_MS)
    stopped = page.locator("#chance progress").get_attribute("value")
    page.wait_for_timeout(300)
    assert page.locator("#chance progress").get_attribute("value") == stopped
    assert 0 < int(stopped or 0) < 10_000
    page.locator('[data-chance="on"]').click()
    drawn = page.locator('#chance[data-drawn][data-draws="10000"]')
    expect(drawn).to_be_visible(timeout=READY_MS)
    found = answer("cost", f"{EXAMPLE}&seed=7&draws=10000").comparisons[0].chance
    expect(page.locator(".chance-line b")).to_have_text(f"{found.pays:.0%}")
    expect(page.locator("#chance")).to_contain_text(f"half under {money_text(found.middle, '$')}")
    sums = page.locator("#verdict .sums")
    expect(sums).to_contain_text(money_text(found.low, "$"))  # the worst case is of the same draws
    assert len(set(page.evaluate("seen"))) > 2


def test_a_change_while_drawing_drops_the_draws(running: RunningPhone) -> None:
    page = ready(running, "cost/")
    page.locator('[data-chance="start"]').click()
    expect(page.locator("#chance progress")).to_be_visible(timeout=READY_MS)
    write(page, "parts", "900")
    expect(page.locator("#verdict")).to_contain_text("900 parts a year", timeout=READY_MS)
    page.wait_for_timeout(300)
    expect(page.locator("#chance progress")).to_have_count(0)
    expect(page.locator('[data-chance="start"]')).to_be_visible()


@pytest.mark.parametrize(("page_name", "button"), [("cost", "cost"), ("supplies", "purchases")])
def test_the_csv_is_the_core_s(
    running: RunningPhone, tmp_path: Path, page_name: str, button: str
) -> None:
    page = ready(running, f"{page_name}/")
    with page.expect_download() as caught:
        page.locator('[data-export="csv"]').click()
    assert caught.value.suggested_filename == f"{button}.csv"
    caught.value.save_as(tmp_path / "file.csv")
    text = (tmp_path / "file.csv").read_bytes().decode("utf-8-sig")
    assert text == answer_csv(page_name, EXAMPLE)
    assert len(list(csv.reader(text.splitlines()))) > 4


def test_the_json_holds_the_whole_comparison(running: RunningPhone, tmp_path: Path) -> None:
    page = ready(running, "cost/")
    with page.expect_download() as caught:
        page.locator('[data-export="json"]').click()
    caught.value.save_as(tmp_path / "file.json")
    found = json.loads((tmp_path / "file.json").read_text())["answer"]
    assert [way["part"] for way in found["ways"]] == pytest.approx(
        [cost.part for cost in answer("cost", EXAMPLE).costs]
    )
    assert found["comparisons"][0]["curve"]


def test_cost_prints_on_two_sheets(running: RunningPhone) -> None:
    page = ready(running, "cost/")
    for sheet in ("A4", "Letter"):
        assert len(re.findall(rb"/Type\s*/Page\b", page.pdf(format=sheet))) == 2, sheet


def test_a_strange_file_changes_nothing(running: RunningPhone, tmp_path: Path) -> None:
    page = ready(running, "shop/")
    (tmp_path / "other.json").write_text('{"kept": 3}')
    page.locator('input[type="file"]').set_input_files(tmp_path / "other.json")
    expect(page.locator("[data-preview]")).to_contain_text("Nothing was changed", timeout=READY_MS)


def test_the_job_goes_along_and_each_page_gets_its_own(running: RunningPhone) -> None:
    page = ready(running, "cost/?plate=1/2in&leg=3/8in&b_gas=75/25&labour=30/h&count=7")
    expect(page.locator("#verdict")).to_contain_text("leg 3/8 in", timeout=READY_MS)
    go_to(page, "Supplies")
    expect(page.locator("#need")).to_contain_text("leg 3/8 in", timeout=READY_MS)
    assert "labour" not in page.url
    assert "b_gas" not in page.url
    go_to(page, "Dial in")
    expect(page.locator("#joint")).to_contain_text("3/8", timeout=READY_MS)
    go_to(page, "Cost")
    expect(page.locator("#verdict")).to_contain_text("leg 3/8 in", timeout=READY_MS)
    assert "labour=30/h" in page.url
    assert "b_gas=75/25" in page.url


def test_everything_a_thumb_hits_is_large_enough_at_360(running: RunningPhone) -> None:
    running.page.set_viewport_size({"width": 360, "height": 740})
    for path in ("cost/", "supplies/", "shop/"):
        page = ready(running, path)
        page.evaluate("for (const d of document.querySelectorAll('details')) d.open = true")
        small = page.evaluate(
            "() => [...document.querySelectorAll('nav a, button, summary, input, main a.way,"
            " .choice span, .pick')].filter((e) => e.checkVisibility({visibilityProperty: true}))"
            ".map((e) => [e.outerHTML.slice(0, 80), e.getBoundingClientRect()])"
            ".filter(([, r]) => r.height > 0 && (r.height < 47.5 || r.width < 47.5))"
            ".map(([html]) => html)"
        )
        assert small == [], path
        wide = page.evaluate("document.documentElement.scrollWidth")
        assert wide <= 360, path


def test_dial_in_is_asked_with_the_shop_s_machine(tab: Phone) -> None:
    page = ready(tab, "shop/")
    write(page, "machine_amps", "150")
    expect(page.locator("#state")).to_have_text("Kept on this phone", timeout=READY_MS)
    tab.open("?plate=3/8in&leg=5/16in&transfer=short")
    tab.expect_ready()
    found = answer("dial-in", "plate=3/8in&leg=5/16in&transfer=short&machine_amps=150A")
    other = answer("dial-in", "plate=3/8in&leg=5/16in&transfer=short")
    assert found.dialled.settings.wire_feed.high != other.dialled.settings.wire_feed.high
    by = found.dialled.settings.wire_feed.high_by
    expect(page.locator("#how")).to_contain_text(in_words(by), timeout=READY_MS)
    assert "machine_amps=150" in page.url  # a link that is passed on means the same elsewhere


def test_dial_in_opened_bare_is_for_the_shop_s_machine(tab: Phone) -> None:
    page = ready(tab, "shop/")
    write(page, "machine_amps", "180")
    expect(page.locator("#state")).to_have_text("Kept on this phone", timeout=READY_MS)
    tab.open("")
    tab.expect_ready()
    found = answer("dial-in", "machine_amps=180A").dialled.settings.wire_feed
    expect(page.locator("#how")).to_contain_text(in_words(found.high_by), timeout=READY_MS)
    assert "?" not in page.url
