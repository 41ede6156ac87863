"""Strength: the plates beside a weld and the sizes a leg may have, worked by hand."""

import pytest

from beadwright.errors import FieldErrors
from tests.calc.strength_asked import ask


def use_of(query: str, key: str) -> float:
    found = ask(f"{query}&plate=3/8in&plate2=3/8in&steel=A36&leg=3/16in")
    return next(link.use for link in found.links if link.key == key)


@pytest.mark.parametrize(
    ("query", "key", "use"),
    [
        # 3/8 in of A36 holds 0.6·36·0.375/1.5 = 5.4 kip/in of shear, 36·0.375/1.67 of pull.
        ("group=line&group_height=6in&weld_sides=2&py=12kip", "plate-yield", 1 / 5.4),
        ("group=line&group_height=6in&weld_sides=2&py=12kip", "plate2-yield", 2 / 5.4),
        ("group=line&group_height=6in&weld_sides=1&py=12kip", "plate-yield", 2 / 5.4),
        ("line_load=3kip/in&weld_sides=2", "plate2-yield", 3 / 5.4),
        ("group=line&group_height=6in&weld_sides=2&pz=12kip", "plate2-yield", 2 / 8.08383),
        ("group=line&group_height=6in&weld_sides=2&pz=12kip", "plate-yield", 1 / 5.4),
        ("joint=lap&group=line&group_height=6in&weld_sides=1&pz=12kip", "plate2-yield", 2 / 5.4),
        # 1 kip/in of pull and 2 of bending at the top, 12/(6²/6): 3 there, 1 of push below.
        (
            "group=line&group_height=6in&weld_sides=1&pz=6kip&mx=12kip-in",
            "plate2-yield",
            3 / 8.08383,
        ),
        # Tearing: 0.6·58·0.375/2 = 6.525 of shear, 58·0.375/2 = 10.875 of pull.
        ("group=line&group_height=6in&weld_sides=2&py=12kip", "plate2-rupture", 2 / 6.525),
        ("group=line&group_height=6in&weld_sides=2&pz=12kip", "plate2-rupture", 2 / 10.875),
    ],
)
def test_what_the_plates_beside_a_weld_are_asked(query: str, key: str, use: float) -> None:
    assert use_of(query, key) == pytest.approx(use, rel=1e-4)


@pytest.mark.parametrize(
    ("query", "needed_m"),
    [
        # E70 with Ω: 0.6·70·6.8948/√2/2 = 0.10238 kN/mm for each millimeter of leg.
        ("units=si&line_load=0.5kN/mm", 0.005),
        ("units=si&line_load=0.52kN/mm", 0.006),
        # 0.9280 kip/in for each sixteenth: 32 of them hold 29.70.
        ("line_load=29.6kip/in", 0.0508),
        ("line_load=28.7kip/in", 31 / 16 * 0.0254),
        ("line_load=29.8kip/in", None),
    ],
)
def test_the_leg_needed_goes_by_shop_steps_to_two_inches(
    query: str, needed_m: float | None
) -> None:
    found = ask(f"{query}&group_height=20in&weld_sides=1&plate=2in&plate2=2in").legs.needed
    assert found == (needed_m if needed_m is None else pytest.approx(needed_m))


@pytest.mark.parametrize(
    ("query", "least", "one_pass"),
    [
        # AISC 360 Table J2.4: 3, 5, 6, 8 mm at 6, 13, 19 mm; AWS D1.1 Table 5.1: 10 mm in 2F.
        ("plate=10mm&plate2=10mm&position=2F", 5, 10),
        ("plate=16mm&plate2=16mm&position=1F", 6, 12),
        ("plate=25mm&plate2=25mm&position=4F", 8, 8),
        ("plate=6mm&plate2=6mm&position=3F-down", 3, 5),
    ],
)
def test_in_millimeters_sizes_are_the_codes_own(query: str, least: float, one_pass: float) -> None:
    found = ask(f"units=si&{query}&py=1kN").legs
    assert found.least == pytest.approx(least / 1000)
    assert found.one_pass == pytest.approx(one_pass / 1000)


def test_along_an_edge_in_millimeters_two_are_left() -> None:
    # AISC 360 J2.2b(b): 10 mm of plate, 8 mm of leg; in inches 3/8 in, 5/16.
    assert ask("units=si&joint=lap&plate=10mm&plate2=10mm&py=1kN").legs.most == pytest.approx(0.008)
    assert ask("units=si&joint=lap&plate=10mm&plate2=10mm&py=1kN&leg=8mm").links
    with pytest.raises(FieldErrors):
        ask("units=si&joint=lap&plate=10mm&plate2=10mm&py=1kN&leg=8.2mm")


def test_each_plate_beside_a_weld_has_its_own_steel() -> None:
    links = {
        link.key: link
        for link in ask("group=line&group_height=6in&py=12kip&plate=3/8in&plate2=3/8in&leg=3/16in"
                        "&steel=A572-50&steel2=A36").links
    }  # fmt: skip
    kip_in = 4448.2216 / 0.0254
    # J4.2: 0.6 x 50 x 0.375 / 1.5 and 0.6 x 36 x 0.375 / 1.5.
    assert links["plate-yield"].holds / kip_in == pytest.approx(7.5, rel=1e-6)
    assert links["plate2-yield"].holds / kip_in == pytest.approx(5.4, rel=1e-6)
    assert {links[key].source for key in ("plate-yield", "plate2-rupture")} == {"aisc-j4.2"}


def test_plates_beside_a_weld_by_the_european_code() -> None:
    """EN 1993-1-1, 6.2.6 and 6.2.3: 10 mm of S235 hold 235 x 10 / √3 of shear, 235 x 10 of pull."""
    query = ("units=si&group=line&group_height=200mm&weld_sides=2&plate=10mm&plate2=10mm"
             "&leg=6mm&design_code=en&weld_ends=full")  # fmt: skip
    for load, plate, other in (("py=100kN", 0.25 / 1.35677, 0.5 / 1.35677),
                               ("pz=100kN", 0.25 / 1.35677, 0.5 / 2.35)):  # fmt: skip
        links = {link.key: link for link in ask(f"{query}&{load}").links}
        assert set(links) == {"weld", "plate-yield", "plate2-yield"}
        assert links["plate-yield"].use == pytest.approx(plate, rel=1e-5)
        assert links["plate2-yield"].use == pytest.approx(other, rel=1e-5)
        assert links["plate-yield"].source == "en-1993-1-1"
