"""Where pages may be frozen to. Frozen-Flask empties its destination of all it did not write."""

from pathlib import Path

import pytest

from beadwright_build.errors import BuildError
from beadwright_build.freeze import freezer_settings
from beadwright_build.places import OUT, ROOT, places_for


@pytest.mark.parametrize("name", ["site", "test-site-again"])
def test_every_build_freezes_below_out(name: str) -> None:
    destination = freezer_settings(places_for(name).frozen)["FREEZER_DESTINATION"]
    assert Path(destination).is_absolute()
    assert Path(destination).is_relative_to(OUT)


@pytest.mark.parametrize(
    "destination",
    [ROOT / "build", ROOT / "site", ROOT, OUT, OUT / ".." / "build", Path("/"), Path("build")],
)
def test_no_other_destination_is_taken(destination: Path) -> None:
    with pytest.raises(BuildError, match="frozen below"):
        freezer_settings(destination)


def test_links_between_pages_are_relative() -> None:
    assert freezer_settings(OUT / "x")["FREEZER_RELATIVE_URLS"] is True
