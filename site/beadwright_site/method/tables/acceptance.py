"""Tables of acceptance: AWS D1.1 and ISO 5817 limit by limit; which cause makes which trouble."""

from __future__ import annotations

from math import inf

from beadwright import units
from beadwright.inspection import aws_limits, iso_limits
from beadwright.inspection.causes import CAUSES
from beadwright.inspection.trouble import SYMPTOMS, WEIGHTS
from beadwright.joint.groove_rules import REINFORCEMENT_M
from beadwright.sources import SOURCES
from beadwright.words.wording import worded
from beadwright_site.method.equations import Table, number


def _inch(length_m: float) -> str:
    return units.written(length_m, "length", "us")


def aws_table() -> Table:
    """Return the limits of AWS D1.1:2020."""
    undersize = "; ".join(
        f"from {_inch(size) if size else '0'}: {_inch(less)}"
        for size, less in reversed(aws_limits.UNDERSIZE_M)
    )
    crown = "; ".join(
        f"{_inch(most)} {'over' if limit == inf else 'to ' + _inch(limit)}"
        for limit, most in REINFORCEMENT_M
    )
    deep = _inch(aws_limits.DEEP_LENGTH_M)
    cut = [_inch(aws_limits.undercut_allowed(t, n, cyclic=c, across=a))
           for t, n, c, a in ((0.01, None, False, False), (0.01, 0.0, False, False),
                              (0.03, None, False, False), (0.01, None, True, True),
                              (0.01, None, True, False))]  # fmt: skip
    heavy, counted = _inch(aws_limits.HEAVY_M), _inch(aws_limits.COUNTED_PORE_M)
    rows = (
        ("cracks, metal not fused", "none", "aws-d1.1-8.1"),
        ("crater", "filled to the size asked for", "aws-d1.1-8.1"),
        (f"leg may lack, over {aws_limits.UNDERSIZE_SHARE:.0%} of the length", undersize,
         "aws-d1.1-8.1"),
        (f"undercut, steady load, plate under {heavy}",
         f"{cut[0]}; {cut[1]} over {deep} in any 12 in", "aws-d1.1-8.1"),
        (f"undercut, steady load, from {heavy}", cut[2], "aws-d1.1-8.1"),
        ("undercut, load that comes and goes", f"{cut[3]} across the pull, else {cut[4]}",
         "aws-d1.1-8.1"),
        (f"pores from {counted}, steady load, added up",
         f"{_inch(aws_limits.PORES_INCH_M)} in an inch, {_inch(aws_limits.PORES_FOOT_M)} in 12; "
         "none in a butt across the pull", "aws-d1.1-8.1"),
        ("pores, load that comes and goes", _inch(aws_limits.CYCLIC_PORE_M),
         "aws-d1.1-8.1-cyclic"),
        ("pores in 4 in, load that comes and goes", f"{aws_limits.CYCLIC_PORES}",
         "aws-d1.1-8.1-frequency"),
        ("overlap", "none", "aws-d1.1-7.23"),
        ("crown of a fillet, face under 1 in", "1/16 in to 5/16 in wide; 1/8 in over",
         "aws-d1.1-convexity"),
        ("crown of a fillet, face from 1 in", "3/16 in", "aws-d1.1-convexity-wide"),
        ("crown of a groove, by the plate; no underfill", crown, "aws-d1.1-7.9"),
        ("root opening of a fillet", _inch(aws_limits.WIDEST_GAP_M), "aws-d1.1-gap"),
        ("length", "no less than asked for", "aws-d1.1-7.12"),
    )  # fmt: skip
    told = tuple((name, limit, f"{SOURCES[key].place}: {SOURCES[key].told}")
                 for name, limit, key in rows)  # fmt: skip
    return Table(
        "accept-aws",
        "AWS D1.1:2020",
        ("", "limit", "how come by"),
        told,
        tuple(dict.fromkeys((*(key for _, _, key in rows), "aws-d1.1-7.25"))),
        covers=(
            *(f"aws_limits.{name}"
              for name in ("UNDERSIZE_M", "UNDERSIZE_SHARE", "HEAVY_M", "DEEP_LENGTH_M",
                           "COUNTED_PORE_M", "PORES_INCH_M", "PORES_FOOT_M", "CYCLIC_PORE_M",
                           "CYCLIC_PORES", "WIDEST_GAP_M", "undersize_allowed",
                           "undercut_allowed")),
            "groove_rules.REINFORCEMENT_M", "groove_rules.reinforcement_allowed",
            "fillets.WIDE_FACE_M", "fillets.is_wide_face", "fillets.convexity_source",
        ),
    )  # fmt: skip


