"""Whole published operating rows, as printed: the measure of Dial in.

A row says what a table runs on a joint: wire feed, amps, volts, travel. Rows without a joint hold
feed, amps and volts only. Units are the tables' own [mm, in/min, A, V, cm/min]. Tables marked as
left out took no part in making any constant; whole tables are left out, never single rows.
"""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Setup:
    """What the rows of a table share.

    Attributes:
        wire: AWS classification.
        gas: The gas.
        position: AWS position, or empty where no joint is printed.
        joint: Kind of joint, or empty.
        transfer: Mode printed, or empty: the plan's own is taken.
        backing: What lies under a butt.
    """

    wire: str
    gas: str
    position: str
    joint: str
    transfer: str
    backing: str


@dataclass(frozen=True, slots=True)
class Row:
    """One printed row; None where nothing is printed.

    Attributes:
        size: Inch name of the wire diameter.
        thickness_mm: Plate [mm].
        leg_mm: Fillet leg [mm].
        gap_mm: Root opening [mm].
        feed_in_min: Wire feed [in/min].
        amps_low: Current, low end [A].
        amps_high: High end [A].
        volts_low: Volts, low end [V].
        volts_high: High end [V].
        travel_low_cm_min: Travel, low end [cm/min].
        travel_high_cm_min: High end [cm/min].
        tip_to_work_mm: Contact tip to work [mm].
    """

    size: str
    thickness_mm: float | None
    leg_mm: float | None
    gap_mm: float | None
    feed_in_min: float | None
    amps_low: float
    amps_high: float
    volts_low: float | None
    volts_high: float | None
    travel_low_cm_min: float | None
    travel_high_cm_min: float | None
    tip_to_work_mm: float | None

    @property
    def amps(self) -> float:
        """Middle of the printed current [A]."""
        return (self.amps_low + self.amps_high) / 2

    @property
    def volts(self) -> float | None:
        """Middle of the printed volts [V]."""
        if self.volts_low is None or self.volts_high is None:
            return None
        return (self.volts_low + self.volts_high) / 2


@dataclass(frozen=True, slots=True)
class ProcedureTable:
    """A published table.

    Attributes:
        name: Short name.
        words: What it holds.
        source: Source id.
        left_out: True if no constant was made from it.
        setup: What its rows share.
        rows: Its rows.
    """

    name: str
    words: str
    source: str
    left_out: bool
    setup: Setup
    rows: tuple[Row, ...]


