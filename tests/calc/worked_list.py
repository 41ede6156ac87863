"""The Weld list worked by hand."""

from tests.calc.worked_pages import Worked

LIST = (
    Worked(
        "list",
        "lines=a,tee,3/8in,5/16in,6in,1,2F%0Ab,tee,3/8in,5/16in,12in,2,2F%0Ac,tee,nothing,,6in"
        "&laid=10lb/h&efficiency=90%&waste=0%&rework=0%&gas_flow=30ft3/h&gas_extra=0s"
        "&fit_up=6min&spatter=4min&reposition=0.5min&clean=0.2min&spool_change=5min&spool=33lb"
        "&wire_price=2/lb&gas_price=0.1/ft3&shop_rate=60/h&energy_price=0&tip_price=0"
        "&nozzle_price=0&batch=40&set_up=60min&margin=50%",
        {
            "lines": 3,
            "missing": 1,
            "totals[0].metal.value": 0.498514,
            "totals[0].length.value": 2.5,
            "totals[0].wire.value": 0.553905,
            "totals[0].gas.value": 1.495543,
            "totals[0].arc.value": 2.991086,
            "totals[0].off_arc.value": 12.183925,
            "totals[0].time.value": 15.175011,
            "totals[0].part": 16.432375,
            "packages[0].count": 1,
            "packages[0].amount.value": 22.1562,
            "packages[1].count": 1,
            "packages[1].amount.value": 59.8217,
            "order.saved": 0,
            "heaviest": "b",
            "quotes[0].batches[1].cost": 22.432375,
            "quotes[0].batches[1].price": 44.86475,
            "quotes[0].batches[1].batch": 448.6475,
        },
        """30 in of fillet, 1.2 x (5/16 in)^2 / 2 = 0.0585938 in2 at 7850 kg/m3 (0.283599 lb/in3):
        0.498514 lb, over 0.9 is the wire. 10 lb an hour: 2.9911 min of arc, at 30 ft3/h the gas.
        Off the arc 6 + 4 once, 3 x 0.5, 3 x 0.2, 5 x 0.5539/33. A dollar a minute, 2 x 0.5539 wire,
        0.1 x 1.4955 gas. Forty parts: 22.16 lb of a 33 lb spool. An hour of set-up is 60, 6 in
        ten; a price of which half is margin is twice the cost. Line c is missing.""",
        lines=("a,tee,3/8in,5/16in,6in,1,2F,,,", '"c,tee,nothing,,6in"'),
    ),
)
