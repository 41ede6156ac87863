"""Ways to weld and rates of a shop, over all that the pages let through."""

from hypothesis import strategies as st

from beadwright.money.way import Rates, Way

MB3 = "plate=3/8in&leg=5/16in"
"""Bracket MB-3 of the demonstration shop."""

WAYS = st.builds(
    Way,
    name=st.just("a way"),
    metal_kg=st.floats(1e-3, 100),
    length_m=st.floats(1e-2, 1000),
    melted_kg_s=st.floats(1e-4, 1e-2),
    efficiency=st.floats(0.5, 1),
    waste=st.floats(0, 0.5),
    wire_kg=st.floats(0, 1000),
    gas_m3=st.floats(0, 1000),
    gas_flow_m3_s=st.floats(1e-4, 1e-3),
    gas_extra_s=st.floats(0, 60),
    starts=st.integers(1, 1000),
    arc_w=st.floats(500, 20_000),
    tips_s=st.floats(0, 1),
    spool_kg=st.floats(1, 500),
    spool_change_s=st.floats(0, 3600),
    fit_up_s=st.floats(0, 3600),
    reposition_s=st.floats(0, 3600),
    clean_s=st.floats(0, 3600),
    spatter_s=st.floats(0, 3600),
    other_s=st.floats(0, 3600),
    rework=st.floats(0, 1),
    grind_s=st.floats(0, 3600),
    yearly=st.floats(0, 1e5),
    once=st.floats(0, 1e6),
    load_s=st.floats(0, 3600),
    swap_s=st.floats(0, 3600),
    stopped=st.floats(0, 0.5),
    tipped=st.floats(0, 0.1),
    stations=st.sampled_from((1, 2)),
    rate_s=st.none() | st.floats(0, 1),
)
RATES = st.builds(
    Rates,
    labor_s=st.floats(0, 1),
    overhead_s=st.floats(0, 1),
    energy_j=st.floats(0, 1e-6),
    machine_efficiency=st.floats(0.3, 0.99),
    idle_w=st.floats(0, 5000),
)
