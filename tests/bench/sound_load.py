"""What the ear takes of one core at 48 kHz, in Node.

    .venv/bin/python tests/bench/sound_load.py

Meant to stay under a tenth. A minute of shop noise with an arc in it is fed as the phone feeds it.
"""

import json
import shutil
import subprocess
import tempfile
from pathlib import Path

import numpy as np

from tests.site.made_sound import RATE, Shop

ROOT = Path(__file__).parents[2]
SOUND = ROOT / "site" / "beadwright_site" / "static" / "js" / "sound"
FULL_RATE = 48_000
AIM = 0.10


def main() -> None:
    """Print the share of one core."""
    shop = Shop(60, seed=8)
    shop.grinder(5.0, 8.0)
    shop.short_arc(20.0, 30.0, 90)
    full = np.repeat(np.clip(shop.sound, -1, 1), FULL_RATE // RATE).astype("<f4")
    with tempfile.TemporaryDirectory() as name:
        folder = Path(name)
        shutil.copytree(SOUND, folder / "sound")
        (folder / "package.json").write_text('{"type": "module"}')
        done = subprocess.run(
            ["node", str(ROOT / "tests/site/hear.mjs"), str(folder / "sound"), str(FULL_RATE)],
            input=full.tobytes(), capture_output=True, check=True,
        )  # fmt: skip
    load = json.loads(done.stdout)["load"]
    print(f"{load:.1%} of one core at 48 kHz (aim: under {AIM:.0%})")


if __name__ == "__main__":
    main()
