"""Grooves, plugs and laps of the Strength page worked by hand."""

from tests.calc.worked_pages import Worked

LOADED = (
    Worked(
        "strength",
        "joint=plug&plate=1/2in&plate2=1/2in&hole=13/16in&py=5kip",
        {
            "holds": True,
            "weakest": "plug, sheared where the plates meet",
            "use": 0.45921,
            "hole.value": 0.8125,
            "hole_least.value": 0.8125,
            "hole_most.value": 1.125,
            "fill_least.value": 0.5,
            "area.value": 0.518486,
            "links[weld].asked.value": 5.0,
            "links[weld].holds.value": 10.8882,
            "segment": None,
        },
        """AISC 360 J2.3: hole 1/2 + 5/16 = 13/16 at least, 2-1/4 x 1/2 = 1-1/8 at most, filled
        level. Area 0.8125^2 x 3.14159/4 = 0.518486; 0.6 x 70 x 0.518486 / 2 = 10.8882 kip.""",
    ),
    Worked(
        "strength",
        "joint=v&plate=1/2in&depth=1/4in&group_height=6in&pz=12kip&held=yes",
        {
            "holds": True,
            "throat.value": 0.25,
            "throat_least.value": 0.1875,
            "through": False,
            "links[weld].asked.value": 2.0,
            "links[weld].holds.value": 5.585106,
            "links[groove-rupture].holds.value": 7.25,
            "links[plate-yield].holds.value": 10.778443,
            "links[plate2-rupture].holds.value": 14.5,
        },
        """AISC 360 Table J2.5: 0.6 x 70 x 1/4 / 1.88 = 5.585 kip/in pulled; the plate over the same
        depth 58 x 1/4 / 2 = 7.25; over its thickness 36 x 1/2 / 1.67 and 58 x 1/2 / 2. Table J2.3,
        to 1/2 in: 3/16.""",
    ),
    Worked(
        "strength",
        "joint=v&plate=1/2in&plate2=3/8in&group_height=6in&pz=12kip&backing=steel",
        {
            "holds": True,
            "use": 0.247407,
            "through": True,
            "throat.value": 0.375,
            "throat_least.value": None,
            "links[weld].holds.value": 8.083832,
        },
        "Welded through: as the thinner plate, 36 x 3/8 / 1.67 = 8.0838; 2/8.0838 = 0.2474.",
    ),
    Worked(
        "strength",
        "joint=lap&plate=3/8in&plate2=1/4in&group=lines&group_height=6in&group_width=4in&py=30kip",
        {
            "holds": False,
            "weakest": "second plate, pulled: yielding over 4 in",
            "use": 1.391667,
            "links[plate2-gross].asked.value": 30.0,
            "links[plate2-gross].holds.value": 21.556886,
            "links[plate2-net].holds.value": 24.731855,
            "links[plate-gross].holds.value": 32.335329,
            "links[plate-block].holds.value": 92.1,
        },
        """AISC 360-22 D2: 36 x 4 x 1/4 / 1.67 = 21.557 and 36 x 4 x 3/8 / 1.67 = 32.335. Table
        D3.1: U = 108/124 x (1 - 0.125/6) = 0.852823; 58 x 1 x U / 2 = 24.732. J4.3, the plate lying
        down: (0.6 x 36 x 2 x 6 x 3/8 + 58 x 4 x 3/8) / 2 = 92.1.""",
    ),
)
