"""Steels and what heat does to them and to the part: preheat, cooling, hardness, distortion."""
