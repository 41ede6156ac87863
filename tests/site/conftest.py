"""The live app without its front-end files."""

import pytest
from flask.testing import FlaskClient

from beadwright_site.app import create_app


@pytest.fixture(scope="session")
def client() -> FlaskClient:
    """A client of the live app."""
    return create_app().test_client()
