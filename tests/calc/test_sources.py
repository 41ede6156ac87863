"""Every source has an id of its own, and a code its edition, or says that none is told."""

import re
from collections import Counter
from importlib import import_module
from pkgutil import iter_modules

from beadwright import sources
from beadwright.sources import SOURCES
from beadwright.sources.source import Row


def tables() -> list[tuple[Row, ...]]:
    names = [each.name for each in iter_modules(sources.__path__) if each.name != "source"]
    return [import_module(f"beadwright.sources.{name}").ROWS for name in names]


def test_no_id_stands_for_two_sources() -> None:
    ids = Counter(row[0] for table in tables() for row in table)
    assert [key for key, times in ids.items() if times > 1] == []
    assert ids.keys() <= SOURCES.keys()


CODE = re.compile(r"(AISC (\d|Man|Steel Con|LRFD)|AWS [A-D]\d|(prEN|EN|ENV|BS|ISO) \d|ASTM A)")
EDITION = re.compile(r"(:(19|20)\d\d|-\d\d\b|\d(st|nd|rd|th) ed\.|edition not told)")


def test_each_code_has_its_edition_or_says_that_none_is_told() -> None:
    codes = [row for table in tables() for row in table if CODE.match(row[1])]
    assert len(codes) > 60
    assert [row[:2] for row in codes if not EDITION.search(row[1])] == []
