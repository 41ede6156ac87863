"""The phone times the arc: by ear from Chromium's fake microphone, by taps, with a beat."""

from __future__ import annotations

import os
import re
import wave
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Any

import numpy as np
import pytest
from playwright.sync_api import Browser, Page, expect

from tests.browser.conftest import ARGS, SIZE
from tests.browser.dialled import START_MS
from tests.browser.host import Host
from tests.browser.phone import new_phone
from tests.site.made_sound import RATE, Shop

NEAR_S = 0.15 + 2048 / 48_000
JOB = "plate=3/16in&leg=3/16in&wire=ER70S-6&gas=75/25&dia=0.035in"
ON, LASTS = 7.0, 5.0
HEARD_MS = 40_000

SPIES = """
window.streams = []; window.asked = []; window.tones = []; window.locks = 0; window.held = 0;
window.shakes = [];
Object.defineProperty(Navigator.prototype, "vibrate", { value: (how) => window.shakes.push(how) });
const devices = navigator.mediaDevices;
const get = devices?.getUserMedia.bind(devices);
if (devices) devices.getUserMedia = async (wanted) => {
  window.asked.push(wanted);
  const stream = await get(wanted);
  window.streams.push(stream);
  return stream;
};
const start = OscillatorNode.prototype.start;
OscillatorNode.prototype.start = function (at) {
  window.tones.push([at, this.frequency.value]);
  return start.call(this, at);
};
Object.defineProperty(Navigator.prototype, "wakeLock", { value: { request: async () => {
  window.locks += 1; window.held += 1;
  return { release: async () => { window.held -= 1; } };
} } });
"""

Open = Callable[..., Page]


@pytest.fixture
def opened(chromium: Browser, steady_host: Host) -> Iterator[Open]:
    """Open the page in a browser of its own."""
    browsers: list[Browser] = []

    def open_page(
        *args: str, query: str = "", job: str = JOB, granted: bool = True, host: str = ""
    ) -> Page:
        path = os.environ.get("BEADWRIGHT_CHROMIUM", "/usr/bin/chromium")
        browser = chromium.browser_type.launch(executable_path=path, args=[*ARGS, *args])
        browsers.append(browser)
        context = browser.new_context(viewport=SIZE)
        context.add_init_script(SPIES)
        if granted:
            context.grant_permissions(["microphone"])
        url = steady_host.url.replace("localhost", host or "localhost")
        phone = new_phone(context, url)
        phone.open(f"coupons/?{job}{query}")
        expect(phone.page.locator("#state")).to_have_text("Your job", timeout=START_MS)
        return phone.page

    yield open_page
    for browser in browsers:
        browser.close()


