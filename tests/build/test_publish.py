"""Writing the site to a folder somebody keeps."""

from pathlib import Path

import pytest

from beadwright_build.errors import BuildError
from beadwright_build.publish import publish
from beadwright_build.release import write_release


@pytest.fixture
def site(built_site: Path, tmp_path: Path) -> Path:
    """A small site; the build before it fetched what makes its service worker."""
    del built_site
    folder = tmp_path / "site"
    (folder / "static").mkdir(parents=True)
    (folder / "index.html").write_text("<!doctype html>" + "bead " * 200)
    (folder / "static" / "old.js").write_text("export {};" * 50)
    write_release(folder, tmp_path / "cache")
    return folder


def names(folder: Path) -> set[str]:
    return {path.relative_to(folder).as_posix() for path in folder.rglob("*") if path.is_file()}


def test_a_new_folder_gets_everything(site: Path, tmp_path: Path) -> None:
    publish(site, tmp_path / "new" / "deep")
    assert names(tmp_path / "new" / "deep") == names(site)


def test_a_later_release_takes_the_place_of_the_earlier(site: Path, tmp_path: Path) -> None:
    public = tmp_path / "public"
    publish(site, public)
    (public / "CNAME").write_text("the host's own file")
    (site / "static" / "old.js").unlink()
    (site / "static" / "new.js").write_text("export {};" * 60)
    write_release(site, tmp_path / "cache")
    publish(site, public)
    assert names(public) == names(site) | {"CNAME"}
    for name in names(site):
        assert (public / name).read_bytes() == (site / name).read_bytes()


def test_a_folder_of_other_files_is_left_alone(site: Path, tmp_path: Path) -> None:
    own = tmp_path / "letters"
    own.mkdir()
    (own / "letter.txt").write_text("mine")
    with pytest.raises(BuildError, match="not ours"):
        publish(site, own)
    assert names(own) == {"letter.txt"}


def test_a_file_is_not_a_folder(site: Path, tmp_path: Path) -> None:
    (tmp_path / "file").write_text("")
    with pytest.raises(BuildError, match="not a folder"):
        publish(site, tmp_path / "file")
