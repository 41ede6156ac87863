"""Published points of wire feed and current, as printed, behind the burn-off constants.

Units are the sources' own [in/min, A, V, in]; ``burnoff_fit`` turns them into SI. Where a
source prints no tip-to-work, 3/8 in is assumed in short circuit and 3/4 in otherwise; for 1/16 in
flux-cored wire, whose deposition data are taken at a longer extension, the points have 1 in.
Rows that are not fitted stay here to be seen: at the spray currents of Machinery's Handbook Table 5
the power balance needs about 1.5 times the printed feed for 0.035-0.052 in wire, far outside
every other source. Nor are metal-cored wire's short-arc rows: its spray rows are what is compared
with solid wire in practice.
"""

from __future__ import annotations

from dataclasses import dataclass

from beadwright.process.wire_kinds import Kind


@dataclass(frozen=True, slots=True)
class Point:
    """One printed operating point.

    Attributes:
        kind: Solid, metal-cored or flux-cored.
        size: Inch name of the diameter.
        feed_in_min: Wire feed [in/min].
        current_a: Current [A].
        volts: Volts as printed, or None [V].
        tip_to_work_in: Tip-to-work as printed, or None [in].
        transfer: short, globular or spray.
        source: Source id.
        fitted: False for a row that is only shown.
    """

    kind: Kind
    size: str
    feed_in_min: float
    current_a: float
    volts: float | None
    tip_to_work_in: float | None
    transfer: str
    source: str
    fitted: bool = True


