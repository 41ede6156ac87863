"""How deep the arc melts in: an estimate with a wide band, never a reason for a smaller leg.

    p = K · ( I⁴ / ( w · U² ) )^(1/3)

The form is Jackson's and Shrubsall's for beads on plate; K is made here from measured beads
(``penetration_points``). No function that decides a size may use this module; a test holds that.
"""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

from beadwright.errors import require_positive
from beadwright.phrases import Phrase, say
from beadwright.process.penetration_points import BEADS, Bead
from beadwright.process.transfer import Transfer
from beadwright.process.wire_kinds import KINDS, Kind

DEPTH_CONSTANT = 3.05e-6
"""K of the form, in coherent SI: [m] over the cube root of [A⁴ / (m/s · V²)].

Source: geometric mean of measured over formed depth for the 31 beads (``fit_constant``). In the
handbook's units (in, in/min) it is 0.0016; the handbooks give about 0.0012 for submerged arc and
0.0019 for CO2 (from memory), and ours lies between.
"""

BAND = (0.70, 1.40)
"""Ends of the band as shares of the estimate [-]: 29 of the 31 beads and both handbook constants
lie inside."""

STRETCHED_BAND = (0.50, 1.60)
"""The same a little outside the measured ranges [-]. Common practice; no source was found."""

MEASURED_CURRENT_A = (250.0, 550.0)
MEASURED_VOLTS = (22.0, 36.0)
MEASURED_TRAVEL_M_S = (0.006, 0.018)
"""What the beads span; slower, see ``CUSHION``."""

CUSHION = 1 / 3
"""Slower than measured the depth falls with the travel to this power [-]: the pool runs under the
arc and cushions it. That it falls: course on gas metal arc welding (found); how fast is ours."""

CO2_DEEPER = 0.19
"""How much deeper CO2 alone melts than argon mixtures at equal settings [-].

Source: constants of the form in print, about 0.0019 for CO2 (from memory) over ours of 0.0016.
"""

STRETCHED_CURRENT_A = (150.0, 600.0)
STRETCHED_VOLTS = (18.0, 40.0)
STRETCHED_TRAVEL_M_S = (0.002, 0.025)
"""Ranges outside which no estimate is given. Common practice."""

ROOT_SHARE = (0.3, 0.5, 0.7)
"""Depth past the root of a fillet over depth of a bead on plate: low, typical, high [-].

Common practice; the one known printed figure agrees: AISC's older rule for submerged-arc
fillets counts 0.11 in past the root (from memory), about 0.6 of a bead on plate at 500 A.
"""


def bead_penetration(current_a: float, volts: float, travel_m_s: float, co2: float = 0.0) -> float:
    """Return the depth a bead melts into flat plate, as the form gives it [m].

    Source: Jackson and Shrubsall, bead on plate (form from memory); ``DEPTH_CONSTANT``.

    Valid for: an open arc, wire positive, where ``outside_measured`` is empty; see ``refused``.

    Args:
        current_a: Mean current, above zero [A].
        volts: Volts at the arc, above zero [V].
        travel_m_s: Travel, above zero [m/s].
        co2: Share of CO2 in the gas, 0 to 1 [-].

    Raises:
        OutOfRangeError: If an argument is not above zero.
    """
    require_positive(current_a=current_a, volts=volts, travel_m_s=travel_m_s)
    slowest = MEASURED_TRAVEL_M_S[0]
    depth = DEPTH_CONSTANT * float(
        (current_a**4 / (max(travel_m_s, slowest) * volts**2)) ** (1 / 3)
    )
    cushion = float(min(1.0, travel_m_s / slowest) ** CUSHION)
    return depth * cushion * (1 + CO2_DEEPER * co2)


def root_penetration(bead_m: float) -> tuple[float, float, float]:
    """Return low, typical and high depth past the root of a fillet [m].

    Source: ``ROOT_SHARE``, common practice. The band of the bead's depth is added to it.

    Args:
        bead_m: Depth of the same bead on plate, above zero [m].

    Raises:
        OutOfRangeError: If the depth is not above zero.
    """
    require_positive(bead_m=bead_m)
    low, typical, high = ROOT_SHARE
    return low * bead_m, typical * bead_m, high * bead_m


def band_of(current_a: float, volts: float, travel_m_s: float) -> tuple[float, float]:
    """Return the band as shares of the estimate: wider outside what was measured [-].

    Source: ``BAND``, ``STRETCHED_BAND``.

    Args:
        current_a: Mean current [A].
        volts: Volts at the arc [V].
        travel_m_s: Travel [m/s].
    """
    return STRETCHED_BAND if outside_measured(current_a, volts, travel_m_s) else BAND


def outside_measured(current_a: float, volts: float, travel_m_s: float) -> Phrase | None:
    """Return what is outside the range of the measured beads, or None.

    Source: the span of ``penetration_points.BEADS``.

    Args:
        current_a: Mean current [A].
        volts: Volts at the arc [V].
        travel_m_s: Travel [m/s].
    """
    return _outside(
        ("current", current_a, MEASURED_CURRENT_A),
        ("volts", volts, MEASURED_VOLTS),
        ("travel", travel_m_s, MEASURED_TRAVEL_M_S),
    )


def refused(
    kind: Kind, transfer: Transfer, current_a: float, volts: float, travel_m_s: float
) -> Phrase | None:
    """Return why no estimate is given, or None if one is.

    Source: the beads were made in an open arc at steady current; nothing was found for the rest.

    Args:
        kind: Kind of wire [-].
        transfer: Transfer mode at the set point [-].
        current_a: Mean current [A].
        volts: Volts at the arc [V].
        travel_m_s: Travel [m/s].
    """
    if transfer == "short":
        return say("process.no-estimate-short")
    if transfer == "pulse":
        return say("process.no-estimate-pulse")
    if KINDS[kind].cored:
        return say("process.no-estimate-cored", kind=KINDS[kind].phrase)
    far = _outside(
        ("current", current_a, STRETCHED_CURRENT_A),
        ("volts", volts, STRETCHED_VOLTS),
        ("travel", travel_m_s, STRETCHED_TRAVEL_M_S),
    )
    return None if far is None else say("process.no-estimate-so-far-out", outside=far)


_BELOW_ABOVE: Mapping[str, tuple[Phrase, Phrase]] = MappingProxyType(
    {
        "current": (say("process.current-below"), say("process.current-above")),
        "volts": (say("process.volts-below"), say("process.volts-above")),
        "travel": (say("process.travel-below"), say("process.travel-above")),
    }
)


def _outside(*given: tuple[str, float, tuple[float, float]]) -> Phrase | None:
    """The first quantity outside its range; None if all are inside."""
    for name, value, (low, high) in given:
        below, above = _BELOW_ABOVE[name]
        if value < low:
            return below
        if value > high:
            return above
    return None


def measured_over_formed(bead: Bead) -> float:
    """Return a bead's measured depth over what the form gives for it [-].

    Source: ``penetration_points``.

    Args:
        bead: A measured bead [-].
    """
    formed = bead_penetration(bead.current_a, bead.volts, bead.travel_mm_s / 1000)
    return bead.penetration_mm / 1000 / formed


def fit_constant() -> float:
    """Return the K that is the geometric mean of the measured beads [as ``DEPTH_CONSTANT``].

    Source: ``penetration_points``.
    """
    product = 1.0
    for bead in BEADS:
        product *= measured_over_formed(bead)
    return DEPTH_CONSTANT * float(product ** (1 / len(BEADS)))
