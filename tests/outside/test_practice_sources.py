"""The evidence file and the bands, held against what was published.

The tables below are transcribed from the sources a second time, apart from the package's own file, so that
a slip in either shows. Each carries its source.
"""

from __future__ import annotations

import math
from itertools import pairwise
from statistics import fmean

import pytest

from namewright.practice.difficulty import Band, agreed_writing, band_of, letter_difficulty
from namewright.practice.evidence import load_evidence

# Phillips, Piasta, Anthony, Lonigan & Francis (2012), Table 4, doi:10.1016/j.jsp.2012.05.002,
# https://pmc.ncbi.nlm.nih.gov/articles/PMC4322910/table/T4
# Columns: letter, a, b, b when not the own initial, b when it is, the column headed "Log odds", p.
PHILLIPS = """
A 1.80 -0.95 -0.95 -1.33 3.22 .001
B 1.53 -1.04 -1.04 -2.11 16.63 .005
C 1.94 -0.76 -0.76 -1.47 10.30 <.001
D 1.90 -0.49 -0.49 -1.08 6.44 <.001
E 1.89 -0.57 -0.57 -1.40 13.97 <.001
F 2.01 -0.44 -0.44 -1.21 13.62 .037
G 1.82 -0.32 -0.32 -1.66 62.69 <.001
H 1.94 -0.56 -0.56 n/e n/e n/e
I 1.72 -0.30 -0.30 -0.73 3.49 .154
J 1.84 -0.31 -0.32 -1.00 8.18 <.001
K 1.90 -0.49 -0.49 -1.44 20.47 <.001
L 2.27 -0.42 -0.42 -1.16 16.05 <.001
M 1.61 -0.51 -0.52 -1.42 12.32 <.001
N 1.87 -0.30 -0.30 -1.13 14.27 <.001
O 1.80 -1.24 -1.23 -1.97 9.78 .152
P 2.06 -0.62 -0.62 -1.08 5.04 .075
Q 1.69 -0.30 -0.30 n/e n/e n/e
R 2.32 -0.50 -0.51 -1.39 30.52 <.001
S 2.33 -0.62 -0.62 -1.10 6.54 <.001
T 1.82 -0.56 -0.56 -1.07 4.69 <.001
U 1.63 -0.14 -0.14 n/e n/e n/e
V 1.89 0.04 0.04 -1.31 76.71 .012
W 1.19 -0.54 -0.54 -1.21 3.85 .372
X 1.07 -0.65 -0.65 -1.28 3.13 .375
Y 1.60 -0.41 -0.41 n/e n/e n/e
Z 1.75 -0.41 -0.41 -1.34 15.63 .005
"""
# Simpson, Mousikou, Montoya & Defior (2013), supplementary table, doi:10.3758/s13428-012-0271-4: pairs rated
# 3.0 or more, capitals; the same for small letters with a two-storey a; pairs over 2.9 of a single-storey a.
SIMPSON_CAPITALS = """
O-Q 6.00, C-G 5.30, M-W 5.27, P-R 5.27, C-O 5.23, U-V 5.23, E-F 5.20, B-D 4.80, M-N 4.73, V-W 4.72, B-P
4.67, V-Y 4.63, B-R 4.60, C-Q 4.43, F-P 4.43, G-O 4.33, D-O 4.27, J-U 4.23, I-T 4.20, K-X 4.20, G-Q 4.10,
I-J 4.10, N-W 4.07, J-L 4.00, O-U 4.00, A-V 3.97, D-Q 3.90, X-Y 3.77, H-N 3.67, D-P 3.60, I-L 3.53, B-E
3.50, E-L 3.50, N-Z 3.47, N-V 3.37, C-D 3.33, K-R 3.30, F-R 3.27, K-Y 3.23, L-T 3.20, F-T 3.07, D-U 3.03,
M-V 3.00, Q-U 3.00
"""
SIMPSON_SMALL = """
i-l 6.13, b-d 5.60, p-q 5.57, h-n 5.53, v-y 5.33, g-q 5.30, c-o 5.23, i-j 5.17, d-p 5.10, d-q 5.10, b-p
5.07, v-w 5.03, u-v 4.93, d-o 4.90, f-t 4.80, b-q 4.67, j-l 4.67, m-n 4.67, n-u 4.53, g-p 4.50, l-t 4.50,
c-e 4.43, b-o 4.20, f-i 4.16, e-o 4.13, d-g 4.10, o-q 4.10, f-l 4.03, i-t 3.90, f-r 3.80, j-t 3.80, b-h
3.70, f-j 3.67, o-p 3.60, c-d 3.57, k-x 3.55, b-g 3.53, g-o 3.47, a-e 3.40, m-w 3.40, r-t 3.37, h-u 3.33,
a-g 3.30, l-r 3.26, a-o 3.13, n-r 3.13, u-y 3.13, x-y 3.10, b-c 3.03
"""
SIMPSON_SINGLE_STOREY_A = (
    "a-o 5.00, a-c 4.23, a-d 4.17, a-q 3.97, a-b 3.53, a-g 3.40, a-p 3.13, a-e 2.97, a-u 2.97")

