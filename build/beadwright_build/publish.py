"""Copy a built site to the folder a web host serves."""

import filecmp
import shutil
from pathlib import Path

from beadwright_build.compress import ENCODINGS
from beadwright_build.errors import BuildError
from beadwright_build.release import NOT_KEPT, WORKER, path_of, read_release


def publish(site: Path, to: Path) -> None:
    """Make ``to`` hold the site; files of an earlier release go, files of others stay.

    Raises:
        BuildError: If the folder holds something that is not a release of this app.
    """
    if to.exists() and not to.is_dir():
        raise BuildError(f"{to} is a file, not a folder")
    if to.is_dir() and any(to.iterdir()):
        _remove_stale(site, to)
    for source in sorted(site.rglob("*")):
        target = to / source.relative_to(site)
        if source.is_dir():
            target.mkdir(parents=True, exist_ok=True)
        elif not (target.is_file() and filecmp.cmp(source, target, shallow=False)):
            target.parent.mkdir(parents=True, exist_ok=True)
            shutil.copyfile(source, target)


def _remove_stale(site: Path, to: Path) -> None:
    try:
        urls = [file["url"] for file in read_release(to)["files"]]
    except BuildError as unknown:
        raise BuildError(f"{to} holds files that are not ours: name an empty folder") from unknown
    unlisted = (
        f"{folder}{file.name}"
        for folder in NOT_KEPT
        for file in (to / folder).glob("*")
        if file.suffix in {".json", ".txt"}
    )
    for name in (WORKER, *(path_of(url) for url in urls), *unlisted):
        for suffix in ("", *ENCODINGS):
            if not (site / f"{name}{suffix}").is_file():
                (to / f"{name}{suffix}").unlink(missing_ok=True)
