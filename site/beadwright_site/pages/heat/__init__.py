"""Heat: preheat, cooling, hardness, and how the weld pulls its part."""
