"""Documents behind the strength of welds, clause by clause with their editions.

AISC's clauses were read in a handbook and in copies of 360-05 and 360-10; that 360-16 and -22 say
the same is from memory. What a row was not read for itself says so in its place.
"""

from __future__ import annotations

from beadwright.sources.source import Row

ROWS: tuple[Row, ...] = (
    ("aisc-j2.4-strength", "AISC 360-16", "J2.4(a), (b) and Table J2.5, strength of fillet welds; "
     "360-22 asks strain to be followed for the part with θ (not checked)", "found second-hand"),
    ("aisc-j2.5-filler", "AISC 360-16", "Table J2.5, note: filler one level over matching; read in "
     "the LRFD specification", "found second-hand"),
    ("aisc-j2.2b-long", "AISC 360-16", "J2.2b(c) to (e), short, long and intermittent fillets",
     "found second-hand"),
    ("aisc-j4.2", "AISC 360-16", "J4.1 and J4.2, plates in pull and in shear", "from memory"),
    ("aisc-j2.5", "AISC 360-22", "Table J2.5, groove welds", "found second-hand"),
    ("aisc-j2.3a", "AISC 360-22", "J2.3a and Table J2.5, plugs and slots", "found second-hand"),
    ("aisc-j2.3b-apart", "AISC 360-16", "J2.3b, least spacing of plugs and slots", "from memory"),
    ("one-sided-root", "AISC 360-22 commentary J2.2b; AWS D1.1:2020",
     "welds from one side turned about their root", "from memory"),
    ("en-1993-1-8-root", "EN 1993-1-8:2005", "4.12, welds from one side, eccentric",
     "from memory"),
    ("en-1993-1-8-butt", "EN 1993-1-8:2005", "4.7.1 and 4.7.2, butt welds", "found second-hand"),
    ("en-1993-1-8-plug", "EN 1993-1-8:2005", "4.3.5 and 4.8, plug welds", "from memory"),
    ("env-1993-throat", "ENV 1993-1-1:1992", "6.6.6.2, throat of grooves cut part way",
     "from memory"),
    ("aws-d1.1-z-loss", "AWS D1.1:2020", "Table 4.2, Z loss of sharp skewed tees", "from memory"),
    ("en-1993-1-8-angle", "EN 1993-1-8:2005", "4.3.2.1, angles of fillets", "from memory"),
    ("aisc-d2", "AISC 360-22", "D2 and J4.1, plates in tension: yielding and rupture",
     "found second-hand"),
    ("aisc-d3.1", "AISC 360-22", "D3 and Table D3.1, cases 2, 3 and 4, shear lag",
     "found second-hand"),
    ("aisc-j4.3", "AISC 360-22", "J4.3, block shear", "found second-hand"),
    ("aisc-manual-9", "AISC Steel Construction Manual, 15th ed.", "part 9, Whitmore section",
     "from memory"),
    ("en-1993-1-1-pull", "EN 1993-1-1:2005", "6.2.3, plates in tension", "from memory"),
    ("bs-5950-lag", "BS 5950-1:2000", "6.7.2.4, end connections by side welds",
     "found second-hand"),
    ("aisc-manual-8", "AISC Steel Construction Manual, 13th ed.",
     "part 8, eccentric weld groups, Tables 8-4 to 8-11", "found second-hand"),
    ("aws-d1.1-spacing", "AWS D1.1:2020", "4.12.2.1, spacing of intermittent welds; AISC 360-16 "
     "J3.5 has the same for fasteners", "from memory"),
    ("aws-d1.1-matching", "AWS D1.1:2020", "Table 5.4, filler that matches", "from memory"),
    ("aws-d1.3", "AWS D1.3:2018 and AISI S100-16",
     "sheet steel under 1/8 in (3 mm)", "from memory"),
    ("weld-as-line", "Weld taken as a line: Blodgett, Design of Welded Structures; Shigley",
     "Tables 9-1 and 9-2 of Shigley", "from memory"),
    ("en-1993-1-8", "EN 1993-1-8:2005", "4.5, fillet welds; Tables 2.1 and 4.1", "from memory"),
    ("en-1993-1-8-sheet", "EN 1993-1-8:2005", "4.1(1), 4 mm and over; thinner by EN 1993-1-3",
     "from memory"),
    ("en-1993-1-8-filler", "EN 1993-1-8:2005", "4.2(2), filler no weaker than the steel",
     "from memory"),
    ("en-1993-1-8-ends", "EN 1993-1-8:2005", "4.5.1, effective length and ends",
     "found second-hand"),
    ("en-1993-1-8-seam", "EN 1993-1-8:2005", "4.3.2.2 and Figure 4.1, intermittent fillets",
     "from memory"),
    ("en-1993-1-8-lap", "EN 1993-1-8:2005", "4.11, long laps", "from memory"),
    ("en-1993-1-1", "EN 1993-1-1:2005", "6.2.1(5), 6.2.3 and 6.2.6, plates in pull and in shear",
     "from memory"),
    ("astm-strengths", "AISC Steel Construction Manual, 15th ed.",
     "Tables 2-4 and 2-5, Fy and Fu by grade",
     "from memory"),
    ("astm-a500", "ASTM A500, edition not told",
     "table of strengths, round and shaped", "found second-hand"),
    ("en-10025-2", "EN 10025-2:2004", "Table 7, yield and tensile strength", "from memory"),
)  # fmt: skip
"""Id, document, place, how the value was obtained."""
