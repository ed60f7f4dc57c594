"""A collection of shapes of list, and what is known of each of them."""

from __future__ import annotations

import random
from collections.abc import Callable, Sequence
from dataclasses import dataclass, field

from made_lists.judging import Made
from made_lists.people import Person

Shape = Callable[[random.Random, Sequence[Person]], Made]


@dataclass(frozen=True, slots=True)
class Registry:
    """Shapes by the name of their function; which are clean, have a header, or are tables without one."""

    shapes: dict[str, Shape] = field(default_factory=dict)
    clean: set[str] = field(default_factory=set)
    headed: set[str] = field(default_factory=set)
    headless: set[str] = field(default_factory=set)

    def shape(self, *sets: set[str]) -> Callable[[Shape], Shape]:
        """Register a shape, and in some sets of shapes."""
        def kept(made: Shape) -> Shape:
            name = made.__name__.strip("_")
            self.shapes[name] = made
            for each in sets:
                each.add(name)
            return made
        return kept
