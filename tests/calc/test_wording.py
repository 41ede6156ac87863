"""How a parameter of a phrase is written, in either system."""

from __future__ import annotations

from types import MappingProxyType

import pytest

from beadwright.phrases import Amount, Money, Phrase, say
from beadwright.words.text import Plural, Rounded, Text
from beadwright.words.wording import catalogue, worded


@pytest.fixture
def samples(monkeypatch: pytest.MonkeyPatch) -> None:
    """A catalogue of a room nobody has, for how a parameter is written."""
    texts: dict[str, Text] = {
        "sample.length": "{length}",
        "sample.bare": "{length:bare} to {length}",
        "sample.set": "{volts:g}, {volts:bare .2f}",
        "sample.angle": "{angle:g}",
        "sample.hot": "{start}",
        "sample.because": "{why:capital}.",
        "sample.list": "{names:; }",
        "sample.runs": Plural("Bead {beads:runs}", "Beads {beads:runs}"),
        "sample.share": "{share:.0%}",
        "sample.round": Rounded(us="3 in", si="75 mm"),
        "sample.money": "{saved}",
        "sample.price": "{price:,.2f}",
    }
    real = catalogue

    def found(room: str) -> object:
        return MappingProxyType(texts) if room == "sample" else real(room)

    monkeypatch.setattr("beadwright.words.wording.catalogue", found)


@pytest.mark.usefixtures("samples")
@pytest.mark.parametrize(
    ("phrase", "us", "si"),
    [
        # 3/8 in is 9.525 mm; 260 K is 8.33 °F and -13.15 °C; 1 kg is 2.2046 lb.
        (say("sample.length", length=Amount(0.009525, "leg")), "3/8 in", "9.5 mm"),
        (say("sample.bare", length=Amount(0.009525, "leg")), "3/8 to 3/8 in", "9.5 to 9.5 mm"),
        (say("sample.set", volts=Amount(24.5, "volts")), "24.5 V, 24.50", "24.5 V, 24.50"),
        (say("sample.angle", angle=Amount(45.0, "angle")), "45°", "45°"),
        (say("sample.hot", start=Amount(260.0, "temperature")), "8 °F", "−13 °C"),
        (
            say("sample.because", why=say("sample.length", length=Amount(0.0254, "leg"))),
            "1 in.",
            "25.4 mm.",
        ),
        (say("sample.list", names=("a", "b")), "a; b", "a; b"),
        (say("sample.runs", beads=(3,), count=1), "Bead 3", "Bead 3"),
        (say("sample.runs", beads=(1, 3, 4, 7), count=4), "Beads 1, 3–4, 7", "Beads 1, 3–4, 7"),
        (say("sample.share", share=0.256), "26%", "26%"),
        (say("sample.round"), "3 in", "75 mm"),
        (say("sample.money", saved=Money(-99.994, "$")), "-$99.99", "-$99.99"),
        (say("sample.money", saved=Money(1234.5, "€")), "€1,234", "€1,234"),
        (say("sample.price", price=Amount(2.0, "price_per_mass")), "0.91/lb", "2.00/kg"),
    ],
)
def test_how_a_parameter_is_written(phrase: Phrase, us: str, si: str) -> None:
    assert (worded(phrase, "us"), worded(phrase, "si")) == (us, si)
