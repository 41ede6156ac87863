"""The volts points the Method page draws are rows of the reference files, and none is made up."""

import json

from beadwright.process.volts_points import VOLTS_POINTS
from tests.calc.reference_rows import number, read_rows


def printed() -> set[tuple[str, str, str, str, float, float]]:
    found: set[tuple[str, str, str, str, float, float]] = set()
    for row in read_rows():
        if row["file"] not in ("volts_points", "volts_procedures"):
            continue
        asked = json.loads(row["inputs"])
        key = (asked["kind"], asked["size"], asked["gas"], asked["transfer"])
        for volts in row["expected"].split(".."):
            found.add((*key, float(asked["current_a"]), number(volts)))
    return found


def drawn() -> set[tuple[str, str, str, str, float, float]]:
    return {
        (*key, float(amps), float(volts))
        for key, settings in VOLTS_POINTS.items()
        for amps, volts in settings
    }


def test_every_point_is_printed() -> None:
    assert drawn() <= printed()


def test_what_is_left_out_stands_under_another_gas_of_the_same_source() -> None:
    kept = drawn()
    bare = {(kind, size, mode, amps, volts) for kind, size, _, mode, amps, volts in kept}
    for kind, size, gas, mode, amps, volts in printed() - kept:
        assert (kind, size, mode, amps, volts) in bare, (kind, size, gas, mode, amps, volts)


def test_settings_are_in_order_and_none_twice() -> None:
    for settings in VOLTS_POINTS.values():
        assert list(settings) == sorted(set(settings))
