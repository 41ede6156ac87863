"""Supplies: wire and gas to buy, and what is left of them."""
