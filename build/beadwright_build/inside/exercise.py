"""Runs inside Pyodide: use everything the phone uses, then say which modules that took.

Whatever this imports is shipped and nothing else is, so it must go everywhere the app can: every
module of the core, every page with good and bad input, JSON, hostile payloads, an error's trace.
"""

import dataclasses
import importlib
import json
import sys
import traceback
from collections.abc import Iterator
from types import CodeType

KEEP = (
    "encodings.ascii",
    "encodings.cp437",  # zipimport reads entry names with it
    "encodings.idna",
    "encodings.latin_1",
    "encodings.utf_8",
    "inspect",
    "jinja2.debug",  # when a template fails
    "linecache",
    "re",
    "tokenize",
    "traceback",
    "warnings",
)
"""Imported by the interpreter itself on some paths, whether or not the app took them today."""

GOOD = (
    "",
    "units=si",
    "plate=3/8in&leg=5/16in&position=2F&wire=ER70S-6&dia=0.045in&gas=90/10",
    "plate=10ga&joint=lap&position=3F-down&transfer=short&gas=75/25&dia=0.035in",
    "plate=25mm&plate2=12mm&units=si&joint=tee&position=PB&wire=E70C-6M&travel_by=robot",
    "position=4F&wire=E71T-1M&dia=1/16in&gas=75/25",
    "plate=1/2in&joint=v&position=1G&transfer=spray&gas=CO2",
    "units=si&joint=tee-double-bevel&plate=12mm&plate2=25mm&depth=6mm&depth2=8mm",
    "joint=slot&plate2=1in&pitch=8in",
    "skew=120deg&leg=1/4in&leg2=3/8in",
    "wfs=300in/min&volts=24&travel=12in/min&machine_amps=150",
)
"""Jobs as they are typed, and two that cannot be done, to which the answer is why."""

_COUPON = "leg=1/4in&plate=1/4in&marked=8in&arc_time=40s&meter_amps=330A"
_RECORD: dict[str, object] = {
    "version": 1,
    "key": "k1",
    "made": "2026-11-28",
    "query": _COUPON,
    "facts": {},
}
_FILE = json.dumps({"kind": "beadwright", "version": 1, "shop": {"labour": "30/h"},
                    "coupons": [_RECORD]})  # fmt: skip

ACTS: tuple[tuple[str, dict[str, object]], ...] = (
    ("csv", {"page": "cost", "query": "leg=5/16in&draws=200", "kept": {"labour": "30/h"}}),
    ("csv", {"page": "supplies", "query": "units=si&gas=CO2&spool_gross=9kg&spool_empty=1kg"}),
    ("json", {"page": "shop", "query": "plat=1/4in"}),
    ("csv", {"page": "passes", "query": "plate=1in&joint=double-v&position=2G&passes=14"}),
    ("page", {"page": "passes", "query": "plate=1/2in&leg=1/4in&passes=9&transfer=spray"}),
    ("page", {"page": "passes", "query": "leg=5/8in&plate=3/4in&at=2", "parts": ["bead"]}),
    ("page", {"page": "inspect", "query": "leg_found=1/4in&trouble=porosity&flow=15&cracks=yes"}),
    ("json", {"page": "strength", "query": "analysis=ic&group=circle&mz=2kn-m&units=si"}),
    ("json", {"page": "strength", "query": "design_code=en-directional&group=t&mx=9kip-in"}),
    ("chance", {"query": "", "kept": {"wire_price@ER70S-6 0.045in": "2/lb"}, "way": 1,
                "done": 0, "chunk": 50}),
    ("coupon", {"page": "coupons", "query": _COUPON, "key": "k1", "made": "2026-11-28"}),
    ("csv", {"page": "coupons", "query": _COUPON, "kept": {"coupons": json.dumps([_RECORD])}}),
    ("wall", {"query": "units=si&gas=82/18&b_dia=1/16in&c_wire=E71T-1M&c_gas=75/25", "kept": {}}),
    ("wall", {"query": "gas=mud&c_dia=1mm", "kept": {"usual_gas": "CO2"}}),
    ("link", {"page": "list", "query": "lines=" + "a,tee,3/8in%0A" * 40}),
    ("link", {"page": "card", "query": "leg=1/4in", "tell": True, "short": False}),
    ("weld", {"query": "lines=a,tee,3/8in,,6in%0Ab,tee,mud,,4in", "number": 1}),
    ("weld", {"query": "lines=a,tee,3/8in,,6in%0Ab,tee,mud,,4in", "number": 2, "key": "plate"}),
    ("json", {"page": "dial-in", "query": "z=eNoryEksSbU11rfIzFPLSU23NdU3NMvMAwBUgAcC"}),
    ("look", {"text": _FILE, "shop": {}, "jobs": [], "coupons": []}),
    ("look", {"text": '{"kind": "beadwright", "version": 1, "shop": {"breaker": "many"}}'}),
)  # fmt: skip
"""What the pages ask for past their parts and their JSON."""

