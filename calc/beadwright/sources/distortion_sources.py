"""Documents behind shrinkage, camber and angular change."""

from __future__ import annotations

from beadwright.sources.source import Row

ROWS: tuple[Row, ...] = (
    ("spraragen-ettinger", "Spraragen and Ettinger, Welding Journal 1950",
     "transverse shrinkage of butts, 0.2·Aw/t + 0.05·d", "from memory"),
    ("blodgett-across", "Blodgett, Design of Welded Structures; quoted in a method statement",
     "transverse shrinkage of butts, 0.10·Aw/t", "found second-hand"),
    ("blodgett-camber", "Blodgett, Design of Weldments", "camber, 0.005·Aw·d·L²/I", "from memory"),
    ("blodgett-angular", "Blodgett, Design of Weldments",
     "angular change of fillets, 0.02·W·ω^1.3/t², inches", "from memory"),
    ("aws-handbook-distortion", "AWS Welding Handbook, residual stresses and distortion",
     "transverse shrinkage of fillets, C·leg/thickness", "from memory"),
    ("shrinkage-allowance", "A welding institute's rule of thumb for shrinkage",
     "0.8 mm across a fillet, 1.5-3 mm across a 60° V; 0.8 and 3 mm along in 3 m", "found"),
    ("guyot", "Guyot 1947, in Masubuchi, Analysis of Welded Structures",
     "longitudinal shrinkage, 0.025·Aw/Ap", "from memory"),
    ("king", "King 1944, in the AWS Welding Handbook",
     "longitudinal shrinkage of butts, 0.12·I·L/(100 000·t), inches", "from memory"),
    ("tendon", "White, Leggatt and Dwight, tendon force of a weld in carbon steel",
     "0.2 kN per J/mm of net heat", "from memory"),
)  # fmt: skip
"""Id, document, place, how the value was obtained."""
