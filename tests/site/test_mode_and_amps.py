"""Dial in's first screen: transfer mode and amps stand over the four settings."""

import re

from beadwright_site.page_table import SITE_PAGES

OVER_SETTINGS = re.compile(r'id="settings-title">Set the machine(?:: <b>(.*?)</b>)?</h2>')


def over_settings(query: str) -> tuple[str | None, dict[str, str]]:
    html = SITE_PAGES["dial-in"].load().show(query).html
    found = OVER_SETTINGS.search(html["settings"])
    assert found is not None
    return found[1], html


def test_mode_and_amps_are_those_of_the_facts() -> None:
    said, html = over_settings("plate=3/8in&leg=5/16in")
    assert said is not None
    mode, amps = said.split(", ")
    assert mode == "Spray"
    assert f"<b>{mode}</b><span>transfer</span>" in html["facts"]
    assert f"<b>{amps}</b><span>current</span>" in html["facts"]


def test_a_shut_window_says_neither() -> None:
    assert over_settings("plate=3/8in&machine_amps=190A")[0] is None
