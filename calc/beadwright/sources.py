"""Where every number comes from: ids, documents, and how each was come by."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from types import MappingProxyType
from typing import Literal

from beadwright.errors import UnknownEntryError

How = Literal["found", "found second-hand", "from memory", "derived", "common practice"]


@dataclass(frozen=True, slots=True)
class Source:
    """A document or a body of practice.

    Attributes:
        key: Id used beside numbers.
        document: Document and edition.
        place: Table, clause or page.
        how: How the value was come by.
    """

    key: str
    document: str
    place: str
    how: How


def _sources(*rows: tuple[str, str, str, How]) -> Mapping[str, Source]:
    return MappingProxyType({row[0]: Source(*row) for row in rows})


SOURCES: Mapping[str, Source] = _sources(
    ("power-balance", "Power balance at the wire tip, fitted here to published points",
     "Method page, burn-off", "derived"),
    ("machinery-31-t5", "Machinery's Handbook, 31st ed.", "p. 1583, Table 5", "found"),
    ("feeder-table-4-3", "Wire-feeder manual, deposition at 200 A", "Table 4-3", "found"),
    ("power-source-rule", "Power-source manual, thumb rules for wire feed and current",
     "settings page", "found"),
    ("power-source-conditions", "Power-source manuals, MAG and CO2 welding conditions",
     "appendix and condition tables", "found"),
    ("technician-points", "Setting points given by a technician in a welding forum",
     "ER70S-6, 75/25", "found second-hand"),
    ("trade-schedule", "Trade-school schedules (NAVEDTRA 14250A, TC 9-237 family)",
     "gas metal arc settings", "from memory"),
    ("procedure-guide", "Procedure handbook for gas metal arc welding, carbon steel",
     "short-circuit and spray tables", "from memory"),
    ("e70c-sheet", "Data sheet for metal-cored wire of class AWS A5.18 E70C-6M",
     "operating points", "found"),
    ("equipment-sheet", "Equipment specification sheet, current and voltage ranges",
     "short circuit and spray", "found second-hand"),
    ("mig-handbook-1-2", "MIG handbook, least spray current", "Table 1-2", "found"),
    ("supplier-transition", "Gas supplier's handbook, spray transition by gas",
     "carbon steel rows", "from memory"),
    ("mig-handbook-deposition", "MIG handbook, inches of wire per pound", "deposition section",
     "found"),
    ("lecture-efficiency", "Welding lecture sheet, deposition efficiency by transfer", "table",
     "found second-hand"),
    ("gas-flow-handbook", "MIG handbook and magazine article, gas flow", "25-30 and 30-45 ft³/h",
     "found"),
    ("fillet-weights", "Weld-metal weight tables, lb/ft at 0.283 lb/in³", "fillet column",
     "found"),
    ("fillet-reinforced", "Weld-metal weight tables, reinforced fillets", "1.2 × flat", "found"),
    ("mass-balance", "Conservation of mass, steel 7850 kg/m³", "", "derived"),
    ("aisc-j2.4", "AISC 360", "Table J2.4, minimum fillet size", "found"),
    ("aisc-j2.2b", "AISC 360", "J2.2b, fillet at an edge, minimum length", "found"),
    ("aws-d1.1-7.7", "AWS D1.1:2020", "Table 7.7, minimum fillet size", "found second-hand"),
    ("aws-d1.1-5.1", "AWS D1.1:2020", "Table 5.1, largest single-pass fillet",
     "found second-hand"),
    ("aws-d1.1-gap", "AWS D1.1", "7.21.1, gap at fillets", "found second-hand"),
    ("aws-d1.1-convexity", "AWS D1.1", "Table 7.9, convexity", "found second-hand"),
    ("aws-d1.1-short", "AWS D1.1", "short circuit has no prequalified procedures", "from memory"),
    ("aws-d1.1-wind", "AWS D1.1", "wind at gas-shielded welding", "found second-hand"),
    ("aisc-one-pass", "AISC Steel Interchange", "practical one-pass horizontal fillet", "found"),
    ("asme-qw-409", "ASME BPVC Section IX", "QW-409.1(a), heat input", "found second-hand"),
    ("en-1011-1", "EN 1011-1", "8.7 and Table 1, heat input, k = 0.8", "found"),
    ("iec-60974-1", "IEC 60974-1", "11.2, conventional load voltage", "from memory"),
    ("iso-9692-1", "ISO 9692-1", "square butt preparations", "from memory"),
    ("iso-14175", "ISO 14175:2008", "Table 2, groups", "from memory"),
    ("osha-1910.133", "OSHA 29 CFR 1910.133(a)(5)", "filter shade, gas metal arc", "found"),
    ("torch-manual", "Machine manuals, torch angles and tip position", "technique pages", "found"),
    ("cost-chapter", "Welding handbook, chapter on costs, cost of a pound of weld metal",
     "worked examples", "found second-hand"),
    ("operating-factor", "Handbook of Structural Steel Connection Design and Details",
     "p. 231, operating factor", "found"),
    ("navedtra-14251a", "NAVEDTRA 14251A", "chapter 5, shares of welding cost", "found"),
    ("redlich-kwong", "Redlich and Kwong, Chemical Reviews 44 (1949)",
     "pp. 233-244, equation of state", "from memory"),
    ("co2-by-weight", "Gas supplier's conversion table, CO2 at 70 °F", "8.76 ft³/lb", "found"),
    ("cylinder-chart", "Cylinder chart, contents by size class", "330 to 22 ft³", "found"),
    ("awg", "ASTM B258, American Wire Gauge: 0.46 in at 4/0, ratio 92 over 39 steps", "",
     "from memory"),
    ("copper-annealed", "IEC 60028, annealed copper 1/58 Ω·mm²/m at 20 °C, 0.00393/K", "",
     "from memory"),
    ("iec-60228", "IEC 60228", "Table 3, flexible conductors, class 5, plain copper", "found"),
    ("nec-9-8", "NFPA 70 (NEC)", "chapter 9, Table 8, resistance of conductors", "found"),
    ("nec-630", "NFPA 70 (NEC)", "630.11(A) and 630.12, arc welders", "found"),
    ("nec-400.5", "NFPA 70 (NEC)", "Table 400.5(A)(1), flexible cords, three wires carrying",
     "from memory"),
    ("four-volts", "AWS Safety and Health Fact Sheet No. 39", "4 V in the weld cables", "found"),
    ("i2t", "Power-source manuals, duty cycle at another current", "I²·T constant", "found"),
    ("aws-duty", "AWS glossary, duty cycle", "ten-minute period", "found"),
    ("machine-efficiency", "Welding textbook, efficiency of power sources",
     "0.85-0.90 inverter, 0.60-0.70 transformer", "found second-hand"),
    ("invented", "Invented for the demonstration shop", "put in your own", "common practice"),
    ("practice", "Common practice of the trade", "", "common practice"),
    ("yours", "Set by you", "", "common practice"),
)  # fmt: skip
"""Sources by id."""


def source_of(key: str) -> Source:
    """Return a source by its id.

    Args:
        key: A key of ``SOURCES`` [-].

    Raises:
        UnknownEntryError: If there is none.
    """
    found = SOURCES.get(key)
    if found is None:
        raise UnknownEntryError(f"no source {key}")
    return found
