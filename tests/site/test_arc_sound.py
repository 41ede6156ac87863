"""The arc heard in made sound: on and off within 0.15 s, nothing else taken for it."""

from __future__ import annotations

import json
import shutil
import subprocess
from pathlib import Path
from typing import Any

import numpy as np
import pytest

from tests.site.made_sound import RATE, Shop

HERE = Path(__file__).parent
SOUND = HERE.parents[1] / "site" / "beadwright_site" / "static" / "js" / "sound"
NEAR_S = 0.15
FOLDERS: list[Path] = []


@pytest.fixture(scope="module", autouse=True)
def modules(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The scripts where Node takes them for modules, whatever its version."""
    folder = tmp_path_factory.mktemp("ear")
    shutil.copytree(SOUND, folder / "sound")
    (folder / "package.json").write_text('{"type": "module"}')
    FOLDERS.append(folder / "sound")
    return folder / "sound"


def hear(shop: Shop) -> list[dict[str, Any]]:
    """What the ear heard."""
    done = subprocess.run(
        ["node", str(HERE / "hear.mjs"), str(FOLDERS[-1]), str(RATE)],
        input=shop.raw(), capture_output=True, check=True,
    )  # fmt: skip
    found: list[dict[str, Any]] = json.loads(done.stdout)["heard"]
    return found


def times(heard: list[dict[str, Any]], kind: str) -> list[float]:
    return [each["at"] for each in heard if each["kind"] == kind]


@pytest.mark.parametrize("even", [3.0, 6.0, 40.0])
@pytest.mark.parametrize("rate", [25, 60, 110, 180])
def test_a_short_circuit_arc_is_timed_and_its_shorts_counted(rate: int, even: float) -> None:
    shop = Shop(20, seed=rate)
    between = np.diff(shop.short_arc(6.0, 9.0, rate, even=even))
    heard = hear(shop)
    assert times(heard, "ready") == [3.0]
    assert times(heard, "on") == [pytest.approx(6.0, abs=NEAR_S)]
    assert times(heard, "off") == [pytest.approx(15.0, abs=NEAR_S)]
    found = heard[-1]["shorts"]
    # The truth is that of the pops drawn: near 200 a second none comes sooner than it can.
    true = {"rate": 1 / np.mean(between), "spread": np.std(between) / np.mean(between)}
    for name, figure in true.items():
        assert found[name]["low"] <= figure <= found[name]["high"], name
        assert found[name]["high"] <= 1.6 * found[name]["low"], name


@pytest.mark.parametrize("loud", [0.03, 0.1, 0.3])
def test_a_spray_arc_is_timed_and_has_no_shorts(loud: float) -> None:
    shop = Shop(16, seed=3)
    shop.spray_arc(5.0, 8.0, loud)
    heard = hear(shop)
    assert times(heard, "on") == [pytest.approx(5.0, abs=NEAR_S)]
    assert times(heard, "off") == [pytest.approx(13.0, abs=NEAR_S)]
    assert heard[-1]["shorts"] is None  # too poor to say: no pops stand out


def noisy_shop(seconds: float, seed: int) -> Shop:
    """A shop at work, and nobody welding near the phone."""
    shop = Shop(seconds, seed)
    at = 4.0
    kinds = shop.chance
    while at < seconds - 30:
        kind = kinds.integers(4)
        if kind == 0:
            shop.grinder(at, 3 + 12 * kinds.random(), 0.05 + 0.15 * kinds.random())
        elif kind == 1:
            for blow in range(int(kinds.integers(1, 9))):
                shop.hammer(at + 0.7 * blow, 0.3 + 0.6 * kinds.random())
        elif kind == 2:
            shop.speech(at, 3 + 8 * kinds.random(), 0.05 + 0.2 * kinds.random())
        at += 4 + 14 * kinds.random()
    return shop


@pytest.mark.parametrize("seed", [1, 2])
def test_ten_minutes_of_shop_noise_start_nothing(seed: int) -> None:
    assert times(hear(noisy_shop(600, seed)), "on") == []


@pytest.mark.parametrize("seed", range(4))
def test_what_starts_at_once_is_told_from_an_arc(seed: int) -> None:
    shop = Shop(40, seed)
    shop.rub(5.0, 6.0, 0.05 + 0.05 * seed)
    for start in (14.0, 16.5, 19.0):
        shop.clang(start, 0.2 + 0.1 * seed)
    for start in (24.0, 26.0, 28.0):
        shop.beeper(start, 1.0)
    assert times(hear(shop), "on") == []


@pytest.mark.parametrize("seed", range(4))
def test_bolts_tipped_into_a_bin_are_no_arc(seed: int) -> None:
    """As rough and uneven as shorts; they die away, an arc keeps its level."""
    shop = Shop(40, seed)
    for count in range(8):
        shop.bolts(5.0 + 4.2 * count, 0.1 + 0.08 * count)
    assert times(hear(shop), "on") == []


@pytest.mark.parametrize("pitch", [4000, 5000, 6000])
def test_a_tone_is_no_arc_though_it_sounds_as_long(pitch: float) -> None:
    """Its turns fill each piece of half a millisecond alike: nothing regular is left to see."""
    shop = Shop(30, seed=4)
    for count in range(6):
        shop.beeper(5.0 + 4 * count, 2.0, 0.03 + 0.03 * count, pitch)
    assert times(hear(shop), "on") == []


def test_a_long_arc_is_timed_and_not_kept_whole() -> None:
    shop = Shop(200, seed=6)
    shop.short_arc(5.0, 190.0, 80)
    heard = hear(shop)
    assert times(heard, "on") == [pytest.approx(5.0, abs=NEAR_S)]
    assert times(heard, "off") == [pytest.approx(195.0, abs=NEAR_S)]
    assert heard[-1]["kept"] <= 120 / 0.0005
    assert heard[-1]["shorts"]["rate"]["low"] <= 80 <= heard[-1]["shorts"]["rate"]["high"]


def test_an_arc_over_a_grinder_is_heard() -> None:
    shop = Shop(30, seed=11)
    shop.rub(5.0, 20.0, 0.02)
    shop.short_arc(12.0, 6.0, 80, loud=0.4)
    assert times(hear(shop), "on") == [pytest.approx(12.0, abs=NEAR_S)]


def test_arcs_are_found_among_the_noise() -> None:
    shop = noisy_shop(120, seed=5)
    truth = [(31.0, 43.0), (62.0, 75.5), (97.0, 101.0)]
    for start, stop in truth:
        shop.short_arc(start, stop - start, 80, loud=0.4)
    heard = hear(shop)
    assert times(heard, "on") == pytest.approx([start for start, _ in truth], abs=NEAR_S)
    assert times(heard, "off") == pytest.approx([stop for _, stop in truth], abs=NEAR_S)


def test_a_second_arc_further_off_is_not_ones_own() -> None:
    shop = Shop(40, seed=7)
    shop.short_arc(5.0, 8.0, 80, loud=0.3)
    shop.short_arc(18.0, 10.0, 90, loud=0.05)  # 16 dB under: the next bay
    shop.short_arc(31.0, 5.0, 80, loud=0.3)
    heard = hear(shop)
    assert times(heard, "on") == pytest.approx([5.0, 31.0], abs=NEAR_S)
    assert times(heard, "off") == pytest.approx([13.0, 36.0], abs=NEAR_S)


def test_a_stutter_does_not_end_it() -> None:
    shop = Shop(20, seed=9)
    shop.short_arc(5.0, 4.0, 80)
    shop.short_arc(9.2, 4.0, 80)  # 0.2 s without
    heard = hear(shop)
    assert times(heard, "on") == [pytest.approx(5.0, abs=NEAR_S)]
    assert times(heard, "off") == [pytest.approx(13.2, abs=NEAR_S)]


def test_a_dead_microphone_is_told_as_poor() -> None:
    shop = Shop(6, seed=1, hum=0.0)
    assert [each["kind"] for each in hear(shop)] == ["poor"]


def test_silence_and_hum_start_nothing() -> None:
    assert [each["kind"] for each in hear(Shop(30, seed=2))] == ["ready"]
