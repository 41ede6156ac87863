"""The words for what the core says: catalogues of phrases and how they are written out."""
