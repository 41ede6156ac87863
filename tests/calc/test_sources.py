"""Every source has an id of its own: a second would hide the first, with its mark."""

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
