"""How much gas to run: by nozzle, current, position and helium."""

from collections.abc import Callable
from math import pi
from typing import cast

import CoolProp.CoolProp
import pytest
from hypothesis import given
from hypothesis import strategies as st

from beadwright.api import answer
from beadwright.errors import OutOfRangeError, UnknownEntryError
from beadwright.process.compressibility import normal_density, parts_of
from beadwright.process.gas_flow import NOZZLES, gas_flow, lightness, nozzle_of, usual_nozzle
from beadwright.process.gases import Gas
from beadwright.process.positions import Orientation
from beadwright.sources import SOURCES
from tests.calc.mixes import gases
from tests.told import in_words

FT3_H = 0.3048**3 / 3600


PURE = {"argon": "Argon", "co2": "CarbonDioxide", "oxygen": "Oxygen", "helium": "Helium"}


props = cast("Callable[..., float]", CoolProp.CoolProp.PropsSI)


LIES: tuple[Orientation, ...] = ("flat", "horizontal", "vertical-up", "vertical-down", "overhead")


@given(gases(), st.floats(20, 600), st.sampled_from(LIES), st.sampled_from([None, *NOZZLES]))
def test_flow_stands_inside_its_nozzle(
    gas: Gas, amps: float, orientation: Orientation, name: str | None
) -> None:
    nozzle = NOZZLES[name] if name else None
    flow = gas_flow(gas, amps, orientation, nozzle)
    assert flow.nozzle == (nozzle or usual_nozzle(amps))
    assert flow.low < flow.usual <= flow.high * (1 + 1e-12)
    assert flow.argon_meter * lightness(gas) == pytest.approx(flow.usual)
    assert flow.usual >= gas_flow(gas, amps, "flat", nozzle).usual
    assert set(flow.sources) <= set(SOURCES)
    assert ("gas-density" in flow.sources) == (flow.argon_meter != flow.usual)
    assert ("gas-flow-textbook" in flow.sources) == (orientation not in ("flat", "horizontal"))


@given(st.floats(20, 600), st.floats(20, 600))
def test_more_current_never_asks_a_smaller_nozzle(one: float, other: float) -> None:
    low, high = sorted((one, other))
    assert usual_nozzle(low).bore_m <= usual_nozzle(high).bore_m


@given(gases())
def test_helium_asks_more_flow(gas: Gas) -> None:
    # Second opinion: densities of the pure gases by reference equations of state.
    density = sum(
        share * props("D", "T", 294.26, "P", 101_325, PURE[name])
        for name, share in parts_of(gas).items()
    )
    argon = props("D", "T", 294.26, "P", 101_325, "Argon")
    expected = max(1.0, (argon / density) ** 0.5) if gas.helium else 1.0
    assert lightness(gas) == pytest.approx(expected, rel=0.004)
    assert normal_density(gas) == pytest.approx(density, rel=0.008)


@pytest.mark.parametrize("name", list(NOZZLES))
def test_the_most_flow_is_where_a_pipe_turns_turbulent(name: str) -> None:
    # Reynolds number of argon in the bore; a pipe's flow turns over from about 2300 (textbooks of
    # fluid mechanics). The paper's three figures stand there, and so does none of the usual ones.
    nozzle = NOZZLES[name]
    viscosity = props("V", "T", 294.26, "P", 101_325, "Argon")
    density = props("D", "T", 294.26, "P", 101_325, "Argon")

    def reynolds(flow: float) -> float:
        return 4 * flow * density / (pi * nozzle.bore_m * viscosity)

    assert 2200 < reynolds(nozzle.most) < 2700
    assert reynolds(nozzle.usual) < 1800


def test_nozzles_are_read_as_said() -> None:
    # Half a millimeter about 15.875 mm is still that nozzle.
    for text in ("5/8in", "5/8", "0.625in", "16mm", "15.9 mm", "0.016m", "16.37mm"):
        assert nozzle_of(text).name == "5/8in"
    for text in ("1in", "x", "", "16.39mm"):
        with pytest.raises(UnknownEntryError, match="1/2in, 5/8in, 3/4in"):
            nozzle_of(text)
    with pytest.raises(OutOfRangeError, match="current_a"):
        usual_nozzle(0)


def test_a_little_helium_is_more_gas_too() -> None:
    """4 % He: √(39.948 / (0.96 × 39.948 + 0.04 × 4.0026)) = 1.0185, and where that comes from."""
    flow = gas_flow(Gas("96 Ar/4 He", 0.96, 0.0, 0.0, "I3", 0.04), 250, "flat")
    assert flow.usual / flow.argon_meter == pytest.approx(1.0185, abs=1e-4)
    assert "gas-flow-helium" in flow.sources


def test_a_nozzle_asked_for_moves_the_flow() -> None:
    small, large = (
        answer("dial-in", f"plate=3/8in&nozzle={bore}").dialled.outcome
        for bore in ("1/2in", "3/4in")
    )
    assert small is not None
    assert large is not None
    assert small.flow.nozzle.name == "1/2in"
    assert small.gas_flow.value == pytest.approx(25 * FT3_H)
    assert small.gas_flow.high == pytest.approx(40 * FT3_H)
    assert "1/2in" in in_words(small.gas_flow.high_by)
    assert large.gas_flow.high == pytest.approx(65 * FT3_H)
