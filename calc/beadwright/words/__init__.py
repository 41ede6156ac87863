"""The words for what the core says: catalogs of phrases and how they are written out."""
