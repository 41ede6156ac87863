"""A way to weld of round figures, for sums done by hand.

1 kg of weld in 2 m, melted at 1 g/s and laid at 0.8 of it: the arc burns 1250 s. Of the wire bought
a fifth is lost, so a part takes 1 / 0.8 / 0.8 = 1.5625 kg; a quarter of the parts is welded twice:
1.953125 kg. Gas runs 10 s more at each of 5 starts: 1300 s at 3e-4 m³/s is 0.39 m³, with rework
0.4875 m³. Nothing else costs time or money but 100 s of grinding before a part is welded again.
"""

from beadwright.money.break_even import Case
from beadwright.money.way import Rates, Way

PLAIN = Way(
    name="plain",
    metal_kg=1.0,
    length_m=2.0,
    melted_kg_s=1e-3,
    efficiency=0.8,
    waste=0.2,
    wire_kg=10.0,
    gas_m3=0.0,
    gas_flow_m3_s=3e-4,
    gas_extra_s=10.0,
    starts=5,
    arc_w=1000.0,
    tips_s=0.0,
    spool_kg=15.0,
    spool_change_s=0.0,
    fit_up_s=0.0,
    reposition_s=0.0,
    clean_s=0.0,
    spatter_s=0.0,
    other_s=0.0,
    rework=0.25,
    grind_s=100.0,
    yearly=0.0,
    once=0.0,
)

FREE = Rates(0.0, 0.0, 0.0, 1.0, 0.0)
"""Rates of a shop that pays for wire and gas alone."""


def wire_alone(name: str, price: float, once: float = 0.0, yearly: float = 0.0) -> Way:
    """Return a way whose part costs the price of a kilogram of wire and nothing more."""
    return Way(name, 1.0, 2.0, 1e-3, 1.0, 0.0, price, 0.0, 3e-4, 0.0, 1, 1000.0, 0.0, 15.0, 0.0,
               0.0, 0.0, 0.0, 0.0, 0.0, 0.0, 0.0, yearly, once)  # fmt: skip


def ten_against_eight(parts: float = 100.0) -> Case:
    """Return a case of a part at 10 against one at 8: 2 saved on each, 200 a year of 100."""
    return Case(FREE, wire_alone("now", 10.0), wire_alone("other", 8.0), parts, 12.0)
