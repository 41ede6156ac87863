"""Tables of settings by thickness and position, one for each wire, size and gas."""
