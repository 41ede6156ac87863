"""The change log the app shows."""

from datetime import date

from markupsafe import escape

from beadwright import __version__
from beadwright_site.app import create_app
from beadwright_site.changes import CHANGES


def test_the_newest_entry_is_this_version() -> None:
    assert CHANGES[0].version == __version__


def test_entries_run_from_new_to_old() -> None:
    days = [date.fromisoformat(change.date) for change in CHANGES]
    assert days == sorted(days, reverse=True)
    assert all(change.lines for change in CHANGES)


def test_the_method_page_tells_them() -> None:
    html = create_app().test_client().get("/method/").get_data(as_text=True)
    for change in CHANGES:
        assert all(str(escape(line)) in html for line in change.lines)
