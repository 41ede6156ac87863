"""Dial in and Passes worked by hand."""

from tests.calc.worked_pages import Worked

DIAL_IN = (
    Worked(
        "dial-in",
        "plate=3/8in&leg=5/16in&wire=ER70S-6&dia=0.045in&gas=90/10&wfs=400in/min&volts=28V"
        "&travel=12in/min&ctwd=3/4in&position=2F&reinforcement=0in",
        {
            "passes": 1,
            "transfer": "spray",
            "wire_feed.value": 400.0,
            "wire_feed.by_hand": True,
            "volts.value": 28.0,
            "travel.value": 12.0,
            "tip_to_work.value": 0.75,
            "laid.value": 10.500,
            "bead.value": 0.051424,
            "leg.value": 0.32070,
            "throat.value": 0.220971,
            "travel.low": 8.7764,
            "travel.high": 12.6380,
        },
        """Wire 0.045 in: 0.0015904 in2; at 400 in/min and 0.2836 lb/in3 10.825 lb/h, 97 % laid
        (the table's for 90/10 in spray): 10.500. Bead 0.0015904 x
        0.97 x 400/12 = 0.051424 in2, a flat leg of sqrt(2 x 0.051424) = 0.3207. A flat 5/16 in
        fillet is 0.048828 in2, so 0.61709/0.048828 = 12.638 in/min at most; 1/16 in more, 3/8 in,
        0.070313 in2: 8.776 at least. Throat 5/16 x 0.70711.""",
        share=2e-4,
    ),
)

PASSES = (
    Worked(
        "passes",
        "plate=1in&joint=v&position=1G&angle=60deg&gap=1/8in&root_face=1/8in&reinforcement=0in"
        "&wire=ER70S-6&dia=0.045in&gas=90/10",
        {"metal.value": 1.9297},
        """Section: gap 1/8 x 1 = 0.125; two flanks (1 - 1/8)^2 x tan 30 = 0.44203; in all 0.56703
        in2, x 12 x 0.2836 lb/in3 = 1.9297 lb/ft.""",
    ),
    Worked(
        "passes",
        "plate=1/2in&leg=1/2in&position=2F&reinforcement=0in&passes=3&travel=15in/min"
        "&wire=ER70S-6&dia=0.045in&gas=90/10",
        {
            "passes": 3,
            "metal.value": 0.42540,
            "arc_time.value": 1.2,
            "wire.value": 0.21928,
            "beads[0].section.value": 0.0416667,
            "beads[2].section.value": 0.0416667,
            "beads[1].wire_feed.value": 405.129,
            "beads[1].wire_length.value": 13.5043,
            "beads[1].arc_time.value": 0.4,
        },
        """A flat 1/2 in fillet is 0.125 in2, x 12 x 0.2836 = 0.4254 lb/ft, a third for each bead.
        Wire 0.0015904 in2, 97 % laid: 0.041667 / 0.0015427 x 15 = 405.13 in/min; 6 in at 15 in/min
        0.4 min, 162 in of wire; three beads 0.125 x 6 x 0.2836 / 0.97 = 0.2193 lb.""",
        lines=("3,1,2,Cap,spray,405.129",),
    ),
    Worked(
        "passes",
        "plate=3/8in&leg=5/16in&position=2F&reinforcement=0in&passes=1&wfs=400in/min&volts=28V"
        "&weld_length=10in&wire=ER70S-6&dia=0.045in&gas=90/10",
        {
            "beads[0].section.value": 0.048828,
            "beads[0].travel.value": 12.6380,
            "beads[0].volts.value": 28.0,
            "arc_time.value": 0.79126,
            "wire.value": 0.14276,
        },
        """0.0015427 in2 x 400 = 0.61709 in3/min; / 0.048828 = 12.638 in/min; 10 in in 0.7913 min;
        0.048828 x 10 x 0.2836 / 0.97 = 0.1428 lb.""",
    ),
    Worked(
        "passes",
        "plate=1/2in&leg=1/2in&position=2F&reinforcement=0in&passes=3&wire=ER70S-6&dia=0.045in"
        "&gas=90/10&root_transfer=spray&root_wfs=300in/min&root_volts=27V&cap_wfs=500in/min"
        "&cap_volts=29V",
        {
            "beads[0].role": "root",
            "beads[0].transfer": "spray",
            "beads[0].wire_feed.value": 300.0,
            "beads[0].volts.value": 27.0,
            "beads[0].travel.value": 11.1076,
            "beads[2].role": "cap",
            "beads[2].wire_feed.value": 500.0,
            "beads[2].volts.value": 29.0,
            "beads[2].travel.value": 18.5126,
            "beads[0].work_angle.value": 45.0,
        },
        """Each bead a third of 0.125 in2, 0.0416667: 0.0015427 x 300 / 0.0416667 = 11.108 in/min,
        and x 500 18.513. The root halves the square corner: 45 degrees.""",
        lines=(
            "bead,side,layer,what,transfer,wire feed (in/min),volts (V),travel (in/min)",
            "1,1,1,Root,spray,300.0,27.0,",
        ),
    ),
    Worked(
        "passes",
        "plate=1/2in&leg=1/2in&position=2F&passes=3&gas=90/10&root_transfer=pulse",
        {"beads[0].transfer": "pulse", "beads[0].volts.value": None, "beads[2].transfer": "spray"},
        "The root's mode as written, the cap's as planned; in pulse the machine sets the volts.",
    ),
)
