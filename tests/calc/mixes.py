"""Gas mixtures for the tests of any mix: as typed, and those that are gases here."""

from hypothesis import assume
from hypothesis import strategies as st

from beadwright.errors import UnknownEntryError
from beadwright.process.gas_mix import Mix
from beadwright.process.gases import Gas, gas_of


@st.composite
def mixes(draw: st.DrawFn) -> Mix:
    """Any four shares in hundredths of a percent that add to 100."""
    cuts = sorted(draw(st.lists(st.integers(0, 10_000), min_size=3, max_size=3)))
    hundredths = [b - a for a, b in zip([0, *cuts], [*cuts, 10_000], strict=True)]
    return Mix(*(round(share / 100, 2) for share in hundredths))


@st.composite
def gases(draw: st.DrawFn) -> Gas:
    """A mix that may shield wire on steel."""
    co2, oxygen = draw(st.integers(0, 50)), draw(st.integers(0, 10))
    helium = draw(st.integers(0, 100 - co2 - oxygen))
    text = f"{100 - co2 - oxygen - helium} Ar/{co2} CO2/{oxygen} O2/{helium} He"
    try:
        return gas_of(text)
    except UnknownEntryError:
        assume(False)
        raise
