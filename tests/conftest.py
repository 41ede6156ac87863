"""Fixtures every folder of tests may use."""

from pathlib import Path

import pytest


@pytest.fixture(scope="session")
def built_site() -> Path:
    """The static site, built from the sources as they are. Copy it before changing anything."""
    # Here, not above: the tests of the core do without Flask and the build.
    from beadwright_build.steps import build_site

    return build_site("test-site")
