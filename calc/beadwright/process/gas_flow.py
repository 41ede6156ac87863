"""How much gas to run: by nozzle bore, current, position and helium."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from math import sqrt
from types import MappingProxyType

from beadwright.errors import UnknownEntryError, require_positive
from beadwright.measures import INCH_M
from beadwright.process.compressibility import molar_mass
from beadwright.process.gas_components import COMPONENTS
from beadwright.process.gases import Gas
from beadwright.process.positions import Orientation
from beadwright.typed_number import quoted
from beadwright.units import read

_FT3_H = 0.3048**3 / 3600
OUT_OF_POSITION_FT3_H = 10.0
"""Extra flow out of position, where a gas heavier than air falls away from the weld [ft³/h].

Source: trade textbook, 10 to 20.
"""

MOST_USUAL_FT3_H = 35.0
"""Most that is set out of position under a usual nozzle [ft³/h]. Source: handbook, 25-30 ft³/h and
35 ft³/h (found): 30 to 35 do out of position too, more only adds turbulence."""


@dataclass(frozen=True, slots=True)
class Nozzle:
    """A gas nozzle and the flow of argon mixes or CO2 it takes.

    Attributes:
        name: Bore as said in the shop.
        bore_m: Bore [m].
        least: Flow under which air gets in [m³/s].
        usual: Flow usually set in still air, flat [m³/s].
        most: Flow over which the stream turns turbulent and drags air in [m³/s].
        top_a: Current up to which it is the usual one [A].
    """

    name: str
    bore_m: float
    least: float
    usual: float
    most: float
    top_a: float


def _nozzle(
    name: str, bore_in: float, ft3_h: tuple[float, float, float], top_a: float
) -> tuple[str, Nozzle]:
    least, usual, most = (flow * _FT3_H for flow in ft3_h)
    return name, Nozzle(name, bore_in * INCH_M, least, usual, most, top_a)


NOZZLES: Mapping[str, Nozzle] = MappingProxyType(
    dict(
        (
            _nozzle("1/2in", 1 / 2, (18, 25, 40), 200),
            _nozzle("5/8in", 5 / 8, (22, 33, 55), 350),
            _nozzle("3/4in", 3 / 4, (30, 38, 65), float("inf")),
        )
    )
)
"""Nozzles by bore.

Source: paper on the control of shielding gas, from memory: 1/2 in 18 at least, 22-27 usual, 40 at
most; 5/8 in 22, 30-35, 55; 3/4 in 30, 30-40, 65 ft³/h. At the most the Reynolds number of
argon in the bore is 2300 to 2600 (a test holds it). Nozzle by current: common practice.
"""


@dataclass(frozen=True, slots=True)
class GasFlow:
    """Gas to run.

    Attributes:
        nozzle: The nozzle it is for.
        low: Least flow [m³/s].
        usual: Flow to set [m³/s].
        high: Most flow [m³/s].
        argon_meter: What a flowmeter made for argon shows at the flow to set [m³/s].
        sources: Source ids.
    """

    nozzle: Nozzle
    low: float
    usual: float
    high: float
    argon_meter: float
    sources: tuple[str, ...]


def nozzle_of(text: str) -> Nozzle:
    """Return a nozzle by its bore.

    Args:
        text: Such as ``5/8in``, ``5/8`` or ``16mm`` [-].

    Raises:
        UnknownEntryError: If no nozzle of that bore is in the table.
    """
    plain = text.strip().lower()
    try:
        bore = read(plain if plain[-1:].isalpha() else f"{plain}in", "length", "us")
    except ValueError as error:
        raise UnknownEntryError(_not_known(text)) from error
    for nozzle in NOZZLES.values():
        if abs(nozzle.bore_m - bore) < 0.5e-3:
            return nozzle
    raise UnknownEntryError(_not_known(text))


def _not_known(text: str) -> str:
    return f"{quoted(text)} is no nozzle bore in the table; it has {', '.join(NOZZLES)}"


def usual_nozzle(current_a: float) -> Nozzle:
    """Return the nozzle usual for a current. Common practice.

    Args:
        current_a: Mean current, above zero [A].

    Raises:
        OutOfRangeError: If the current is not above zero.
    """
    require_positive(current_a=current_a)
    return next(nozzle for nozzle in NOZZLES.values() if current_a <= nozzle.top_a)


def lightness(gas: Gas) -> float:
    """Return how much more of a gas gives the same cover as argon [-].

    An equal push on the air (density times speed squared) needs flow as one over the root of
    density; the float or orifice of a flowmeter follows the same law. One where there is no helium:
    the nozzles' flows are those of argon mixes and CO2 as they are.

    Source: density by molar mass, ideal gas; power-source manual: 1.5 to 3 times for helium mixes.

    Args:
        gas: The gas [-].
    """
    if gas.helium == 0:
        return 1.0
    return max(1.0, sqrt(COMPONENTS["argon"].substance.molar_kg / molar_mass(gas)))


def gas_flow(
    gas: Gas, current_a: float, orientation: Orientation, nozzle: Nozzle | None = None
) -> GasFlow:
    """Return the gas to run.

    Source: ``NOZZLES``; out of position 10 ft³/h more (trade textbook, flow rates), to
    ``MOST_USUAL_FT3_H`` and never over the nozzle's most; with helium ``lightness`` times as much.

    Args:
        gas: The gas [-].
        current_a: Mean current, above zero [A].
        orientation: Position in words: out of position, heavy gas falls away from the weld [-].
        nozzle: The nozzle, or None for the usual one at this current [-].

    Raises:
        OutOfRangeError: If the current is not above zero.
    """
    falls_away = orientation not in ("flat", "horizontal")
    held = nozzle if nozzle is not None else usual_nozzle(current_a)
    more = OUT_OF_POSITION_FT3_H * _FT3_H if falls_away else 0.0
    # Heavy gas falls away out of position; much more than usual would draw air in.
    usual = min(max(held.usual, min(held.usual + more, MOST_USUAL_FT3_H * _FT3_H)), held.most)
    factor = lightness(gas)
    sources = ["gas-flow-nozzle", "gas-flow-handbook"]
    if falls_away:
        sources.append("gas-flow-textbook")
    if factor > 1:
        sources += ["gas-density", "gas-flow-helium"]
    return GasFlow(
        held, held.least * factor, usual * factor, held.most * factor, usual, tuple(sources)
    )
