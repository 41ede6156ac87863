"""Joints from a query: what is refused beside which entries, and what the codes say of the rest."""

import json
from urllib.parse import urlencode

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from beadwright.api import answer, answer_json
from beadwright.errors import FieldErrors
from beadwright.job.job_query import read_query
from beadwright.joint.joints import JOINTS
from tests.calc.test_joint_shapes import Typed, typed_joints
from tests.told import told

CONFLICTS = (
    ("joint=v&root_face=3/8in", {"root_face", "plate"},
     "Root face 3/8 in on plate 3/8 in leaves nothing to bevel; make it smaller."),
    ("joint=tee-bevel&plate2=1/4in&root_face=1/2in", {"root_face", "plate2"},
     "Root face 1/2 in on plate 1/4 in leaves nothing to bevel; make it smaller."),
    ("joint=v&angle=0", {"angle"}, "0 is outside 10deg to 120deg: a narrower one hides the root"),
    ("joint=v&angle=-60", {"angle"}, "-60 is outside 10deg to 120deg"),
    ("joint=bevel&angle=80", {"angle"}, "80° is outside 10° to 70°: one beveled face, not two"),
    ("joint=v&depth=1/2in", {"depth"}, "Depth 1/2 in is over the plate, 3/8 in."),
    ("joint=v&depth=1/4in&root_face=1/4in", {"depth", "root_face"},
     "Depth 1/4 in and root face 1/4 in make 1/2 in, over the plate, 3/8 in."),
    ("joint=v&depth=1/4in&root_face=1/16in", {"depth", "root_face"},
     "Depth 1/4 in and root face 1/16 in make 5/16 in; the plate is 3/8 in. Leave one blank."),
    ("joint=double-v&plate=1in&depth=1/2in&depth2=3/4in", {"depth", "depth2"},
     "Depth 1/2 in and second depth 3/4 in make 1-1/4 in, over the plate, 1 in."),
    ("joint=double-v&plate=1in&depth=1in", {"depth"},
     "Depth 1 in leaves nothing for the second side; bevel one side alone."),
    ("joint=double-v&plate=1in&depth2=1in", {"depth2"},
     "Second depth 1 in leaves nothing for the first side; bevel one side alone."),
    ("joint=double-v&backing=steel", {"backing", "joint"},
     "A backing closes the second side; a double groove is welded from it."),
    ("joint=bevel&backing=copper&depth=1/4in", {"backing", "depth"},
     "A groove cut part way never reaches a backing."),
    ("joint=v&backing=steel&gap=0", {"backing", "gap"},
     "A backing wants an open root: with no gap the arc does not reach it."),
    ("joint=corner&corner=half&leg=1/4in", {"leg"},
     "An outside corner holds no leg over half its other plate, 3/16 in."),
    ("joint=corner&leg2=1/2in", {"leg2", "plate"},
     "Leg 1/2 in up the edge is over the plate, 3/8 in."),
    ("joint=corner&corner=closed&gap=0&reinforcement=0", {"gap", "reinforcement"},
     "A closed corner with no gap and no reinforcement has nothing to fill; give one."),
    ("skew=50deg", {"skew"}, "50deg is outside 60deg to 135deg: a sharper one hides the root"),
    ("joint=plug&depth=1/2in", {"depth", "plate2"},
     "Fill 1/2 in is deeper than the plate with the hole, 3/8 in."),
    ("joint=slot&hole=1in&slot_length=1/2in", {"slot_length", "hole"},
     "A slot 1/2 in long is shorter than its width, 1 in."),
    ("joint=slot&plate=1/4in&slot_length=4in", {"slot_length", "depth"},
     "A slot 4 in long is over ten times its fill, 1/4 in (AISC 360 J2.3b)."),
    ("pitch=3in", {"pitch", "weld_length"},
     "Pitch 3 in is shorter than the weld, 6 in: the pieces would run into each other."),
    ("units=si&joint=v&plate=10mm&root_face=10mm", {"root_face", "plate"},
     "Root face 10.0 mm on plate 10.0 mm leaves nothing to bevel; make it smaller."),
    ("gap=1/4in", {"gap"}, "1/4 in is outside 0 in to 3/16 in: AWS D1.1 7.21.1"),
)  # fmt: skip


