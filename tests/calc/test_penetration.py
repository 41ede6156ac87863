"""Penetration and dilution: estimates that keep their band, refuse by name and size nothing."""

import ast
from itertools import pairwise
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from beadwright import api
from beadwright.errors import OutOfRangeError
from beadwright.process import dilution, penetration
from beadwright.process.melted import NEVER_SIZE_BY_IT, melted
from beadwright.process.penetration_points import BEADS
from beadwright.setting.dial_in import DialIn
from beadwright.sources import SOURCES
from tests.told import in_words

CORE = Path(penetration.__file__).parents[1]
DEMO = "wire=ER70S-6&dia=0.045in&gas=90/10&plate=3/8in&leg=5/16in"

amps = st.floats(150, 600)
volts = st.floats(18, 40)
travels = st.floats(0.002, 0.025)
legs = st.floats(0.003, 0.02)


def dialled(query: str) -> DialIn:
    return api.answer("dial-in", query).dialled


def test_the_constant_is_the_mean_of_the_beads(monkeypatch: pytest.MonkeyPatch) -> None:
    fitted = penetration.fit_constant()
    assert fitted == pytest.approx(penetration.DEPTH_CONSTANT, rel=1e-4)
    # Whatever it starts from, the beads give the same.
    monkeypatch.setattr(penetration, "DEPTH_CONSTANT", 2 * penetration.DEPTH_CONSTANT)
    assert penetration.fit_constant() == pytest.approx(fitted, rel=1e-9)


def test_beads_stand_within_the_band_as_said() -> None:
    low, high = penetration.BAND
    over = [penetration.measured_over_formed(bead) for bead in BEADS]
    assert len(BEADS) == 31
    assert sum(low <= each <= high for each in over) == 29
    assert min(over) >= low  # those outside went deeper, not shallower


def test_every_bead_is_a_printed_run() -> None:
    assert [bead.run for bead in BEADS] == list(range(1, 32))
    assert {bead.source for bead in BEADS} <= set(SOURCES)
    # A central composite design: sixteen corners, a pair of ends for each factor, the middle.
    levels = {bead.volts for bead in BEADS}
    assert levels == {22, 25.5, 29, 32.5, 36}
    assert {bead.current_a for bead in BEADS} == {250, 325, 400, 475, 550}
    assert {bead.travel_mm_s for bead in BEADS} == {6, 9, 12, 15, 18}
    corners = {(b.volts, b.current_a, b.travel_mm_s, b.nozzle_mm) for b in BEADS[:16]}
    assert len(corners) == 16
    assert all(b.volts == 29 and b.current_a == 400 for b in BEADS[24:])


def test_the_measured_span_is_the_beads() -> None:
    assert penetration.MEASURED_CURRENT_A == (250, 550)
    assert penetration.MEASURED_VOLTS == (22, 36)
    assert pytest.approx((0.006, 0.018)) == penetration.MEASURED_TRAVEL_M_S


@given(amps, volts, travels, st.floats(1.01, 1.5))
def test_deeper_with_current_shallower_with_volts_and_speed(
    current_a: float, u: float, travel: float, more: float
) -> None:
    depth = penetration.bead_penetration(current_a, u, travel)
    assert penetration.bead_penetration(more * current_a, u, travel) == pytest.approx(
        depth * more ** (4 / 3)
    )
    assert penetration.bead_penetration(current_a, more * u, travel) == pytest.approx(
        depth * more ** (-2 / 3)
    )
    faster = penetration.bead_penetration(current_a, u, more * travel)
    if travel >= 0.006:
        assert faster == pytest.approx(depth * more ** (-1 / 3))
    elif more * travel <= 0.006:
        assert faster == pytest.approx(depth * more ** (1 / 3))


def test_slower_than_measured_is_shallower_by_the_cube_root() -> None:
    """The pool runs under the arc: at half the slowest measured travel 0.7937 of its depth."""
    slowest = penetration.bead_penetration(300, 28, 0.006)
    assert penetration.bead_penetration(300, 28, 0.003) == pytest.approx(0.7937 * slowest, rel=1e-4)
    assert penetration.bead_penetration(300, 28, 0.0059) < slowest
    assert penetration.bead_penetration(300, 28, 0.0061) < slowest


@pytest.mark.parametrize("travel", [0.004, 0.008])
def test_co2_melts_deeper_by_its_share(travel: float) -> None:
    """The constant of CO2 over that of argon, 0.0019 / 0.0016, to a fifth more in CO2 alone."""
    argon = penetration.bead_penetration(300, 28, travel)
    assert penetration.bead_penetration(300, 28, travel, 1.0) == pytest.approx(1.19 * argon)
    assert penetration.bead_penetration(300, 28, travel, 0.25) == pytest.approx(1.0475 * argon)


@given(st.floats(0.0001, 0.02))
def test_the_root_gets_a_share(bead: float) -> None:
    low, typical, high = penetration.root_penetration(bead)
    assert 0 < low < typical < high < bead


@given(st.floats(1e-7, 1e-3), st.floats(1e-7, 1e-3), st.floats(1.01, 3))
def test_dilution_is_a_share_and_grows_with_what_is_melted(
    molten: float, laid: float, more: float
) -> None:
    share = dilution.dilution(molten, laid)
    assert 0 < share < 1
    assert dilution.dilution(more * molten, laid) > share
    assert share + dilution.dilution(laid, molten) == pytest.approx(1)


