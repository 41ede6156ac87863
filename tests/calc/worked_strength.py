"""The Strength page worked by hand."""

from tests.calc.worked_pages import Worked

TEE = "plate=1in&plate2=3/8in"

STRENGTH = (
    Worked(
        "strength",
        f"{TEE}&line_load=3kip/in",
        {
            "holds": True,
            "weakest": "second plate, yielding",
            "use": 0.5556,
            "leg.value": 0.1875,
            "leg_given": False,
            "leg_needed.value": 0.125,
            "leg_least.value": 0.1875,
            "leg_most.value": None,
            "leg_to_weld.value": 0.1875,
            "throat.value": 0.13258,
            "links[weld].asked.value": 3.0,
            "links[weld].holds.value": 5.5685,
            "links[weld].use": 0.53874,
            "links[plate-yield].asked.value": 1.5,
            "links[plate-yield].holds.value": 14.4,
            "links[plate-rupture].holds.value": 17.4,
            "links[plate2-yield].asked.value": 3.0,
            "links[plate2-yield].holds.value": 5.4,
            "links[plate2-rupture].holds.value": 6.525,
            "segment.length.value": 1.5,
            "segment.pitch.value": 2.5,
        },
        """AISC 360, ASD. A 1/16 in leg on one side: 0.6 x 70 ksi x 0.70711/16 / 2.00 = 0.92808
        kip/in. Two sides: 3 / (2 x 0.92808) = 1.62 sixteenths, so 2/16; Table J2.4 by the thinner
        plate, 3/8 in: 3/16 (by the 1 in plate it would be 5/16). So 3/16 is judged: throat 0.1875
        x 0.70711; it holds 2 x 3 x 0.92808 = 5.5685. A36: the plate lying down is sheared beside
        each of the two welds by 1.5: 0.6 x 36 x 1 / 1.5 = 14.4 and 0.6 x 58 x 1 / 2 = 17.4. The
        other, 3/8 in: 5.4 and 6.525, asked all 3; 3/5.4 = 0.5556 is the most used. Segments:
        4 x 3/16 is under 1-1/2 in, so 1-1/2; 1.5 x 5.4/3 = 2.7 in between middles, 2-1/2 by halves
        of an inch.""",
    ),
    Worked(
        "strength",
        f"{TEE}&line_load=3kip/in&gap=1/8in",
        {"leg.value": 0.1875, "leg_to_weld.value": 0.3125},
        "AWS D1.1: a gap over 1/16 in is added to the leg: 3/16 + 1/8 = 5/16 in.",
    ),
    Worked(
        "strength",
        "joint=lap&plate=1/2in&plate2=3/8in&line_load=1kip/in",
        {
            "leg_most.value": 0.3125,
            "leg_to_weld.value": 0.1875,
            "links[weld].holds.value": 2.78424,
            "links[plate-yield].asked.value": 1.0,
            "links[plate-yield].holds.value": 7.2,
        },
        """AISC 360 J2.2b: along an edge of 1/4 in and more the leg stays 1/16 in under it: 3/8 -
        1/16. A lap's plates are square to each other: the leg is welded as it
        is. One side: 3 x 0.92808. The plate lying down: 0.6 x 36 x 1/2 / 1.5.""",
    ),
    Worked(
        "strength",
        "joint=lap&plate=1/2in&plate2=3/16in&line_load=1kip/in",
        {"leg_most.value": 0.1875, "leg_least.value": 0.125},
        "Along an edge under 1/4 in the leg may be the edge; Table J2.4, to 1/4 in: 1/8 in.",
    ),
    Worked(
        "strength",
        f"{TEE}&line_load=1kip/in&leg=1/4in",
        {
            "leg_given": True,
            "leg.value": 0.25,
            "throat.value": 0.176777,
            "links[weld].holds.value": 7.42462,
            "segment.length.value": 1.5,
            "segment.pitch.value": 8.0,
        },
        """2 x 4 x 0.92808. Segments: strength allows 1.5 x 5.4/1 = 8.1 in, 8 by halves; AWS D1.1
        4.12.2.1 a spacing of 24 x 3/8 = 9 in.""",
    ),
    Worked(
        "strength",
        f"{TEE}&line_load=1kip/in&leg=1/4in&segment=2in",
        {"segment.length.value": 2.0, "segment.pitch.value": 9.0},
        "2 x 5.4 = 10.8 by strength; 24 x 3/8 = 9 by the spacing.",
    ),
    Worked(
        "strength",
        f"{TEE}&line_load=1kip/in&leg=1/4in&units=si",
        {
            "leg.value": 6.35,
            "leg_needed.value": 3.0,
            "segment.length.value": 40.0,
            "segment.pitch.value": 210.0,
        },
        """1/(2 x 0.92808) = 0.54 sixteenths = 0.86 mm: the least leg offered, 3 mm. 1-1/2 in = 38.1
        mm, so 40 by tens; by strength 40 x 5.4 = 216, by the spacing 24 x 9.525 = 228.6: 210.""",
    ),
    Worked(
        "strength",
        "plate=1in&plate2=1in&line_load=0.5kip/in",
        {"leg_least.value": 0.3125, "leg.value": 0.3125},
        "AISC 360 Table J2.4, over 3/4 in: 5/16 in.",
    ),
    Worked(
        "strength",
        "plate=1in&plate2=1in&line_load=0.5kip/in&design_code=en",
        {
            "leg_least.value": 0.1875,
            "leg.value": 0.1875,
            "leg_most.value": None,
            "leg_one_pass.value": None,
            "segment.length.value": 1.5,
            "segment.pitch.value": 9.0,
        },
        """EN 1993-1-8, 4.5.2: throat 3 mm, leg 3 x 1.41421 = 4.243 mm = 2.67 sixteenths, so 3:
        throat 3.368 mm. Segments: 30 mm and two throats are 36.7 mm, 1-1/2 in by halves, of which
        38.1 - 6.7 = 31.4 mm count. S235: two sides hold 2 x 207.85 x 3.368 = 1400 N/mm; asked 0.5
        kip/in = 87.6: pitch 501 mm. The clear gap, 200 mm, is less than 12 x 25.4: 238.1 mm = 9.37
        in, so 9.""",
    ),
    Worked(
        "strength",
        "plate=1in&plate2=1in&line_load=0.5kip/in&design_code=en&units=si",
        {"leg_least.value": 5.0, "leg.value": 5.0},
        "4.243 mm, so 5 mm.",
    ),
    Worked(
        "strength",
        f"{TEE}&line_load=1kip/in&leg=7/16in",
        {"segment.length.value": 2.0, "segment.pitch.value": 9.0},
        "4 x 7/16 = 1-3/4 in, by halves of an inch 2; 24 x 3/8 = 9.",
    ),
    Worked(
        "strength",
        f"{TEE}&line_load=5.5kip/in",
        {"holds": False, "use": 1.0185, "segment": None},
        "5.5/5.4: what is overloaded all along is not carried by pieces.",
    ),
    Worked(
        "strength",
        f"{TEE}&line_load=5.3kip/in",
        {"holds": True, "segment": None},
        "1.5 x 5.4/5.3 = 1.53, by halves 1-1/2: pieces without a gap are a weld all along.",
    ),
    Worked(
        "strength",
        f"{TEE}&line_load=90kip/in",
        {"holds": False, "leg_needed.value": None, "leg.value": 2.0, "segment": None},
        "90/(2 x 0.92808) = 48.5 sixteenths: over 2 in no fillet is offered, and 2 in is judged.",
    ),
    Worked(
        "strength",
        "plate=1in&plate2=1in&group=flats&weld_length=6in&group_width=4in&py=12kip&load_x=8in"
        "&leg=1/4in",
        {
            "group.length.value": 12.0,
            "group.x.value": 3.0,
            "group.y.value": 2.0,
            "load.mz.value": 60.0,
            "points[1].force.value": 3.4523,
            "links[weld].asked.value": 3.4523,
            "links[weld].holds.value": 3.71232,
            "use": 0.92996,
        },
        """Two level welds of 6 in, 4 in apart: 12 in, their middle 3 in to the right and 2 in up.
        12 kip at 8 in is 5 in beside it: 60 kip in. Polar moment of the lines: 2 x 6^3/12 + 12 x
        2^2 = 84 in3. At the right ends 12/12 + 60 x 3/84 = 3.1429 up and 60 x 2/84 = 1.4286 along,
        in all 3.4523. A quarter holds 4 x 0.92808.""",
    ),
    Worked(
        "strength",
        "plate=1in&plate2=1in&group=flats&weld_length=6in&group_width=4in&group_height=10in"
        "&py=1kip&leg=5/16in",
        {"group.length.value": 8.0, "group.x.value": 2.0, "group.y.value": 5.0},
        "With a height said, the width is the welds' length: 2 x 4 in, 10 in apart.",
    ),
    Worked(
        "strength",
        "plate=1in&plate2=1in&group=lines&group_width=4in&group_height=6in&analysis=ic"
        "&mz=20kip-in&leg=5/16in",
        {
            "group.length.value": 12.0,
            "centre.x.value": 2.0,
            "centre.y.value": 3.0,
            "load.mz.value": 20.0,
        },
        "Turned without a push, two equal uprights turn about their middle.",
    ),
)