ROWS = [line.split() for line in PHILLIPS.strip().splitlines()]
CAPITALS = "ABCDEFGHIJKLMNOPQRSTUVWXYZ"


def number_or_none(text: str) -> float | None:
    return None if text == "n/e" else float(text)


def pairs(text: str) -> dict[frozenset[str], float]:
    entries = (entry.split() for entry in text.replace("\n", " ").split(", "))
    return {frozenset(pair.split("-")): float(rating) for pair, rating in entries}


def mean_figure(letters: str) -> float:
    return fmean(letter_difficulty(letter).figure for letter in letters)


def test_the_naming_table_is_whole() -> None:
    """All 26 capitals are there and no other, and the four the authors flag have no own-initial figure."""
    capitals = load_evidence().capitals
    assert "".join(sorted(capitals)) == CAPITALS
    assert {letter for letter, item in capitals.items() if item.b_first is None} == set("HQUY")


@pytest.mark.parametrize("row", ROWS, ids=lambda row: row[0])
def test_naming_figures_are_the_published_ones(row: list[str]) -> None:
    """Each figure of the naming table equals the published one; what is not estimable is absent."""
    item = load_evidence().capitals[row[0]]
    assert [item.a, item.b, item.b_not_first, item.b_first] == [number_or_none(cell) for cell in row[1:5]]


@pytest.mark.parametrize("row", [row for row in ROWS if row[5] != "n/e"], ids=lambda row: row[0])
def test_own_initial_gain_agrees_with_the_published_ratio(row: list[str]) -> None:
    """exp(1.7 × a × gain) comes near the source's ratio column, which the package does not hold.

    1.7 is the usual constant between the logistic and the normal metric of item response theory (common
    practice). a is of a later model and all is rounded, so it is near and not equal: L, the farthest, is
    8.3 % off.
    """
    item = load_evidence().capitals[row[0]]
    assert item.own_initial_gain is not None
    assert math.exp(1.7 * item.a * item.own_initial_gain) == pytest.approx(float(row[5]), rel=0.10)


def test_own_initial_gain_agrees_with_the_own_initial_item() -> None:
    """The own initials' mean difficulty is that of the source's separate item (b −1.34), within 0.1."""
    evidence = load_evidence()
    firsts = [item.b_first for item in evidence.capitals.values() if item.b_first is not None]
    assert evidence.own_initial_item == (1.56, -1.34)
    assert abs(fmean(firsts) - evidence.own_initial_item[1]) < 0.1


@pytest.mark.parametrize("column", [2, 3])
def test_twenty_of_26_letters_are_in_the_middle(column: int) -> None:
    """The cut-offs leave O B A C easier and U V harder, whichever of the two columns is read."""
    bands = {row[0]: band_of(float(row[column])) for row in ROWS}
    assert {letter for letter, band in bands.items() if band is Band.EASIER} == set("OBAC")
    assert {letter for letter, band in bands.items() if band is Band.HARDER} == set("UV")


def test_no_step_inside_the_middle_is_as_wide_as_a_step_out_of_it() -> None:
    """The cut-offs stand in real gaps: both steps out of the middle are wider than any step inside.

    Measured: 0.11 and 0.16 against at most 0.09.
    """
    steps = list(pairwise(sorted(float(row[3]) for row in ROWS)))
    crossing = [after - before for before, after in steps if band_of(before) is not band_of(after)]
    inside = [after - before for before, after in steps if band_of(before) is band_of(after) is Band.MIDDLE]
    assert len(crossing) == 2
    assert min(crossing) > max(inside) + 0.01