def wav(path: Path, shop: Shop | None = None) -> Path:
    """A shop, by default with one short-circuit arc of known length in it."""
    if shop is None:
        shop = Shop(20, seed=21)
        shop.short_arc(ON, LASTS, 80)
    samples = (np.clip(np.repeat(shop.sound, 48_000 // RATE), -1, 1) * 32_767).astype("<i2")
    with wave.open(str(path), "wb") as file:
        file.setnchannels(1)
        file.setsampwidth(2)
        file.setframerate(48_000)
        file.writeframes(samples.tobytes())
    return path


def hears(path: Path) -> tuple[str, ...]:
    """Have the browser's microphone give a sound."""
    return (
        "--use-fake-ui-for-media-stream",
        "--use-fake-device-for-media-stream",
        f"--use-file-for-fake-audio-capture={path}%noloop",
    )


def type_time(page: Page) -> None:
    """Type the time instead: 6 in in 5 s."""
    expect(page.locator("[data-listen]")).to_have_text("Listen for the arc")
    page.fill("#arc_time", "5 s")
    page.locator("#arc_time").blur()
    expect(page.locator("#measured")).to_contain_text(re.compile(r"72(\.0)? in/min"))


def seconds(page: Page) -> float:
    """The arc time as entered."""
    found = re.fullmatch(r"([0-9.]+) ?s", page.locator("#arc_time").input_value())
    assert found
    return float(found[1])


def tones(page: Page) -> list[tuple[float, float]]:
    """When each tone was set to sound by the audio clock, and its pitch."""
    found: Any = page.evaluate("window.tones")
    return [(at, pitch) for at, pitch in found]


def test_an_arc_is_timed_with_nobody_touching_anything(opened: Open, tmp_path: Path) -> None:
    heard = wav(tmp_path / "shop.wav")
    page = opened(*hears(heard), query="&marked=6in")
    assert page.evaluate("window.asked") == []  # not before a tap
    page.click("[data-listen]")
    said = page.locator("[data-heard]")
    expect(said).to_contain_text("Learning the shop's noise")
    expect(said).to_contain_text("Ready: weld", timeout=HEARD_MS)
    expect(said).to_contain_text("Arc on", timeout=HEARD_MS)
    assert page.evaluate("window.held") == 1  # the screen stays on
    expect(said).to_contain_text("heard", timeout=HEARD_MS)
    assert seconds(page) == pytest.approx(LASTS, abs=NEAR_S)
    expect(page.locator("#measured")).to_contain_text(
        re.compile(r"7\d(\.\d)? in/min")
    )  # 6 in in 5 s
    said_shorts = re.findall(r"\d+", page.locator("[data-shorts]").inner_text())
    low, high, even_low, even_high = map(int, said_shorts)
    assert low <= 80 <= high
    assert even_low <= 100 / 6**0.5 <= even_high  # as made: gamma of shape 6
    [wanted] = page.evaluate("window.asked")
    assert not any(
        wanted["audio"][name]
        for name in ("echoCancellation", "noiseSuppression", "autoGainControl")
    )
    states = page.evaluate("window.streams[0].getTracks().map((track) => track.readyState)")
    assert states == ["ended"]
    assert page.evaluate("window.held") == 0


def test_a_phone_without_microphone_says_so_and_is_tapped(opened: Open) -> None:
    page = opened(query="&marked=6in")
    page.click("[data-listen]")
    expect(page.locator("[data-heard]")).to_contain_text("no microphone")
    tap = page.locator("[data-arc]")
    box = tap.bounding_box()
    assert box is not None
    assert box["height"] >= 64
    tap.click()
    expect(tap).to_have_text("Stop")
    page.wait_for_timeout(2500)
    tap.click()
    expect(tap).to_have_text("Start")
    assert 2.4 <= seconds(page) <= 4
    expect(page.locator("#measured")).to_contain_text("in/min")
    tap.click()
    tap.click()  # a slip of the glove
    expect(page.locator("[data-heard]")).to_contain_text("a tack: not timed")
    assert 2.4 <= seconds(page) <= 4


def test_a_refused_microphone_is_told_and_the_time_is_typed(opened: Open) -> None:
    page = opened("--use-fake-device-for-media-stream", query="&marked=6in", granted=False)
    page.click("[data-listen]")
    said = page.locator("[data-heard]")
    expect(said).to_contain_text("The microphone is refused: allow it in the browser's settings")
    type_time(page)


def test_over_plain_http_the_microphone_is_told_as_barred_and_a_coupon_is_kept(
    opened: Open,
) -> None:
    page = opened(
        "--host-resolver-rules=MAP shop.test 127.0.0.1",
        query="&marked=6in",
        granted=False,
        host="shop.test",
    )
    assert page.evaluate("[isSecureContext, typeof navigator.mediaDevices]") == [False, "undefined"]
    page.click("[data-listen]")
    said = page.locator("[data-heard]")
    expect(said).to_contain_text("at a secure address only (https): tap or type the time")
    type_time(page)
    page.click("[data-keep-coupon]")
    expect(page.locator("#log li")).to_have_count(1)


def test_a_microphone_that_gives_no_sound_is_told_and_the_time_is_typed(
    opened: Open, tmp_path: Path
) -> None:
    dead = Shop(12, seed=3)
    dead.sound[:] = 0
    page = opened(*hears(wav(tmp_path / "dead.wav", dead)), query="&marked=6in")
    page.click("[data-listen]")
    said = page.locator("[data-heard]")
    expect(said).to_contain_text("gives no sound: is it covered or switched off", timeout=HEARD_MS)
    type_time(page)


def test_where_no_shorts_stand_out_of_the_sound_it_says_so(opened: Open, tmp_path: Path) -> None:
    hissing = Shop(20, seed=21)
    hissing.spray_arc(ON, LASTS)
    page = opened(*hears(wav(tmp_path / "hiss.wav", hissing)), query="&marked=6in")
    page.click("[data-listen]")
    shorts = page.locator("[data-shorts]")
    expect(shorts).to_have_text("Shorts: the sound is too poor to say.", timeout=HEARD_MS)
    assert seconds(page) == pytest.approx(LASTS, abs=NEAR_S)
    type_time(page)


def test_the_beat_follows_the_travel_by_the_audio_clock(opened: Open) -> None:
    page = opened(query="&marked=2in&travel=15in/min")
    page.click("[data-pace]")
    expect(page.locator("[data-paced]")).to_contain_text("tick each 1/4 in")
    assert tones(page) == []  # it waits for the arc
    page.click("[data-arc]")
    page.wait_for_timeout(1500)
    page.evaluate("document.dispatchEvent(new Event('visibilitychange'))")
    page.wait_for_timeout(5000)
    found = tones(page)
    assert [pitch for _, pitch in found] == [900] * 7 + [450]
    starts = [at for at, _ in found]
    assert np.diff(starts) == pytest.approx([1.0] * 7, rel=0.001)  # a quarter inch a second
    assert page.evaluate("window.locks") == 2  # taken again when the page is seen again
    expect(page.locator("[data-paced]")).to_have_text("End of the bead", timeout=5000)
    shakes: Any = page.evaluate("window.shakes")
    assert shakes == [40] * 7 + [[200, 80, 200]]  # each tick, and another at the end
    page.click("[data-arc]")
    page.click("[data-pace]")
    expect(page.locator("[data-paced]")).to_have_text("")


def test_each_bead_has_the_beat_of_its_own_travel(opened: Open) -> None:
    """A groove's open root is laid at another travel than what fills it."""
    groove = "joint=v&plate=1/2in&position=1G&wire=ER70S-6&gas=75/25&dia=0.035in"
    page = opened(job=groove, query="&marked=2in")
    planned = page.locator("#learned").get_attribute("data-beads") or ""
    travels = [float(each) for each in planned.split()]
    assert len(travels) > 1
    assert abs(travels[1] / travels[0] - 1) > 0.02
    page.click("[data-pace]")
    said, tap = page.locator("[data-paced]"), page.locator("[data-arc]")
    for number, travel in enumerate(travels[:2], 1):
        expect(said).to_contain_text(f"Bead {number} of {len(travels)}")
        step = 12.7 if "1/2 in" in said.inner_text() else 6.35
        page.evaluate("window.tones.length = 0")
        tap.click()
        page.wait_for_timeout(2500)
        ticks = [at for at, pitch in tones(page) if pitch == 900]
        assert np.diff(ticks) == pytest.approx([step / travel] * (len(ticks) - 1), rel=0.001)
        tap.click()
    assert len(travels) == 2 or f"Bead 3 of {len(travels)}" in said.inner_text()


def test_no_tone_sounds_after_the_beat_is_off(opened: Open) -> None:
    page = opened(query="&marked=6in&travel=15in/min")
    page.click("[data-pace]")
    page.click("[data-arc]")
    page.wait_for_timeout(500)
    page.click("[data-pace]")
    count = len(tones(page))
    assert count
    page.wait_for_timeout(3000)
    assert len(tones(page)) == count
