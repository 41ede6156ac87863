"""Coupons: what a shop's own test welds say of its wire, machine and hand."""
