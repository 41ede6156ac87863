"""Cost, Supplies and Shop worked by hand."""

from tests.calc.worked_pages import Worked

COST_QUERY = (
    "plate=3/8in&leg=5/16in&parts=1000&arc_min=6min&laid=10lb/h&efficiency=90%&factor=50%"
    "&gas_flow=30ft3/h&gas_extra=0s&waste=0%&rework=0%&wire_price=1.80/lb&gas_price=.10/ft3"
    "&labour=30/h&overhead=20/h&energy_price=0&tip_price=0&nozzle_price=0"
    "&b_wire=E70C-6M&b_arc_min=4min&b_laid=15lb/h&b_efficiency=80%&b_wire_price=2.40/lb"
    "&b_rolls=100&b_liner=0&b_procedure=0&b_training=0"
)

NO_SWING = "&".join(
    f"swing_{name}=0%" for name in ("rates", "prices", "feed", "minutes", "volume", "once", "size")
)
"""Rates, prices, minutes and volume are as said."""

COST = (
    Worked(
        "cost",
        COST_QUERY,
        {
            "parts": 1000,
            "ways[a].measured": True,
            "ways[a].metal.value": 1.0,
            "ways[a].wire_bought.value": 1.11111,
            "ways[a].gas.value": 3.0,
            "ways[a].factor.value": 50.0,
            "ways[a].time.value": 12.0,
            "ways[a].pieces[labour_on].part": 3.0,
            "ways[a].pieces[labour_off].part": 3.0,
            "ways[a].pieces[overhead].part": 4.0,
            "ways[a].pieces[wire].part": 2.0,
            "ways[a].pieces[gas].part": 0.30,
            "ways[a].part": 12.30,
            "ways[a].length.value": 3.075,
            "ways[a].metal_mass.value": 12.30,
            "ways[a].batch": 492.0,
            "ways[a].year": 12300.0,
            "ways[a].capacity.parts_a_shift": 40.0,
            "ways[a].capacity.most_parts": 10000.0,
            "ways[a].capacity.used.value": 10.0,
            "ways[a].capacity.delivers": True,
            "ways[b].wire_bought.value": 1.25,
            "ways[b].gas.value": 2.0,
            "ways[b].time.value": 10.0,
            "ways[b].factor.value": 40.0,
            "ways[b].pieces[labour_on].part": 2.0,
            "ways[b].pieces[labour_off].part": 3.0,
            "ways[b].pieces[overhead].part": 3.33333,
            "ways[b].pieces[wire].part": 3.0,
            "ways[b].pieces[gas].part": 0.20,
            "ways[b].part": 11.53333,
            "ways[b].once[rolls].amount": 100.0,
            "comparisons[0].part_saving": 0.766667,
            "comparisons[0].year_saving": 766.667,
            "comparisons[0].once": 100.0,
            "comparisons[0].net_saving.value": 666.667,
            "comparisons[0].break_even.parts_to_pay": 130.435,
            "comparisons[0].break_even.months": 1.565217,
            "comparisons[0].break_even.price.value": 3.01333,
            "comparisons[0].break_even.price_paid_back.value": 2.93333,
            "comparisons[0].swings[now_price].at_low": 566.667,
            "comparisons[0].swings[labour].at_low": 566.667,
            "comparisons[0].swings[now_price].value.value": 1.80,
            "comparisons[0].swings[now_price].low": 1.71,
            "comparisons[0].swings[other_price].value.value": 2.40,
            "comparisons[0].swings[other_price].low": 2.28,
            "comparisons[0].swings[other_price].at_low": 816.667,
            "comparisons[0].swings[now_laid].value.value": 10.0,
            "comparisons[0].swings[other_laid].value.value": 15.0,
            "comparisons[0].break_even.laid.value": 12.6190,
            "comparisons[0].break_even.gain.value": 26.190,
            "comparisons[0].verdict.word": "switch",
            "comparisons[0].verdict.reason": "Time on the arc saves $1.67 a part, wire costs $1.00 "
            "more: $667 a year saved after what is paid once.",
        },
        """First way: 10 lb/h x 6 min = 1 lb; /0.9 = 1.1111 lb of wire, 2.00 at 1.80; 30 ft3/h x 6
        min = 3 ft3, 0.30; half the time arc: 12 min, 3 + 3 labour at 30/h, 4 overhead at 20/h. In
        all 12.30; over 8 x 6 in = 4 ft 3.075 a foot; 40 parts a shift of 8 h, 10 000 in 2000 h.
        Second: 15 lb/h x 4 min = 1 lb; /0.8 = 1.25 lb, 3.00 at 2.40; 2 ft3, 0.20; its 4 min and
        the same 6 off the arc: 2 + 3, 3.3333. In all 11.5333. Saved 0.76667 a part, 766.67 a
        year less 100 paid once; back after 100/0.76667 = 130.43 parts, 1.565 months; the wire may
        cost 2.40 + 0.76667/1.25 = 3.0133, or 2.40 + 0.66667/1.25 where it must pay back. First
        wire 5 % cheaper: 2.00 x 5 % x 1000 = 100 less. Labour 10 %
        lower: 2 min at 3/h, 100 less. Second wire 5 % cheaper: 3.00 x 5 % x 1000 = 150 more. A
        minute of arc costs 50/60 and 0.5 ft3 at 0.10, 0.88333: 0.66667/0.88333 = 0.75472 min more
        than 4, so 1 lb in 4.75472 min, 12.619 lb/h, 26.19 % over 10. Time on the arc: 2 min at
        50/h, 1.6667; wire 3.00 against 2.00.""",
        lines=(
            "Cost of a part,$,12.3,11.53333333",
            "Batch of 40,$,492.0,461.3333333",
            "Time of a part,min,12.0,10.0",
        ),
    ),
    Worked(
        "cost",
        COST_QUERY.replace("parts=1000", "parts=100"),
        {
            "comparisons[0].net_saving.value": -23.3333,
            "comparisons[0].break_even.parts_a_year": 130.435,
            "comparisons[0].break_even.crossing": "above",
            "ways[a].year": 1230.0,
        },
        "100 x 0.76667 less 100.",
    ),
    Worked(
        "cost",
        f"{COST_QUERY}&{NO_SWING}&draws=100",
        {"comparisons[0].chance.pays": 1.0, "comparisons[0].chance.draws": 100},
        """What is left to chance, the size of the welds and the flow of gas, moves both ways alike;
        nothing of it is worth 666.67 a year.""",
    ),
)

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
        """pi/4 x (100 - 56.25) x 3.5 = 120.264 in3 of ring, x 0.2836 lb/in3 = 34.107 lb, of which 0.6
        to 0.8 is wire, 0.7 taken. A part takes 1/0.9 lb and is 4 ft: 3.6 ft a pound; at 10/0.9 lb/h
        it lasts 2.149 h.""",
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
)
