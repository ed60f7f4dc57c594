"""Invented years of notes, in which letters join one after another."""

from __future__ import annotations

import random
from datetime import date, timedelta

from namewright.pages.growth import Growth, Track
from namewright.settings import Support

BEGIN = date(2026, 9, 7)
NAMES = ("Bo", "Marigold", "Zoë Christopherson", "Ẹ̀bunolúwa"[:6], "Wilhelmina-Christopherson Quill")


def day(count: int) -> date:
    """Return the day so many after the first."""
    return BEGIN + timedelta(days=count)


def growth(name: str, days: list[int], seed: int = 1, *, stages: bool = True, support: bool = True) -> Growth:
    """Return an invented year in which letters join one after another."""
    chance = random.Random(seed)
    name = "".join(char for char in name if char.isalpha())
    joins = [chance.choice([*days, days[-1] + 1]) for _ in name]
    tracks = tuple(Track(letter, tuple((day(at), at >= join and chance.random() < 0.9) for at in days))
                   for letter, join in zip(name, joins, strict=True))
    levels = list(Support)
    return Growth(name[:20], tracks,
                  tuple((day(at), levels[min(3, 4 * count // len(days))]) for count, at in enumerate(days) if support),
                  tuple((day(at), chance.randint(1, 7)) for at in days if stages))
