"""Text stands out by 7:1 or better in both themes, for a dirty screen in the sun."""

import re
from pathlib import Path

import pytest

import beadwright_site

CSS = Path(beadwright_site.__file__).parent / "static" / "css" / "ground.css"
ON = {
    "scale": ("chalk", "dust", "hot", "ok", "stop"),
    "plate": ("chalk", "dust", "hot", "ok", "stop"),
    "bar": ("dust", "hot"),
    "hot": ("scale",),
    "room": ("chalk",),
    "edge": ("chalk",),
}
"""Ground to the texts that stand on it."""

LARGE = {("room", "chalk"), ("edge", "chalk")}
"""Large or incidental: 4.5:1 is enough."""


def themes() -> dict[str, dict[str, str]]:
    text = CSS.read_text()
    blocks = re.findall(r"(:root[^{]*)\{([^}]*)\}", text)
    colours = [
        (name.strip(), dict(re.findall(r"--([a-z-]+): (#[0-9a-f]{6});", block)))
        for name, block in blocks
    ]
    return {name: block for name, block in colours if len(block) > 10}


def luminance(colour: str) -> float:
    """Relative luminance as WCAG 2.2 defines it."""
    channels = [int(colour[at : at + 2], 16) / 255 for at in (1, 3, 5)]
    r, g, b = (c / 12.92 if c <= 0.04045 else ((c + 0.055) / 1.055) ** 2.4 for c in channels)
    return 0.2126 * r + 0.7152 * g + 0.0722 * b


def contrast(one: str, other: str) -> float:
    light, dark = sorted((luminance(one), luminance(other)), reverse=True)
    return (light + 0.05) / (dark + 0.05)


def test_the_measure_is_wcag_s() -> None:
    assert contrast("#000000", "#ffffff") == pytest.approx(21.0)
    assert contrast("#777777", "#ffffff") == pytest.approx(4.48, abs=0.01)  # WCAG's known example


def test_both_themes_are_there_and_the_phone_s_own_is_the_same() -> None:
    found = themes()
    assert len(found) == 3
    _, chosen, own = found.values()
    assert chosen == own


@pytest.mark.parametrize("theme", list(themes()))
def test_text_stands_out(theme: str) -> None:
    colours = themes()[theme]
    for ground, texts in ON.items():
        for text in texts:
            least = 4.5 if (ground, text) in LARGE else 7.0
            ratio = contrast(colours[ground], colours[text])
            assert ratio >= least, f"{text} on {ground}: {ratio:.2f}"
