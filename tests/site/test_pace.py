"""The beat to travel by: when each tick comes and when the bead ends."""

from __future__ import annotations

import json
import shutil
import subprocess
from pathlib import Path
from typing import Any

import pytest

HERE = Path(__file__).parent
SOUND = HERE.parents[1] / "site" / "beadwright_site" / "static" / "js" / "sound"
INCHES = [6.35, 12.7]


@pytest.fixture(scope="module")
def sound(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The scripts where Node takes them for modules, whatever its version."""
    folder = tmp_path_factory.mktemp("pace")
    shutil.copytree(SOUND, folder / "sound")
    (folder / "package.json").write_text('{"type": "module"}')
    return folder / "sound"


def beat(sound: Path, travel: float, length: float, steps: list[float]) -> dict[str, Any]:
    """The beat of a travel [mm/s] over a length [mm]."""
    done = subprocess.run(
        ["node", str(HERE / "beat.mjs"), str(sound), json.dumps([travel, length, steps])],
        capture_output=True, check=True,
    )  # fmt: skip
    found: dict[str, Any] = json.loads(done.stdout)
    return found


def test_a_tick_comes_each_quarter_inch(sound: Path) -> None:
    found = beat(sound, 15 * 25.4 / 60, 50.8, INCHES)  # 15 in/min: a quarter inch a second
    assert found["ticks"] == pytest.approx([1, 2, 3, 4, 5, 6, 7])
    assert found["end"] == pytest.approx(8)  # two inches


def test_a_fast_travel_takes_half_inches(sound: Path) -> None:
    found = beat(sound, 45 * 25.4 / 60, 25.4 * 6, INCHES)  # a quarter inch in a third of a second
    assert found["step"] == 12.7
    assert found["ticks"][0] == pytest.approx(2 / 3)
    assert found["end"] == pytest.approx(8)


def test_a_travel_faster_than_any_step_still_has_a_beat(sound: Path) -> None:
    assert beat(sound, 60.0, 120.0, INCHES)["step"] == 12.7


@pytest.mark.parametrize("inches_a_minute", [6, 9.3, 14.5, 22, 31])
def test_over_a_minute_the_beat_is_as_fast_as_the_travel(
    sound: Path, inches_a_minute: float
) -> None:
    found = beat(sound, inches_a_minute * 25.4 / 60, 10 * 25.4 * inches_a_minute, INCHES)
    within = [at for at in found["ticks"] if at <= 60]
    went = len(within) * found["step"] / 25.4  # inches at the last tick
    assert went / within[-1] * 60 == pytest.approx(inches_a_minute, rel=0.01)


def test_no_tick_comes_right_before_the_end(sound: Path) -> None:
    found = beat(sound, 6.35, 6.35 * 4.1, INCHES)
    assert found["ticks"] == pytest.approx([1, 2, 3])
    assert found["end"] == pytest.approx(4.1)
