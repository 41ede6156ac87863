"""English of room ``money``: what a weld costs and whether another way pays."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

from beadwright.words.text import Plural, Text

TEXTS: Mapping[str, Text] = MappingProxyType(
    {
        "money.of-way": "{way}: {told}",
        "money.price-stands-in": "No price typed for {way}: the first wire's price is used.",
        "money.needs-pulse": (
            "{way} is planned in pulse, and the first way is not: the power source must have "
            "pulse. If you have to buy one, add it to the change-over cost."
        ),
        "money.gouging-not-timed": (
            "The root is gouged from the back. The metal cut out is counted as laid again; the "
            "time to gouge is not counted. Time it on one part and add the minutes under Other. "
            "An operating factor covers it only if such parts were in it."
        ),
        "money.gouge-in-one-mode": (
            "Arc time, wire and gas are counted in short circuit on both sides. The gouged side "
            "should be pulsed: see Passes for its minutes."
        ),
        "money.time-free": "Time is priced at zero: only what you buy counts.",
        "money.no-parts-no-payback": (
            "No parts a year: the cost of a part holds, but there is no payback. Type how many "
            "you weld."
        ),
        "money.invented-in-use": (
            "Made-up figures still in use: {keys:, }. Type your own once; this phone keeps them."
        ),
        "money.invented-marked": Plural(
            "One figure here is made up, marked in the form. Type your own once.",
            "{count} figures here are made up, marked in the form. Type your own once.",
        ),
        "money.factor-holds": (
            "{way}: the operating factor of {factor:.0%} covers all {off} of non-arc time a part, "
            "{spatter} of spatter included. The other minutes typed are not counted."
        ),
        "money.factor-lent": (
            "{way}: {off} of non-arc time, the first way's {first} adjusted for what the minutes "
            "of the two differ: {spatter} of spatter against {against}."
        ),
        "money.shop-rate-holds": (
            "The shop rate includes labor and overhead: the two typed apart are not counted."
        ),
        "money.change-over-holds": (
            "{way}: the change-over cost is typed as one sum, so its pieces are not counted."
        ),
        "money.cylinder-uncounted": (
            "The price by the cylinder kept on this phone is not counted: type how much gas a "
            "full one holds."
        ),
        "money.loading-rules": (
            "Loading sets the pace: hands take {hands} a part, the gun takes {torch} and waits. A "
            "higher deposition rate makes no more parts; faster loading and less spatter do."
        ),
        "money.torch-rules": (
            "The gun sets the pace: {torch} a part, hands {hands} beside it. A tenth more "
            "deposition rate makes {more:.1%} more parts."
        ),
        "money.arc-rules": (
            "The arc is on {share:.0%} of the time: a tenth more deposition rate makes {more:.1%} "
            "more parts."
        ),
        "money.own-rate": "Rate of the cell",
        "money.settle-own-rate": (
            "Divide what the cell costs a year (operator, floor, upkeep) by its hours."
        ),
        "money.nothing-to-weld": "Nothing to weld. There are hours for {most:,.0f} parts a year.",
        "money.cannot-deliver": (
            "Cannot deliver: hours for {most:,.0f} parts a year, {wanted:,.0f} wanted."
        ),
        "money.just-delivers": (
            "Just delivers: {used:.0%} of the hours are taken, nothing left for a bad week."
        ),
        "money.delivers": "Delivers: takes {used:.1%} of the hours.",
        "money.wire": "wire",
        "money.gas": "gas",
        "money.power": "power",
        "money.tips-and-nozzles": "tips and nozzles",
        "money.rework": "rework",
        "money.time-on-arc": "time on the arc",
        "money.time-off-arc": "non-arc time",
        "money.no-verdict": "No verdict",
        "money.no-parts-no-saving": (
            "No parts, no savings: at zero a year there is no payback. Type how many you weld."
        ),
        "money.half-invented": (
            "{way}: {what} is made up and is compared with your own for the other way. Type it "
            "before you act on this."
        ),
        "money.price-of-its-wire": "the price of its wire",
        "money.its-spatter": "its spatter time",
        "money.spatter-stands-in": (
            "No spatter time typed for {way}: the first wire's {time} is used."
        ),
        "money.same-way": "Both ways come to the same",
        "money.same-ways": "Both ways come to the same.",
        "money.write-what-differs": (
            "No verdict: nothing typed tells them apart. Type what is different in the second "
            "way: its wire, gas or price."
        ),
        "money.pays": "Pays: about {chances} chances in 100",
        "money.probably-pays": "Probably pays: {chances} in 100",
        "money.even": "Even: {chances} in 100 that it pays",
        "money.probably-does-not-pay": "Probably does not pay: {chances} in 100 that it does",
        "money.does-not-pay": "Does not pay: {chances} in 100 that it does",
        "money.pays-nearly-always": "Pays: over 99 chances in 100",
        "money.pays-hardly-ever": "Does not pay: under 1 in 100 that it does",
        "money.only-other-delivers": "Only {way} delivers {parts:,.0f} parts a year",
        "money.other-cannot-deliver": (
            "{way} cannot deliver: hours for {most:,.0f} of {parts:,.0f} parts a year"
        ),
        "money.neither-delivers": (
            "Neither way delivers {parts:,.0f} parts a year: {way} has hours for {most:,.0f}"
        ),
        "money.at-equal-amps": "at equal amps: {current}",
        "money.not-at-those-amps": "not at the first way's {current}: at its own {own}",
        "money.at-equal-travel": "at equal travel speed: {travel}",
        "money.not-at-that-travel": (
            "not at the first way's travel speed of {travel}: each as usually run"
        ),
        "money.each-as-run": "each as usually run",
        "money.as-measured": "as you measured it",
        "money.as-typed": "as you typed its settings",
        "money.more": "{share:.0%} more",
        "money.less": "{share:.0%} less",
        "money.practice-says": (
            "Common practice, no source: metal-cored wire costs {low:.0%} to {high:.0%} more a "
            "pound, deposits about {laid:.0%} more in similar work and needs less cleanup."
        ),
        "money.practice-here": (
            "Here it costs {price}, deposits {laid}, and takes {cored} of spatter time a part "
            "against {solid}."
        ),
        "money.practice-here-unpriced": (
            "Here it deposits {laid}, and takes {cored} of spatter time a part against {solid}."
        ),
        "money.practice-holds": "Its deposition rate agrees with that.",
        "money.practice-at-one-current": (
            "Why: at one current the printed feeds of both wires in 0.045 in give {low:.0%} to "
            "{high:.0%} more, and this answer is based on them."
        ),
        "money.practice-at-one-travel": (
            "Why: at one travel speed both fill the same joint in the same time; what you gain is "
            "a cooler weld, not a faster one."
        ),
        "money.practice-as-run": "Why: each wire runs by its own plan, not both alike.",
        "money.practice-as-measured": "Why: you typed or measured it.",
        "money.on-cost-alone": "On cost alone, if the hours were there: {odds}.",
        "money.both-cost-the-same": "Both cost the same on every part.",
        "money.hardly-cheaper": (
            "Almost nothing gets cheaper, and {worst} costs {costs} a part more."
        ),
        "money.hardly-dearer": (
            "{best:capital} saves {saves} a part, and almost nothing costs more."
        ),
        "money.saves-and-costs": (
            "{best:capital} saves {saves} a part, {worst} costs {costs} more."
        ),
        "money.never-dearer": "{way} costs no more at any number of parts.",
        "money.no-number-pays": "No number of parts pays for it: {way} costs no less on each part.",
        "money.cheaper-below": "{way} is cheaper below {parts:,.0f} parts a year.",
        "money.pays-back-from": Plural(
            "Payback in a month from {parts:,.0f} parts a year.",
            "Payback in {count:g} months from {parts:,.0f} parts a year.",
        ),
        "money.pays-from": "Pays from {parts:,.0f} parts a year.",
        "money.nothing-comes-back": "No payback at zero parts a year.",
        "money.never-comes-back": "The change-over cost is never paid back at this volume.",
        "money.nothing-paid-once": "No change-over cost; it counts from the first part.",
        "money.over-twenty-years": "Payback takes over twenty years: call it never.",
        "money.back-after": "Payback after {months:.1f} months, {parts:,.0f} parts.",
        "money.dearer-at-any-price": "Even with free wire, {way} costs more.",
        "money.may-cost": (
            "You could pay up to {sign}{price:,.2f} for {way}, the change-over cost aside; "
            "{sign}{now:bare ,.2f} now."
        ),
        "money.may-cost-against-first": (
            "You could pay up to {sign}{price:,.2f} for {way}, {against} the first wire, the "
            "change-over cost aside; {sign}{now:bare ,.2f} now."
        ),
        "money.faster-saves-nothing": (
            "Your time is priced at zero, so a higher deposition rate saves next to nothing."
        ),
        "money.no-deposition-carries": (
            "No deposition rate is enough: less arc time alone does not pay back the wire or the "
            "change-over."
        ),
        "money.pays-no-faster": "It pays without a higher deposition rate: {laid} is enough.",
        "money.ten-times-as-fast": (
            "It would need over ten times the deposition rate: no wire does that."
        ),
        "money.must-lay": "Needs a deposition rate of {laid}, {gain} now; figured here: {here}.",
        "money.over": "{share:.0%} over",
        "money.under": "{share:.0%} under",
        "money.labour": "Labor",
        "money.settle-labour": "Take labor from last year's payroll, not from the wage alone.",
        "money.overhead": "Overhead",
        "money.settle-overhead": "Divide last year's bills by last year's hours.",
        "money.parts": "Parts a year",
        "money.settle-parts": "Count last year's parts in the order book.",
        "money.gas-price": "Price of gas",
        "money.settle-gas-price": "Read the last gas bill, rent and delivery included.",
        "money.gas-flow": "Gas flow",
        "money.settle-gas-flow": "Put a flow gauge on the nozzle.",
        "money.minutes-off": "Non-arc time",
        "money.settle-minutes-off": (
            "Time ten parts from start to start with a stopwatch, both ways."
        ),
        "money.weld-size": "Size of the welds",
        "money.settle-weld-size": "Gauge twenty legs: a leg 1/32 in over costs a fifth more.",
        "money.paid-once": "Change-over cost",
        "money.settle-paid-once": "Get the change-over quoted in writing.",
        "money.wire-price": "Price of wire, {way}",
        "money.wire-price-both": "Price of wire, both ways",
        "money.laid-an-hour-both": "Deposition rate, both ways",
        "money.laid-over-used-both": "Deposition efficiency, both ways",
        "money.spatter-minutes-both": "Spatter time, both ways",
        "money.settle-wire-price": "Get the price of a year's wire in writing.",
        "money.laid-an-hour": "Deposition rate, {way}",
        "money.settle-laid": (
            "Run {way} at the settings you will use: weigh the plate, weld one minute by the "
            "clock, weigh it again."
        ),
        "money.laid-over-used": "Deposition efficiency, {way}",
        "money.settle-laid-over-used": (
            "Run one coupon with {way}: weigh the spool and the plate before and after."
        ),
        "money.spatter-minutes": "Spatter time, {way}",
        "money.settle-spatter": ("Weld three parts with {way} and time the chipping and grinding."),
        "money.welded-twice": "Rework",
        "money.settle-rework": "Count how many of the last forty parts came back.",
    }
)
"""Texts by id."""
