"""The table of pages and the folders it names: every page has its folder, and no folder is left."""

from __future__ import annotations

import pytest
from flask.testing import FlaskClient
from jinja2 import meta

from beadwright.pages import PAGES, module_name
from beadwright_site.links import NAVIGATION
from beadwright_site.page_table import FOLDERS, SITE_PAGES
from beadwright_site.rendering import environment
from tests.site.page import elements, words


def test_every_page_has_its_folder_and_no_folder_is_left() -> None:
    folders = {path.name for path in FOLDERS.iterdir() if (path / "page.py").is_file()}
    assert folders == {module_name(name) for name in (*PAGES, "sheets", "method", "missing")}
    for name, page in SITE_PAGES.items():
        assert page.load().name == name


def test_the_bar_names_every_page_once_four_in_it_the_rest_behind_its_button(
    client: FlaskClient,
) -> None:
    """A gloved thumb hits no more than five."""
    bar = [e for e in elements(client.get("/").text) if "data-keys" in e.attrs]
    titles = [words(link) for link in bar]
    assert titles == [*(page.title for page in PAGES.values()), "Tables", "Method"]
    assert [page.title for page in NAVIGATION.first] == ["Dial in", "Passes", "Heat", "Strength"]


@pytest.mark.parametrize("name", PAGES)
def test_a_part_is_an_element_with_the_id_of_its_part(name: str) -> None:
    page = SITE_PAGES[name].load()
    shown = page.show("")
    assert tuple(shown.html) == page.parts
    for part, html in shown.html.items():
        assert elements(html)[0].attrs["id"] == part


def _referred_to(name: str) -> set[str]:
    """A template and all it is made of."""
    found, source = {name}, environment().loader
    assert source is not None
    text, _, _ = source.get_source(environment(), name)
    for other in meta.find_referenced_templates(environment().parse(text)):
        assert other is not None, name
        found |= _referred_to(other)
    return found


def test_no_template_is_left_over() -> None:
    every = set(environment().list_templates())
    used = _referred_to("sheets/settings-sheet.html") | _referred_to("sheets/wall.html")
    used |= _referred_to("list/weld-fields.html")  # drawn where a weld of the list is edited
    for page in SITE_PAGES.values():
        used |= _referred_to(f"{page.folder}/page.html")
    for name in PAGES:
        page = SITE_PAGES[name]
        for part in page.load().parts:
            own = f"{page.folder}/{part}.html"
            used |= _referred_to(own if own in every else f"parts/{part}.html")
    assert used == every
