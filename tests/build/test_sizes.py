"""What a phone has to fetch before it works with no signal."""

from pathlib import Path

import pytest

from beadwright_build.release import Release, ReleaseFile, read_release
from beadwright_build.size_report import group_sizes, report

BUDGET_GZIP = 5_500_000
BUDGET_FIRST_PAGE_GZIP = 275_000
"""Some 13 s at 20 kB/s, a weak signal; the tables and Method come after."""


@pytest.fixture(scope="session")
def release(built_site: Path) -> Release:
    listed = read_release(built_site)
    files = tuple(ReleaseFile(**file) for file in listed["files"])
    return Release(id=listed["id"], version=listed["version"], files=files)


def test_all_of_it_fits_the_budget(built_site: Path, release: Release) -> None:
    plain, gz, br = group_sizes(built_site, release)["all"]
    assert 3_000_000 < gz < BUDGET_GZIP  # below three it is not all there
    assert br < gz < plain


def test_the_shell_is_small_enough_to_install_whole(built_site: Path, release: Release) -> None:
    assert group_sizes(built_site, release)["shell"][1] < BUDGET_FIRST_PAGE_GZIP


def test_the_report_adds_up_and_names_every_file(built_site: Path, release: Release) -> None:
    sizes = group_sizes(built_site, release)
    worker = sizes["all"][0] - sizes["shell"][0] - sizes["runtime"][0]
    assert worker == (built_site / "sw.js").stat().st_size
    text = report(built_site, release)
    for file in release.files:
        assert (file.url or "index.html") in text