POINTS: tuple[Point, ...] = (
    Point("solid", "0.023in", 105, 30, 15, None, "short", "technician-points"),
    Point("solid", "0.023in", 219, 62.5, None, None, "short", "power-source-rule"),
    Point("solid", "0.023in", 310, 80, 18, None, "short", "technician-points"),
    Point("solid", "0.023in", 437, 125, None, None, "short", "power-source-rule"),
    Point("solid", "0.023in", 465, 110, 21, None, "short", "technician-points"),
    Point("solid", "0.023in", 710, 150, 21, None, "globular", "technician-points"),
    Point("solid", "0.030in", 75, 35, 17, 0.375, "short", "procedure-guide"),
    Point("solid", "0.030in", 90, 40, 15, None, "short", "trade-schedule"),
    Point("solid", "0.030in", 95, 50, 17, None, "short", "technician-points"),
    Point("solid", "0.030in", 100, 50, 17, None, "short", "trade-schedule"),
    Point("solid", "0.030in", 125, 62.5, None, None, "short", "power-source-rule"),
    Point("solid", "0.030in", 130, 60, 17, None, "short", "trade-schedule"),
    Point("solid", "0.030in", 235, 100, 18, None, "short", "technician-points"),
    Point("solid", "0.030in", 250, 125, None, None, "short", "power-source-rule"),
    Point("solid", "0.030in", 385, 150, 20, None, "short", "technician-points"),
    Point("solid", "0.030in", 600, 200, 23, None, "globular", "technician-points"),
    Point("solid", "0.035in", 70, 55, 15, None, "short", "trade-schedule"),
    Point("solid", "0.035in", 75, 50, 18, None, "short", "technician-points"),
    Point("solid", "0.035in", 100, 62.5, None, None, "short", "power-source-rule"),
    Point("solid", "0.035in", 100, 70, 16, None, "short", "trade-schedule"),
    Point("solid", "0.035in", 100, 80, 18, 0.5, "short", "procedure-guide"),
    Point("solid", "0.035in", 120, 80, 17, None, "short", "trade-schedule"),
    Point("solid", "0.035in", 120, 85, 17, None, "short", "trade-schedule"),
    Point("solid", "0.035in", 125, 100, 19, 0.5, "short", "procedure-guide"),
    Point("solid", "0.035in", 150, 100, 17, None, "short", "technician-points"),
    Point("solid", "0.035in", 160, 100, 19, None, "short", "trade-schedule"),
    Point("solid", "0.035in", 160, 100, 18, None, "short", "trade-schedule"),
    Point("solid", "0.035in", 175, 130, 20, 0.5, "short", "procedure-guide"),
    Point("solid", "0.035in", 180, 110, 20, None, "short", "trade-schedule"),
    Point("solid", "0.035in", 200, 125, None, None, "short", "power-source-rule"),
    Point("solid", "0.035in", 210, 120, 19, None, "short", "trade-schedule"),
    Point("solid", "0.035in", 210, 140, 17, None, "short", "machinery-31-t5"),
    Point("solid", "0.035in", 210, 140, 19, None, "short", "trade-schedule"),
    Point("solid", "0.035in", 220, 130, 20, None, "short", "trade-schedule"),
    Point("solid", "0.035in", 275, 175, 21, 0.5, "short", "procedure-guide"),
    Point("solid", "0.035in", 290, 160, 22, None, "short", "trade-schedule"),
    Point("solid", "0.035in", 290, 160, 22, None, "short", "trade-schedule"),
    Point("solid", "0.035in", 300, 185, 22, 0.5, "short", "procedure-guide"),
    Point("solid", "0.035in", 375, 195, 23, 0.625, "spray", "procedure-guide"),
    Point("solid", "0.035in", 400, 200, 24, 0.625, "spray", "procedure-guide"),
    Point("solid", "0.035in", 415, 215, 22, None, "globular", "technician-points"),
    Point("solid", "0.035in", 427, 200, None, None, "spray", "feeder-table-4-3"),
    Point("solid", "0.035in", 500, 225, 25, None, "globular", "technician-points"),
    Point("solid", "0.035in", 500, 230, 29, 0.625, "spray", "procedure-guide"),
    Point("solid", "0.035in", 600, 275, 30, 0.625, "spray", "procedure-guide"),
    Point("solid", "0.045in", 125, 125, None, None, "short", "power-source-rule"),
    Point("solid", "0.045in", 125, 145, 19, 0.5, "short", "procedure-guide"),
    Point("solid", "0.045in", 150, 165, 20, 0.5, "short", "procedure-guide"),
    Point("solid", "0.045in", 200, 200, 21, 0.5, "short", "procedure-guide"),
    Point("solid", "0.045in", 210, 180, 20, None, "short", "trade-schedule"),
    Point("solid", "0.045in", 210, 180, 20, None, "short", "trade-schedule"),
    Point("solid", "0.045in", 210, 180, 20, None, "short", "trade-schedule"),
    Point("solid", "0.045in", 210, 190, 18, None, "short", "machinery-31-t5"),
    Point("solid", "0.045in", 225, 210, 22, 0.5, "short", "procedure-guide"),
    Point("solid", "0.045in", 229, 200, None, None, "globular", "feeder-table-4-3"),
    Point("solid", "0.045in", 240, 200, 24, None, "short", "trade-schedule"),
    Point("solid", "0.045in", 245, 205, 24, None, "short", "trade-schedule"),
    Point("solid", "0.045in", 290, 225, 24, None, "short", "trade-schedule"),
    Point("solid", "0.045in", 350, 280, 26, None, "globular", "trade-schedule"),
    Point("solid", "0.045in", 350, 285, 27, 0.75, "spray", "procedure-guide"),
    Point("solid", "0.045in", 375, 300, 28, 0.75, "spray", "procedure-guide"),
    Point("solid", "0.045in", 475, 335, 30, 0.75, "spray", "procedure-guide"),
    Point("solid", "0.045in", 500, 340, 30, 0.75, "spray", "procedure-guide"),
    Point("solid", "0.052in", 280, 370, 31.5, None, "spray", "machinery-31-t5", fitted=False),
    Point("solid", "0.052in", 300, 300, 30, 0.875, "spray", "procedure-guide"),
    Point("solid", "0.052in", 320, 320, 29, 0.875, "spray", "procedure-guide"),
    Point("solid", "0.052in", 485, 430, 32, 0.875, "spray", "procedure-guide"),
    Point("solid", "1/16in", 165, 300, 24, None, "spray", "trade-schedule"),
    Point("solid", "1/16in", 210, 325, 25, 0.875, "spray", "procedure-guide"),
    Point("solid", "1/16in", 210, 380, 28, None, "globular", "trade-schedule"),
    Point("solid", "1/16in", 230, 350, 25, None, "spray", "trade-schedule"),
    Point("solid", "1/16in", 235, 350, 27, 0.875, "spray", "procedure-guide"),
    Point("solid", "1/16in", 260, 375, 25, None, "spray", "trade-schedule"),
    Point("solid", "1/16in", 260, 425, 31, None, "globular", "trade-schedule"),
    Point("solid", "1/16in", 280, 410, 31.5, None, "spray", "machinery-31-t5"),
    Point("solid", "1/16in", 290, 430, 28, 0.875, "spray", "procedure-guide"),
    Point("metal-cored", "0.045in", 110, 90, 15, 0.875, "short", "e70c-sheet", fitted=False),
    Point("metal-cored", "0.045in", 135, 120, 16, 0.875, "short", "e70c-sheet", fitted=False),
    Point("metal-cored", "0.045in", 185, 150, 17, 0.875, "short", "e70c-sheet", fitted=False),
    Point("metal-cored", "0.045in", 250, 180, 29, 0.875, "spray", "e70c-sheet"),
    Point("metal-cored", "0.045in", 450, 275, 32.5, 0.875, "spray", "e70c-sheet"),
    Point("metal-cored", "0.045in", 650, 340, 36.5, 0.875, "spray", "e70c-sheet"),
    Point("metal-cored", "1/16in", 70, 145, 15, 1.125, "short", "e70c-sheet", fitted=False),
    Point("metal-cored", "1/16in", 80, 160, 16, 1.125, "short", "e70c-sheet", fitted=False),
    Point("metal-cored", "1/16in", 90, 170, 18, 1.125, "short", "e70c-sheet", fitted=False),
    Point("metal-cored", "1/16in", 150, 235, 25.5, 1.125, "spray", "e70c-sheet"),
    Point("metal-cored", "1/16in", 250, 325, 30.5, 1.125, "spray", "e70c-sheet"),
    Point("metal-cored", "1/16in", 350, 400, 35.5, 1.125, "spray", "e70c-sheet"),
    Point("metal-cored", "1/16in", 450, 460, 37, 1.125, "spray", "e70c-sheet"),
    Point("flux-cored", "0.035in", 288, 130, None, None, "spray", "fcaw-deposition"),
    Point("flux-cored", "0.035in", 384, 155, None, None, "spray", "fcaw-deposition"),
    Point("flux-cored", "0.035in", 576, 200, None, None, "spray", "fcaw-deposition"),
    Point("flux-cored", "0.035in", 702, 250, None, None, "spray", "fcaw-deposition"),
    Point("flux-cored", "0.045in", 200, 150, None, None, "spray", "fcaw-deposition"),
    Point("flux-cored", "0.045in", 300, 210, None, None, "spray", "fcaw-deposition"),
    Point("flux-cored", "0.045in", 400, 250, None, None, "spray", "fcaw-deposition"),
    Point("flux-cored", "0.045in", 500, 290, None, None, "spray", "fcaw-deposition"),
    Point("flux-cored", "0.045in", 600, 330, None, None, "spray", "fcaw-deposition"),
    Point("flux-cored", "0.052in", 150, 155, None, None, "spray", "fcaw-deposition"),
    Point("flux-cored", "0.052in", 200, 200, None, None, "spray", "fcaw-deposition"),
    Point("flux-cored", "0.052in", 300, 275, None, None, "spray", "fcaw-deposition"),
    Point("flux-cored", "0.052in", 350, 300, None, None, "spray", "fcaw-deposition"),
    Point("flux-cored", "0.052in", 400, 315, None, None, "spray", "fcaw-deposition"),
    Point("flux-cored", "1/16in", 150, 190, None, 1.0, "spray", "fcaw-deposition"),
    Point("flux-cored", "1/16in", 200, 240, None, 1.0, "spray", "fcaw-deposition"),
    Point("flux-cored", "1/16in", 275, 300, None, 1.0, "spray", "fcaw-deposition"),
    Point("flux-cored", "1/16in", 350, 365, None, 1.0, "spray", "fcaw-deposition"),
    Point("flux-cored", "1/16in", 400, 410, None, 1.0, "spray", "fcaw-deposition"),
)
