"""The Flask app: live while the pages are worked on, and frozen by the build."""

from __future__ import annotations

import json
import os
from functools import partial
from pathlib import Path

from flask import Blueprint, Flask, Response, request, send_file

from beadwright_site.manifest import MANIFEST
from beadwright_site.pages.cost.page import cost_page
from beadwright_site.pages.dial_in.page import dial_in_page
from beadwright_site.pages.heat.page import heat_page
from beadwright_site.pages.method.page import method_page
from beadwright_site.pages.missing.page import missing_page
from beadwright_site.pages.passes.page import passes_page
from beadwright_site.pages.shop.page import shop_page
from beadwright_site.pages.strength.page import strength_page
from beadwright_site.pages.supplies.page import supplies_page

VENDOR = "BEADWRIGHT_VENDOR"
"""Environment variable: folder of front-end files, where ``flask run`` makes the app."""


def _html(text: str, status: int = 200) -> Response:
    # A surrogate typed by hand has no UTF-8; it becomes a question mark, as browsers do.
    return Response(
        text.encode("utf-8", "replace"), status, content_type="text/html; charset=utf-8"
    )


def create_app(*, vendor_dir: Path | None = None) -> Flask:
    """Return the app.

    Args:
        vendor_dir: Folder served under ``static/vendor/``; without it, the one named by the
            environment variable ``BEADWRIGHT_VENDOR``, or none: the pages then work unscripted.
    """
    app = Flask(__name__)
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

    for style in sorted((Path(__file__).parent / "pages").glob("*/*.css")):
        app.add_url_rule(
            f"/static/css/{style.name}", f"style {style.stem}", partial(send_file, style)
        )

    @app.get("/")
    def dial_in() -> Response:
        return _html(dial_in_page(request.query_string.decode("latin-1")))

    @app.get("/cost/")
    def cost() -> Response:
        return _html(cost_page(request.query_string.decode("latin-1")))

    @app.get("/passes/")
    def passes() -> Response:
        return _html(passes_page(request.query_string.decode("latin-1")))

    @app.get("/strength/")
    def strength() -> Response:
        return _html(strength_page(request.query_string.decode("latin-1")))

    @app.get("/supplies/")
    def supplies() -> Response:
        return _html(supplies_page(request.query_string.decode("latin-1")))

    @app.get("/heat/")
    def heat() -> Response:
        return _html(heat_page(request.query_string.decode("latin-1")))

    @app.get("/shop/")
    def shop() -> Response:
        return _html(shop_page(request.query_string.decode("latin-1")))

    @app.get("/method/")
    def method() -> Response:
        return _html(method_page())

    @app.get("/404.html")
    def missing() -> Response:
        return _html(missing_page())

    @app.get("/manifest.webmanifest")
    def manifest() -> Response:
        text = json.dumps(MANIFEST, indent=2, ensure_ascii=False)
        return Response(f"{text}\n", content_type="application/manifest+json")

    @app.errorhandler(404)
    def not_found(_: Exception) -> Response:
        return _html(missing_page(), 404)

    # Named for Flask above; the type checkers would call them unused.
    del dial_in, cost, heat, passes, strength, supplies, shop, method, missing, manifest, not_found
    return app
