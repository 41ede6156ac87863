"""Adapters between printed and hand-worked values of penetration and dilution and the core.

Factors are typed here, not taken from ``beadwright.units``, so that a wrong factor there shows.
Standard library and beadwright only; see ``reference_rows``.
"""

from __future__ import annotations

from beadwright.process import dilution, melted, penetration

INCH = 0.0254


def bead_in(current_a: float, volts: float, travel_in_min: float, co2: float = 0.0) -> float:
    return penetration.bead_penetration(current_a, volts, travel_in_min * INCH / 60, co2) / INCH


def co2_over_argon(co2: float) -> float:
    return bead_in(300, 28, 18, co2) / bead_in(300, 28, 18)


def bead_band_mm(current_a: float, volts: float, travel_mm_s: float) -> tuple[float, float]:
    travel = travel_mm_s / 1000
    deep = 1000 * penetration.bead_penetration(current_a, volts, travel)
    low, high = penetration.band_of(current_a, volts, travel)
    return low * deep, high * deep


def constant_band_us() -> tuple[float, float]:
    """The band of the form's constant in inches and in/min, one amp and one volt at 20 in/min."""
    deep = bead_in(1.0, 1.0, 20.0) * 20 ** (1 / 3)
    return penetration.BAND[0] * deep, penetration.BAND[1] * deep


def root_in(bead_in: float) -> tuple[float, float]:
    low, _, high = penetration.root_penetration(bead_in * INCH)
    return low / INCH, high / INCH


def root_typical_in(bead_in: float) -> float:
    return penetration.root_penetration(bead_in * INCH)[1] / INCH


def melted_mm2(leg_mm: float, root_mm: float) -> float:
    return dilution.melted_by_fillet(leg_mm / 1000, root_mm / 1000) * 1e6


def dilution_percent(melted_mm2: float, laid_mm2: float) -> float:
    return 100 * dilution.dilution(melted_mm2 / 1e6, laid_mm2 / 1e6)


def fillet_dilution_percent(
    current_a: float, volts: float, travel_in_min: float, leg_in: float
) -> float:
    """Dilution of a fillet as welded, 1.2 times the flat triangle."""
    found = melted.melted(
        "solid", "spray", current_a, volts, travel_in_min * INCH / 60, 0.5 * INCH,
        0.6 * (leg_in * INCH) ** 2, leg_in * INCH,
    )  # fmt: skip
    assert found.dilution.value is not None
    return 100 * found.dilution.value
