"""Documents behind steels, carbon equivalents, preheat, cooling and hardness."""

from __future__ import annotations

from beadwright.sources.source import Row

ROWS: tuple[Row, ...] = (
    ("ti-809-26-steels", "TI 809-26 (UFC 3-320-01A)",
     "Table 4-3, chemical requirements of structural steels", "found"),
    ("astm-limits", "ASTM A36/A36M (copy of 2013), A572/A572M-07, A500/A500M",
     "heat analysis by thickness, from copies", "found second-hand"),
    ("astm-a992", "ASTM A992/A992M, edition not told",
     "most CE: 0.45 %, flanges over 2 in 0.47 %", "from memory"),
    ("en-10025-2-analysis", "EN 10025-2:2004",
     "Table 2, analysis by thickness; superseded in 2019, not compared", "found second-hand"),
    ("en-10025-2-cev", "EN 10025-2:2004", "Table 6, most CEV by thickness", "from memory"),
    ("typical-melt", "Usual melts of a grade, below the limits of its standard", "",
     "common practice"),
    ("en-1011-2-a", "EN 1011-2:2001", "C.2, carbon equivalent CE and its range", "from memory"),
    ("en-1011-2-c1", "EN 1011-2:2001",
     "C.2, method A: Table C.1, combined thickness without preheat", "found second-hand"),
    ("iiw-ce", "International Institute of Welding, IIS/IIW-382-71", "carbon equivalent CE",
     "found second-hand"),
    ("en-1011-2-b", "EN 1011-2:2001", "C.3, method B: CET, ranges, preheat",
     "found second-hand"),
    ("ito-bessyo", "Ito and Bessyo, IIW Doc. IX-576-68", "Pcm and its range", "from memory"),
    ("aws-d1.1-5.8", "AWS D1.1:2020 Table 5.8 (2015: Table 3.3)",
     "prequalified least preheat and interpass", "found"),
    ("aws-d1.1-5.8-a", "AWS D1.1:2020 Table 5.8, note a", "cold metal is warmed", "from memory"),
    ("aws-d1.3-scope", "AWS D1.3/D1.3M:2018", "scope: sheet to 3/16 in, 5 mm", "found second-hand"),
    ("aws-d1.1-5.7", "AWS D1.1:2020", "5.7, where preheat is measured and held", "from memory"),
    ("en-1011-2-d", "EN 1011-2:2001", "Annex D, cooling time; SEW 088", "found"),
    ("en-1011-2-d1", "EN 1011-2:2001", "Table D.1, shape factors", "from memory"),
    ("en-13916", "EN ISO 13916:2017", "4.2, where preheat is measured", "from memory"),
    ("en-1011-2-interpass", "EN 1011-2:2001", "highest interpass temperature, C-Mn steels",
     "from memory"),
    ("hydrogen-scales", "EN 1011-2:2001", "Table C.2, hydrogen scales A to E", "from memory"),
    ("rosenthal", "Rosenthal, Trans. ASME 68 (1946)", "pp. 849-866, moving source of heat",
     "from memory"),
    ("duren", "Lorenz and Düren, IIW Doc. IX-B, hardness of the heat-affected zone",
     "martensite, bainite and mixed", "from memory"),
    ("haz-scatter", "Nicholas and Abson, Cranfield 2008, twelve hardness methods on 300 points",
     "standard deviation 28 HV of the best hybrid", "found"),
    ("iso-15614-1", "ISO 15614-1:2017", "Table 2, highest hardness, group 1", "from memory"),
)  # fmt: skip
"""Id, document, place, how the value was obtained."""
