"""Documents behind the strength of welds."""

from __future__ import annotations

from beadwright.sources.source import Row

ROWS: tuple[Row, ...] = (
    ("aisc-j2.4-strength", "AISC 360", "J2.4 and Table J2.5, strength of fillet welds", "found"),
    ("aisc-j2.2b-long", "AISC 360", "J2.2b, long, short and intermittent fillets", "found"),
    ("aisc-j4.2", "AISC 360", "J4.2, plates in shear", "from memory"),
    ("aisc-d2", "AISC 360-22", "D2 and J4.1, plates in tension: yielding and rupture",
     "found second-hand"),
    ("aisc-d3.1", "AISC 360-22", "D3 and Table D3.1, cases 2, 3 and 4, shear lag",
     "found second-hand"),
    ("aisc-j4.3", "AISC 360-22", "J4.3, block shear", "found second-hand"),
    ("aisc-manual-9", "AISC Steel Construction Manual", "part 9, Whitmore section", "from memory"),
    ("en-1993-1-1-pull", "EN 1993-1-1:2005", "6.2.3, plates in tension", "from memory"),
    ("bs-5950-lag", "BS 5950-1:2000", "6.7.2.4, end connections by side welds",
     "found second-hand"),
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