@pytest.mark.parametrize(("text", "fields", "message"), CONFLICTS)
def test_a_contradiction_is_named_beside_each_of_its_entries(
    text: str, fields: set[str], message: str
) -> None:
    with pytest.raises(FieldErrors) as caught:
        read_query(text)
    assert set(caught.value.messages) == fields
    for field in fields:
        assert any(message in said for said in caught.value.messages[field])


NOTES = (
    # Skewed tees.
    ("skew=120deg&leg=1/4in", "note", "weld 0.354 in along each plate", "skew"),
    ("skew=120deg&plate=1/2in", "caution", "leaves a 1/4 in root opening on this side", "skew"),
    ("skew=100deg&leg=1/4in", "note", "From 80° to 100° the code sizes it like a square", "skew"),
    ("skew=65deg", "caution", "Sharp side", "skew"),
    # Fillets.
    ("joint=lap&plate=1/4in", "note", "Lap the plates at least 1-1/4 in", "plate"),
    ("joint=lap&plate=1/4in&leg=3/16in&leg2=1/4in", "stop", "the most along this edge", "leg2"),
    ("leg=1/4in&leg2=1/8in", "stop", "Leg 1/8 in is under the code minimum", "leg2"),
    ("leg=5/16in&weld_length=1in", "out", "four legs, 1-1/4 in", "weld_length"),
    ("leg=1/4in&weld_length=1in&pitch=6in", "stop", "under 1-1/2 in, the least", "weld_length"),
    # Grooves.
    ("joint=v&plate=1/2in&backing=steel", "note", "detail B-U2a-GF, but not for short", "angle"),
    ("joint=v&plate=1/2in", "caution", "run the root pass in short circuit or pulse", "gap"),
    ("joint=v&gap=0", "stop", "not welded through until the back is gouged", "gap"),
    ("joint=v&angle=50", "caution", "groove angle 50° is under 60°", "angle"),
    ("joint=v&angle=75", "caution", "groove angle 75° is over 70°", "angle"),
    ("joint=v&gap=3/16in", "caution", "root opening 3/16 in is over 1/8 in", "gap"),
    ("joint=v&backing=steel&gap=1/8in", "caution", "root opening 1/8 in is under 1/4 in", "gap"),
    ("joint=v&root_face=3/16in", "caution", "root face 3/16 in is over 1/8 in", "root_face"),
    ("joint=v&plate=1/2in&depth=7/16in", "caution", "root face 1/16 in is under 1/8", "root_face"),
    ("joint=bevel&plate=1/2in&depth=3/8in&position=4G", "note", "effective throat 1/4 in", "depth"),
    ("joint=bevel&plate=1in&depth=1/4in&position=4G", "stop", "minimum of 5/16 in", "depth"),
    ("joint=double-v&plate=1in", "note", "Gouge the root to sound metal", "gouge_depth"),
    ("joint=v&plate=1in&plate2=1/2in", "note", "1 in 2.5 down to the thinner", "plate2"),
    ("joint=v&reinforcement=3/16in", "out", "Reinforcement over 1/8 in", "reinforcement"),
    ("joint=tee-bevel&leg=1/8in&reinforcement=3/16in", "out", "the code accepts on this face",
     "reinforcement"),
    ("joint=v&plate=1/2in&position=2G", "caution", "current of a flat one", "position"),
    ("joint=square&plate=3/16in", "caution", "one side may not melt through", "plate"),
    ("joint=square&plate=1/4in", "caution", "past the middle, over 1/8 in deep", "plate"),
    ("joint=square&plate=1/2in&backing=steel", "stop", "welds a square edge over", "plate"),
    ("joint=corner&corner=closed&plate=1/4in", "caution", "a seam with no root opening", "plate"),
    ("joint=square&plate=7/16in", "stop", "welds a square edge over 3/8 in", "plate"),
    # Holes.
    ("joint=plug&hole=1/2in", "stop", "Hole 1/2 in is under 11/16 in", "hole"),
    ("joint=slot&hole=1in", "out", "Slot 1 in is over 27/32 in", "hole"),
    ("joint=plug&depth=1/4in", "stop", "Fill it at least 3/8 in deep", "depth"),
    ("joint=plug&pitch=2in", "stop", "under four times the hole, 2-3/4 in", "pitch"),
)  # fmt: skip


