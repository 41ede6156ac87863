"""The keys of each page in groups, as its form shows them: for the form and the terminal's help."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from types import MappingProxyType

from beadwright.pages import Page


@dataclass(frozen=True, slots=True)
class KeyGroup:
    """Keys that belong together.

    Attributes:
        id: Its id.
        title: What they are about.
        keys: The keys, in their order.
    """

    id: str
    title: str
    keys: tuple[str, ...]


def _groups(*rows: tuple[str, str, str]) -> tuple[KeyGroup, ...]:
    return tuple(KeyGroup(id, title, tuple(keys.split())) for id, title, keys in rows)


_JOINT = ("joint corner plate plate2 skew leg leg2 gap angle root_face depth depth2 backing back "
          "gouge_depth hole slot_length")  # fmt: skip
_JOB = f"{_JOINT} position weld_length welds"

_OWN: Mapping[str, tuple[KeyGroup, ...]] = MappingProxyType({
    "dial-in": _groups(
        ("first", "Joint, plate, wire, gas", "joint plate leg position wire dia gas"),
        ("joint", "More of the joint", "corner plate2 skew leg2 angle root_face gap depth depth2 "
                                       "backing back gouge_depth hole slot_length reinforcement"),
        ("wire", "Transfer, gas nozzle", "transfer nozzle"),
        ("hand", "By hand: blank means auto", "wfs volts travel ctwd"),
        ("torch", "Gun, machine, job", "travel_by machine_amps machine_volts weld_length pitch "
                                         "welds"),
        ("source", "Plate and circuit, as on Shop", "rated_amps duty breaker supply phase"),
        ("aim", "Set it for", "aim own"),
        ("procedure", "Written procedure: volts × amps ÷ travel speed", "heat_min heat_max"),
        ("show", "Show in", "units"),
    ),
    "passes": _groups(
        ("count", "How many", "passes bead"),
        ("hand", "Feed, volts, travel speed by hand", "wfs volts travel ctwd"),
        ("parts", "Root and cap by hand", "root_transfer root_wfs root_volts cap_wfs cap_volts"),
        ("limits", "Written procedure, machine", "heat_min heat_max machine_amps machine_volts"),
        ("job", "The joint, wire, gas", f"{_JOINT} reinforcement position wire dia gas transfer "
                                        "travel_by weld_length aim units"),
    ),
    "heat": _groups(
        ("steel", "Steel", "steel melt"),
        ("certificate", "Mill certificate", "c mn si cr mo v ni cu b nb"),
        ("weld", "Code, temperature, hydrogen, heat", "preheat_code preheat hydrogen heat"),
        ("part", "The part, for distortion", "weld_length part_length part_width part_height "
                 "part_sides part_share part_area part_inertia part_offset"),
        ("job", "The job", f"{_JOINT} position wire dia gas transfer travel_by units"),
    ),
    "strength": _groups(
        ("load", "Load", "py px pz load_x load_y load_z mz mx my line_load"),
        ("weld", "Weld", "group group_width group_height weld_sides held leg far_leg leg2 gap "
                         "weld_length pitch plugs part_length segment weld_ends"),
        ("plates", "Joint, plates, steel, wire",
         "joint corner plate plate2 plate_width plate2_width skew angle root_face depth depth2 "
         "backing back gouge_depth hole slot_length steel steel2 position wire filler_strength"),
        ("code", "Code and method", "design_code analysis cross_increase units"),
    ),
    "inspect": _groups(
        ("sizes", "Measured: the size", "leg_found leg2_found throat_found convexity concavity "
         "face short_length length_found gap_found read_by"),
        ("flaws", "Seen: cracks, undercut, pores", "cracks unfused undercut undercut_length "
         "overlap pore pores_inch pores_foot pore_count crater"),
        ("judged", "Judged by", "accept across"),
        ("used", "Settings it was welded with", "wfs volts travel ctwd passes flow wind"),
        ("trouble", "Trouble", "trouble"),
        ("job", "The job", f"{_JOINT} position weld_length wire dia gas transfer travel_by units"),
    ),
    "cost": _groups(
        ("ask", "First", "wire_price b_wire_price leg weld_length welds volume_by parts shop_rate "
                         "spatter b_spatter b_change_over compared"),
        ("job", "The job", _JOB),
        ("volume", "Other counts, batches, payback",
         "parts_month parts_week arc_hours weld_metal wire_month batch months"),
        ("way-A", "Way A: wire, gas, settings",
         "name wire dia gas transfer travel_by wfs volts travel"),
        ("bought-A", "Way A: spools, gas, tips, rework",
         "spool_price spool waste gas_price cylinder_price cylinder_gas tip_price tip_life rework "
         "yearly"),
        ("minutes-A", "Way A: non-arc minutes",
         "fit_up reposition clean other spool_change swap factor"),
        ("cell-A", "Way A: cell, robot or track",
         "rate load stations clean_stop clean_every tip_change"),
        ("measured-A", "Way A: what you measured", "arc_min laid efficiency gas_flow"),
        ("once-B", "Way B: change-over, piece by piece",
         "b_rolls b_liner b_tips b_gas_change b_regulator b_trial b_procedure b_training b_stock "
         "b_equipment b_programming"),
        ("rates", "Rates of the shop", "labour overhead energy_price machine_efficiency idle "
                                       "nozzle_price nozzle_life gas_extra grind"),
        ("hours", "Hours of the shop", "welders shift shifts weeks"),
        ("sure", "How far each may be off", "swing_rates swing_prices swing_feed swing_minutes "
         "swing_volume swing_once swing_size seed currency units"),
    ),
    "supplies": _groups(
        ("need", "How many", "count volume_by parts parts_month parts_week arc_hours weld_metal "
                             "wire_month weeks on_hand"),
        ("job", "The job", f"{_JOB} wire dia gas units"),
        ("wire", "Wire", "spool waste rework efficiency arc_min laid"),
        ("gas", "Gas", "cylinder cylinder_gas gas_flow gas_extra gas_price cylinder_price"),
        ("prices", "Prices, tips, nozzles",
         "wire_price tip_price tip_life nozzle_price nozzle_life currency"),
        ("spool", "What is left on this spool",
         "spool_gross spool_empty spool_outside spool_hub spool_width spool_full"),
        ("cylinder", "How long this cylinder lasts", "gauge bottle water gas_temp co2_mass"),
    ),
    "list": _groups(
        ("lines", "Type or paste the list", "lines part"),
        ("all", "Wire and gas for all of them", "wire dia gas travel_by units"),
        ("quote", "Margin, set-up", "margin set_up batch currency"),
        ("rates", "Prices and rates",
         "shop_rate labour overhead wire_price gas_price spool"),
        ("minutes", "Non-arc minutes",
         "fit_up reposition clean spatter spool_change factor"),
    ),
    "coupons": _groups(
        ("who", "Who, on what", "machine welder coupon"),
        ("readings", "Timed, read, gauged, weighed",
         "marked arc_time meter_amps meter_volts arc_volts leg_seen leg2_seen face convexity "
         "throat_seen penetration_seen weight_before weight_after burst_length burst_time "
         "flow_seen clean_time count_odd"),
        ("job", "The joint", f"{_JOINT} position passes wire dia gas transfer travel_by units"),
        ("set", "Set on the machine", "wfs volts travel ctwd"),
        ("stack", "The stack", "stack"),
    ),
    "card": _groups(
        ("says", "What the card says", "piece weld_mark revision card_date written_by card_note"),
        ("proof", "The coupon that proves it", "proved_mark proved_by proved_on"),
        ("paper", "Paper and code", "paper code_names"),
        ("judged", "Steel and limits", "steel preheat_code accept across"),
    ),
    "shop": _groups(
        ("machine", "Machine", "machine_amps machine_volts rated_amps duty plate_amps "
                               "machine_efficiency"),
        ("circuit", "Circuit",
         "supply phase power_factor breaker cord cord_length generator"),
        ("leads", "Welding leads", "cable cable_length"),
        ("atjob", "At this job", "amps arc_share"),
        ("usual", "Usual wire, gas, units", "units"),
    ),
})  # fmt: skip
"""Groups by page. A key in none of them follows in a group of the rest."""


def key_groups(page: Page) -> tuple[KeyGroup, ...]:
    """Return the keys of a page in groups; each key in one, those in no table last.

    Args:
        page: The page [-].
    """
    known, told, named = page.fields, set[str](), list[KeyGroup]()
    for each in _OWN.get(page.name, ()):
        keys = tuple(key for key in each.keys if key in known and key not in told)
        named.append(KeyGroup(each.id, each.title, keys))
        told.update(keys)
    rest = tuple(key for key in known if key not in told)
    return (*named, *([KeyGroup("rest", "The job and the rest", rest)] if rest else []))
