"""Documents behind the inspection of a weld, its repair and its troubles."""

from __future__ import annotations

from beadwright.sources.source import Row

ROWS: tuple[Row, ...] = (
    ("aws-d1.1-8.1", "AWS D1.1:2020", "Table 8.1, visual inspection", "found second-hand"),
    ("aws-d1.1-8.1-cyclic", "AWS D1.1:2020", "Table 8.1 (8)(B), largest pore, 3/32 in",
     "found second-hand"),
    ("aws-d1.1-8.1-frequency", "AWS D1.1:2020",
     "Table 8.1 (8)(B) and (C), one pore in 4 in; stiffeners", "from memory"),
    ("aws-d1.1-7.23", "AWS D1.1:2020 7.23 (2015: 5.23)", "weld profiles, no overlap",
     "found second-hand"),
    ("aws-d1.1-7.9", "AWS D1.1:2020", "Table 7.9, schedule A, reinforcement", "from memory"),
    ("aws-d1.1-7.12", "AWS D1.1:2020 7.12 (2015: 5.12)", "no size or length less than asked for",
     "found second-hand"),
    ("aws-d1.1-7.25", "AWS D1.1:2020 7.25 (2015: 5.25)",
     "repairs; 7.25.3, the engineer's approval, not checked", "found second-hand"),
    ("iso-5817-surface", "ISO 5817:2014", "Table 1, 1.1 to 1.5: cracks, pores, craters, fusion",
     "found second-hand"),
    ("iso-5817-form", "EN ISO 5817:2007, the edition before",
     "5011 and 5012 undercut, 502 and 503 crown", "found second-hand"),
    ("iso-5817-throat", "EN 25817:1992, the predecessor of ISO 5817",
     "throat, legs, root opening: 5213, 5214, 512, 617", "found second-hand"),
    ("iso-5817-memory", "ISO 5817:2014",
     "Table 1: overlap, underfill, plate to 3 mm, short imperfections", "from memory"),
    ("mig-handbook-defects", "MIG handbook, weld defects",
     "undercut by travel, volts and current", "found"),
    ("mig-trouble-article", "Trade article on setting MIG welds",
     "volts, travel and feed too high or too low", "found"),
    ("mig-gas-article", "Trade article on common MIG troubles", "porosity and what lets air in",
     "found"),
)  # fmt: skip
"""Id, document, place, how the value was obtained."""
