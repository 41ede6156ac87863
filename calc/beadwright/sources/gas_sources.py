"""Documents behind the gas: its group, what it does, its flow, its cylinder."""

from __future__ import annotations

from beadwright.sources.source import Row

ROWS: tuple[Row, ...] = (
    ("gas-choice-textbook", "Trade textbook on welding, shielding gas selection",
     "carbon steel rows", "found"),
    ("gas-flow-textbook", "Trade textbook on welding, shielding gas flow rates",
     "by thickness; 10-20 ft³/h more out of position", "found"),
    ("gas-flow-nozzle", "Paper on the control of shielding gas",
     "least, usual and most flow by nozzle bore", "from memory"),
    ("gas-flow-helium", "Power-source manual, shielding gas recommendation",
     "10 to 12 L/min a mm of wire; helium mixes 1.5 to 3 times", "found"),
    ("gas-properties", "Magazine article, choosing shielding gases for arc welding",
     "pure gases", "found"),
    ("gas-argon-steel", "Article on the gases of gas metal arc welding", "argon alone on steel",
     "found second-hand"),
    ("gas-handbook", "Welding handbook, gas metal arc welding, shielding gases",
     "effects of oxygen, CO2 and helium", "from memory"),
    ("gas-fume", "Studies of fume from gas metal arc welding", "fume by shielding gas",
     "from memory"),
    ("gas-density", "Ideal gas and molar masses", "", "derived"),
    ("gas-dew", "Reference equations of state, argon with CO2",
     "highest temperature of the dew line", "derived"),
)  # fmt: skip
"""Id, document, place, how the value was obtained."""
