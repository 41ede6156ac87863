"""The Flask app: live while the pages are worked on, and frozen by the build."""

from __future__ import annotations

import json
import os
from collections.abc import Callable
from functools import partial
from pathlib import Path
from typing import Any, cast

from flask import Blueprint, Flask, Response, request, send_file

from beadwright_site.manifest import MANIFEST
from beadwright_site.page_table import SITE_PAGES, SitePage
from beadwright_site.rendering import environment
from beadwright_site.schemas.page_schemas import Schema, published

VENDOR = "BEADWRIGHT_VENDOR"
"""Environment variable: folder of front-end files, where ``flask run`` makes the app."""


def _html(text: str, status: int = 200) -> Response:
    # A surrogate typed by hand has no UTF-8; it becomes a question mark, as browsers do.
    return Response(
        text.encode("utf-8", "replace"), status, content_type="text/html; charset=utf-8"
    )


def _answer(page: SitePage) -> Response:
    return _html(page.load().whole(request.query_string.decode("latin-1")))


def _sheet(name: str) -> Response:
    return _html(SITE_PAGES["sheets"].load().sheet(name))


def _wall() -> Response:
    return _html(SITE_PAGES["sheets"].load().wall(request.query_string.decode("latin-1")))


def _schema(make: Callable[[], Schema]) -> Response:
    text = json.dumps(make(), indent=1, ensure_ascii=False)
    return Response(f"{text}\n", content_type="application/json")


def create_app(*, vendor_dir: Path | None = None, core: str = "") -> Flask:
    """Return the app.

    Args:
        core: Name of the packed core the pages are frozen with; empty where there is none.
        vendor_dir: Folder served under ``static/vendor/``; without it, the one named by the
            environment variable ``BEADWRIGHT_VENDOR``, or none: the pages then work unscripted.
    """
    app = Flask(__name__)
    cast("dict[str, Any]", environment().globals)["core"] = core
    vendor = vendor_dir or (Path(os.environ[VENDOR]) if os.environ.get(VENDOR) else None)
    if vendor is not None:
        app.register_blueprint(
            Blueprint(
                "vendor",
                __name__,
                static_folder=str(vendor.resolve()),
                static_url_path="/static/vendor",
            )
        )

    for page in SITE_PAGES.values():
        app.add_url_rule(f"/{page.path}", page.name, partial(_answer, page))
        if page.style.is_file():
            app.add_url_rule(
                f"/static/css/{page.name}.css", f"{page.name}-css", partial(send_file, page.style)
            )

    for name, make in published().items():
        app.add_url_rule(f"/schema/{name}", f"schema {name}", partial(_schema, make))

    tables = SITE_PAGES["sheets"].load()
    app.add_url_rule("/sheets/wall.html", "wall", _wall)
    for name in tables.sheets():
        app.add_url_rule(f"/sheets/{name}.html", f"sheet {name}", partial(_sheet, name))

    @app.get("/manifest.webmanifest")
    def manifest() -> Response:
        text = json.dumps(MANIFEST, indent=2, ensure_ascii=False)
        return Response(f"{text}\n", content_type="application/manifest+json")

    @app.errorhandler(404)
    def not_found(_: Exception) -> Response:
        return _html(SITE_PAGES["missing"].load().whole(), 404)

    # Named for Flask above; the type checkers would call them unused.
    del manifest, not_found
    return app
