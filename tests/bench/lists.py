"""How lists are read that are made from open name data, shape by shape; see ``tests/made_lists``.

``--shapes`` chooses which were thought of when, ``--places`` whose names stand in them; ``--show SHAPE`` prints lists
that were read wrong. ``--unknown`` lets the reader know no name that only places kept apart have (and the census not).
"""

from __future__ import annotations

import argparse
import random
import sys
import time
from collections import Counter
from collections.abc import Mapping, Sequence
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parents[1]))

from known_names import gathered

from made_lists.judging import WRONG, Tally, judge
from made_lists.people import FURTHER, HELD, INVENTED, TUNED, people
from made_lists.registry import Shape
from made_lists.sets import SETS
from namewright.roster import known

PLACES = {"tuned": TUNED, "held": HELD, "further": FURTHER, "invented": (INVENTED,)}
COLUMNS = ("children", "right", *WRONG)


def tallies(shapes: Mapping[str, Shape], places: Sequence[str], each: int, seed: int) -> dict[str, Tally]:
    """Read ``each`` lists of every shape, of 4 to 24 children of one place; return what was found by shape."""
    found = {}
    for name, shape in shapes.items():
        tally = found[name] = Tally()
        for at in range(each):
            rng = random.Random(f"{seed} {name} {at}")
            made = shape(rng, people(rng, places[(at + seed) % len(places)], rng.randrange(4, 25)))
            tally.add(judge(made), made)
    return found


def table(found: Mapping[str, Tally]) -> str:
    """Return the counts by shape, and those of all shapes together."""
    whole = Tally()
    rows = [f"{'shape':32}" + "".join(f"{column:>9}" for column in COLUMNS)]
    for name, tally in found.items():
        whole.counts.update(tally.counts)
        rows.append(_row(name, tally))
    return "\n".join((*rows, _row("all", whole)))


def _row(name: str, tally: Tally) -> str:
    count = tally.counts
    right = f"{100 * count['right'] / max(1, count['children']):8.1f}%"
    return f"{name:32}{count['children']:9}{right}" + "".join(f"{count[key] or '.':>9}" for key in WRONG)


def _print_share(name: str, counts: Counter[str]) -> None:
    """Print how many are right, of those that need no answer about the whole list, and questions by child."""
    least = max(1, counts["children"])
    print(f"{name}: right {100 * counts['right'] / max(1, least - counts['waiting']):.1f} %, "
          f"questions {100 * (counts['asked'] + counts['question']) / least:.1f} %")


def main() -> None:
    """Print the table."""
    asked = argparse.ArgumentParser(description=__doc__)
    asked.add_argument("--shapes", choices=SETS, default="tuned")
    asked.add_argument("--places", choices=PLACES, default="tuned")
    asked.add_argument("--each", type=int, default=40)
    asked.add_argument("--seed", type=int, default=1)
    asked.add_argument("--show", default="")
    asked.add_argument("--only", default="")
    asked.add_argument("--unknown", action="store_true")
    chosen = asked.parse_args()
    if chosen.unknown:
        found_names = {part: frozenset(words) for part, words in gathered(TUNED).items()}
        known._on = lambda part, word: word in found_names[part]
    of = SETS[chosen.shapes]
    shapes = {name: shape for name, shape in of.SHAPES.items() if chosen.only in name and chosen.show in name}
    start = time.process_time()
    found = tallies(shapes, PLACES[chosen.places], chosen.each, chosen.seed)
    if chosen.show:
        for tally in found.values():
            for wrong, made in tally.examples[:6]:
                print(f"--- {wrong}\n{made.text}\n")
    print(table(found))
    for name, some in (("clean", of.CLEAN), ("with a header", of.HEADED), ("without one", of.HEADLESS)):
        counts = sum((found[shape].counts for shape in found if shape in some), Counter[str]())
        _print_share(name, counts)
    _print_share("all", sum((tally.counts for tally in found.values()), Counter[str]()))
    print(f"{time.process_time() - start:.1f} s")


if __name__ == "__main__":
    main()