@given(legs, st.floats(0.0005, 0.005))
def test_two_triangles_meet_at_the_root(leg: float, root: float) -> None:
    # The same section by the shoelace: toe, root on the bisector, toe, corner of the plates.
    deep = root * 0.5**0.5
    corners = [(leg, 0.0), (-deep, -deep), (0.0, leg), (0.0, 0.0)]
    twice = sum(a[0] * b[1] - a[1] * b[0] for a, b in pairwise([*corners, corners[0]]))
    assert dilution.melted_by_fillet(leg, root) == pytest.approx(abs(twice) / 2)


@given(amps, volts, travels, legs)
def test_estimates_stand_inside_their_bands(
    current_a: float, u: float, travel: float, leg: float
) -> None:
    found = melted("solid", "spray", current_a, u, travel, 0.05, 0.6 * leg**2, leg)
    for quantity in (found.penetration, found.dilution):
        assert quantity.value is not None
        assert quantity.low is not None
        assert quantity.high is not None
        assert 0 < quantity.low < quantity.value < quantity.high
        assert quantity.sources
    assert found.dilution.high is not None
    assert found.dilution.high < 1


def test_refusals_come_from_one_place() -> None:
    assert in_words(penetration.refused("solid", "spray", 300, 28, 0.008)) == ""
    assert in_words(penetration.refused("solid", "globular", 300, 28, 0.008)) == ""
    assert in_words(penetration.refused("solid", "spray", 100, 28, 0.008)).startswith("no estimate")


@pytest.mark.parametrize("bad", [0.0, -1.0, float("nan"), float("inf")])
def test_nonsense_is_refused(bad: float) -> None:
    with pytest.raises(OutOfRangeError):
        penetration.bead_penetration(bad, 28, 0.008)
    with pytest.raises(OutOfRangeError):
        penetration.bead_penetration(300, bad, 0.008)
    with pytest.raises(OutOfRangeError):
        penetration.bead_penetration(300, 28, bad)
    with pytest.raises(OutOfRangeError):
        penetration.root_penetration(bad)
    with pytest.raises(OutOfRangeError):
        dilution.dilution(bad, 1e-5)
    with pytest.raises(OutOfRangeError):
        dilution.dilution(1e-5, bad)
    with pytest.raises(OutOfRangeError):
        dilution.melted_by_fillet(bad, 0.001)
    with pytest.raises(OutOfRangeError):
        dilution.melted_by_fillet(0.008, bad)


def _imports(path: Path) -> set[str]:
    """Modules of the core a module imports."""
    found: set[str] = set()
    for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
        if isinstance(node, ast.ImportFrom) and node.module is not None:
            found.add(node.module.rpartition(".")[2])
            if node.module.startswith("beadwright"):
                found |= {alias.name for alias in node.names}
    return found


def test_nothing_that_decides_a_size_knows_of_it() -> None:
    users = {path.stem: _imports(path) for path in CORE.rglob("*.py")}
    deep = {name for name, used in users.items() if used & {"penetration", "dilution"}}
    assert deep == {"melted"}
    assert {name for name, used in users.items() if "melted" in used} == {
        "dial_in",
        "dial_in_report",
    }
    assert "melted" not in users["plan"] | users["fillets"]


@pytest.mark.parametrize("query", [DEMO, "plate=1/4in&joint=square", "plate=1/2in&leg=3/8in"])
def test_were_it_ten_times_as_deep_no_setting_would_move(
    query: str, monkeypatch: pytest.MonkeyPatch
) -> None:
    before = dialled(query)
    monkeypatch.setattr(penetration, "DEPTH_CONSTANT", 10 * penetration.DEPTH_CONSTANT)
    after = dialled(query)
    assert after.settings == before.settings
    assert after.plan == before.plan
    assert after.notes == before.notes


def test_the_demo_s_root_and_dilution() -> None:
    outcome = dialled(DEMO).outcome
    assert outcome is not None
    deep, share = outcome.penetration, outcome.dilution
    assert deep.value is not None
    assert share.value is not None
    # Common practice: spray at some 300 A reaches 1 to 3 mm past the root.
    assert 0.001 <= deep.value <= 0.003
    assert 0.10 <= share.value <= 0.40


def test_the_terminal_says_it_beside_the_number() -> None:
    report = api.answer_json("dial-in", DEMO)["answer"]
    for name in ("penetration", "dilution"):
        assert report[name]["note"] == NEVER_SIZE_BY_IT
        assert report[name]["low"] < report[name]["value"] < report[name]["high"]
        assert report[name]["sources"]
    thin = api.answer_json("dial-in", "plate=1/8in&transfer=short")["answer"]
    assert thin["penetration"]["value"] is None
    assert "short circuit" in thin["penetration"]["because"]


def test_the_ends_of_the_measured_beads_are_measured() -> None:
    """The beads run from 250 A, 22 V and 6 mm/s to 550 A, 36 V and 18 mm/s."""
    assert in_words(penetration.outside_measured(250, 22, 0.006)) == ""
    assert in_words(penetration.outside_measured(550, 36, 0.018)) == ""
    assert in_words(penetration.outside_measured(550.1, 36, 0.018)) == "current above"
    assert in_words(penetration.outside_measured(550, 36.1, 0.018)) == "volts above"
    assert in_words(penetration.outside_measured(550, 36, 0.01801)) == "travel speed above"
