"""What a family or a busy teacher reads first is in plain English: US grade 6 at the most, by Flesch and Kincaid.

What is said at the command line and of the lines of a list is at grade 8 at the most.

The formula: J. P. Kincaid, R. P. Fishburne, R. L. Rogers & B. S. Chissom (1975), Derivation of New Readability Formulas
for Navy Enlisted Personnel, Research Branch Report 8-75. Syllables are counted as groups of vowels, a silent e at the
end of a word left away, which is a usual estimate and not a dictionary's count.
"""

from __future__ import annotations

import re
import statistics
import tomllib
from collections.abc import Iterator
from importlib import resources
from typing import Any

import pytest

from namewright.pages.plan.sentences import begin_said, next_week_said, this_week_said
from namewright.practice.difficulty import name_difficulty
from namewright.practice.ordering import Order, completed, order_class
from namewright.practice.reason import for_parent
from namewright.practice.timetable import Lookout, timetable
from namewright.roster.children import Child
from namewright.settings import Support
from namewright.wording import wording

MAX_GRADE = 6.0
NAMES = ("Mirel", "Bo", "Ottilka", "Zoë", "Jean-Luc", "Iris", "Kasimir", "Noor", "Tova")
ENGLISH = wording("en")


def grade(text: str) -> float:
    """Return the US school grade that a text is for."""
    sentences = len(re.findall(r"[.!?](?=\s|$)", text))
    words = re.findall(r"[^\W\d_]+(?:[’'-][^\W\d_]+)*|\d+", text)
    return 0.39 * len(words) / sentences + 11.8 * sum(map(syllables, words)) / len(words) - 15.59


def syllables(word: str) -> int:
    bare = re.sub(r"(?<=[^aeiouy])e$|(?<=[^aeiouytd])ed$|(?<=[^aeiouyszxc])es$", "", word.lower())
    return max(1, len(re.findall(r"[aeiouyäëïöüáéíóúàèìòù]+", bare)))


@pytest.mark.parametrize(("text", "at"), [  # worked by hand: 0.39·words/sentences + 11.8·syllables/words − 15.59
    ("The cat sat on the mat.", 0.39 * 6 + 11.8 * 1 - 15.59),
    ("We write letters every morning.", 0.39 * 5 + 11.8 * 9 / 5 - 15.59),
])
def test_the_formula(text: str, at: float) -> None:
    assert grade(text) == pytest.approx(at)


@pytest.mark.parametrize("order", [Order.PRACTICE, Order.NEED, Order.FAMILY])
def test_what_a_teacher_reads_on_monday(order: Order) -> None:
    """The letters of the week, where to begin, and what comes next week, in each order that a plan has."""
    children = [Child(practice=name, label=name, given=name, family="", line=at, support=None, hand=None,
                      line_height_mm=None) for at, name in enumerate(NAMES, 1)]
    plan = timetable(completed(order_class(children, order)), Lookout())
    week, coming = plan.weeks.weeks[:2]
    assert grade(ENGLISH.text(this_week_said(week), begin_said(plan), next_week_said(plan, coming))) <= MAX_GRADE


@pytest.mark.parametrize("key", ["week_pause", "next_pause", "week_review", "week_how", "monday_all_formed"])
def test_what_a_week_says(key: str) -> None:
    assert grade(ENGLISH.say(f"page.plan.{key}", letters=("a", "b"))) <= MAX_GRADE


@pytest.mark.parametrize("name", NAMES)
def test_what_a_family_is_told(name: str) -> None:
    assert grade(ENGLISH.text(*for_parent(name, name_difficulty(name), name[0]))) <= MAX_GRADE


def test_the_note_home() -> None:
    told = [ENGLISH.say(f"page.home.{part}", label="Mirel") for part in ("first", "second", "third", "fourth")]
    assert grade(" ".join(told)) <= MAX_GRADE


@pytest.mark.parametrize("key", ["title", "then", "now", "once", "key", "coming", "whole_name", "home_shown",
                                 "home_letter", "home_name", "help", "seen_at_home", "together"])
def test_what_a_talk_says(key: str) -> None:
    """Every sentence of the page for a talk by itself, its headings as sentences."""
    for letters in (("i",), ("i", "r")):
        told = ENGLISH.sentence(f"page.talk.{key}", name="Mirel", day="7 Sep", letters=letters, count=len(letters),
                                letter="i", before=Support.FULL, after=Support.LIGHT)
        assert grade(told.replace(":", ".")) <= MAX_GRADE


@pytest.mark.parametrize("key", ["all", "together", "some", "first_letter", "begin", "unseen"])
def test_what_a_year_says(key: str) -> None:
    told = ENGLISH.say(f"page.progress.{key}", name="Mirel", first="M", newest="l", since="7 Sep", last="3 May",
                       letters=("M", "i", "l"))
    assert grade(told) <= MAX_GRADE


SOURCE = tomllib.loads(resources.files("namewright.wording").joinpath("en.toml").read_text(encoding="utf-8"))


def sentences(part: dict[str, Any], key: str) -> Iterator[tuple[str, str]]:
    """Yield the key and the text of everything that is said in a part of the words, an invented name in each field."""
    for name, entry in part.items():
        if isinstance(entry, dict):
            yield from sentences(entry, f"{key}.{name}")
        else:
            told = re.sub(r"\{[^}]*\}", "Mira", entry).rstrip()
            yield f"{key}.{name}", told if told.endswith((".", "?", "!")) else f"{told}."


SAID = [one for part in ("command", "roster") for one in sentences(SOURCE[part], part)
        if len(one[1].split()) >= 4 and "\n" not in one[1]]  # not names of things, nor lines to copy


@pytest.mark.parametrize(("key", "told"), SAID, ids=[key for key, _ in SAID])
def test_what_is_said_of_lists_and_at_the_command_line(key: str, told: str) -> None:
    """Grade 8 at the most: a few words that are needed are long (spreadsheet, computer).

    What a colon or semicolon ends counts as a sentence too, as in lists of what can be chosen (Flesch's rule for
    counting sentences, from memory).
    """
    assert grade(re.sub(r"[:;](?=\s)", ".", told)) <= 8.0


def test_most_of_it_is_far_plainer() -> None:
    """Half of these sentences are at grade 4 or below, by full stops alone."""
    assert statistics.median(grade(told) for _, told in SAID) <= 4.0
