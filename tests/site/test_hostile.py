"""Whatever stands in the address, the page answers and nothing of it becomes markup."""

import json
import random
from urllib.parse import quote, urlencode

import pytest
from flask.testing import FlaskClient

from beadwright.job.job_entries import DEFAULTS
from beadwright_site import phone
from tests.site.page import elements

SCRIPT = "<script>alert(1)</script>"
VALUES = (
    SCRIPT,
    '"><img src=x onerror=alert(1)>',
    "'onfocus='alert(1)",
    "javascript:alert(1)",
    "{{ 7 * 7 }}",
    "NaN",
    "nan in",
    "inf",
    "1e999",
    "-1in",
    "0",
    "1/0",
    "9" * 5000,
    "½ ¼ ‽ ☃ 漢字",
    "\u202e\u0000\u0007\r\n",
    "٣",
    "½",
    "  ",
    "%",
    "a" * 20000,
)


@pytest.mark.parametrize("key", [*DEFAULTS, "query", "page", SCRIPT])
def test_no_value_of_any_entry_breaks_the_page(client: FlaskClient, key: str) -> None:
    for value in VALUES:
        response = client.get("/?" + urlencode({key: value}))
        assert response.status_code == 200, value[:40]
        assert "7 * 7 }}" in value or "49" not in value
        for element in elements(response.text):
            assert element.tag != "img"
            if element.tag == "script" and not element.attrs["src"].endswith("/asked_job.js"):
                assert element.attrs["type"] == "module"
            assert not [name for name in element.attrs if name.startswith("on")]
            for name in ("href", "src", "action"):
                assert not element.attrs.get(name, "").lower().startswith("javascript:")
        assert SCRIPT not in response.text


@pytest.mark.parametrize(
    "query",
    [
        "%zz&%%%=%%",
        "=",
        "&&&&",
        "plate=%00%ff%fe",
        "plate=%ed%a0%80",
        "&".join(f"k{n}=1" for n in range(10_000)),
        "&".join(["plate=3/8in"] * 10_000),
        "?plate=3/8in",
        "plate=3/8in;leg=1/4in",
        quote(SCRIPT),
    ],
)
def test_no_query_breaks_the_page(client: FlaskClient, query: str) -> None:
    response = client.get(f"/?{query}")
    assert response.status_code == 200
    assert SCRIPT not in response.text


def test_random_bytes_break_nothing(client: FlaskClient) -> None:
    source = random.Random(20_20)
    for _ in range(150):
        text = bytes(source.randrange(1, 256) for _ in range(source.randrange(60)))
        key = source.choice(list(DEFAULTS))
        assert client.get(f"/?{key}={quote(text)}").status_code == 200
        assert client.get("/?" + quote(text, safe="&=%+;")).status_code == 200


@pytest.mark.parametrize(
    "payload",
    [
        "not json",
        "[]",
        "null",
        '"plate"',
        "{}",
        '{"page": 3}',
        '{"page": "dial-in", "query": 3}',
        '{"page": "no such page", "query": ""}',
        "[" * 100_000,
    ],
)
def test_the_phone_refuses_what_it_cannot_read(payload: str) -> None:
    for action in ("page", "json"):
        answer = json.loads(phone.call(action, payload))
        assert {"error", "errors"} & answer.keys()
        assert "Traceback" not in json.dumps(answer)


@pytest.mark.parametrize("kept", [None, [], 3, "x", {"plate": {"a": [1]}}, {"plate": SCRIPT}])
def test_what_was_kept_is_checked_like_what_is_typed(kept: object) -> None:
    payload = json.dumps({"page": "dial-in", "query": "", "kept": kept})
    answer = json.loads(phone.call("page", payload))
    assert "error" not in answer
    assert SCRIPT not in "".join(answer["html"].values())


def test_lone_surrogates_are_no_trouble(client: FlaskClient) -> None:
    payload = '{"page": "dial-in", "query": "plate=\\ud800&gas=\\udfff", "kept": null}'
    answer = json.loads(phone.call("page", payload))
    assert answer["ok"] is False
    assert {"plate", "gas"} <= answer["errors"].keys()
