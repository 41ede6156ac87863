"""Welds from one side: stopped where their root is pulled open, and never counted stronger."""

import pytest

from beadwright.strength.one_sided import is_one_line, opens_at_root, root_load
from beadwright.strength.weld_group import polyline_group, shaped_group
from tests.calc.strength_asked import ask
from tests.told import told

TEE = "group=line&group_height=6in&weld_sides=1&leg=1/4in&plate=1/2in&plate2=1/2in"
LAP = "joint=lap&group=line&group_height=6in&weld_sides=1&leg=1/4in&plate=1/2in&plate2=1/2in"


def level(query: str) -> str:
    """How severe the note on the root is, or empty without one."""
    found = [note for note in ask(query).notes if note.key.startswith("strength.one-sided")]
    assert len(found) <= 1
    return found[0].level if found else ""


@pytest.mark.parametrize(
    ("query", "severe"),
    [
        (f"{TEE}&pz=3kip", "stop"),  # EN 1993-1-8, Figure 4.9(b): pulled square to the weld
        (f"{TEE}&pz=-3kip", ""),  # pushed, the root closes
        (f"{TEE}&py=3kip", ""),  # along the weld
        (f"{TEE}&py=3kip&load_z=2in", "stop"),  # its top is pulled
        (f"{TEE}&px=3kip", "caution"),  # which way it is pushed is not said
        # F/L + 6M/L²: 0.5 + 0.5 kip/in at one end, nothing at the other.
        (f"{TEE}&px=3kip&mz=3kip-in", "caution"),
        (f"{TEE}&px=3kip&analysis=ic", "stop"),  # counts the strength across, which is not there
        (f"{TEE}&line_load=1kip/in", "caution"),
        (f"{TEE}&pz=3kip".replace("weld_sides=1", "weld_sides=2"), ""),
        (f"{TEE}&pz=3kip".replace("group=line", "group=rectangle"), ""),  # all round
        (f"{TEE}&pz=3kip".replace("group=line", "group=circle"), ""),
        (f"{TEE}&pz=3kip".replace("group=line", "group=lines"), ""),
        (f"{TEE}&pz=3kip".replace("group=line", "group=polyline:0,0 3,0 6,0"), "stop"),
        (f"{TEE}&pz=3kip&design_code=en", "stop"),
        (f"{LAP}&px=3kip", "stop"),  # J2.2b: a weld on the end of each plate
        (f"{LAP}&py=3kip", ""),
        (f"{LAP}&px=3kip&design_code=en", "stop"),
        (f"{LAP}&py=3kip".replace("group=line", "group=flats"), ""),
        ("joint=v&plate=1/2in&depth=1/4in&pz=3kip", "stop"),
        ("joint=double-v&plate=1/2in&depth=3/16in&depth2=3/16in&pz=3kip", ""),
        ("joint=v&plate=1/2in&pz=3kip", ""),  # welded through
        ("joint=plug&py=3kip", ""),
    ],
)
def test_a_root_pulled_open_is_stopped(query: str, severe: str) -> None:
    assert level(query) == severe
    assert ask(query).stopped is (severe == "stop")
    if severe == "stop":
        assert not ask(query).holds
        assert level(f"{query}&held=yes") == "caution"
        assert ask(f"{query}&held=yes").holds


def test_the_source_is_the_code_s_own() -> None:
    def source(query: str) -> str:
        return next(n.source for n in ask(query).notes if n.key.startswith("strength.one-sided"))

    assert source(f"{TEE}&pz=3kip") == "one-sided-root"
    assert source(f"{TEE}&pz=3kip&design_code=en") == "en-1993-1-8-root"
    assert source(f"{LAP}&px=3kip") == "aisc-j2.2b"


def test_no_added_strength_across_a_weld_that_opens() -> None:
    for query in (f"{TEE}&px=3kip", f"{LAP}&px=3kip"):
        plain = ask(query).weld.holds
        assert ask(f"{query}&cross_increase=yes").weld.holds == pytest.approx(plain)
        held = ask(f"{query}&cross_increase=yes&held=yes").weld.holds
        assert held == pytest.approx(1.5 * plain)  # 1 + 0.5 sin^1.5 90°


def test_no_pieces_of_a_weld_that_opens_are_offered() -> None:
    """D1.1 and EN 1993-1-8, 4.12: its root opens; pieces of it open sooner."""
    query = "joint=tee&plate=3/8in&weld_sides=1&pz=5kip&group=line&group_height=12in"
    assert ask(query).segments is None
    assert ask(f"{query}&held=yes").segments is not None
    assert ask(query.replace("pz=", "py=")).segments is not None  # along it, the root is not pulled
    assert ask(query.replace("weld_sides=1", "weld_sides=2")).segments is not None


def test_what_is_one_line() -> None:
    assert is_one_line(shaped_group("line", 1.0, 1.0))
    assert is_one_line(polyline_group(((0.0, 0.0), (3.0, 4.0), (6.0, 8.0))))
    for shape in ("lines", "flats", "c", "l", "t", "rectangle", "circle"):
        assert not is_one_line(shaped_group(shape, 1.0, 1.0))


def test_every_load_has_its_name() -> None:
    for load, name in (("pz=1kip", "pulled"), ("px=1kip", "across"), ("py=1kip", None),
                       ("line_load=1kip/in", "unknown")):  # fmt: skip
        found = ask(f"{TEE}&{load}")
        assert opens_at_root(found.task)
        assert root_load(found.task, found.spread.forces) == name
    found = ask(f"{LAP}&px=1kip")
    assert root_load(found.task, found.spread.forces) == "lap"


def test_a_slanted_line_loaded_along_itself_opens_no_root_however_large_the_load() -> None:
    for load in ("px=3kip&py=7kip", "px=3000kip&py=7000kip"):
        found = ask(f"joint=tee&group=polyline:0in,0in 3in,7in&{load}&weld_sides=1")
        assert root_load(found.task, found.spread.forces) is None


def test_what_no_page_checks_is_always_said() -> None:
    for query in ("py=2kip", "joint=lap&py=2kip", "joint=v&py=2kip", "joint=plug&py=2kip",
                  "design_code=en&py=2kip"):  # fmt: skip
        texts = " ".join(told(note) for note in ask(query).notes)
        for word in ("fatigue", "earthquake", "buckle", "bend out of their plane", "split"):
            assert word in texts


def test_no_american_clause_stands_in_a_european_answer() -> None:
    lap = "units=si&joint=lap&plate=10mm&plate2=10mm&group_height=100mm&py=20kN&design_code=en"
    for query in (
        f"{lap}&group=lines&group_width=80mm",
        f"{lap}&group=line",
        f"{lap}&group=line&weld_sides=1&px=20kN&py=0",
        "units=si&joint=v&plate=10mm&depth=5mm&py=20kN&design_code=en",
        "units=si&joint=v&plate=10mm&pz=20kN&design_code=en",
        "units=si&joint=tee&plate=10mm&skew=60deg&py=20kN&design_code=en",
        "units=si&joint=tee&plate=10mm&weld_sides=1&pz=20kN&design_code=en",
    ):
        found = ask(query)
        for source in (*(n.source for n in found.notes), *(k.source for k in found.links)):
            assert not source.startswith(("aisc", "aws")), (query, source)
