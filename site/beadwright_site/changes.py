"""What changed, release by release, newest first: told in the app, in words for the welder."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Change:
    """One release.

    Attributes:
        version: Its version.
        date: Its day, ISO.
        lines: What is new, and what to do about it.
    """

    version: str
    date: str
    lines: tuple[str, ...]


CHANGES: tuple[Change, ...] = (
    Change(
        "0.4.0",
        "2026-11-29",
        (
            "Weld list: tap Edit, and each weld is a form of named entries, with what is wrong "
            "beside it. Write the size of the part: the list says which weld pulls it out of shape "
            "most. A long list goes to another phone by one code or several.",
            "Grooves beveled on both sides, and square butts gouged from the back, count the metal "
            "of the gouge: in beads, wire, time and cost. Choose Open for the root left as it is.",
            "A stack is made of your kept jobs too. Cost counts timed and weighed coupons as "
            "measured, by a tap. A page that counts with your own numbers says whose they are; the "
            "wall sheet counts with them too. What your coupons moved is drawn.",
            "What is called kept is on the phone by then. Where it could not be kept, on a full "
            "phone or in private mode, the place you tapped says so and why, and what you typed "
            "stays. Two tabs no longer write over each other.",
            "Save a job or a list as a file that opens in the app. Print a wall sheet of your own "
            "three wires, under Tables.",
            "Letters are as large as your browser sets them. A bookmarked job no longer shows the "
            "example's numbers while it starts. A page never shows numbers of another release. A "
            "sum that takes long says so, and stops by a tap.",
        ),
    ),
    Change(
        "0.3.0",
        "2026-11-28",
        (
            "Dial in plans what printed tables run: sheet hotter and faster, uphill and overhead "
            "cooler and slower. The numbers on your old cards stay; the same job asked today may "
            "come out different. Run a coupon before you change a setting that works.",
            "Metal-cored wire gets the amps solid wire would, and travels faster. Like for like "
            "shows two wires at equal amps, at equal heat and as each is usually run.",
            "A blank leg is the leg a hand lays on that plate, with the code's minimum beside it. "
            "Near a change of mode the other side is offered.",
            "Give your machine's rated amps, duty cycle and breaker: the plan stays inside them, "
            "or says what would fit.",
            "Weld list: put all welds of a part on one list, by a tap or from a spreadsheet: what "
            "they cost together, an order with the dial turned least, a quote.",
            "Coupons: the phone times the arc by ear or by your taps, and gives a beat to travel "
            "by. Nothing it hears is recorded or sent. Print the stack to weld a new wire in.",
            "Tables, under More: settings by plate and position for one wire in one gas. Print the "
            "sheet, hang it by the machine; tap a cell to open its job.",
            "Card prints one page for the next hand, Letter, A4 or pocket; its code opens the job. "
            "A shared link leaves out prices and names until you tick them.",
            "How close the plan comes to the printed rows is on Method.",
            "Keep a job by a tap at the foot of its page, under a name of your own. Shop saves all "
            "that the phone keeps, jobs and coupons too, as one file; taking one in shows first "
            "what it changes, and can be undone.",
            "Heat: preheat goes by the code that rules your work, AWS D1.1 or EN 1011-2: tap it. "
            "It used to be the stricter of both, so a job may show less: what the other asks "
            "stands beside it. Metric plate reads D1.1's metric rows. One fillet is counted to "
            "turn a plate half as far as two.",
            "Supplies: tap the size of the bottle and read its gauge, without its water volume. "
            "Packages and cylinders last in weeks worked, your work counted as on Cost.",
            "Shop: over 135% of its rating a breaker does not hold, and Shop says so. The amps of "
            "the plate and of this job are told apart, a cord goes by its phases, a generator by "
            "its starts. Where something does not hold, tap what would.",
            "A mistyped entry in an address is refused, and the nearest one named. It used to be "
            "left aside.",
            "Cost says how sure it is: pays, probably pays, even or does not pay, in so many of "
            "100 chances, with sums that add up on paper and the one figure worth finding out. "
            "The second wire is run as the first is: at equal amps, equal travel, as usual, or as "
            "you measured it.",
            "Cost counts your work by parts a week, month or year, arc hours, weld metal or wire, "
            "and takes prices by the spool, box, drum or cylinder. A cell stands against a hand. "
            "What you pay by the year for way A now counts for B too while the gun is moved "
            "alike. A leg left blank is one for both wires, uphill too.",
            "Strength checks the plates of a lap for pull, and judges grooves, plugs and slots by "
            "their own rules. A weld from one side whose root is pulled open is stopped. Each "
            "side of a skewed tee has its own leg. What held before may not hold now: ask again.",
            "Strength by EN 1993-1-8 uses that code only: ends of the weld, long laps, filler "
            "no weaker than the steel, intermittent welds. Brackets may be judged by the "
            "instantaneous center, which may ask half the leg.",
            "Inspect: type what you measured on a weld. It says in or out by AWS D1.1 or ISO 5817, "
            "by how much, and which setting brings the next one in. Tap a trouble: its causes "
            "stand in the order of your job's own numbers.",
            "Heat holds a certificate against the grade above it, written or not: Mn and alloys "
            "too. Past the grade, method B rules; a rich melt within it shows both codes' preheat.",
            "Strength says where a longer lap holds less by EN 1993-1-8 (past 450 throats).",
            "A long drag no longer ends in “That broke”. “All files are stored” is said only after "
            "they are read back, and what goes wrong is told by its one true reason everywhere. "
            "A phone whose storage does not answer works on without it, and says so.",
        ),
    ),
    Change(
        "0.2.0",
        "2026-11-25",
        (
            "Dial in takes eight wires, solid, metal-cored and flux-cored, from 0.023 to 1/16 in, "
            "any mix of argon, CO2, oxygen and helium, and every joint from a skewed tee to a "
            "double bevel, plugs and slots. Set it for fastest, coolest or the easiest run. "
            "Old links still work.",
            "Passes: every bead drawn in its place, with its own settings. Step through it, print "
            "it, ask what a bead more or fewer costs.",
            "Heat: preheat, cooling time, peak HAZ hardness, and distortion of the "
            "part. Strength: the leg a load asks for, and what gives way first.",
            "Fewer starting points lie on the edge: thin sheet, uphill runs and CO2 have room "
            "where there was none.",
        ),
    ),
    Change(
        "0.1.0",
        "2026-11-24",
        (
            "Dial in a tee, lap, outside corner or square butt: four settings with their room, "
            "offline once it says so.",
            "Cost: put two wires side by side, from the weld up. Type your own prices; the ones "
            "shown are made up.",
            "Supplies and Shop: wire, gas and circuit for the job. What you keep stays on this "
            "phone; save it to a file before you change phones.",
        ),
    ),
)
"""Every release; the first is the version this is."""
