"""Documents behind cost, supplies, machine and circuit."""

from __future__ import annotations

from beadwright.sources.source import Row

ROWS: tuple[Row, ...] = (
    ("cost-chapter", "Welding handbook, chapter on costs, cost of a pound of weld metal",
     "worked examples", "found second-hand"),
    ("operating-factor", "Handbook of Structural Steel Connection Design and Details",
     "p. 231, operating factor", "found"),
    ("navedtra-14251a", "NAVEDTRA 14251A", "chapter 5, shares of welding cost", "found"),
    ("redlich-kwong", "Redlich and Kwong, Chemical Reviews 44 (1949)",
     "pp. 233-244, equation of state", "from memory"),
    ("co2-by-weight", "Gas supplier's conversion table, CO2 at 70 °F", "8.76 ft³/lb", "found"),
    ("cylinder-chart", "Cylinder chart, contents by size class", "330 to 22 ft³", "found"),
    ("awg", "ASTM B258, American Wire Gauge: 0.46 in at 4/0, ratio 92 over 39 steps", "",
     "from memory"),
    ("copper-annealed", "IEC 60028, annealed copper 1/58 Ω·mm²/m at 20 °C, 0.00393/K", "",
     "from memory"),
    ("iec-60228", "IEC 60228", "Table 3, flexible conductors, class 5, plain copper", "found"),
    ("nec-9-8", "NFPA 70 (NEC)", "chapter 9, Table 8, resistance of conductors", "found"),
    ("nec-630", "NFPA 70 (NEC)", "630.11(A) and 630.12, arc welders", "found"),
    ("nec-400.5", "NFPA 70 (NEC), 2011 and later",
     "Table 400.5(A)(1), flexible cords: column A three wires carrying, column B two",
     "found second-hand"),
    ("ul-489", "UL 489, molded-case circuit breakers",
     "calibration: holds 100 %, trips at 135 % within an hour to 50 A, at 200 % in minutes",
     "found second-hand"),
    ("generator-rule", "Operating manuals of three power sources, generator operation",
     "generator's volt-amps 1.35 × the machine's most, never under it", "found"),
    ("iec-60974-1", "IEC 60974-1", "conventional load voltage of MIG/MAG, 14 + 0.05·I",
     "from memory"),
    ("four-volts", "AWS Safety and Health Fact Sheet No. 39", "4 V in the weld cables", "found"),
    ("i2t", "Power-source manuals, duty cycle at another current", "I²·T constant", "found"),
    ("aws-duty", "AWS glossary, duty cycle", "ten-minute period", "found"),
    ("machine-efficiency", "Welding textbook, efficiency of power sources",
     "0.85-0.90 inverter, 0.60-0.70 transformer", "found second-hand"),
)  # fmt: skip
"""Id, document, place, how the value was obtained."""
