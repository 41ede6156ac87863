"""Documents behind joints, preparations and weld symbols."""

from __future__ import annotations

from beadwright.sources.source import Row

ROWS: tuple[Row, ...] = (
    ("geometry", "Geometry of the joint", "", "derived"),
    ("sheet-gauge", "Manufacturers' Standard Gauge",
     "uncoated steel sheet, 41.82 lb/ft² per inch; gauges 3 and 7 not checked", "found"),
    ("aws-d1.1-details", "AWS D1.1:2020", "Figures 5.1 and 5.2, prequalified joint details",
     "from memory"),
    ("aws-d1.1-through", "AWS D1.1:2020", "5.4.1 and Figure 5.1, complete joint penetration on a "
     "backing or gouged from the back (2000 edition found second-hand: Miller, Carefully Evaluate "
     "Code Requirements)", "from memory"),
    ("back-gouge", "Common practice", "a back gouge to sound metal, 1/16 to 1/8 in past the root "
     "face; its bottom and walls those of the U groove B-U6-GF, AWS D1.1:2020 Figure 5.1",
     "from memory"),
    ("aws-d1.1-bevels", "AWS D1.1:2020", "Figure 5.1, TC-U4a-GF and B-U4b-GF",
     "found second-hand"),
    ("aisc-pjp-details", "AISC Manual, edition not told",
     "prequalified joints, BTC-P4-GF and BTC-P5-GF", "found"),
    ("aisc-square-details", "AISC LRFD Manual, 2nd ed., by its page 8-137", "Table 8-36, "
     "prequalified joints, B-L1a-GF: a backing, "
     "root opening as the plate, to 3/8 in; B-L1b-GF: both sides, 0 to 1/8 in, gouged, to 3/8 in",
     "found"),
    ("aisc-j2.1", "AISC 360-16", "Table J2.1, effective throat of grooves cut part way",
     "found second-hand"),
    ("aisc-j2.3", "AISC 360-16", "Table J2.3, least effective throat",
     "found second-hand"),
    ("aisc-j2.3b", "AISC 360-16", "J2.3b, plug and slot welds",
     "found second-hand"),
    ("aws-d1.1-fillet-on-groove", "AWS D1.1:2015", "Figures 3.2 and 3.3, note g, fillet on a "
     "groove in a tee", "found second-hand"),
    ("skewed-tees", "Miller, Designing Welds for Skewed T-joints, part 1",
     "60° to 135°; throat, leg and area", "found"),
    ("aws-d1.1-skew", "AWS D1.1:2010", "2.4.2.6, skewed T-joints", "found second-hand"),
    ("aws-a2.4", "AWS A2.4:2020", "weld symbols", "from memory"),
    ("iso-2553", "ISO 2553:2019", "weld symbols, system A", "from memory"),
    ("aws-d1.1-transition", "AWS D1.1:2020", "transition of thickness, 1 in 2.5", "from memory"),
)  # fmt: skip
"""Id, document, place, how the value was obtained."""
