"""Text stands out by 7:1 or better in both themes, for a dirty screen in the sun."""

import re
from pathlib import Path

import pytest

import beadwright_site

CSS = Path(beadwright_site.__file__).parent / "static" / "css" / "ground.css"
ON = {
    "ground": ("text", "muted", "accent", "ok", "stop"),
    "card": ("text", "muted", "accent", "ok", "stop"),
    "bar": ("muted", "accent"),
    "accent": ("ground",),
    "window": ("text",),
    "border": ("text",),
}
"""Ground to the texts that stand on it."""

LARGE = {("window", "text"), ("border", "text")}
"""Large or incidental: 4.5:1 is enough."""


PAIR = re.compile(
    r"--([a-z-]+): var\(--if-dark, (#[0-9a-f]{6})\) var\(--if-daylight, (#[0-9a-f]{6})\);"
)


def themes() -> dict[str, dict[str, str]]:
    pairs = PAIR.findall(CSS.read_text())
    return {
        "dark": {name: dark for name, dark, _ in pairs},
        "daylight": {name: daylight for name, _, daylight in pairs},
    }


def luminance(color: str) -> float:
    """Relative luminance as WCAG 2.2 defines it."""
    channels = [int(color[at : at + 2], 16) / 255 for at in (1, 3, 5)]
    r, g, b = (c / 12.92 if c <= 0.04045 else ((c + 0.055) / 1.055) ** 2.4 for c in channels)
    return 0.2126 * r + 0.7152 * g + 0.0722 * b


def contrast(one: str, other: str) -> float:
    light, dark = sorted((luminance(one), luminance(other)), reverse=True)
    return (light + 0.05) / (dark + 0.05)


def test_the_measure_is_wcag_s() -> None:
    assert contrast("#000000", "#ffffff") == pytest.approx(21.0)
    assert contrast("#777777", "#ffffff") == pytest.approx(4.48, abs=0.01)  # WCAG's known example


def test_every_color_has_a_value_in_both_themes() -> None:
    screen = CSS.read_text().split("@media print")[0]
    used = set(re.findall(r"var\(--([a-z-]+)", screen)) - {"if-dark", "if-daylight"}
    assert used <= set(themes()["dark"])
    assert len(PAIR.findall(screen)) == len(re.findall(r"#[0-9a-f]{6}\b", screen)) / 2


def test_daylight_is_the_same_chosen_or_as_the_phone_has_it() -> None:
    switched = re.findall(r"\{\s*color-scheme: light;([^}]*)\}", CSS.read_text())
    assert len(switched) == 2
    assert len({" ".join(rules.split()) for rules in switched}) == 1


@pytest.mark.parametrize("theme", list(themes()))
def test_text_stands_out(theme: str) -> None:
    colors = themes()[theme]
    for ground, texts in ON.items():
        for text in texts:
            least = 4.5 if (ground, text) in LARGE else 7.0
            ratio = contrast(colors[ground], colors[text])
            assert ratio >= least, f"{text} on {ground}: {ratio:.2f}"
