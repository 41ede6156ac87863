"""Supplies and Shop worked by hand."""

from tests.calc.worked_pages import Worked

SUPPLIES = (
    Worked(
        "supplies",
        "plate=3/8in&leg=5/16in&count=100&arc_min=6min&laid=10lb/h&efficiency=90%&waste=0%"
        "&rework=0%&gas_flow=30ft3/h&gas_extra=0s&wire_price=2/lb&cylinder_price=40&tip_price=2"
        "&nozzle_price=10&parts=480&weeks=50",
        {
            "count": 100,
            "arc.value": 600.0,
            "wire.value": 111.111,
            "packages": 4,
            "change_overs": 3,
            "wire_left_over.value": 20.8889,
            "package_years": 0.061875,
            "gas.value": 300.0,
            "cylinders": 1,
            "cylinders_a_week": 0.0872727,
            "cylinder_lasts.value": 11.0,
            "tips": 2,
            "nozzles": 1,
            "purchases[wire].count": 4,
            "purchases[wire].price": 66.0,
            "purchases[wire].amount": 264.0,
            "purchases[gas].package": "330ft3",
            "purchases[gas].count": 1,
            "purchases[gas].price": 40.0,
            "purchases[gas].amount": 40.0,
            "purchases[tips].amount": 4.0,
            "purchases[nozzles].amount": 10.0,
            "total": 318.0,
        },
        """100 x 6 min; 100 x 1 lb / 0.9; four spools of 33 lb hold 132 lb; a spool welds 33/1.1111
        = 29.7 parts of 480 a year. 100 x 3 ft3; a cylinder of 330 ft3 lasts 330/30 = 11 h; 480/50
        parts a week take 28.8 ft3. 10 h of arc: two tips of 8 h, one nozzle of 60 h.""",
        lines=("Contact tip for 0.045in,each,2,2.00,4.00,", "total,,,,318.00,"),
    ),
    Worked(
        "supplies",
        "plate=3/8in&leg=5/16in&count=200&arc_min=6min&laid=10lb/h&efficiency=90%&waste=0%"
        "&rework=0%&gas_flow=30ft3/h&gas_extra=0s&on_hand=30lb",
        {"wire.value": 222.222, "packages": 6, "gas.value": 600.0, "cylinders": 2},
        "222.2 lb less 30 on hand: 192.2, six spools of 33 lb; 600 ft3, two cylinders of 330.",
    ),
    Worked(
        "supplies",
        "plate=3/8in&leg=5/16in&wire=ER70S-6&dia=0.045in&count=100&arc_min=6min&laid=10lb/h"
        "&efficiency=90%&waste=10%&rework=5%&gas_flow=30ft3/h&gas_extra=15s&tip_life=5h"
        "&nozzle_life=10h&nozzle_price=0&parts=480&weeks=48",
        {
            "arc.value": 630.0,
            "wire.value": 129.6296,
            "wire_length.value": 23950.0,
            "packages": 4,
            "change_overs": 3,
            "wire_left_over.value": 2.37037,
            "package_years": 0.0530357,
            "gas.value": 420.0,
            "cylinders": 2,
            "cylinders_a_week": 0.127273,
            "tips": 3,
            "nozzles": 2,
            "purchases[nozzles].count": 2,
            "purchases[nozzles].price": 0.0,
            "purchases[nozzles].amount": 0.0,
        },
        """One part in twenty is welded twice: 100 x 1.05 x 6 min. A pound laid, / 0.9 melted, / 0.9
        bought, x 1.05 = 1.296296 lb; of 100 parts 129.63 lb, four spools of 33 lb. Steel 0.2836
        lb/in3: pi/4 x 0.045^2 x 12 x 0.2836 = 0.0054125 lb/ft, 23 950 ft. Gas: 6 min and 8 x 15 s,
        8 min at 30 ft3/h = 4 ft3, x 1.05 = 4.2; of 10 parts a week 42, of 330 in a cylinder. 10.5 h
        of arc: three tips of 5 h, two nozzles of 10 h. A spool: 33/(480 x 1.296296) years.""",
        share=1e-3,
    ),
    Worked(
        "supplies",
        "plate=3/8in&leg=5/16in&wire=ER70S-6&dia=0.045in&arc_min=6min&laid=10lb/h&efficiency=90%"
        "&waste=0%&rework=0%&spool_outside=10in&spool_hub=7.5in&spool_width=3.5in",
        {
            "spool.by": "size",
            "spool.wire.low": 20.464,
            "spool.wire.value": 23.875,
            "spool.wire.high": 27.286,
            "spool.weld.low": 73.67,
            "spool.weld.value": 85.95,
            "spool.weld.high": 98.23,
            "spool.parts": 21.4875,
            "spool.arc.value": 128.925,
        },
        """pi/4 x (100 - 56.25) x 3.5 = 120.264 in3 of ring, x 0.2836 lb/in3 = 34.107 lb, of which
        0.6 to 0.8 is wire, 0.7 taken. A part takes 1/0.9 lb and is 4 ft: 3.6 ft a pound; at 10/0.9
        lb/h it lasts 2.149 h.""",
        share=1e-3,
    ),
    Worked(
        "supplies",
        "plate=3/8in&leg=5/16in&count=100&arc_min=6min&gas_flow=30ft3/h&gas_extra=0s&rework=0%"
        "&cylinder=bulk&gas_price=.10/ft3",
        {
            "cylinders": None,
            "gas.value": 300.0,
            "purchases[gas].count": 1,
            "purchases[gas].amount": 30.0,
        },
        "10 h of arc at 30 ft3/h, 300 ft3 at .10.",
    ),
    Worked(
        "supplies",
        "plate=3/8in&leg=5/16in&count=100&arc_min=6min&gas_flow=30ft3/h&gas_extra=0s&rework=0%"
        "&cylinder_gas=100ft3",
        {"cylinders": 3, "cylinder_gas.value": 100.0, "cylinder_lasts.value": 3.333333},
        "300 ft3 of cylinders of 100: three, none begun; 100/30 h.",
    ),
)

