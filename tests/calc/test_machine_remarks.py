"""Where the power source holds a plan down, the answer says so and what it would be."""

import pytest

from beadwright.job.job_query import read_query
from beadwright.setting.dial_in import dial_in
from tests.told import in_words

PLATE = "plate=3/8in&leg=5/16in&wire=ER70S-6&dia=0.045in&gas=90/10&position=2F"


def told(limits: str) -> list[str]:
    notes = dial_in(read_query(f"{PLATE}&{limits}").job).notes
    return [in_words(note.phrase) for note in notes if note.field == "machine_amps"]


@pytest.mark.parametrize(
    ("limits", "why"),
    [
        ("rated_amps=300A&duty=60%25", "Your machine stops at 300 A"),
        # 400 A at 20 % is 400 x sqrt(0.2 / 0.5) = 253 A with the arc on half the time.
        ("rated_amps=400A&duty=20%25", "Your machine holds 253 A with the arc on 50% of the time"),
        ("machine_amps=280A", "Your machine stops at 280 A"),
    ],
)
def test_the_limit_is_named(limits: str, why: str) -> None:
    [text] = told(limits)
    assert text.startswith(why)
    assert "Without it, about 3" in text


@pytest.mark.parametrize("limits", ["", "rated_amps=450A&duty=60%25", "machine_amps=450A"])
def test_a_machine_with_room_is_not_mentioned(limits: str) -> None:
    assert told(limits) == []