def test_similarity_ratings_are_the_published_ones() -> None:
    """44 pairs of capitals and 49 of small letters are rated 3.0 or more, each as published."""
    capitals, small = pairs(SIMPSON_CAPITALS), pairs(SIMPSON_SMALL)
    assert (len(capitals), len(small)) == (44, 49)
    assert load_evidence().similarity == capitals | small
    assert min(load_evidence().similarity.values()) >= 3.0


def test_single_storey_a_has_ratings_of_its_own() -> None:
    """The nine pairs of the single-storey a are as published."""
    published = pairs(SIMPSON_SINGLE_STOREY_A)
    assert len(published) == 9
    assert load_evidence().single_storey_a == published


def test_writing_lists_are_as_reported() -> None:
    """The two lists, known at second hand, are as reported and share q z u j k as hard, c i o v as easy.

    Graham, Weintraub & Berninger (2001), first grade, and Lewis & Lewis (1964), from a later paper's review.
    """
    graham, lewis = load_evidence().writing
    assert (graham.easy, graham.hard) == (set("cesiovx"), set("qzgdnjku"))
    assert (lewis.easy, lewis.hard) == (set("loivc"), set("qzujk"))
    assert agreed_writing() == (set("ciov"), set("qzujk"))


def test_bands_agree_with_an_early_list_not_used_to_build_them() -> None:
    """O, named most often with X in either case, is an easier letter, and X the easiest of the middle ones.

    Carroll et al. (c. 1980), ERIC ED255285: 444 children in the first month of kindergarten.
    """
    middle = [row for row in ROWS if letter_difficulty(row[0]).band is Band.MIDDLE]
    assert letter_difficulty("O").band is letter_difficulty("o").band is Band.EASIER
    assert min(middle, key=lambda row: float(row[3]))[0] == "X"
    assert letter_difficulty("x").band is not Band.HARDER


def test_bands_lean_the_way_of_a_list_from_elsewhere() -> None:
    """Letters easiest to write for pupils who meet English late are easier here, too, on the mean.

    JCRDA J. 46(1), 65–75 (2023), grade 5 in Japan: small a s o c easiest and f q j l hardest; capitals
    Z W Y C E S easiest and D K P hardest, where the naming figures agree by a hair only. A weak check:
    much of the difficulty there is placing letters on four lines.
    """
    assert mean_figure("asoc") + 0.4 < mean_figure("fqjl")
    assert mean_figure("ZWYCES") < mean_figure("DKP")


def test_pairs_that_children_mix_up_look_alike_to_adults() -> None:
    """Five of the seven pairs with three or more errors by children are rated 3.0 or more by adults.

    Blair & Ryckman (1968), ERIC ED028033, 75 prereaders matching capitals: M-N 8 errors; M-W and S-P 5;
    H-A, I-J, L-J and K-X 3. The counts are tiny. S-P and H-A are not rated alike.
    """
    mixed_up = {frozenset(pair.split("-")) for pair in ["M-N", "M-W", "S-P", "H-A", "I-J", "L-J", "K-X"]}
    assert mixed_up - load_evidence().similarity.keys() == {frozenset("SP"), frozenset("HA")}


@pytest.mark.parametrize(("key", "figures"), [
    ("reidlinger-2012", ("55%", "−4.629")),                # doi:10.1080/19411243.2012.701544, abstract
    ("santangelo-graham-2016", ("0.59", "0.63", "0.69")),  # doi:10.1007/s10648-015-9335-1, abstract
    ("lopez-escribano-2022", ("0.64",)),                   # doi:10.3389/fpsyg.2022.841573, abstract
    ("mathwin-2023", ("8.17", "12.76")),                   # doi:10.1007/s11145-023-10476-6, abstract
    ("turnbull-2010", ("more than 16 times",)),            # doi:10.1044/1092-4388(2010/09-0093), abstract
    ("nces-2019", ("78%",)),                               # http://nces.ed.gov/nhes/tables/earlyskills.asp
])
def test_findings_carry_the_published_figures(key: str, figures: tuple[str, ...]) -> None:
    """A finding told in our words keeps the figures of its source."""
    assert all(figure in load_evidence().sources[key].finding for figure in figures)
