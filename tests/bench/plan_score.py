"""How close Dial in comes to whole published rows, by group.

.venv/bin/python tests/bench/plan_score.py [--rows]
"""

import argparse

from beadwright.setting.procedure_score import Held, held_rows, scores


def _line(held: Held) -> str:
    row, setup = held.row, held.table.setup
    amps = "shut" if held.amps is None else f"{held.amps:.0f} A"
    volts = "" if held.volts is None else f"{held.volts:.1f} V"
    mark = ("at the point" if held.near else "inside" if held.inside else "OUT").ljust(13)
    return (
        f"{mark}{held.table.name:<18}{setup.wire:<9}{row.size:<8}{setup.position:<7}"
        f"{row.thickness_mm or 0:>5} mm  leg {row.leg_mm or 0:>5}  {held.transfer:<9}"
        f"{amps:>7} {volts:>7}  printed {row.amps_low:g}-{row.amps_high:g} A "
        f"{row.volts_low}-{row.volts_high} V"
    )


def main() -> None:
    """Print the score."""
    parser = argparse.ArgumentParser(description="The plan against published rows.")
    parser.add_argument("--rows", action="store_true", help="every row too")
    if parser.parse_args().rows:
        for held in held_rows():
            print(_line(held))
    print(f"{'group':<22}{'rows':>5}{'inside':>9}{'at point':>10}{'amps':>8}{'volts':>8}")
    for group, score in scores().items():
        volts = "" if score.volts_off is None else f"{score.volts_off:+.1f}"
        print(
            f"{group:<22}{score.rows:>5}{score.inside:>9.0%}{score.near:>10.0%}"
            f"{score.amps_off:>+8.0%}{volts:>8}"
        )


if __name__ == "__main__":
    main()
