"""Plugs and slots under load: by the faying area, in shear only, at the sizes the codes allow."""

from math import pi
from random import Random

import pytest
from shapely import LineString, Point, Polygon

from beadwright.errors import FieldErrors, OutOfRangeError
from beadwright.job.job_query import read_query
from beadwright.strength.plug_strength import faying_area, hole_by_en
from beadwright.strength.plug_weld import PlugSizes
from beadwright.strength.weld_group import slot_group
from beadwright.units import read
from tests.calc.strength_asked import ask
from tests.told import in_words, told

KIP = read("1kip", "force")
PLUG = "joint=plug&plate=1/2in&plate2=1/2in&hole=13/16in"


def stops(query: str) -> list[str]:
    return [note.key for note in ask(query).notes if note.level == "stop"]


def said(query: str) -> str:
    return " ".join(told(note) for note in ask(query).notes)


def test_a_13_16_plug_holds_by_its_area() -> None:
    # J2.3a: 0.6 x 70 x 0.5185 in² / 2 = 10.89 kip.
    found = ask(f"{PLUG}&py=10.8kip")
    assert found.holds
    assert found.weld.holds / KIP == pytest.approx(0.3 * 70 * pi / 4 * (13 / 16) ** 2)
    assert not ask(f"{PLUG}&py=10.9kip").holds
    assert ask(f"{PLUG}&py=16kip&design_code=lrfd").holds
    assert isinstance(found.sizes, PlugSizes)
    assert found.ringed is found.weld
    assert "fillet up to 2 in" not in said(f"{PLUG}&py=500kip")
    assert "strength.overloaded" in stops(f"{PLUG}&py=500kip")


def test_the_direction_does_not_matter_and_several_share() -> None:
    assert ask(f"{PLUG}&px=3kip&py=4kip").weld.asked / KIP == pytest.approx(5)
    assert ask(f"{PLUG}&py=20kip&plugs=2").weld.use == pytest.approx(
        ask(f"{PLUG}&py=10kip").weld.use
    )


def test_a_slot_has_half_circles_at_its_ends() -> None:
    found = ask("joint=slot&plate=1/2in&plate2=1/2in&hole=3/4in&slot_length=2in&py=5kip")
    area = 0.75 * 1.25 + pi * 0.75**2 / 4
    assert found.weld.holds / KIP == pytest.approx(21 * area)
    short = ask("joint=slot&plate=1/2in&plate2=1/2in&hole=3/4in&slot_length=3/4in&py=5kip")
    assert short.weld.holds / KIP == pytest.approx(21 * pi * 0.75**2 / 4)


def test_a_slot_is_drawn_with_its_round_ends() -> None:
    group = ask("joint=slot&plate2=1/2in&hole=13/16in&slot_length=2in&py=5kip").task.group
    assert group.outline == pytest.approx((0.0, 0.0, 13 / 16 * 0.0254, 2 * 0.0254))
    drawn = Polygon([start for start, _ in group.stretches])
    assert drawn.is_valid
    # Twelve chords to a half circle leave 1.2 % of the circle out.
    assert drawn.area == pytest.approx(faying_area(13 / 16 * 0.0254, 2 * 0.0254), rel=0.01)
    assert group.free_ends == 0
    with pytest.raises(OutOfRangeError, match="length_m"):
        slot_group(0.02, 0.02)


def test_the_european_code_has_no_distance_between_plugs() -> None:
    query = "units=si&joint=plug&plate=10mm&plate2=10mm&hole=20mm&py=20kN&plugs=2&pitch=30mm"
    assert "center to center" in said(query)
    assert "center to center" not in said(f"{query}&design_code=en")
    assert all("aisc" not in note.source for note in ask(f"{query}&design_code=en").notes)


def test_by_the_european_code_by_the_weaker_plate() -> None:
    query = "units=si&joint=plug&plate=10mm&plate2=10mm&hole=20mm&design_code=en&py=50kN"
    found = ask(query)
    # 4.8: 360 / (√3·0.8·1.25) x 314.16 mm².
    assert found.weld.holds / 1000 == pytest.approx(65.297, rel=1e-4)
    assert found.holds
    # 4.3.5(2): 10 + 8 mm; (4) filled level to 16 mm.
    query = query.replace("py=50kN", "py=20kN")
    assert stops(query.replace("hole=20mm", "hole=17mm")) == ["strength.hole-small"]
    assert stops(query.replace("hole=20mm", "hole=18mm")) == []
    assert stops(f"{query}&depth=8mm") == ["strength.fill-low"]
    assert stops(f"{query}&hole=50mm") == []  # no largest