TABLES: tuple[ProcedureTable, ...] = (
    ProcedureTable(
        "fillet-co2",
        "downward fillets in CO2",
        "power-source-conditions",
        False,
        Setup("ER70S-6", "CO2", "1F", "tee", "", "none"),
        (
            Row("0.035in", 1.2, 2.75, None, None, 70, 100, 18, 19, 50, 60, None),
            Row("0.035in", 1.6, 2.75, None, None, 90, 120, 18, 20, 50, 60, None),
            Row("0.035in", 2, 3.25, None, None, 100, 130, 19, 20, 50, 60, None),
            Row("0.045in", 2.3, 3.25, None, None, 120, 140, 19, 21, 50, 60, None),
            Row("0.045in", 3.2, 3.5, None, None, 130, 170, 20, 22, 45, 55, None),
            Row("0.045in", 4.5, 4.25, None, None, 200, 250, 23, 26, 45, 55, None),
            Row("0.045in", 6, 5.5, None, None, 280, 300, 29, 32, 40, 50, None),
            Row("0.045in", 9, 7, None, None, 300, 350, 32, 34, 40, 45, None),
            Row("0.045in", 12, 10, None, None, 320, 350, 33, 36, 25, 25, None),
        ),
    ),
    ProcedureTable(
        "butt-co2",
        "square butts without backing in CO2",
        "power-source-conditions",
        False,
        Setup("ER70S-6", "CO2", "1G", "square", "", "none"),
        (
            Row("0.035in", 1.2, None, 0, None, 70, 80, 17, 18, 45, 55, None),
            Row("0.035in", 1.6, None, 0, None, 80, 100, 18, 19, 45, 55, None),
            Row("0.035in", 2, None, 0.25, None, 100, 110, 19, 20, 50, 55, None),
            Row("0.035in", 2.3, None, 0.75, None, 110, 130, 19, 20, 50, 55, None),
            Row("0.045in", 3.2, None, 1.1, None, 130, 150, 19, 21, 40, 50, None),
            Row("0.045in", 4.5, None, 1.35, None, 150, 170, 21, 23, 40, 50, None),
            Row("0.045in", 6, None, 1.35, None, 220, 260, 24, 26, 40, 50, None),
            Row("0.045in", 9, None, 1.35, None, 320, 340, 32, 34, 45, 55, None),
        ),
    ),
    ProcedureTable(
        "butt-argon",
        "square butts, argon and CO2; 80/20 taken, no share printed",
        "power-source-conditions",
        True,
        Setup("ER70S-6", "80/20", "1G", "square", "short", "none"),
        (
            Row("0.035in", 1, None, 0, None, 50, 55, 13, 15, 40, 55, None),
            Row("0.035in", 1.2, None, 0, None, 60, 70, 14, 16, 30, 50, None),
            Row("0.035in", 1.6, None, 0, None, 100, 110, 16, 17, 40, 60, None),
            Row("0.035in", 2.3, None, 0.5, None, 110, 120, 17, 18, 30, 40, None),
            Row("0.045in", 3.2, None, 1.25, None, 120, 140, 17, 19, 25, 30, None),
            Row("0.045in", 4, None, 1.75, None, 150, 170, 18, 21, 25, 40, None),
        ),
    ),
    ProcedureTable(
        "shaped-short",
        "short circuit with a shaped waveform, lap, tee and horizontal fillet",
        "power-source-conditions",
        False,
        Setup("ER70S-6", "80/20", "2F", "tee", "short", "none"),
        (
            Row("0.030in", 3.2, None, None, 250, 110, 110, None, None, 25.4, 25.4, 9),
            Row("0.030in", 2.4, None, None, 240, 107, 107, None, None, 25.4, 25.4, 9),
            Row("0.030in", 2, None, None, 225, 105, 105, None, None, 30.5, 30.5, 9),
            Row("0.030in", 1.6, None, None, 180, 85, 85, None, None, 33, 33, 9),
            Row("0.030in", 1.1, None, None, 160, 75, 75, None, None, 35.6, 35.6, 9),
            Row("0.030in", 0.9, None, None, 135, 65, 65, None, None, 38.1, 38.1, 9),
            Row("0.035in", 5, None, None, 245, 150, 150, None, None, 20.3, 20.3, 9),
            Row("0.035in", 3.2, None, None, 230, 145, 145, None, None, 25.4, 25.4, 9),
            Row("0.035in", 2.4, None, None, 200, 135, 135, None, None, 30.5, 30.5, 9),
            Row("0.035in", 2, None, None, 190, 125, 125, None, None, 33, 33, 9),
            Row("0.035in", 1.6, None, None, 150, 95, 95, None, None, 35.6, 35.6, 9),
            Row("0.035in", 1.1, None, None, 125, 80, 80, None, None, 38.1, 38.1, 9),
            Row("0.035in", 0.9, None, None, 100, 65, 65, None, None, 38.1, 38.1, 9),
        ),
    ),
    ProcedureTable(
        "e70c-sheet",
        "operating points",
        "e70c-sheet",
        False,
        Setup("E70C-6M", "85/15", "", "", "short", "none"),
        (
            Row("0.045in", None, None, None, 110, 90, 90, 15, 15, None, None, 22),
            Row("0.045in", None, None, None, 135, 120, 120, 16, 16, None, None, 22),
            Row("0.045in", None, None, None, 185, 150, 150, 17, 17, None, None, 22),
            Row("1/16in", None, None, None, 70, 145, 145, 15, 15, None, None, 28.6),
            Row("1/16in", None, None, None, 80, 160, 160, 16, 16, None, None, 28.6),
            Row("1/16in", None, None, None, 90, 170, 170, 18, 18, None, None, 28.6),
        ),
    ),
    ProcedureTable(
        "e70c-sheet",
        "operating points",
        "e70c-sheet",
        False,
        Setup("E70C-6M", "85/15", "", "", "spray", "none"),
        (
            Row("0.045in", None, None, None, 250, 180, 180, 28, 30, None, None, 22),
            Row("0.045in", None, None, None, 450, 275, 275, 31, 34, None, None, 22),
            Row("0.045in", None, None, None, 650, 340, 340, 35, 38, None, None, 22),
            Row("1/16in", None, None, None, 150, 235, 235, 25, 26, None, None, 28.6),
            Row("1/16in", None, None, None, 250, 325, 325, 29, 32, None, None, 28.6),
            Row("1/16in", None, None, None, 350, 400, 400, 34, 37, None, None, 28.6),
            Row("1/16in", None, None, None, 450, 460, 460, 36, 38, None, None, 28.6),
        ),
    ),
    ProcedureTable(
        "e70c-052-sample",
        "sample procedure, 60° V, 0.052 in",
        "e70c-sample",
        True,
        Setup("E70C-6M", "90/10", "1G", "v", "spray", "none"),
        (
            Row("0.052in", None, None, None, 225, 200, 250, 25, 27, 25.4, 35.6, 27),
            Row("0.052in", None, None, None, 285, 270, 320, 26, 28, 30.5, 45.7, 27),
        ),
    ),
    ProcedureTable(
        "flux-fillet-co2",
        "flux-cored horizontal fillets in CO2; 12 mm plate taken",
        "power-source-conditions",
        True,
        Setup("E71T-1C", "CO2", "2F", "tee", "", "none"),
        (
            Row("0.045in", 12, 5, None, None, 270, 270, 29, 29, 50, 50, None),
            Row("0.045in", 12, 6, None, None, 270, 270, 29, 29, 45, 45, None),
            Row("0.045in", 12, 7, None, None, 280, 280, 30, 30, 40, 40, None),
            Row("0.045in", 12, 8, None, None, 300, 300, 31, 31, 30, 30, None),
            Row("0.045in", 12, 9, None, None, 320, 320, 32, 32, 30, 30, None),
        ),
    ),
    ProcedureTable(
        "fcaw-ranges",
        "setting ranges, all positions",
        "fcaw-ranges",
        False,
        Setup("E71T-1C", "CO2", "", "", "", "none"),
        (
            Row("0.045in", None, None, None, None, 150, 250, 24, 28, None, None, None),
            Row("0.052in", None, None, None, None, 200, 350, 24, 28, None, None, None),
            Row("1/16in", None, None, None, None, 225, 375, 25, 30, None, None, None),
        ),
    ),
    ProcedureTable(
        "overhead-sample",
        "sample procedure, overhead V on backing",
        "overhead-sample",
        False,
        Setup("E71T-1C", "CO2", "4G", "v", "", "none"),
        (
            Row("0.045in", 25.4, None, None, None, 180, 220, 25, 26, 20.3, 30.5, 22),
            Row("0.045in", 25.4, None, None, None, 200, 240, 26, 27, 25.4, 35.6, 22),
        ),
    ),
    ProcedureTable(
        "out-of-position",
        "usual settings out of position",
        "position-currents",
        False,
        Setup("E71T-1C", "CO2", "3F-up", "tee", "", "none"),
        (
            Row("0.045in", 12.7, 7.9, None, None, 180, 220, 24, 25.5, 10, 20, None),
            Row("0.052in", 12.7, 7.9, None, None, 190, 240, 23.5, 25.5, 10, 20, None),
            Row("1/16in", 12.7, 7.9, None, None, 200, 250, 23, 25, 10, 20, None),
        ),
    ),
    ProcedureTable(
        "out-of-position",
        "usual settings out of position",
        "position-currents",
        False,
        Setup("ER70S-6", "90/10", "3F-up", "tee", "pulse", "none"),
        (Row("0.045in", 9.5, 6.35, None, None, 120, 165, None, None, 10, 25, None),),
    ),
    ProcedureTable(
        "out-of-position",
        "usual settings out of position",
        "position-currents",
        False,
        Setup("ER70S-6", "90/10", "4F", "tee", "pulse", "none"),
        (Row("0.045in", 9.5, 6.35, None, None, 130, 190, None, None, 10, 25, None),),
    ),
    ProcedureTable(
        "out-of-position",
        "usual settings out of position",
        "position-currents",
        False,
        Setup("E70C-6M", "90/10", "3F-up", "tee", "pulse", "none"),
        (Row("0.045in", 9.5, 6.35, None, None, 130, 180, None, None, 10, 25, None),),
    ),
    ProcedureTable(
        "technician-points",
        "best vertical, best horizontal",
        "technician-points",
        False,
        Setup("ER70S-6", "75/25", "3F-down", "tee", "short", "none"),
        (
            Row("0.023in", None, None, None, 310, 80, 80, 18, 18, None, None, None),
            Row("0.030in", None, None, None, 235, 100, 100, 18, 18, None, None, None),
        ),
    ),
    ProcedureTable(
        "technician-points",
        "best vertical, best horizontal",
        "technician-points",
        False,
        Setup("ER70S-6", "75/25", "2F", "tee", "short", "none"),
        (
            Row("0.023in", None, None, None, 465, 110, 110, 21, 21, None, None, None),
            Row("0.030in", None, None, None, 385, 150, 150, 20, 20, None, None, None),
        ),
    ),
    ProcedureTable(
        "copper-butt-co2",
        "square butts on copper backing in CO2",
        "power-source-conditions",
        True,
        Setup("ER70S-6", "CO2", "1G", "square", "", "copper"),
        (
            Row("0.023in", 0.6, None, 0, None, 40, 40, 16, 16, 60, 60, 10),
            Row("0.023in", 0.8, None, 0, None, 40, 40, 16.5, 16.5, 45, 45, 10),
            Row("0.030in", 0.8, None, 0, None, 80, 90, 18, 19, 45, 50, 10),
            Row("0.035in", 1, None, 0, None, 50, 50, 18, 18, 45, 45, 15),
            Row("0.030in", 1.2, None, 0, None, 60, 60, 18, 18, 45, 45, 15),
            Row("0.035in", 1.2, None, 0.25, None, 90, 120, 19, 20, 40, 50, 10),
            Row("0.035in", 1.6, None, 0, None, 95, 105, 18, 19, 45, 50, 10),
            Row("0.045in", 1.6, None, 0.25, None, 120, 140, 19, 20, 45, 50, 10),
            Row("0.035in", 2.3, None, 0.4, None, 100, 140, 19, 21, 35, 45, 10),
            Row("0.045in", 2.3, None, 0.6, None, 130, 150, 19, 21, 35, 45, 10),
            Row("0.045in", 3.2, None, 0.75, None, 130, 180, 20, 23, 30, 35, 12.5),
            Row("0.045in", 4.5, None, 1.5, None, 150, 200, 21, 24, 40, 45, 12.5),
            Row("0.045in", 6, None, 0.4, None, 280, 330, 28, 36, 35, 45, 17.5),
        ),
    ),
    ProcedureTable(
        "handbook-spray",
        "spray fillets in 90/10",
        "procedure-guide",
        False,
        Setup("ER70S-6", "90/10", "2F", "tee", "spray", "none"),
        (
            Row("0.035in", 4.7625, 3.97, None, 375, 195, 195, 23, 23, 61.0, 61.0, None),
            Row("0.035in", 6.35, 4.7625, None, 400, 200, 200, 24, 24, 48.3, 48.3, None),
            Row("0.035in", 7.9375, 6.35, None, 500, 230, 230, 29, 29, 35.6, 35.6, None),
            Row("0.035in", 9.525, 7.9375, None, 600, 275, 275, 30, 30, 25.4, 25.4, None),
            Row("0.045in", 6.35, 4.7625, None, 350, 285, 285, 27, 27, 63.5, 63.5, None),
            Row("0.045in", 7.9375, 6.35, None, 375, 300, 300, 28, 28, 45.7, 45.7, None),
            Row("0.045in", 9.525, 7.9375, None, 475, 335, 335, 30, 30, 30.5, 30.5, None),
            Row("0.045in", 12.7, 9.525, None, 500, 340, 340, 30, 30, 22.9, 22.9, None),
            Row("0.052in", 9.525, 7.9375, None, 300, 300, 300, 30, 30, 30.5, 30.5, None),
            Row("1/16in", 9.525, 7.9375, None, 210, 325, 325, 25, 25, 33.0, 33.0, None),
        ),
    ),
)
"""The tables; one printed table may stand in several parts, by position or mode.

Source: each table's own. ``power-source-conditions`` gathers the condition tables of several
manuals. Where a table names two wire sizes, the smaller stands for sheet under 2.3 mm.
"""
