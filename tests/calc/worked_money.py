"""Cost worked by hand."""

from tests.calc.worked_pages import Worked

COST_QUERY = (
    "plate=3/8in&leg=5/16in&parts=1000&arc_min=6min&laid=10lb/h&efficiency=90%&factor=50%"
    "&spatter=0min&b_spatter=0min"
    "&gas_flow=30ft3/h&gas_extra=0s&waste=0%&rework=0%&wire_price=1.80/lb&gas_price=.10/ft3"
    "&labour=30/h&overhead=20/h&energy_price=0&tip_price=0&nozzle_price=0"
    "&b_wire=E70C-6M&b_arc_min=4min&b_laid=15lb/h&b_efficiency=80%&b_wire_price=2.40/lb"
    "&b_rolls=100&b_liner=0&b_procedure=0&b_training=0"
)

NO_SWING = "&".join(
    f"swing_{name}=0%" for name in ("rates", "prices", "feed", "minutes", "volume", "once", "size")
)
"""Rates, prices, minutes and volume are as said."""

HANDBOOK_QUERY = (
    "plate=1/4in&leg=1/4in&wire=ER70S-6&shop_rate=45/h&waste=0%&rework=0%&energy_price=0"
    "&tip_price=0&nozzle_price=0&gas_extra=0s&spatter=0min&parts=1000&months=12"
    "&laid=5.4lb/h&arc_min=11.1111111min&factor=30%&wire_price=.85/lb&efficiency=64%&gas_price=0"
    "&b_wire=ER70S-6&b_laid=10.2lb/h&b_arc_min=5.88235294min&b_factor=45%&b_wire_price=1.78/lb"
    "&b_efficiency=87%&b_gas_flow=40ft3/h&b_gas_price=.02/ft3&b_equipment=2900"
)
"""A welding handbook's worked example of the cost of a pound of weld metal: stick, then wire."""

COST = (
    Worked(
        "cost",
        HANDBOOK_QUERY,
        {
            "ways[a].metal.value": 1.0,
            "ways[a].metal_mass.value": 29.1059,
            "ways[a].factor.value": 30.0,
            "ways[a].pieces[wire].part": 1.328125,
            "ways[b].factor.value": 45.0,
            "ways[b].metal_mass.value": 11.92833,
            "ways[b].pieces[wire].part": 2.045977,
            "ways[b].pieces[gas].part": 0.0784314,
            "comparisons[0].part_saving": 17.177573,
            "comparisons[0].once": 2900.0,
            "comparisons[0].break_even.parts_to_pay": 168.8248,
            "comparisons[0].sums.gross": 17177.57,
            "comparisons[0].sums.first": 14277.57,
            "comparisons[0].verdict.word": "pays",
        },
        """Printed (handbook, chapter on costs, second-hand): stick 45/(5.4 x .30) = 27.78, .85/.64
        = 1.33, 29.11 a pound; wire 45/(10.2 x .45) = 9.80, 1.78/.87 = 2.05, 40 x .02/10.2 = .08,
        11.93 a pound; 17.18 saved, 2900 of equipment back after 168.8 lb. One part is one pound
        here.""",
    ),
    Worked(
        "cost",
        HANDBOOK_QUERY.replace("11.1111111", "4.71111111").replace("5.88235294", "2.49411765"),
        {"ways[a].length.value": 3.085226, "ways[b].length.value": 1.264403},
        """Of a 1/4 in fillet 0.106 lb/ft (weight tables): 3.09 and 1.26 a foot. The part's 8 x 6 in
        are 4 ft, 0.424 lb.""",
    ),
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
            "comparisons[0].swings[now_price].high": 1.89,
            "comparisons[0].swings[other_price].value.value": 2.40,
            "comparisons[0].swings[other_price].low": 2.28,
            "comparisons[0].swings[other_price].at_low": 816.667,
            "comparisons[0].swings[now_laid].value.value": 10.0,
            "comparisons[0].swings[other_laid].value.value": 15.0,
            "comparisons[0].break_even.laid.value": 12.6190,
            "comparisons[0].break_even.gain.value": 26.190,
            "comparisons[0].sums.gross": 766.667,
            "comparisons[0].sums.first": 666.667,
            "comparisons[0].week.freed.value": 0.66667,
            "comparisons[0].week.shift_now": 40.0,
            "comparisons[0].week.shift_other": 48.0,
            "comparisons[0].week.even_parts": 2.60870,
            "comparisons[0].verdict.word": "pays",
            "comparisons[0].verdict.headline": "Pays: over 99 chances in 100",
            "comparisons[0].verdict.settle": "",
            "comparisons[0].verdict.reason": "Time on the arc saves $1.67 a part, wire costs $1.00 "
            "more.",
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
        50/h, 1.6667; wire 3.00 against 2.00. Freed: 2 min x 1000 / 50 weeks; from 130.43 parts a
        year in 50 weeks on. The three longest swings, 192, 150 and 106, do not take away 667.""",
        lines=(
            'what,unit,"ER70S-6 0.045in, 90/10","E70C-6M 0.045in, 90/10"',
            '"Labor, arc on, a part",$,3.0,2.0',
            '"Wire, a part",$,2.0,3.0',
            "Cost of a part,$,12.3,11.53333333",
            "Batch of 40,$,492.0,461.3333333",
            "Cost of weld,$/ft,3.075,2.883333333",
            '"Arc, a part",min,6.0,4.0',
            "Time of a part,min,12.0,10.0",
            "Savings a year after change-over cost,$,0.0,666.6666667",
            "Verdict,,,Pays: over 99 chances in 100",
            'Reason,,,"Time on the arc saves $1.67 a part, wire costs $1.00 more.',
        ),
    ),
    Worked(
        "cost",
        COST_QUERY.replace("b_wire_price=2.40", "b_wire_price=3.00"),
        {
            "comparisons[0].net_saving.value": -83.3333,
            "comparisons[0].verdict.settle": "Get the price of a year's wire in writing.",
            "comparisons[0].verdict.by_bench": False,
            "comparisons[0].swings[0].key": "other_price",
        },
        """1.25 lb at 3.00 is 3.75: 0.016667 saved a part, 16.67 less 100. Its price 5 % off is
        187.50 either way, the most: 104 saved at its low end, 271 lost at its high.""",
    ),
    Worked(
        "cost",
        COST_QUERY.replace("parts=1000", "parts=100"),
        {
            "comparisons[0].net_saving.value": -23.3333,
            "comparisons[0].break_even.parts_a_year": 130.435,
            "comparisons[0].break_even.crossing": "above",
            "ways[a].year": 1230.0,
            "comparisons[0].sums.first": -23.3333,
            "comparisons[0].verdict.settle": "Get the change-over quoted in writing.",
        },
        """100 x 0.76667 less 100. What is paid once, 25 % off, is the most: 1.67 saved at the
        least, 48 lost at the most.""",
    ),
    Worked(
        "cost",
        f"{COST_QUERY}&{NO_SWING}&draws=100",
        {"comparisons[0].chance.pays": 1.0, "comparisons[0].chance.draws": 100},
        """What is left to chance, the size of the welds and the flow of gas, moves both ways alike;
        nothing of it is worth 666.67 a year.""",
    ),
)
