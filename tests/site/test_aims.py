"""Aims, soft edges and captions on Dial in: what the buttons say, ask for and mark."""

import re
from collections.abc import Mapping
from urllib.parse import parse_qsl

import pytest
from flask.testing import FlaskClient

from beadwright import units
from beadwright.api import answer
from beadwright.process.transfer import TRANSITION_BAND
from beadwright.setting.aim_results import aim_results
from beadwright.setting.aims import AIMS
from beadwright.setting.window_map import EDGE_BAND_V
from beadwright_site.drawings.map_drawing import draw_map
from beadwright_site.pages.dial_in.aims import AimButton, aim_buttons
from tests.site.page import Element, by_id, elements, words

JOB = "plate=3/8in&leg=5/16in"
FREE = (JOB, f"{JOB}&wire=E70C-6M&units=si", "plate=1/8in&gas=75/25&dia=0.035in",
        f"{JOB}&transfer=pulse")  # fmt: skip


def typed(query: str) -> Mapping[str, str]:
    return dict(parse_qsl(query))


def buttons(query: str) -> tuple[AimButton, ...]:
    return aim_buttons(answer("dial-in", query).dialled, typed(query))


def links(client: FlaskClient, query: str) -> list[Element]:
    page = elements(client.get(f"/?{query}").text)
    [nav] = [each for each in page if each.attrs.get("id") == "aims"]
    return [each for each in nav.children if each.tag == "a"]


@pytest.mark.parametrize("query", FREE)
def test_the_four_aims_are_offered_and_one_is_current(client: FlaskClient, query: str) -> None:
    found = links(client, query)
    assert [words(each).split(" ")[0] for each in found] == [
        "Balanced",
        "Fastest",
        "Coolest",
        "Easiest",
    ]
    assert [each.attrs.get("aria-current") for each in found] == ["true", None, None, None]


@pytest.mark.parametrize("aim", [aim for aim in AIMS if aim != "balanced"])
def test_the_aim_asked_for_is_the_one_marked(client: FlaskClient, aim: str) -> None:
    marked = [e for e in links(client, f"{JOB}&aim={aim}") if "aria-current" in e.attrs]
    assert [e.attrs["data-query"].endswith(f"aim={aim}") for e in marked] == [True]


@pytest.mark.parametrize("query", FREE)
def test_a_button_asks_for_what_it_says(query: str) -> None:
    results = aim_results(answer("dial-in", query).dialled.plan)
    for button, result in zip(buttons(query), results, strict=True):
        asked = typed(button.query)
        assert asked.get("aim", "balanced") == result.aim
        assert {k: v for k, v in asked.items() if k != "aim"} == typed(query)
        got = answer("dial-in", button.query).dialled
        assert got.settings.wire_feed.value == result.feed_m_s
        assert got.settings.volts.value == result.volts


def test_gain_and_cost_are_against_the_balanced_start() -> None:
    results = {r.aim: r for r in aim_results(answer("dial-in", JOB).dialled.plan)}
    start = results["balanced"]
    said = dict(zip(AIMS, buttons(JOB), strict=True))
    heat = units.show(start.heat_j_m, "heat_input", "us")
    assert said["balanced"].words == (f"{start.weld_s:.0f} s a weld", f"heat {heat} kJ/in")
    saved = start.weld_s - results["least-time"].weld_s
    assert saved > 0.5
    assert said["least-time"].words[0] == f"saves {saved:.0f} s a weld"
    less = 100 * (1 - results["least-heat"].heat_j_m / start.heat_j_m)
    assert less > 0.5
    assert said["least-heat"].words[1] == f"{less:.0f}% less heat"


def test_long_welds_are_told_in_minutes_and_small_differences_not_at_all() -> None:
    long = buttons(f"{JOB}&weld_length=20ft")
    assert re.fullmatch(r"\d+\.\d min a weld", long[0].words[0])
    for button in (each for query in FREE for each in buttons(query)[1:]):
        time, heat = button.words
        assert re.fullmatch(r"same time|(saves )?[\d.]+ (s|min)( more)? a weld", time)
        assert re.fullmatch(r"same heat|[1-9]\d*% (more|less) heat", heat)


def test_with_feed_and_volts_by_hand_nothing_is_left_to_aim(client: FlaskClient) -> None:
    fixed = f"{JOB}&wfs=350in/min&volts=28V"
    assert buttons(fixed) == ()
    assert "Set one" in words(by_id(client.get(f"/?{fixed}").text, "aims"))
    assert buttons(f"{JOB}&transfer=pulse&wfs=350in/min") == ()  # pulse has no volts to set
    assert len(buttons(f"{JOB}&wfs=350in/min")) == 4  # the volts are left
    assert len(buttons(f"{JOB}&volts=28V")) == 4  # the feed is


def test_a_shut_window_offers_no_aims(client: FlaskClient) -> None:
    shut = f"{JOB}&position=3F-up&transfer=spray"
    assert buttons(shut) == ()
    assert words(by_id(client.get(f"/?{shut}").text, "aims")) == ""


def caption(client: FlaskClient, query: str) -> str:
    return words(by_id(client.get(f"/?{query}").text, "map"))


def test_soft_edges_are_hatched_as_far_as_they_are_said(client: FlaskClient) -> None:
    page = client.get(f"/?{JOB}").text
    soft = [e for e in elements(page) if e.attrs.get("class") == "soft"]
    found = answer("dial-in", JOB)
    assert len(soft) == len(found.window_map.soft) == 3
    assert all(e.attrs["fill"] == "url(#map-hatch)" for e in soft)
    assert [e.attrs["points"] for e in soft] == list(draw_map(found.window_map, "us").soft)
    text = caption(client, JOB)
    assert f"good to {EDGE_BAND_V:g} V" in text
    assert f"Where spray starts is good to {TRANSITION_BAND:.0%}" in text


def test_the_caption_tells_what_is_drawn_and_nothing_else(client: FlaskClient) -> None:
    text = caption(client, JOB)
    assert "Outlined: inside every limit." in text
    assert "Dot: your setting." in text
    assert "No spray here" not in text
    assert "Pulsed" not in text
    lean = caption(client, f"{JOB}&gas=75/25")
    assert "No spray here: solid wire does not spray above about 20% CO2" in lean
    assert "Where spray starts" not in lean
    pulsed = caption(client, f"{JOB}&transfer=pulse")
    assert "the machine sets its own volts" in pulsed
    assert "Outlined" not in pulsed
    assert "Dot" not in pulsed
    shut = caption(client, f"{JOB}&position=3F-up&transfer=spray")
    assert "Outlined" not in shut
    assert "No spray here: spray runs out of the joint vertical-up" in shut
