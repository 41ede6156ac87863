"""Printed volts and currents behind the lines of ``arc``, by wire, gas and mode.

Source: condition tables of three power-source manuals (found), Machinery's Handbook, 31st ed.,
p. 1583, Table 5 (found), data sheet for class E70C-6M (found), a technician's setting points (found
second-hand), procedure handbook and trade-school schedules (from memory). A printed range of volts
gives two points, its ends; rows that name 1.0 mm wire at an end of their range of sizes count for
0.040 in too. Where a source names several gases, the points are under one of them.
"""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

from beadwright.process.wire_kinds import Kind

Settings = tuple[tuple[float, float], ...]

VOLTS_POINTS: Mapping[tuple[Kind, str, str, str], Settings] = MappingProxyType(
    {
        ("flux-cored", "0.035in", "75/25", "spray"): ((150, 26), (250, 32)),
        ("flux-cored", "0.035in", "CO2", "spray"): ((150, 26), (250, 32)),
        ("flux-cored", "0.045in", "75/25", "spray"): ((150, 24), (250, 28)),
        ("flux-cored", "0.045in", "CO2", "spray"): ((150, 24), (250, 28)),
        ("flux-cored", "0.052in", "75/25", "spray"): ((200, 24), (350, 28)),
        ("flux-cored", "0.052in", "CO2", "spray"): ((200, 24), (350, 28)),
        ("flux-cored", "1/16in", "75/25", "spray"): ((225, 25), (375, 30)),
        ("flux-cored", "1/16in", "CO2", "spray"): ((225, 25), (375, 30)),
        ("metal-cored", "0.045in", "90/10", "short"): ((90, 15), (120, 16), (150, 17)),
        ("metal-cored", "0.045in", "90/10", "spray"): ((180, 28), (180, 30), (275, 31), (275, 34),
            (340, 35), (340, 38)),
        ("metal-cored", "1/16in", "90/10", "short"): ((145, 15), (160, 16), (170, 18)),
        ("metal-cored", "1/16in", "90/10", "spray"): ((235, 25), (235, 26), (325, 29), (325, 32),
            (400, 34), (400, 37), (460, 36), (460, 38)),
        ("solid", "0.023in", "75/25", "globular"): ((110, 21), (150, 21)),
        ("solid", "0.023in", "75/25", "short"): ((30, 15), (80, 18)),
        ("solid", "0.030in", "75/25", "globular"): ((200, 23),),
        ("solid", "0.030in", "75/25", "short"): ((30, 15), (40, 15), (50, 17), (60, 17), (100, 18),
            (150, 20)),
        ("solid", "0.030in", "CO2", "short"): ((30, 15), (35, 17), (40, 15), (50, 17), (60, 17)),
        ("solid", "0.035in", "75/25", "globular"): ((215, 22), (225, 25)),
        ("solid", "0.035in", "75/25", "short"): ((50, 18), (55, 15), (70, 16), (80, 17), (85, 17),
            (100, 17), (100, 18), (100, 19), (110, 20), (120, 19), (130, 20), (140, 19), (150, 18),
            (160, 22)),
        ("solid", "0.035in", "85/15", "short"): ((140, 17),),
        ("solid", "0.035in", "85/15", "spray"): ((280, 29.5),),
        ("solid", "0.035in", "90/10", "spray"): ((195, 23), (200, 24), (230, 29), (275, 30)),
        ("solid", "0.035in", "CO2", "short"): ((55, 15), (70, 16), (80, 17), (80, 18), (85, 17),
            (100, 18), (100, 19), (110, 20), (120, 19), (130, 20), (140, 19), (160, 20), (160, 22),
            (175, 21), (175, 22), (185, 22)),
        ("solid", "0.040in", "80/20", "short"): ((50, 13), (55, 15), (60, 14), (70, 16), (100, 16),
            (110, 17), (115, 19.5), (125, 20), (150, 17), (160, 18)),
        ("solid", "0.040in", "CO2", "open"): ((160, 22),),
        ("solid", "0.040in", "CO2", "short"): ((70, 18), (80, 18), (100, 18), (100, 19), (120, 19),
            (130, 19), (130, 20), (140, 21)),
        ("solid", "0.045in", "75/25", "short"): ((180, 20), (200, 24), (205, 24), (225, 24)),
        ("solid", "0.045in", "80/20", "short"): ((30, 15), (40, 15), (50, 13), (55, 15), (60, 14),
            (60, 15), (70, 16), (70, 17), (80, 18), (85, 19), (90, 19), (100, 16), (100, 18),
            (110, 17), (110, 19.5), (115, 19.5), (120, 16), (120, 17), (120, 18), (125, 20),
            (130, 19.5), (140, 17), (140, 19), (140, 21), (150, 17), (150, 18), (160, 18),
            (170, 21)),
        ("solid", "0.045in", "85/15", "short"): ((190, 18),),
        ("solid", "0.045in", "85/15", "spray"): ((380, 30.5),),
        ("solid", "0.045in", "90/10", "spray"): ((285, 27), (300, 28), (335, 30), (340, 30)),
        ("solid", "0.045in", "CO2", "globular"): ((280, 26),),
        ("solid", "0.045in", "CO2", "open"): ((160, 22), (170, 22), (190, 22), (200, 23), (200, 24),
            (230, 24), (250, 26), (280, 29), (300, 32), (320, 33), (340, 34), (350, 34), (350, 35),
            (350, 36), (380, 36), (400, 36), (420, 39), (450, 42)),
        ("solid", "0.045in", "CO2", "short"): ((70, 18), (80, 18), (90, 18), (100, 18), (100, 19),
            (120, 19), (120, 20), (130, 19), (130, 20), (140, 21), (145, 19), (150, 21), (165, 20),
            (170, 21), (180, 20), (200, 21), (200, 24), (205, 24), (210, 22), (225, 24)),
        ("solid", "0.052in", "85/15", "spray"): ((370, 31.5),),
        ("solid", "0.052in", "90/10", "spray"): ((300, 30), (320, 29), (430, 32)),
        ("solid", "1/16in", "85/15", "spray"): ((410, 31.5),),
        ("solid", "1/16in", "90/10", "spray"): ((325, 25), (350, 27), (430, 28)),
        ("solid", "1/16in", "98/2 O2", "spray"): ((300, 24), (350, 25), (375, 25)),
        ("solid", "1/16in", "CO2", "globular"): ((380, 28), (425, 31)),
    }
)  # fmt: skip
"""Current [A] and volts [V] by kind, size, gas and printed mode: short, globular, spray, open."""