SHOP = (
    Worked(
        "shop",
        "machine_amps=300A&duty=60%&amps=250A&volts=28V&supply=230V&phase=1&machine_efficiency=85%"
        "&power_factor=95%&cable_length=2ft&breaker=50A",
        {
            "holds": True,
            "current.value": 250.0,
            "duty.value": 86.4,
            "on.value": 8.64,
            "off.value": 1.36,
            "all_day_current.value": 232.379,
            "primary.value": 37.690,
            "effective_at_duty.value": 86.4,
            "effective.value": 35.033,
            "apparent.value": 8.6687,
            "checks[current].held": "holds",
            "checks[breaker].held": "holds",
        },
        """60 % at 300 A: (300/250)^2 x 60 = 86.4 %, 8.64 min in ten; all day 300 x sqrt(0.6) =
        232.4 A. 250 x 28 / (0.85 x 0.95) = 8669 VA, / 230 V = 37.69 A; heating like 37.69 x
        sqrt(0.864) = 35.03 A. Two feet of lead lose under 0.3 %.""",
        share=4e-3,
    ),
    Worked(
        "shop",
        "machine_amps=200A&duty=60%&amps=250A&volts=28V",
        {"holds": False, "checks[current].held": "fails", "checks[current].limit.value": 200.0},
        "250 A asked of 200 A.",
    ),
    Worked(
        "shop",
        "machine_amps=300A&amps=250A&volts=28V&supply=400V&phase=3&machine_efficiency=85%"
        "&power_factor=95%&cable_length=2ft",
        {"primary.value": 12.513},
        "8669 VA / (400 V x 1.7321) = 12.51 A.",
        share=4e-3,
    ),
    Worked(
        "shop",
        "amps=300A&volts=28V",
        {"duty.value": 81.66667, "on.value": 8.166667, "all_day_current.value": 271.1088},
        """With no machine written it is the demonstration shop's, 350 A at 60 %: (350/300)^2 x 60;
        350 x sqrt(0.6).""",
    ),
    Worked(
        "shop",
        "machine_amps=300A&amps=250A&volts=28V&supply=230V&machine_efficiency=85%&power_factor=95%"
        "&cable=50 mm2&cable_length=2ft",
        {"apparent.value": 8.6905},
        """Leads of 0.386 ohm/km, warm 1 + 0.00393 x 50: 0.000386 x 0.6096 x 1.1965 x 250 = 0.070386
        V; 250 x 28.070386 / (0.85 x 0.95) = 8690.52 VA, in kVA to four places.""",
        share=1e-6,
    ),
    Worked(
        "shop",
        "machine_amps=300A&amps=250A&volts=28V&supply=230V&phase=1&machine_efficiency=85%"
        "&power_factor=95%&cable=50 mm2&cable_length=2ft&cord=16 mm2&cord_length=100ft",
        {"checks[cord_drop].asked.value": 3.33473},
        """8690.52 VA / 230 V = 37.785 A; 1.21 ohm/km, warm: 0.00121 x 30.48 x 1.1965 = 0.044128
        ohm, there and back: x 2 x 37.785 A.""",
    ),
)
