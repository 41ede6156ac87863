"""What is typed is held on Passes as Dial in holds it, over many jobs and values."""

from collections.abc import Iterator
from random import Random

import pytest

from beadwright.passes.passes_page import PassesAnswer, passes_answer
from beadwright.phrases import Phrase
from beadwright.results import Note
from beadwright.setting.remarks import mode_note

JOBS = (
    "plate=3/8in&leg=5/16in",
    "plate=1/4in&leg=1/4in&position=3F-up",
    "plate=3/4in&leg=1/2in",
    "plate=16ga&leg=1/16in",
    "plate=3/8in&leg=5/16in&wire=E71T-1M&gas=75/25",
    "plate=3/8in&leg=5/16in&transfer=pulse",
    "joint=v&plate=1/2in&position=1G",
    "joint=v&plate=3/8in&position=3G-up&gap=1/8in",
    "joint=v&plate=1/2in&backing=steel&position=2G",
    "joint=square&plate=1/8in&position=1G",
    "joint=square&plate=3/8in&position=1G&back=gouge",
    "joint=double-v&plate=1in&position=1G",
    "joint=tee-bevel&plate=1/2in",
    "joint=plug&plate=3/8in",
)
VALUES = {
    "wfs": [f"{feed}in/min" for feed in (60, 100, 150, 200, 250, 300, 400, 500, 600, 800, 1000)],
    "volts": [f"{volts}V" for volts in (14, 16, 18, 20, 22, 24, 26, 28, 30, 33, 36)],
    "travel": [f"{travel}in/min" for travel in (2, 4, 6, 8, 10, 12, 15, 20, 25, 30, 40, 60, 100)],
    "ctwd": ["1/4in", "3/8in", "1/2in", "5/8in", "3/4in", "1in", "1-1/4in"],
}
SIZE = {
    "setting.faster-leg-short", "setting.faster-half-crown", "setting.slower-overwelds-leg",
    "setting.slower-heaps-crown", "setting.less-feed-short", "setting.more-feed-overwelds",
}  # fmt: skip
"""Reasons that a bead is too large or too small: Passes lays more of them, or fewer."""


def keys_of(phrase: Phrase) -> set[str]:
    """The id of a phrase and of all it holds."""
    held = [value for _, value in phrase.parameters if isinstance(value, Phrase)]
    return {phrase.key}.union(*(keys_of(each) for each in held))


def of_typed(answer: PassesAnswer, fields: set[str]) -> Iterator[Note]:
    """Dial in's warnings about typed settings, but for those a number of beads answers."""
    for note in answer.dialled.notes:
        mode = note.key == "setting.other-mode"
        sized = note.key in ("setting.lays-over", "setting.lays-under") or (
            keys_of(note.phrase) & SIZE
        )
        about = note.field in fields or (mode and fields & {"wfs", "volts", "ctwd"})
        if note.level != "note" and about and not sized:
            yield note


def told_too(answer: PassesAnswer, note: Note) -> bool:
    """Whether Passes says the same of a typed setting: the same way out, or in the same words."""
    word = note.key.rpartition(".")[2].partition("-")[0]
    # Where a limit of the wire binds, its usual range is not told beside it.
    side = {"under": "below", "over": "above"}.get(word, word)
    for other in answer.notes:
        if note.key in keys_of(other.phrase):
            return True
        same = other.field.rpartition("_")[2] == note.field
        if same and side in ("below", "above") and other.key.startswith(f"passes.{side}-window"):
            return True
        if note.level == "stop" and other.level in ("stop", "out") and same:
            return True
    return False


@pytest.mark.parametrize("field", sorted(VALUES))
@pytest.mark.parametrize("job", JOBS)
def test_every_warning_about_a_typed_setting_is_told(job: str, field: str) -> None:
    for value in VALUES[field]:
        answer = passes_answer(f"{job}&{field}={value}")
        missing = [note for note in of_typed(answer, {field}) if not told_too(answer, note)]
        assert not missing, f"{job}&{field}={value}"


def test_two_settings_that_do_not_go_together_are_out_on_both_pages() -> None:
    """Which of them is out depends on what is planned around them."""
    chance, met = Random(1), 0
    for _ in range(150):
        fields = chance.sample(sorted(VALUES), 2)
        query = "&".join(f"{field}={chance.choice(VALUES[field])}" for field in fields)
        answer = passes_answer(f"{chance.choice(JOBS)}&{query}")
        wrong = [note for note in of_typed(answer, set(fields)) if note.level != "caution"]
        if wrong:
            met += 1
            assert any(note.level in ("stop", "out") for note in answer.notes), query
    assert met > 50


def test_feed_at_which_the_arc_leaves_spray() -> None:
    """60 in/min of 0.045 in wire: 58 A, far under where spray starts."""
    notes = [note for note in passes_answer(f"{JOBS[0]}&wfs=60in/min").notes if note.level == "out"]
    assert [note.key for note in notes] == ["passes.below-window", "passes.of-beads"]
    assert mode_note("globular", "spray").phrase in [held for _, held in notes[1].phrase.parameters]
