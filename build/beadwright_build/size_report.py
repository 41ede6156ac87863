"""What the site weighs: each file plain, gzip and Brotli, with totals."""

from collections import defaultdict
from collections.abc import Iterator
from pathlib import Path

from beadwright_build.release import WORKER, Release, path_of

Sizes = tuple[int, int, int]


def sizes(path: Path) -> Sizes:
    """Return a file's size plain, gzip and Brotli [byte]; without a copy, its plain size counts."""
    plain = path.stat().st_size
    copies = (path.with_name(path.name + suffix) for suffix in (".gz", ".br"))
    gz, br = (copy.stat().st_size if copy.is_file() else plain for copy in copies)
    return plain, gz, br


def group_sizes(site: Path, release: Release) -> dict[str, Sizes]:
    """Return the sizes of each group of the release, and of all of it with its worker."""
    totals: dict[str, Sizes] = defaultdict(lambda: (0, 0, 0))
    for file in release.files:
        totals[file.group] = _add(totals[file.group], sizes(site / path_of(file.url)))
    all_files = sizes(site / WORKER)
    for group in tuple(totals):
        all_files = _add(all_files, totals[group])
    return {**totals, "all": all_files}


def report(site: Path, release: Release) -> str:
    """Return the report as a table, largest first in each group."""
    return "\n".join(_lines(site, release))


def _lines(site: Path, release: Release) -> Iterator[str]:
    totals = group_sizes(site, release)
    yield f"release {release.id}, version {release.version}"
    yield _line("", ("plain", "gzip", "brotli"))
    for group in ("runtime", "shell"):
        rows = [
            (file.url or "index.html", sizes(site / path_of(file.url)))
            for file in release.files
            if file.group == group
        ]
        for name, row in sorted(rows, key=lambda row: -row[1][0]):
            yield _line(name, row)
        if group == "shell":
            yield _line(WORKER, sizes(site / WORKER))
        yield _line(f"= {group}", totals[group])
    yield _line("= all", totals["all"])


def _line(name: str, cells: tuple[object, object, object]) -> str:
    return f"  {name:<58}" + "".join(
        f"{cell:>12,}" if isinstance(cell, int) else f"{cell!s:>12}" for cell in cells
    )


def _add(one: Sizes, other: Sizes) -> Sizes:
    return (one[0] + other[0], one[1] + other[1], one[2] + other[2])
