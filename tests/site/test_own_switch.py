"""Every page that counts with the shop's own numbers says so, and goes back to print by a tap."""

from __future__ import annotations

import re
from html import unescape
from typing import Any
from urllib.parse import parse_qs

import pytest

from beadwright.api import answer
from beadwright.pages import PAGES
from beadwright_site.page_table import SITE_PAGES

OWN = {
    "own": "ER70S-6,0.045in,90/10,n7,phi0.85,r0.85,band0.08,eff0.95,spread0.02,crown1.25,travel0.8"
}
JOB = "plate=3/8in&leg=5/16in&wire=ER70S-6&dia=0.045in&gas=90/10"
MORE = {
    "inspect": "&leg_found=9/32in&leg2_found=9/32in",
    "list": "&lines=A; tee; 3/8; 5/16; 12in; 2",
}
COUNT = sorted(set(PAGES) - {"strength"})


def shown(page: str, more: str = "", kept: dict[str, Any] | None = None) -> dict[str, str]:
    found = SITE_PAGES[page].load().show(JOB + MORE.get(page, "") + more, kept)
    assert found.ok
    return dict(found.html)


def links(page: dict[str, str]) -> dict[str, str]:
    return {text: unescape(query) for query, text in
            re.findall(r'data-query="([^"]*)">([^<]*)</a>', page["notes"])}  # fmt: skip


@pytest.mark.parametrize("page", COUNT)
def test_a_page_says_so_and_a_tap_shows_it_as_published(page: str) -> None:
    own = shown(page, kept=OWN)
    assert "Your own numbers count here, from 7 coupons" in own["notes"]
    off = links(own)["Show this as published"]
    assert parse_qs(off)["own"] == ["off"]
    assert parse_qs(off)["plate"] == ["3/8in"]
    plain = shown(page, "&own=off", OWN)
    assert "Your own numbers are switched off" in plain["notes"]
    assert "own" not in parse_qs(links(plain)["Count your own numbers"])
    bare = shown(page)
    assert "own numbers" not in bare["notes"]
    assert not {"Show this as published", "Count your own numbers"} & set(links(bare))


@pytest.mark.parametrize("page", sorted(set(COUNT) - {"coupons"}))
def test_the_numbers_shown_are_the_shop_s_own_until_switched_off(page: str) -> None:
    """Coupons shows both side by side; its stack is tested with the stack."""

    def parts(found: dict[str, str]) -> set[str]:
        told = found.keys() - {"notes", "job-form", "units-switch"}
        return {name for name in told if found[name] != bare[name]}

    bare = shown(page)
    assert parts(shown(page, kept=OWN))
    changed = parts(shown(page, "&own=off", OWN))
    assert all("own=off" in shown(page, "&own=off", OWN)[name] for name in changed)  # links alone


def test_strength_counts_with_no_coupon_and_says_nothing_of_them() -> None:
    strength = shown("strength", "&py=10000lbf", OWN)
    assert "own numbers" not in strength["notes"]
    assert answer("strength", f"{JOB}&py=10000lbf").query.wires() == ()


def test_cost_says_so_where_only_the_second_wire_has_its_own() -> None:
    both = {"own": f"{OWN['own']};E70C-6M,0.045in,90/10,n3,travel0.9"}
    second = {"own": both["own"].partition(";")[2]}
    said = shown("cost", "&b_wire=E70C-6M", second)["notes"]
    assert "from 3 coupons" in said
    assert "from 10 coupons" in shown("cost", "&b_wire=E70C-6M", both)["notes"]
    wires = answer("cost", f"{JOB}&b_wire=E70C-6M", both).query.wires()
    assert [wire.type.name for wire in wires] == ["ER70S-6", "E70C-6M"]
