"""Weld list: all welds of a part together, in what order, for what price."""
