"""The burn-off band on sources the fit has not seen: each source left out whole, in turn."""

import pytest

from beadwright.process import burnoff_fit
from beadwright.process.burnoff import CONSTANTS
from beadwright.process.burnoff_points import POINTS
from beadwright.process.wire_kinds import KINDS
from beadwright.process.wires import wire_of

LEAST_CURRENTS = 3
"""Fewer different currents than these fix two constants by chance."""


def errors_left_out(monkeypatch: pytest.MonkeyPatch) -> list[tuple[str, float, float]]:
    """What was left out, how far the fit without it lies from it, and the band stated."""
    found: list[tuple[str, float, float]] = []
    for (kind, size), constants in CONSTANTS.items():
        points = [p for p in POINTS if (p.kind, p.size) == (kind, size) and p.fitted]
        for source in sorted({point.source for point in points}):
            rest = tuple(point for point in points if point.source != source)
            held = [point for point in points if point.source == source]
            if len({point.current_a for point in rest}) < LEAST_CURRENTS:
                continue
            monkeypatch.setattr(burnoff_fit, "POINTS", rest)
            made = burnoff_fit.fit(kind, size)
            wire = wire_of(KINDS[kind].representative, size)
            errors = burnoff_fit.relative_errors(held, wire, made.phi_v, made.r_ohm_m)
            found += [(f"{kind} {size} {source}", error, constants.band) for error in errors]
    return found


def test_of_a_source_left_out_seven_in_ten_points_stand_within_the_band(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    """The band holds nine in ten of the points fitted; of points not fitted it holds fewer.

    50 of 68 when this was written. The README says so.
    """
    found = errors_left_out(monkeypatch)
    out = [f"{name}: {error:+.0%}, band {band:.0%}" for name, error, band in found
           if abs(error) > band]  # fmt: skip
    assert len(found) > 60
    assert 1 - len(out) / len(found) >= 0.7, "\n".join(out)


def test_no_source_left_out_is_missed_by_more_than_half(monkeypatch: pytest.MonkeyPatch) -> None:
    far = [(name, error) for name, error, _ in errors_left_out(monkeypatch) if abs(error) > 0.5]
    assert far == []
