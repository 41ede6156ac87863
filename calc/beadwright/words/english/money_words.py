"""English of room ``money``: what a weld costs and whether another way pays."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

from beadwright.words.text import Plural, Text

TEXTS: Mapping[str, Text] = MappingProxyType(
    {
        "money.of-way": "{way}: {told}",
        "money.price-stands-in": ("No price written for {way}: the first wire's price stands in."),
        "money.needs-pulse": (
            "{way} is planned in pulse, and the first way is not: the power source must be able "
            "to. If it has to be bought, write it under what is paid once."
        ),
        "money.gouging-not-timed": (
            "The root is gouged from the back. What is cut out is laid again and counted; the time "
            "of gouging is not. Time it on one part and add the minutes under Other. An operating "
            "factor holds it only if such parts were in it."
        ),
        "money.gouge-in-one-mode": (
            "Arc time, wire and gas are counted in short circuit on both sides. The gouged side "
            "is to be pulsed: Passes has its minutes."
        ),
        "money.time-free": "Time is priced at nothing: only what is bought counts.",
        "money.no-parts-no-payback": "No parts a year: costs for a part hold, nothing pays back.",
        "money.invented-in-use": (
            "Invented figures still in use: {keys:, }. Put in your own once; this phone keeps them."
        ),
        "money.invented-marked": Plural(
            "One figure here is invented, marked in the form. Put in your own once.",
            "{count} figures here are invented, marked in the form. Put in your own once.",
        ),
        "money.factor-holds": (
            "{way}: the operating factor of {factor:.0%} holds all {off} of a part off the arc, "
            "{spatter} of spatter among them. The other minutes written count for nothing."
        ),
        "money.factor-lent": (
            "{way}: {off} off the arc, the first way's {first} changed by what the minutes of the "
            "two differ: {spatter} of spatter against {against}."
        ),
        "money.shop-rate-holds": (
            "The shop rate holds labor and overhead: the two written apart count for nothing."
        ),
        "money.change-over-holds": (
            "{way}: the change-over is written in all, so its pieces count for nothing."
        ),
        "money.cylinder-uncounted": (
            "The price by the cylinder kept on this phone counts for nothing: write how much gas a "
            "full one holds."
        ),
        "money.loading-rules": (
            "Loading rules: hands take {hands} a part, the gun {torch}, and waits. Laying more "
            "an hour makes no more parts; quicker loading and less spatter do."
        ),
        "money.torch-rules": (
            "The gun rules: {torch} a part, hands {hands} beside it. Laying a tenth more an hour "
            "makes {more:.1%} more parts."
        ),
        "money.arc-rules": (
            "The arc burns {share:.0%} of the time: laying a tenth more an hour makes {more:.1%} "
            "more parts."
        ),
        "money.own-rate": "Rate of the cell",
        "money.settle-own-rate": (
            "Divide what the cell costs a year, operator, floor and upkeep, by its hours."
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
            "No parts, no saving: at zero a year nothing pays back. Write how many you weld."
        ),
        "money.half-invented": (
            "{way}: {what} is invented and stands against your own for the other way. Write it "
            "before you act on this."
        ),
        "money.price-of-its-wire": "the price of its wire",
        "money.its-spatter": "its time for spatter",
        "money.spatter-stands-in": (
            "No time for spatter written for {way}: the first wire's {time} stand in."
        ),
        "money.same-way": "Both ways come to the same",
        "money.same-ways": "Both ways come to the same.",
        "money.write-what-differs": (
            "No verdict: nothing written tells them apart. Write what is different in the second "
            "way, its own wire, gas or price."
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
        "money.at-equal-travel": "at equal travel: {travel}",
        "money.not-at-that-travel": (
            "not at the first way's travel of {travel}: each as usually run"
        ),
        "money.each-as-run": "each as usually run",
        "money.as-measured": "as you measured it",
        "money.as-typed": "as you typed its settings",
        "money.more": "{share:.0%} more",
        "money.less": "{share:.0%} less",
        "money.practice-says": (
            "Common practice, no source: metal-cored wire costs {low:.0%} to {high:.0%} more a "
            "pound, lays about {laid:.0%} more in like work and leaves less to clean up."
        ),
        "money.practice-here": (
            "Here it costs {price}, lays {laid}, and takes {cored} of spatter a part against "
            "{solid}."
        ),
        "money.practice-here-unpriced": (
            "Here it lays {laid}, and takes {cored} of spatter a part against {solid}."
        ),
        "money.practice-holds": "What it lays is in line with that.",
        "money.practice-at-one-current": (
            "Why: at one current the printed feeds of both wires in 0.045 in give {low:.0%} to "
            "{high:.0%} more, and this answer stands on them."
        ),
        "money.practice-at-one-travel": (
            "Why: at one travel both fill the same joint in the same time; the gain is a cooler "
            "run, not a faster one."
        ),
        "money.practice-as-run": ("Why: each wire runs as its own plan says, not both alike."),
        "money.practice-as-measured": "Why: you typed or measured it so.",
        "money.on-cost-alone": "On cost alone, as if the hours were there: {odds}.",
        "money.both-cost-the-same": "Both cost the same on every part.",
        "money.hardly-cheaper": (
            "Hardly anything gets cheaper and {worst} costs {costs} a part more."
        ),
        "money.hardly-dearer": "{best:capital} saves {saves} a part, hardly anything costs more.",
        "money.saves-and-costs": (
            "{best:capital} saves {saves} a part, {worst} costs {costs} more."
        ),
        "money.never-dearer": "{way} costs no more at any number of parts.",
        "money.no-number-pays": "No number of parts pays for it: {way} costs no less on each part.",
        "money.cheaper-below": "{way} is the cheaper below {parts:,.0f} parts a year.",
        "money.pays-back-from": Plural(
            "Pays back in a month from {parts:,.0f} parts a year.",
            "Pays back in {count:g} months from {parts:,.0f} parts a year.",
        ),
        "money.pays-from": "Pays from {parts:,.0f} parts a year.",
        "money.nothing-comes-back": "At no parts a year nothing comes back.",
        "money.never-comes-back": "What is paid once never comes back at this volume.",
        "money.nothing-paid-once": "Nothing is paid once; it counts from the first part.",
        "money.over-twenty-years": (
            "What is paid once takes over twenty years to come back: call it never."
        ),
        "money.back-after": (
            "What is paid once is back after {months:.1f} months, {parts:,.0f} parts."
        ),
        "money.dearer-at-any-price": "Even with its wire for nothing, {way} costs more.",
        "money.may-cost": (
            "{way} may cost up to {sign}{price:,.2f}, the change aside; {sign}{now:bare ,.2f} now."
        ),
        "money.may-cost-against-first": (
            "{way} may cost up to {sign}{price:,.2f}, {against} the first wire, the change aside; "
            "{sign}{now:bare ,.2f} now."
        ),
        "money.faster-saves-nothing": (
            "Your time is priced at nothing, so laying faster saves next to nothing."
        ),
        "money.no-deposition-carries": (
            "No deposition is enough: less arc time alone pays neither wire nor change back."
        ),
        "money.pays-no-faster": "Pays even if it lays no faster: {laid} is enough.",
        "money.ten-times-as-fast": "It would have to lay over ten times as fast: no wire does.",
        "money.must-lay": "Must lay {laid}, {gain} now; worked out: {here}.",
        "money.over": "{share:.0%} over",
        "money.under": "{share:.0%} under",
        "money.labour": "Labor",
        "money.settle-labour": "Take labour from last year's payroll, not from the wage alone.",
        "money.overhead": "Overhead",
        "money.settle-overhead": "Divide last year's bills by last year's hours.",
        "money.parts": "Parts a year",
        "money.settle-parts": "Count last year's parts in the order book.",
        "money.gas-price": "Price of gas",
        "money.settle-gas-price": "Read the last gas bill, rent and delivery with it.",
        "money.gas-flow": "Gas flow",
        "money.settle-gas-flow": "Put a flow gauge on the nozzle.",
        "money.minutes-off": "Non-arc minutes",
        "money.settle-minutes-off": (
            "Time ten parts from start to start with a stopwatch, both ways."
        ),
        "money.weld-size": "Size of the welds",
        "money.settle-weld-size": "Gauge twenty legs: a leg 1/32 in over costs a fifth more.",
        "money.paid-once": "Paid once",
        "money.settle-paid-once": "Get the change quoted in writing.",
        "money.wire-price": "Price of wire, {way}",
        "money.wire-price-both": "Price of wire, both ways",
        "money.laid-an-hour-both": "Laid an hour, both ways",
        "money.laid-over-used-both": "Laid over wire used, both ways",
        "money.spatter-minutes-both": "Spatter minutes, both ways",
        "money.settle-wire-price": "Get the price of a year's wire in writing.",
        "money.laid-an-hour": "Laid an hour, {way}",
        "money.settle-laid": (
            "Run {way} at the settings you will use: weigh the plate, weld one minute by the "
            "clock, weigh it again."
        ),
        "money.laid-over-used": "Laid over wire used, {way}",
        "money.settle-laid-over-used": (
            "Run one coupon with {way}: weigh the spool and the plate before and after."
        ),
        "money.spatter-minutes": "Spatter minutes, {way}",
        "money.settle-spatter": ("Weld three parts with {way} and time the chipping and grinding."),
        "money.welded-twice": "Welded twice",
        "money.settle-rework": "Count what was sent back of the last forty parts.",
    }
)
"""Texts by id."""