@pytest.mark.parametrize(("text", "level", "said", "field"), NOTES)
def test_what_the_code_says_stands_beside_its_entry(
    text: str, level: str, said: str, field: str
) -> None:
    notes = [n for n in answer("dial-in", text).notes if said in told(n)]
    assert [(n.level, n.field) for n in notes] == [(level, field)]


SILENT = (
    ("joint=v&plate=1/2in&position=1G", "current of a flat one"),
    ("joint=v&plate=1/8in&position=2G&gap=1/16in", "current of a flat one"),
    ("plate=1/2in&position=2F", "current of a flat one"),
    ("", "At "),
    ("skew=90deg&leg=1/4in", "along each plate"),
    ("skew=70deg", "edge cut square"),
    ("skew=80deg", "Sharp side"),
    ("joint=v&plate=1/2in", "Off prequalified"),
    ("joint=v&angle=70", "Off prequalified"),
    ("joint=v&plate=1in&backing=steel", "Open root"),
    ("joint=v&plate=1in&backing=steel", "gouge"),
    ("joint=square&plate=1/4in&backing=steel", "melt through"),
    ("joint=bevel&plate=1/2in&depth=1/4in", "under the code minimum"),
    ("joint=v&reinforcement=1/8in", "Reinforcement over"),
    ("joint=plug", "under"),
    ("joint=plug&pitch=3in", "under four times"),
    ("leg=5/16in&weld_length=1-1/4in", "four legs"),
    ("leg=1/4in&weld_length=1-1/2in&pitch=6in", "intermittent fillets"),
)


@pytest.mark.parametrize(("text", "said"), SILENT)
def test_nothing_is_said_where_nothing_is_wrong(text: str, said: str) -> None:
    assert not [n for n in answer("dial-in", text).notes if said in told(n)]


@settings(max_examples=120)
@given(typed_joints(), st.sampled_from(["us", "si"]))
def test_any_joint_is_answered_or_refused_in_words(typed: Typed, system: str) -> None:
    found = answer_json("dial-in", urlencode(typed | {"units": system}))
    assert json.loads(json.dumps(found)) == found
    if "errors" in found:
        assert all(text for texts in found["errors"].values() for text in texts)
    else:
        assert found["answer"]["passes"] >= 1
        assert found["answer"]["position"][1] in "FG"


@pytest.mark.parametrize("joint", JOINTS)
def test_positions_go_by_the_weld(joint: str) -> None:
    job = read_query(f"joint={joint}&position=PB").job
    assert job.position_name == ("2F" if joint in ("tee", "lap", "corner") else "2G")
    assert read_query("joint=corner&corner=closed").job.position_name == "2G"


@pytest.mark.parametrize(
    ("text", "said"),
    [
        ("joint=v&leg=1/4in&hole=1/2in", "leg, hole"),
        ("joint=lap&skew=120deg", "skew"),
        ("joint=plug&gap=1/16in&reinforcement=1/16in", "root opening, reinforcement"),
        ("joint=tee&backing=steel&depth=1/4in&root_face=1/16in", "root face, depth, backing"),
        ("joint=corner&corner=closed&leg=1/8in&plate=10ga", "leg"),
    ],
)
def test_what_the_joint_does_not_ask_is_left_aside_aloud(text: str, said: str) -> None:
    notes = [told(n) for n in answer("dial-in", text).notes if "Not used" in told(n)]
    assert notes == [f"Not used on this joint: {said}."]


@pytest.mark.parametrize("joint", JOINTS)
def test_what_the_joint_asks_is_not_left_aside(joint: str) -> None:
    assert not [n for n in answer("dial-in", f"joint={joint}").notes if "Not used" in told(n)]


def test_a_root_is_open_where_nothing_lies_under_its_gap() -> None:
    def open_root(text: str) -> bool:
        return read_query(text).job.open_root

    assert open_root("joint=square")
    assert open_root("joint=v&gap=1/8in")
    assert not open_root("joint=v&gap=0")
    assert not open_root("joint=square&backing=copper")
    assert not open_root("joint=tee&gap=1/16in")
    assert not open_root("joint=plug")
