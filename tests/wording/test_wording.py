"""One place joins lists, chooses plurals and writes numbers; a field is worded last."""

from __future__ import annotations

import tomllib
from collections.abc import Iterator, Mapping

import pytest

from namewright.message import Problem, message
from namewright.settings import Support
from namewright.wording import Grammar, folder, languages, read_wording, wording

LANGUAGE = """
[grammar]
last = "und"
either = "oder"
decimal = ","
[a]
plain = "One {{brace}}."
list = "{names} go, {names:or} stays."
high = "{height} mm, {height:.1} mm"
count = { one = "one page", other = "{count} pages" }
inside = "It says: {what}."
bare = "it says: {what}"
level = "with {support}"
[word]
full = "all the help"
"""
SAID = read_wording("made-up", LANGUAGE)


def test_a_list_is_joined_by_its_language() -> None:
    assert SAID.say("a.list", names=("Ana", "Bo", "Cy")) == "Ana, Bo und Cy go, Ana, Bo oder Cy stays."


def test_numbers_take_the_decimal_mark_and_the_decimals_asked_for() -> None:
    assert SAID.say("a.high", height=19.05) == "19,05 mm, 19,1 mm"


@pytest.mark.parametrize(("count", "said"), [(0, "0 pages"), (1, "one page"), (2, "2 pages")])
def test_a_plural_is_chosen_by_the_count(count: int, said: str) -> None:
    assert SAID.say("a.count", count=count) == said


def test_a_message_and_a_choice_inside_another_are_worded_with_it() -> None:
    assert SAID.say("a.inside", what=message("a.count", count=1)) == "It says: one page."
    assert SAID.say("a.level", support=Support.FULL) == "with all the help"


def test_what_was_typed_is_never_read_as_a_template() -> None:
    assert SAID.say("a.inside", what="{names} {0}") == "It says: {names} {0}."


def test_a_problem_carries_its_message_and_no_words() -> None:
    problem = Problem("a.inside", what="Bo")
    assert (problem.message.key, problem.message["what"]) == ("a.inside", "Bo")
    assert SAID.say(problem.message) == "It says: Bo."


@pytest.mark.parametrize(("parts", "said"), [  # RAE, Ortografía de la lengua española: e before the sound /i/
    (("Ana", "Iris"), "Ana e Iris"), (("Ana", "Hilario"), "Ana e Hilario"), (("Ana", "Hielo"), "Ana y Hielo"),
    (("Ana", "Yves"), "Ana e Yves"), (("Ana", "Yolanda"), "Ana y Yolanda"), (("Ana", "Iara"), "Ana y Iara"),
    (("Ana", "Bo", "Inés"), "Ana, Bo e Inés"),
])
def test_spanish_says_e_before_the_sound_i(parts: tuple[str, ...], said: str) -> None:
    assert wording("es").listed(parts) == said


def test_spanish_says_u_before_the_sound_o() -> None:
    assert wording("es").listed(("Ana", "Olga"), either=True) == "Ana u Olga"


def test_no_part_and_one_part_are_joined_too() -> None:
    assert (Grammar().joined([]), Grammar().joined(["Bo"])) == ("", "Bo")


def test_a_language_without_words_is_refused_with_those_there_are() -> None:
    with pytest.raises(Problem) as refused:
        wording("tlh")
    assert refused.value.message["known"] == languages()


def test_what_begins_a_sentence_keeps_its_case_if_it_was_typed() -> None:
    assert SAID.sentence("a.list", names=("n", "u")).startswith("n und u go")
    assert SAID.sentence("a.bare", what="n") == "It says: n."


@pytest.mark.parametrize("typed", ["Bo", "Bo.", "(Bo)", "Who?", "“Bo”"])
def test_a_sentence_has_one_end(typed: str) -> None:
    said = SAID.sentence("a.bare", what=typed)
    assert said.startswith("It says")
    assert said[-1] in ".?"
    assert not said.endswith("..")


def _flat(table: Mapping[str, object], prefix: str = "") -> Iterator[tuple[str, str]]:
    for key, value in table.items():
        if isinstance(value, Mapping):
            yield from _flat(value, f"{prefix}{key}.")
        else:
            yield f"{prefix}{key}", str(value)


@pytest.mark.parametrize("language", languages())
def test_a_file_read_table_by_table_is_the_file_read_at_once(language: str) -> None:
    text = (folder() / f"{language}.toml").read_text(encoding="utf-8")
    one_by_one, own = read_wording(language, text).templates, wording(language).grammar
    at_once = {key: own.tied(said) for key, said in _flat(tomllib.loads(text)) if not key.startswith("grammar.")}
    assert one_by_one["page.pdf_title"] == at_once["page.pdf_title"]  # from one table, before the others are read
    assert dict(one_by_one) == at_once


def test_a_table_that_nobody_asks_for_is_not_read() -> None:
    """A run that says three sentences does not wait for two thousand; what is wrong with a table shows in its tests."""
    said = read_wording("made-up", LANGUAGE + "[broken]\nno TOML at all\n")
    assert said.say("a.bare", what="Bo") == "it says: Bo"
    with pytest.raises(ValueError, match="line 2"):  # tomli's and tomllib's own errors are two
        said.has("broken.key")
