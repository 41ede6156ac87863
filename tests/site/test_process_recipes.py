"""Recipes of DEVELOPERS.md for wire and gas: one entry in a copy, and it is there everywhere."""

import json
from typing import Any

import pytest

from tests.toy_copy import ToyCopy

PROCESS = "calc/beadwright/process"
CHOICES = (
    "import json;"
    "from beadwright_site.forms.gas_options import gas_options;"
    "from beadwright_site.forms.wire_options import wire_choices;"
    "print(json.dumps([[option.value for option in gas_options('')[0]],"
    " [value for value, _, _ in wire_choices()]]))"
)
JOB = "joint=tee&plate=3/8in&leg=1/4in&position=2F&dia=0.045in"


@pytest.fixture(scope="module")
def toy(tmp_path_factory: pytest.TempPathFactory) -> ToyCopy:
    """The sources with a toy gas mix, gas component, material and wire class."""
    copy = ToyCopy(tmp_path_factory.mktemp("toy"))
    copy.add(f"{PROCESS}/gases.py", {"_USUAL = (": '    "88/12",\n'})
    copy.add(
        f"{PROCESS}/gas_components.py",
        {
            'Component("helium",': 'Component("krypton", "Kr", ("kr",), '
            "Substance(209.48, 5.525e6, 0.083798), open_v=10.0),\n"
        },
    )
    copy.add(
        f"{PROCESS}/materials.py",
        {
            "CARBON_STEEL.name: CARBON_STEEL,": '"toy metal": Material("toy metal", 3925.0, '
            "1.3e6, 1e11, 0.2, 6e-3, 0.25e9, (25.0, 1.7), 0.6, 0.0047, "
            '{"ne": "neon harms toy metal"}),\n'
        },
    )
    copy.add(
        f"{PROCESS}/wire_types.py",
        {
            "for wire in (": 'WireType("ERTOY-1", "ISO toy", _A5_18, "solid", _FROM_035, '
            'SMOOTH_ROLL, 0.0, _ARGON, material=MATERIALS["toy metal"]),\n'
        },
    )
    return copy


def answer(toy: ToyCopy, query: str) -> dict[str, Any]:
    """What the terminal prints for Dial in."""
    ran = toy.run("-m", "beadwright", "dial-in", query)
    assert ran.stderr == ""
    found: dict[str, Any] = json.loads(ran.stdout)
    return found


def test_the_forms_offer_a_new_mix_and_a_new_wire(toy: ToyCopy) -> None:
    ran = toy.run("-c", CHOICES)
    gases, wires = json.loads(ran.stdout)
    assert "88/12" in gases
    assert "ERTOY-1" in wires


def test_a_new_mix_is_answered(toy: ToyCopy) -> None:
    assert answer(toy, f"{JOB}&wire=ER70S-6&gas=88/12")["answer"]["gas"] == "88/12"


def test_a_new_component_is_read_and_moves_the_volts(toy: ToyCopy) -> None:
    plain = answer(toy, f"{JOB}&wire=ER70S-6&gas=90/10&wfs=400in/min")
    mixed = answer(toy, f"{JOB}&wire=ER70S-6&gas=80/10/10 Kr&wfs=400in/min")
    assert mixed["answer"]["gas"] == "80/10/10 Kr"
    # A tenth of 10 V for a full share, in steps of 0.1 V; the longer arc takes a little current.
    more = mixed["answer"]["volts"]["value"] - plain["answer"]["volts"]["value"]
    assert more == pytest.approx(1.0, abs=0.15)


def test_a_refused_component_is_told_what_there_is(toy: ToyCopy) -> None:
    errors = answer(toy, f"{JOB}&wire=ER70S-6&gas=90/10 Xe")["errors"]
    assert "is not Ar, CO2, O2, He or Kr" in errors["gas"][0]
    errors = answer(toy, f"{JOB}&wire=ER70S-6&gas=90/10 Ne")["errors"]
    assert errors["gas"] == ["neon harms toy metal"]


def test_a_new_material_counts_by_its_own_density(toy: ToyCopy) -> None:
    """Half of steel's 7850 kg/m³: the same weld has half the mass."""
    steel = answer(toy, f"{JOB}&wire=ER70S-6&gas=90/10")
    light = answer(toy, f"{JOB}&wire=ERTOY-1&gas=90/10")
    assert light["answer"]["wire"]["class"] == "ERTOY-1"
    assert light["answer"]["metal"]["value"] == pytest.approx(
        steel["answer"]["metal"]["value"] / 2, rel=1e-6
    )


def test_a_new_wire_is_refused_in_a_gas_it_is_not_made_for(toy: ToyCopy) -> None:
    notes = answer(toy, f"{JOB}&wire=ERTOY-1&gas=CO2")["notes"]
    assert "ERTOY-1 is made for argon mixtures, not CO2" in " ".join(n["text"] for n in notes)


def test_an_unknown_wire_is_told_the_new_one(toy: ToyCopy) -> None:
    errors = answer(toy, f"{JOB}&wire=ER00S-0&gas=CO2")["errors"]
    assert "ERTOY-1" in errors["wire"][0]
