"""Ids of notes of Dial in that other rooms ask for."""

from __future__ import annotations

WRONG_GAS = "setting.wrong-gas"
LAPS_COLD = "setting.downhill-laps-cold"
NOT_THIS_WIRE = "setting.not-this-wire"
MAY_NOT_FUSE = "setting.short-may-not-fuse"
