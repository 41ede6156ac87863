"""Inspect worked by hand."""

from tests.calc.worked_pages import Worked

INSPECT = (
    Worked(
        "inspect",
        "plate=3/8in&leg=5/16in&wfs=350in/min&volts=27V&travel=11in/min&leg_found=9/32in"
        "&leg2_found=9/32in&undercut=1/64in&cracks=no",
        {
            "verdict": "out",
            "checks[leg].off.value": 0.03125,
            "checks[leg].limit.value": 0.3125,
            "checks[leg2].state": "out",
            "checks[throat].found.value": 0.198874,
            "checks[throat].limit.value": 0.220971,
            "checks[undercut].state": "in",
            "checks[crack].state": "in",
            "checks[gap].state": "unknown",
            "gauge.found.section.value": 0.0474609,
            "change.metal": 1.234568,
            "change.travel_timed": True,
            "change.laid_over_sums": 0.967,
            "change.changes[0].turned": "travel",
            "change.changes[0].travel.value": 8.9,
            "change.changes[1].turned": "wire_feed",
            "change.changes[1].wire_feed.value": 435.0,
            "change.changes[1].travel.value": 11.0,
            "repair[add].source": "aws-d1.1-7.25",
        },
        "9/32 is 1/32 under 5/16. Throats 0.70711 × 0.28125 and 0.3125. Metal (0.3125 ÷ 0.28125)² "
        "= 1.23457: travel 11 ÷ 1.23457 = 8.91, on its step 8.9; feed 350 × 1.23457 = 432.1, on "
        "its step 435. Section 1.2 × 0.28125² ÷ 2 = 0.047461 in². By our sums: 350 in/min of 0.045 "
        "in wire, 0.0015904 in², at 97 % laid (90/10 spray: 98 less 1) = 0.53995 in³/min over 11 "
        "in/min is 0.049086 in²; 0.047461 ÷ 0.049086 = 0.967.",
        share=1e-3,
    ),
    Worked(
        "inspect",
        "units=si&plate=10mm&leg=6mm&leg_found=6mm&leg2_found=8mm&convexity=2mm&undercut=0.6mm"
        "&pore=1mm&accept=iso-c",
        {
            "verdict": "out",
            "checks[throat].found.value": 4.8,
            "checks[throat].limit.value": 4.242641,
            "checks[throat-over].state": "in",
            "checks[asymmetry].found.value": 2.0,
            "checks[asymmetry].limit.value": 2.636396,
            "checks[convexity].limit.value": 2.5,
            "checks[convexity].state": "in",
            "checks[undercut].off.value": 0.1,
            "checks[pores].limit.value": 0.848528,
            "checks[pores].state": "out",
            "gauge.found.throat.value": 4.8,
            "gauge.found.face.value": 10.0,
            "gauge.found.section.value": 37.33333,
            "change": None,
        },
        "3-4-5 triangle: throat 6 × 8 ÷ 10 = 4.8, wanted 6 × 0.70711. Legs differ by 2, may by 2 + "
        "0.15 × 4.24264. Crown may be 1 + 0.15 × 10. Undercut 0.1 × 10, most 0.5. Pore 0.2 × "
        "4.24264. Section 24 + 2/3 × 10 × 2. No size is out: nothing to change.",
    ),
)
