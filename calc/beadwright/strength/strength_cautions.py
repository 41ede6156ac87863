"""What is said beside every strength: who rules, what is not checked, what is counted."""

from __future__ import annotations

from collections.abc import Iterator
from math import inf

from beadwright.phrases import Amount, say
from beadwright.results import Note
from beadwright.strength.resistance_en import THINNEST_M
from beadwright.strength.steel_strength import LEVEL_PA, ROUND_OF
from beadwright.strength.strength_task import StrengthTask
from beadwright.tolerance import REL_TOL


def cautions(task: StrengthTask) -> Iterator[Note]:
    """Yield what is said beside every strength: who rules, what is not checked, what is counted.

    Args:
        task: What was asked [-].
    """
    if task.demo_load:
        yield Note(
            "caution",
            say("strength.demo-load"),
            "invented",
            "py",
        )
    yield Note("caution", say("strength.licensed"), "practice")
    yield Note("caution", say("strength.steady-load"), "practice")
    yield Note("caution", say("strength.not-checked"), "practice")
    basis = {"asd": "strength.service-loads", "lrfd": "strength.factored-loads"}
    loads = say(basis.get(task.code, "strength.design-loads"))
    yield Note("note", loads, "en-1993-1-8" if task.european else "aisc-j2.4-strength",
               "design_code")  # fmt: skip
    for steel in dict.fromkeys((task.steel, task.steel2)):
        yield Note(
            "caution", say("strength.steel-counted", steel=steel.grade), steel.source, "steel"
        )
        if steel.grade in ROUND_OF:
            other = ROUND_OF[steel.grade]
            yield Note(
                "caution",
                say("strength.shaped-tube", steel=steel.grade, other=other),
                steel.source,
                "steel",
            )
    yield from _metal(task)


def _metal(task: StrengthTask) -> Iterator[Note]:
    """Sheet that another code rules, and filler stronger than its code asks."""
    thinner = task.job.thinner_m
    if task.european:
        if thinner < THINNEST_M - REL_TOL:
            yield Note("caution", say("strength.sheet-en"), "en-1993-1-8-sheet", "plate")
        return
    if task.job.is_sheet:
        yield Note("caution", say("strength.sheet-us"), "aws-d1.3", "plate")
    matching, grade = min((s.matching or inf, s.grade) for s in (task.steel, task.steel2))
    if task.filler_pa > (matching + LEVEL_PA) * (1 + REL_TOL):
        yield Note(
            "caution",
            say(
                "strength.filler-over-matching",
                filler=Amount(task.filler_pa, "stress"),
                matching=Amount(matching, "stress"),
                steel=grade,
            ),
            "aisc-j2.5-filler",
            "filler_strength",
        )
