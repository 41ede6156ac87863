"""The catalogs in English, a module a room of the core."""