_ISO = (
    ("5011 undercut, over 3 mm", "UNDERCUT", "t", "iso-5817-form"),
    ("5011 undercut, to 3 mm, short", "THIN_UNDERCUT", "t", "iso-5817-memory"),
    ("503 crown of a fillet", "CONVEXITY", "b", "iso-5817-form"),
    ("502 crown of a butt", "EXCESS_WELD", "b", "iso-5817-form"),
    ("506 overlap", "OVERLAP", "b", "iso-5817-memory"),
    ("5213 throat short, over 3 mm, short", "THROAT_SHORT", "a", "iso-5817-throat"),
    ("5213 throat short, to 3 mm, short", "THIN_THROAT_SHORT", "a", "iso-5817-memory"),
    ("5214 throat over", "THROAT_OVER", "a", "iso-5817-throat"),
    ("512 difference of the legs", "ASYMMETRY", "a", "iso-5817-throat"),
    ("2017 largest pore, over 3 mm", "PORE", "a", "iso-5817-surface"),
    ("2017 largest pore, to 3 mm", "THIN_PORE", "a", "iso-5817-surface"),
    ("2025 crater, over 3 mm", "CRATER", "t", "iso-5817-surface"),
    ("2025 crater, to 3 mm", "THIN_CRATER", "t", "iso-5817-surface"),
    ("617 root opening of a fillet, over 3 mm", "FILLET_GAP", "a", "iso-5817-throat"),
    ("617 root opening of a fillet, to 3 mm", "THIN_FILLET_GAP", "a", "iso-5817-memory"),
    ("511 underfill, over 3 mm, short", "UNDERFILL", "t", "iso-5817-memory"),
    ("511 underfill, to 3 mm, short", "THIN_UNDERFILL", "t", "iso-5817-memory"),
)


def _rule(rule: tuple[float, float, float], of: str) -> str:
    constant, share, most = rule
    if constant == inf:
        return "no limit"
    parts = [number(constant)] if constant else []
    parts += [f"{number(share)} {of}"] if share else []
    if not parts:
        return "none"
    return " + ".join(parts) + ("" if most == inf else f", most {number(most)}")


def iso_table() -> Table:
    """Return the limits of ISO 5817:2014."""
    rows: list[tuple[str, ...]] = [("100, 104, 401 cracks, metal not fused",
                                    *["none"] * 3, "found second-hand")]  # fmt: skip
    for name, rule, of, key in _ISO:
        held = getattr(iso_limits, rule)
        levels = (_rule(held[level], of) for level in "BCD")
        rows.append((name, *levels, SOURCES[key].told))
    return Table(
        "accept-iso",
        "ISO 5817:2014, mm",
        ("", "B", "C", "D", "how come by"),
        tuple(rows),
        ("iso-5817-surface", "iso-5817-form", "iso-5817-throat", "iso-5817-memory"),
        f"Short: to {iso_limits.SHORT_M * 1000:.0f} mm in any {iso_limits.SHORT_OF_M * 1000:.0f} "
        f"mm of weld, {iso_limits.SHORT_SHARE:.0%} of a shorter one, not checked against the book. "
        "No limit for "
        "5214 in D: not checked against the book.",
        (*(f"iso_limits.{rule}" for _, rule, _, _ in _ISO), "iso_limits.THIN_M",
         "iso_limits.SHORT_M", "iso_limits.SHORT_OF_M", "iso_limits.SHORT_SHARE",
         "iso_limits.short_length"),
    )  # fmt: skip


def weights_table() -> Table:
    """Return how readily each cause makes each trouble."""
    rows = tuple(
        (
            worded(SYMPTOMS[symptom], "us").capitalize(),
            "; ".join(f"{worded(CAUSES[key].phrase, 'us')} {weight:g}"
                      for key, weight in causes.items()),
        )
        for symptom, causes in WEIGHTS.items()
    )  # fmt: skip
    return Table(
        "cause-weights",
        "How readily each cause makes a trouble",
        ("", "cause, weight"),
        rows,
        ("practice",),
        covers=("trouble.WEIGHTS",),
    )
