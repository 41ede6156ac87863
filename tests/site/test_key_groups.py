"""The terminal's help groups the keys of a page as its form does."""

import pytest

from beadwright.key_groups import key_groups
from beadwright.pages import PAGES
from tests.site.page import Element, elements, words

QUERIES = {"passes": "joint=v", "heat": "joint=tee", "strength": "joint=lap"}


def keys_in(fold: Element) -> set[str]:
    own = [fold, *fold.children]
    for each in own:
        own.extend(child for child in each.children if child not in own)
    return {each.attrs["name"] for each in own if each.attrs.get("name")}


@pytest.mark.parametrize("page", ["dial-in", "passes", "heat", "strength"])
def test_groups_are_those_of_the_form(page: str) -> None:
    from beadwright_site.page_table import SITE_PAGES

    form = SITE_PAGES[page].load().show(QUERIES.get(page, "")).html["job-form"]
    groups = {each.title: set(each.keys) for each in key_groups(PAGES[page])}
    folds = [e for e in elements(form) if e.attrs.get("id", "").startswith("group-")]
    for fold in folds:
        said = words(fold.children[0])
        title = next(title for title in groups if said == title or said.startswith(f"{title} "))
        assert keys_in(fold) <= groups[title], said


def test_dial_in_asks_its_first_group_unfolded_and_all_others_in_folds() -> None:
    from beadwright_site.page_table import SITE_PAGES

    first, *others = key_groups(PAGES["dial-in"])
    parts = elements(SITE_PAGES["dial-in"].load().show("").html["job-form"])
    [unfolded] = [e for e in parts if "first" in e.attrs.get("class", "").split()]
    assert words(unfolded.children[0]) == first.title
    assert keys_in(unfolded) == set(first.keys)
    folded = [e.attrs["id"] for e in parts if e.attrs.get("id", "").startswith("group-")]
    assert folded == [f"group-{each.id}" for each in others]


@pytest.mark.parametrize("page", PAGES)
def test_every_key_is_in_one_group(page: str) -> None:
    keys = [key for each in key_groups(PAGES[page]) for key in each.keys]
    assert set(keys) == set(PAGES[page].fields)
