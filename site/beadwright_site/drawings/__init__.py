"""Pictures to scale: pure arithmetic places everything, a template writes it down as SVG."""
