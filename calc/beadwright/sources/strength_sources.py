"""Documents behind the strength of welds."""

from __future__ import annotations

from beadwright.sources.source import Row

ROWS: tuple[Row, ...] = (
    ("aisc-j2.4-strength", "AISC 360", "J2.4 and Table J2.5, strength of fillet welds", "found"),
    ("aisc-j2.2b-long", "AISC 360", "J2.2b, long, short and intermittent fillets", "found"),
    ("aisc-j4.2", "AISC 360", "J4.2, plates in shear", "from memory"),
    ("aisc-manual-8", "AISC Steel Construction Manual, 13th ed.",
     "part 8, eccentric weld groups, Tables 8-4 to 8-11", "found second-hand"),
    ("weld-as-line", "Weld taken as a line: Blodgett, Design of Welded Structures; Shigley",
     "Tables 9-1 and 9-2 of Shigley", "from memory"),
    ("en-1993-1-8", "EN 1993-1-8", "4.5, fillet welds; Table 4.1; 4.11, long laps",
     "from memory"),
    ("en-1993-1-1", "EN 1993-1-1", "6.2.6, plates in shear", "from memory"),
    ("astm-strengths", "AISC Steel Construction Manual", "Tables 2-4 and 2-5, Fy and Fu by grade",
     "from memory"),
    ("en-10025-2", "EN 10025-2", "Table 7, yield and tensile strength", "from memory"),
)  # fmt: skip
"""Id, document, place, how the value was obtained."""
