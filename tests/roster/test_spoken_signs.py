"""Lists spoken to a device that wrote the signs as words are parted there, wherever its lines are broken."""

from __future__ import annotations

import pytest

from namewright.roster.parsing import read_roster
from namewright.roster.pasted import Line
from namewright.roster.spoken_signs import from_spoken_signs

SPOKEN = [
    ("class list colon", "comma", "full stop"), ("", "new line", "end of list"),
    ("lista de clase", "punto y aparte", "punto final"), ("la lista dos puntos", "coma", "punto"),
    ("liste de la classe deux points", "à la ligne", "point"), ("", "virgule", "fin de la liste"),
    ("Klassenliste Doppelpunkt", "Komma", "Punkt"), ("", "neue Zeile", "fertig"),
    ("elenco della classe due punti", "a capo", "fine elenco"), ("", "virgola", "punto"),
    ("lista da turma dois pontos", "nova linha", "fim da lista"), ("", "vírgula", "ponto")]
NAMES = ("Mia Vost", "Tilo de la Cruz", "Anna Berg", "Noah Tarn", "Ada Quill")


def practised(text: str) -> list[str]:
    return [child.practice for child in read_roster(text).children]


@pytest.mark.parametrize(("begin", "sign", "end"), SPOKEN)
@pytest.mark.parametrize("wide", [20, 45, 500])
@pytest.mark.parametrize("whole", [True, False])
def test_spoken_signs_part_children(begin: str, sign: str, end: str, wide: int, whole: bool) -> None:
    names = NAMES if whole else [name.split()[0] for name in NAMES]
    rows = [""]
    for word in f"{begin} {f' {sign} '.join(names)} {end}".split():
        rows += [""] if len(rows[-1]) + len(word) >= wide else []
        rows[-1] = f"{rows[-1]} {word}".strip()
    roster = read_roster("\n".join(rows))
    assert [child.practice for child in roster.children] == [name.split()[0] for name in names]
    assert read_roster(roster.text).children == roster.children


def test_lines_that_end_with_a_child_merge_no_two() -> None:
    assert practised("Mia comma Leo comma Ben\nAva comma Tom comma Ida") == ["Mia", "Leo", "Ben", "Ava", "Tom", "Ida"]
    assert practised("mia comma leo\nava comma tom comma ida") == ["Mia", "Leo", "Ava", "Tom", "Ida"]
    assert practised("Mia Vost comma Leo Berg\nAva Tarn comma Tom Quill comma Ida Roth") == [
        "Mia", "Leo", "Ava", "Tom", "Ida"]


@pytest.mark.parametrize("text", [
    "Mia Coma\nLeo Coma\nAda Coma\nBen Vost", "Mia Vost\nBegin on a new line, then a new line, then a new line.\nA\nB\n"
    "C\nD\nE\nF", "Mia comma Leo comma Ada"])
def test_a_family_name_and_words_of_sentences_part_nothing(text: str) -> None:
    lines = [Line(line, at) for at, line in enumerate(text.split("\n"))]
    assert from_spoken_signs(lines) == lines
