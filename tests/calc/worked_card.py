"""The Card worked by hand."""

from tests.calc.worked_pages import Worked

CARD = (
    Worked(
        "card",
        "plate=3/8in&leg=5/16in&steel=A36&wfs=400in/min&volts=28&travel=12in/min"
        "&piece=Bracket&weld_mark=W1&proved_by=Ann&written_by=Ott&paper=pocket",
        {
            "paper": "pocket",
            "says.piece": "Bracket",
            "says.weld_mark": "W1",
            "says.proved_by": "Ann",
            "says.written_by": "Ott",
            "says.revision": None,
            "wire_feed.value": 400.0,
            "wire_feed.by_hand": True,
            "volts.value": 28.0,
            "volts.by_hand": True,
            "travel.value": 12.0,
            "travel.by_hand": True,
            "preheat.value": 32.0,
            "limits[leg].limit.value": 0.3125,
            "limits[undercut].limit.value": 0.03125,
        },
        """What is set by hand stands on the card as it was set. AWS D1.1:2020 Table 5.8 (from
        memory): A36 to 3/4 in with a low-hydrogen process, 32 F. The leg is asked for whole, 5/16;
        Table 8.1: undercut to 1/32 in under 1 in of plate.""",
    ),
    Worked(
        "card",
        "plate=10mm&leg=8mm&steel=A36&units=si&wfs=10m/min",
        {"paper": "a4", "wire_feed.value": 10.0, "preheat.value": 0.0,
         "limits[leg].limit.value": 8.0},
        "In millimeters the paper is A4; Table 5.8 in its metric row: 0 C to 20 mm.",
    ),
)  # fmt: skip