@pytest.mark.parametrize(
    ("hole", "key"),
    [("3/4in", ["strength.hole-small"]), ("13/16in", []), ("1-1/8in", []),
     ("1-3/16in", ["strength.hole-large"])],
)  # fmt: skip
def test_holes_are_held_to_the_code_s_sizes(hole: str, key: list[str]) -> None:
    # J2.3b: 1/2 + 5/16 = 13/16 at least; 2-1/4 x 1/2 = 1-1/8 at most.
    assert stops(f"joint=plug&plate=1/2in&plate2=1/2in&hole={hole}&py=3kip") == key


def test_a_hole_half_filled_is_stopped() -> None:
    assert stops(f"{PLUG}&depth=3/8in&py=3kip") == ["strength.fill-low"]


@pytest.mark.parametrize(
    ("query", "keys"),
    [
        ("pz=1kip", ["pz"]),
        ("pz=-1kip", ["pz"]),
        ("line_load=1kip/in", ["line_load"]),
        ("mz=1kip-in&py=1kip", ["mz"]),
        ("py=1kip&load_x=9in", ["load_x"]),
        ("py=1kip&load_z=3in&mx=1kip-in", ["mx", "load_z"]),
        ("mz=1kip-in", ["mz"]),
    ],
)
def test_a_load_that_is_no_shear_is_refused_where_it_stands(query: str, keys: list[str]) -> None:
    with pytest.raises(FieldErrors) as caught:
        ask(f"{PLUG}&{query}")
    assert sorted(caught.value.messages) == sorted(keys)


@pytest.mark.parametrize(
    ("plate", "hole", "fill"), [(10, 18, 10), (16, 24, 16), (20, 28, 16), (40, 48, 20)]
)
def test_en_asks_8_mm_over_the_plate_and_half_of_it_filled(
    plate: float, hole: float, fill: float
) -> None:
    """EN 1993-1-8, 4.3.5(2) and (4): to 16 mm level; over it half the thickness, 16 mm or more."""
    job = read_query(f"units=si&joint=plug&plate=10mm&plate2={plate}mm").job
    edges = hole_by_en(job).edges
    assert (edges.hole_m, edges.depth_m) == pytest.approx((hole / 1000, fill / 1000))
    typed = read_query(f"units=si&joint=plug&plate=10mm&plate2={plate}mm&hole=55mm").job
    assert hole_by_en(typed).edges.hole_m == pytest.approx(0.055)


@pytest.mark.parametrize("code", ["en", "en-directional"])
def test_a_blank_hole_is_the_least_of_the_code_asked(code: str) -> None:
    """EN 1993-1-8, 4.3.5(2), (4): 8 mm over the part with the hole; to 16 mm filled level."""
    plates = "units=si&joint=plug&plate=10mm&plate2=10mm&py=10kN"
    sizes = ask(f"{plates}&design_code={code}").sizes
    assert isinstance(sizes, PlugSizes)
    assert (sizes.hole, sizes.fill) == pytest.approx((0.018, 0.010))
    assert stops(f"{plates}&design_code={code}") == []
    # AISC J2.3b: 10 mm and 5/16 in, up to the next odd sixteenth: 13/16 in = 20.6 mm > 18 mm.
    american = ask(plates).sizes
    assert isinstance(american, PlugSizes)
    assert american.hole == pytest.approx(13 / 16 * 0.0254)
    typed = ask(f"{plates}&hole=25mm&design_code={code}").sizes
    assert isinstance(typed, PlugSizes)
    assert typed.hole == pytest.approx(0.025)


