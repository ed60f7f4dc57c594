"""How alike two names look, held against pictures of the names in a typeface that nobody here drew.

Structural similarity (Wang, Bovik, Sheikh & Simoncelli 2004, doi:10.1109/TIP.2003.819861) as scikit-image computes it,
of names drawn by Pillow in DejaVu Sans from one left edge on one baseline, 10 px to the em: so small, the measure's
window of 7 px takes in about one letter, as an eye does, and not an edge of one. Rank correlation by SciPy. The names
are those of a census (see the file's head). The weights were found on one sample of them, and another is asked here.
"""

from __future__ import annotations

from functools import cache
from itertools import combinations
from pathlib import Path
from random import Random

import numpy as np
import pytest
from PIL import Image, ImageDraw, ImageFont
from scipy.stats import spearmanr
from skimage.metrics import structural_similarity

from namewright.practice.letter_hunt import ONE_SHAPE
from namewright.practice.name_likeness import likeness, outline, parts_alike, zone_of

FACE = Path("/usr/share/fonts/truetype/dejavu/DejaVuSans.ttf")
SIZE_PX = 10
CENSUS = Path(__file__).parents[1] / "data" / "first-names-held-out.tsv"
NAMES = ("Mira", "Tilo", "Noor", "Bela", "Ottilka", "Kasimir", "Jolanda", "Pim", "Sanne", "Rufus", "Gerda", "Luka")


def sample(half: int, size: int = 60) -> tuple[str, ...]:
    """Return names of one half of the list: 0 is the half that the weights were found on, 1 the one that is asked."""
    lines = CENSUS.read_text(encoding="utf-8").splitlines()
    names = [line.split("\t")[0].capitalize() for line in lines if line and not line.startswith("#")]
    return tuple(Random(11).sample(names[half::2], size))


def drawn(name: str, width: int) -> np.ndarray:
    """Return a name in black on white."""
    picture = Image.new("L", (width, round(1.5 * SIZE_PX)), 255)
    ImageDraw.Draw(picture).text((2, round(1.1 * SIZE_PX)), name, font=face(), fill=0, anchor="ls")
    return np.asarray(picture)


@cache
def face() -> ImageFont.FreeTypeFont:
    return ImageFont.truetype(str(FACE), SIZE_PX)


def pictured_alike(one: str, other: str) -> float:
    """Return the structural similarity of two names on a ground as wide as the wider."""
    width = max(7, 4 + int(max(face().getlength(name) for name in (one, other))))
    return float(structural_similarity(drawn(one, width), drawn(other, width)))


def agreement(names: tuple[str, ...]) -> tuple[float, float]:
    """Return the rank correlation over all pairs, and the lower end of its interval over names drawn again.

    Pairs share names, so the interval is a bootstrap over names (percentiles 2.5 and up), not over pairs.
    """
    pairs = list(combinations(range(len(names)), 2))
    ours = {(a, b): likeness(names[a], names[b]) for a, b in pairs}
    theirs = {(a, b): pictured_alike(names[a], names[b]) for a, b in pairs}
    chance = np.random.default_rng(7)
    again = []
    for _ in range(200):
        taken = sorted(chance.integers(0, len(names), len(names)))
        some = [pair for pair in combinations(taken, 2) if pair[0] != pair[1]]
        again.append(spearmanr([ours[pair] for pair in some], [theirs[pair] for pair in some]).statistic)
    whole = spearmanr([ours[pair] for pair in pairs], [theirs[pair] for pair in pairs]).statistic
    return float(whole), float(np.percentile(again, 2.5))


@pytest.mark.skipif(not FACE.exists(), reason="needs Debian’s fonts-dejavu-core")
def test_likeness_goes_with_pictures_of_the_names() -> None:
    """On names that no weight was found on, the rank correlation is 0.4 at least and its interval lies above 0."""
    whole, least = agreement(sample(1))
    assert whole >= 0.4, whole
    assert least > 0, least


@pytest.mark.parametrize(("letters", "zone"),
                         [("aceimnorsuvwxz", "small"), ("bdfhkltABMXÁ", "tall"), ("gpqyj", "tail")])
def test_zones_are_those_of_handwriting(letters: str, zone: str) -> None:
    """Tall letters, small ones and those with a tail, by any primer of handwriting; i counts without its dot."""
    assert {letter: str(zone_of(letter)) for letter in letters} == dict.fromkeys(letters, zone)


@pytest.mark.skipif(not FACE.exists(), reason="needs Debian’s fonts-dejavu-core")
def test_capitals_of_one_shape_are_those_that_a_picture_shows_so() -> None:
    """Drawn to one size, these have a structural similarity to their small letters over that of all others."""
    alike = {capital: shape_alike(capital, capital.lower()) for capital in "ABCDEFGHIJKLMNOPQRSTUVWXYZ"}
    assert set(sorted(alike, key=alike.__getitem__)[-len(ONE_SHAPE):]) == ONE_SHAPE
    assert min(alike[one] for one in ONE_SHAPE) > 0.75


def shape_alike(one: str, other: str) -> float:
    return float(structural_similarity(shape(one), shape(other)))


def shape(letter: str) -> np.ndarray:
    """Return a letter large in a square, whatever its size."""
    picture = Image.new("L", (240, 240), 255)
    ImageDraw.Draw(picture).text((60, 40), letter, font=ImageFont.truetype(str(FACE), 120), fill=0)
    rows, columns = np.nonzero(np.asarray(picture) < 155)
    box = (int(columns.min()), int(rows.min()), int(columns.max()) + 1, int(rows.max()) + 1)
    return np.asarray(picture.crop(box).resize((32, 32)))


def test_likeness_is_a_likeness() -> None:
    for one, other in combinations(NAMES, 2):
        assert 0.0 <= likeness(one, other) == likeness(other, one) < 1.0
    assert likeness("Mira", "Mira") == pytest.approx(1.0)
    assert likeness("Mira", "Mina") > likeness("Mira", "Milo") > likeness("Mira", "Bo")
    assert set(parts_alike("Mira", "Milo")) == {"initial", "length", "in_place", "outline", "ratings"}
    assert len(outline("Zoë")) == 3
