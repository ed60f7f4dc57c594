"""Read very many made lists, and print those that something is wrong with; see ``tests/made_lists/many.py``."""

from __future__ import annotations

import argparse
import sys
import time
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parents[1]))

from made_lists.many import failures


def main() -> None:
    """Read them in portions, so that a run that is stopped tells how far it came."""
    asked = argparse.ArgumentParser(description=__doc__)
    asked.add_argument("--count", type=int, default=1_000_000)
    asked.add_argument("--seed", type=int, default=1)
    asked.add_argument("--portion", type=int, default=5_000)
    chosen = asked.parse_args()
    found = 0
    for portion in range(-(-chosen.count // chosen.portion)):
        for wrong, text in failures(chosen.portion, chosen.seed * 1_000_000 + portion):
            found += 1
            print(f"--- {wrong}\n{text}\n")
        print(f"{(portion + 1) * chosen.portion} lists, {found} wrong, {time.process_time():.0f} s", flush=True)


if __name__ == "__main__":
    main()