def test_a_plate_whose_width_is_given_is_checked_beside_the_hole() -> None:
    found = ask(f"{PLUG}&py=5kip&plate2_width=2in&plate_width=3in")
    holds = {k.key: k.holds / KIP for k in found.links}
    assert holds["plate-gross"] == pytest.approx(36 * 1.5 / 1.67)
    assert holds["plate2-gross"] == pytest.approx(36 * 1 / 1.67)
    # D2: the net section through the hole.
    assert holds["plate2-net"] == pytest.approx(58 * (2 - 13 / 16) / 2 / 2)
    assert "is checked for pull only where" not in said(
        f"{PLUG}&py=5kip&plate2_width=2in&plate_width=3in"
    )
    assert "is checked for pull only where" in said(f"{PLUG}&py=5kip&plate2_width=2in")
    assert "is checked for pull only where" in said(
        f"{PLUG}&py=5kip&plate2_width=2in&plate_width=3in&plugs=2"
    )
    several = ask(f"{PLUG}&py=5kip&plate2_width=2in&plugs=2")
    assert "plate2-net" not in {k.key for k in several.links}
    european = ask("units=si&joint=plug&plate=10mm&plate2=10mm&hole=20mm&design_code=en&py=50kN"
                   "&plate2_width=60mm")  # fmt: skip
    holds = {k.key: k.holds / 1000 for k in european.links}
    assert holds["plate2-gross"] == pytest.approx(141)
    assert holds["plate2-net"] == pytest.approx(0.9 * 400 * 0.36 / 1.25)
    with pytest.raises(FieldErrors) as caught:
        ask(f"{PLUG}&py=5kip&plate2_width=3/4in")
    assert set(caught.value.messages) == {"plate2_width", "hole"}
    with pytest.raises(FieldErrors):  # as wide as its hole, nothing is left either
        ask(f"{PLUG}&py=5kip&plate2_width=13/16in")


def test_each_plate_of_a_plug_is_named_as_itself() -> None:
    found = ask(f"{PLUG}&py=5kip&plate2_width=2in&plate_width=3in")
    named = {link.key: in_words(link.phrase) for link in found.links}
    assert named["plate-gross"] == "bottom plate, pulled: yielding over 3 in"
    assert named["plate2-gross"] == "second plate, pulled: yielding over 2 in"


def test_the_largest_hole_goes_by_how_full_it_is() -> None:
    """AISC 360 J2.3b, upper plate 3/4 in: 1/8 in over the least of 1-1/16, or 2-1/4 times the fill.

    Filled 5/8 in 1-13/32 in, filled 3/4 in 1-11/16 in: both over 1-3/16.
    """
    plug = "joint=plug&plate=1/2in&plate2=3/4in&hole=1-1/8in&py=5kip"
    for depth, most in (("5/8in", 1.40625), ("3/4in", 1.6875)):
        sizes = ask(f"{plug}&depth={depth}").sizes
        assert isinstance(sizes, PlugSizes)
        assert sizes.most_hole is not None
        assert sizes.most_hole / 0.0254 == pytest.approx(most)


def test_plugs_keep_their_distance() -> None:
    assert stops(f"{PLUG}&py=5kip&plugs=2&pitch=3in") == ["strength.plugs-close"]
    assert stops(f"{PLUG}&py=5kip&plugs=2&pitch=3-1/4in") == []
    assert "3-1/4 in or more" in said(f"{PLUG}&py=5kip&plugs=2")
    assert "center to center" not in said(f"{PLUG}&py=5kip")  # one stands alone
    slot = "joint=slot&plate=1/2in&plate2=1/2in&hole=13/16in&slot_length=2in&plugs=2&py=5kip"
    assert "4 in end to end" in said(slot)


def test_the_demonstration_s_load_is_one_a_plug_can_take() -> None:
    assert ask("joint=plug").task.demo_load
    assert ask("joint=slot").weld.asked / KIP == pytest.approx(5)


def test_a_thousand_areas_agree_with_shapely() -> None:
    chance = Random(1314)
    for _ in range(1000):
        hole = chance.uniform(0.005, 0.08)
        slot = hole + chance.uniform(0, 0.3)
        # The hole swept along the slot's middle: half circles of 4 x 256 chords.
        middle = Point(0, 0) if slot - hole < 1e-9 else LineString([(0, 0), (slot - hole, 0)])
        drawn = middle.buffer(hole / 2, quad_segs=256).area
        assert faying_area(hole, slot) == pytest.approx(drawn, rel=1e-5)
        assert faying_area(hole) == pytest.approx(
            Point(0, 0).buffer(hole / 2, quad_segs=256).area, rel=1e-5
        )
