"""Freeze every page of the Flask app into files."""

import warnings
from pathlib import Path
from typing import Any, cast

import flask_frozen

from beadwright_build.content_types import teach_mimetypes
from beadwright_build.errors import BuildError
from beadwright_build.places import OUT
from beadwright_site.app import create_app


def freezer_settings(destination: Path) -> dict[str, Any]:
    """Return Frozen-Flask's settings.

    Raises:
        BuildError: If the destination is not below ``.out``. Frozen-Flask deletes every file there
            it did not write, and its default is a folder named ``build`` beside the app.
    """
    where = destination.resolve()
    if not where.is_relative_to(OUT) or where == OUT:
        raise BuildError(f"pages are frozen below {OUT} only, not into {where}")
    return {
        "FREEZER_DESTINATION": str(where),
        "FREEZER_RELATIVE_URLS": True,  # any sub-path of any host
        "FREEZER_REDIRECT_POLICY": "error",
        # Hidden files. Not ".*": Frozen-Flask matches it to the static folder itself, named ".".
        "FREEZER_STATIC_IGNORE": [".?*"],
    }


def freeze(vendor: Path, destination: Path, core: str = "") -> list[str]:
    """Freeze the app into a folder and return the urls it wrote; ``core`` names the packed core.

    A page nothing links to, a broken link, a wrong content type: all are errors, not warnings.
    """
    teach_mimetypes()
    app = create_app(vendor_dir=vendor, core=core)
    app.config.update(freezer_settings(destination))
    with warnings.catch_warnings():
        warnings.simplefilter("error", flask_frozen.FrozenFlaskWarning)
        urls = cast("set[str]", flask_frozen.Freezer(app).freeze())
    return sorted(urls)
