"""Measured beads behind the penetration constant: settings as printed, and their depth.

One data set of 31 beads, a central composite design of four factors at five levels, read in a
published notebook that copied it from an experiment. The copy names volts, current, travel and
nozzle-to-plate distance, but not the kind of wire, the gas or the plate: so the constant made of
them stands for an open arc in general, and the band is kept wide enough for what is not said.
The copy prints 22.5 V for the lower level in one place and 25.5 V in another; five equal steps
from 22 to 36 V make it 25.5. Units are the source's own [A, V, mm/s, mm].
"""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Bead:
    """A bead on plate as measured.

    Attributes:
        run: Number in the data set.
        volts: Arc volts [V].
        current_a: Current [A].
        travel_mm_s: Travel [mm/s].
        nozzle_mm: Nozzle to plate [mm].
        penetration_mm: Depth below the plate's surface [mm].
        source: Source id.
    """

    run: int
    volts: float
    current_a: float
    travel_mm_s: float
    nozzle_mm: float
    penetration_mm: float
    source: str = "bead-runs"


BEADS: tuple[Bead, ...] = (
    Bead(1, 25.5, 325, 9, 23.5, 3.94),
    Bead(2, 32.5, 325, 9, 23.5, 5.08),
    Bead(3, 25.5, 475, 9, 23.5, 5.12),
    Bead(4, 32.5, 475, 9, 23.5, 6.40),
    Bead(5, 25.5, 325, 15, 23.5, 3.05),
    Bead(6, 32.5, 325, 15, 23.5, 3.59),
    Bead(7, 25.5, 475, 15, 23.5, 4.79),
    Bead(8, 32.5, 475, 15, 23.5, 5.37),
    Bead(9, 25.5, 325, 9, 30.5, 3.33),
    Bead(10, 32.5, 325, 9, 30.5, 3.18),
    Bead(11, 25.5, 475, 9, 30.5, 7.31),
    Bead(12, 32.5, 475, 9, 30.5, 5.77),
    Bead(13, 25.5, 325, 15, 30.5, 2.60),
    Bead(14, 32.5, 325, 15, 30.5, 2.08),
    Bead(15, 25.5, 475, 15, 30.5, 6.06),
    Bead(16, 32.5, 475, 15, 30.5, 4.19),
    Bead(17, 22, 400, 12, 27, 4.44),
    Bead(18, 36, 400, 12, 27, 5.30),
    Bead(19, 29, 250, 12, 27, 2.35),
    Bead(20, 29, 550, 12, 27, 5.76),
    Bead(21, 29, 400, 6, 27, 4.88),
    Bead(22, 29, 400, 18, 27, 3.24),
    Bead(23, 29, 400, 12, 20, 4.34),
    Bead(24, 29, 400, 12, 34, 3.43),
    Bead(25, 29, 400, 12, 27, 3.60),
    Bead(26, 29, 400, 12, 27, 3.66),
    Bead(27, 29, 400, 12, 27, 4.37),
    Bead(28, 29, 400, 12, 27, 4.17),
    Bead(29, 29, 400, 12, 27, 3.94),
    Bead(30, 29, 400, 12, 27, 4.30),
    Bead(31, 29, 400, 12, 27, 3.68),
)