HOSTILE = (
    "",
    "=",
    "plate",
    "plate=",
    "plate=&plate=&leg=%00",
    "plate=" + "9" * 400,
    "plate=1e999in&leg=nanin&dia=-1mm",
    "plate=\u00bd in&gas=\ud7ff&wire=<script>alert(1)</script>",
    "units=parsec&joint=knot&position=9Z&steel=&gas=0/0",
    "plate=1/0in&leg=5/0in",
    "%",
    "plate=%zz&%%%=%%",
)
"""Queries no page can answer, to reach the paths that only errors take."""


def main(modules: str) -> str:
    """Import the named modules, use the app, and return what that took.

    Returns:
        JSON: ``files`` of all modules then loaded, and ``dataclass_sources`` that dataclasses
        wrote and had to compile.
    """
    sources = _record_dataclass_sources()
    for name in (*KEEP, *json.loads(modules)):
        importlib.import_module(name)
    problems = [*_answers(), *_refusals()]
    if problems:
        raise RuntimeError("\n".join(problems))
    _fail()
    return json.dumps({"files": sorted(_files()), "dataclass_sources": sorted(sources)})


def _record_dataclass_sources() -> set[str]:
    """Have the dataclasses module report each source text it executes from here on."""
    sources: set[str] = set()

    def record(code: str | CodeType, *scopes: dict[str, object]) -> None:
        if isinstance(code, str):
            sources.add(code)
        exec(code, *scopes)

    dataclasses.__dict__["exec"] = record
    return sources


def _call(action: str, payload: object) -> dict[str, object]:
    phone = importlib.import_module("beadwright_site.phone")
    text = payload if isinstance(payload, str) else json.dumps(payload)
    answer: dict[str, object] = json.loads(phone.call(action, text))
    return answer


def _doors() -> Iterator[tuple[str, str]]:
    """Yield every action with every page it knows."""
    for page in importlib.import_module("beadwright.pages").PAGES:
        yield "page", page
        yield "json", page


def _answers() -> Iterator[str]:
    """Ask every page for jobs that are typed right; yield what came back wrong."""
    checked = _call("check", {})
    if checked.get("ok") is not True:
        yield f"check: {checked}"
    for action, page in _doors():
        for query in GOOD:
            answer = _call(action, {"page": page, "query": query, "kept": {}})
            if "error" in answer:
                yield f"{action} {page}?{query}: {answer['error']}"
    for action in _never_asked():
        yield f"{action}: never asked here, so what it imports would not be shipped"
    for action, payload in ACTS:
        answer = _call(action, payload)
        if "error" in answer:
            yield f"{action} {payload}: {answer['error']}"


def _never_asked() -> list[str]:
    """Return the actions of the phone that nothing here asks for."""
    actions: dict[str, object] = importlib.import_module("beadwright_site.phone").ACTIONS
    return sorted(actions.keys() - {"check"} - {action for action, _ in ACTS})


def _refusals() -> Iterator[str]:
    """Ask what cannot be answered; yield what was not refused in the agreed form."""
    for action, page in _doors():
        for query in HOSTILE:
            answer = _call(action, {"page": page, "query": query, "kept": None})
            if "error" in answer:
                yield f"{action} {page}?{query[:60]}: {answer['error']}"
    for action, payload in (
        ("page", {"page": "no such page", "query": "", "kept": None}),
        ("no such action", {}),
        ("json", {}),
        ("page", "not json"),
    ):
        if not {"error", "errors"} & _call(action, payload).keys():
            yield f"{action} {payload}: not refused"


def _fail() -> None:
    try:
        importlib.import_module("beadwright.no_such_module")
    except ImportError as error:
        traceback.print_exception(error)
        "".join(traceback.format_exception(error))


def _files() -> Iterator[str]:
    for module in list(sys.modules.values()):
        origin = getattr(getattr(module, "__spec__", None), "origin", None)
        if isinstance(origin, str) and origin.startswith("/"):
            yield origin
