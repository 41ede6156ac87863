"""Strength: the leg a load asks for, and the weakest link."""
