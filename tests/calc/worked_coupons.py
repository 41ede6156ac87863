"""Coupons worked by hand."""

from tests.calc.worked_pages import Worked

COUPONS = (
    Worked(
        "coupons",
        "wire=ER70S-6&dia=0.035in&gas=75/25&plate=3/16in&leg=3/16in&travel=12in/min&marked=8in"
        "&arc_time=32s&weight_before=2lb&weight_after=2.04lb&burst_length=80in&burst_time=16s"
        "&meter_volts=21V&arc_volts=19.5V&leg_seen=3/16in&face=0.28in&convexity=0.04in",
        {
            "coupon.travel.value": 15.0,
            "coupon.pace": 1.25,
            "coupon.laid.value": 4.5,
            "coupon.wire_feed.value": 300.0,
            "coupon.efficiency": 0.98520,
            "coupon.crown": 1.18731,
            "coupon.meter.value": 1.5,
            "coupon.melting": None,
            "coupons": 0,
            "own": None,
            "learned.efficiency.half_band": 0.04935,
            "learned.travel.half_band": 0.329,
            "learned.meter.half_band": 1.974,
            "learned.meter.decided": 0.0,
            "settings.own.travel.value": 12.0,
        },
        "8 in in 32 s is 15 in/min, 15 ÷ 12 of what was set. 0.04 lb in 32 s is 4.5 lb/h. 80 in in "
        "16 s is 300 in/min. Wire: 0.035² × π ÷ 4 = 0.00096211 in² × 300 × 60 × 0.2836 lb/in³ = "
        "4.9114 lb/h; 4.5 ÷ 4.9114 = 0.91623, over the 0.93 of short circuit in 75/25 0.9852. Flat "
        "fillet 0.1875² ÷ 2 = 0.0175781, crown 2 ÷ 3 × 0.28 × 0.04 = 0.0074667; their sum over the "
        "flat one 1.42477, over the usual 1.2 1.18731. 21 - 19.5 V. No amps read: no burn-off. Nine"
        " in ten lie within 1.645 of 3 %, 20 % and 1.2 V.",
    ),
)
