"""What every folder of tests may use, and how hypothesis works in all of them.

The same examples every run, however slow the machine;
``pytest tests/calc --hypothesis-profile=search`` looks for new ones.
"""

from pathlib import Path

import pytest
from hypothesis import settings

settings.register_profile("repeatable", derandomize=True, deadline=None)
settings.register_profile("search", max_examples=1000, deadline=None)
settings.load_profile("repeatable")


def pytest_collection_modifyitems(items: list[pytest.Item]) -> None:
    """Refuse a test marked long that does not say why."""
    for item in items:
        for mark in item.iter_markers("long"):
            if not mark.kwargs.get("reason"):
                raise pytest.UsageError(f"{item.nodeid} is marked long without a reason")


@pytest.fixture(scope="session")
def built_site() -> Path:
    """The static site, built from the sources as they are. Copy it before changing anything.

    It is the site ``build/serve`` makes: built once, by whichever worker asks first, and not at
    all while it is current.
    """
    # Here, not above: the tests of the core do without Flask and the build.
    from beadwright_build.steps import build_site

    return build_site()
