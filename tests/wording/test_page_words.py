"""Every page in two made-up languages: not one word on paper is written anywhere but in a language's file.

What a page draws as running text is what ``Typesetter.text`` is asked for. A single letter is a letter of a name.
"""

from __future__ import annotations

from pathlib import Path

import pytest
from made_up import MADE_UP, unmarked

from longer import rest_long
from namewright.classbook import Classbook
from namewright.cli import main
from namewright.lines.ink import Ink
from namewright.pages.typesetter import Typesetter

NAMES = ("Xeno", "Yara", "Wren", "Quill", "Rook", "Ottka", "Miro", "Jean-Luc", "Bo", "Zoë")
LIST = ("name,hand,support,line height,practise\nXeno Vex,left,full,,\nYara Vex,,partial,30,\nWren Ilm,right,light,,\n"
        "Quill Ilm,,independent,,both\nRook,,,,\nOttka,,,,\nMiro,,xx,,\nJean-Luc,,,,\nBo,,,,\nZoë,,,,\n李,,,,\n12,,,,"
        "\n")
BESIDE = ("Vex", "Ilm", "xx", "mm", "cjk unified ideograph-674e")  # the last is Unicode’s own name of 李
BEAT = " · "  # between the beats of a name
RUNGS = ("marked-dots dots-run-out", "wide-dots start-dots", "first-letter dots")


@pytest.fixture
def drawn(monkeypatch: pytest.MonkeyPatch) -> list[str]:
    """The texts that pages drew."""
    texts: list[str] = []
    text = Typesetter.text

    def noted(setter: Typesetter, words: str, x_height_mm: float = 1.75) -> Ink:
        texts.append(words)
        return text(setter, words, x_height_mm)

    monkeypatch.setattr(Typesetter, "text", noted)
    return texts


def foreign(texts: list[str]) -> list[str]:
    """Return the words that have no mark and are neither names, measures nor letters of a name."""
    said = "\n".join(text for text in texts if BEAT not in text)
    return [word for word in unmarked(said, (*NAMES, *BESIDE, *MADE_UP)) if len(word) > 1]


@pytest.mark.parametrize("language", rest_long(MADE_UP))
def test_paper_says_nothing_of_its_own(language: str, made_up: Path, drawn: list[str]) -> None:
    """Sheets with every rung, the page for the adult, cards, tiles, sizes, groups and the plan."""
    (made_up / "list.csv").write_text(LIST, encoding="utf-8")
    roster, said = str(made_up / "list.csv"), ("--captions", language)
    made = {
        "summary": main(["sheets", roster, "-o", str(made_up / "a.pdf"), "--summary", str(made_up / "b.pdf"), *said]),
        "plan": main(["plan", roster, "-o", str(made_up / "c.pdf"), "--group-sheets", str(made_up / "d.pdf"), *said]),
        "tiles": main(["tiles", roster, "-o", str(made_up / "e.pdf"), *said]),
        "card": main(["card", "Xeno", "-o", str(made_up / "f.pdf"), *said]),
        "sizes": main(["sizes", "Xeno", "-o", str(made_up / "g.pdf"), *said]),
        **{rungs: main(["sheets", roster, "-o", str(made_up / f"{at}.pdf"), "--ladder", rungs, *said])
           for at, rungs in enumerate(RUNGS)},
    }
    assert all(status in (0, 1) for status in made.values()), made
    assert len(drawn) > 300
    assert foreign(drawn) == []


@pytest.mark.parametrize("language", rest_long(MADE_UP))
def test_a_year_says_nothing_of_its_own(language: str, made_up: Path, drawn: list[str]) -> None:
    """A child's year and the class's, next month's changes and a plan after notes, from a class's file."""
    (made_up / "list.csv").write_text(LIST, encoding="utf-8")
    book = str(made_up / "class.db")
    assert main(["class", book, "--from", str(made_up / "list.csv")]) in (0, 1)
    notes = [("Xeno", "--all", "full"), ("Yara", "Y", "partial"), ("Wren", "", "light"), ("Bo", "", "full"),
             ("Rook", "--all", "independent")]
    for day in ("2025-09-01", "2025-11-02", "2026-03-01"):
        for at, (child, letters, support) in enumerate(notes):
            what = ["--all"] if letters == "--all" else ["--letters", letters]
            assert main(["note", child, "--class", book, *what, "--support", support, "--stage", str(at + 2),
                         "--date", day]) == 0
    with Classbook.open(Path(book)) as opened:
        opened.set_class_setting("language", language)
    assert main(["progress", "--class", book, "--all", "-o", str(made_up / "year.pdf")]) in (0, 1)
    for page in ("talk", "record"):
        assert main(["progress", "--class", book, "--all", "--page", page, "-o", str(made_up / "page.pdf")]) in (0, 1)
    assert main(["next", book, "-o", str(made_up / "next.pdf"), "--changes", str(made_up / "changes.pdf")]) in (0, 1)
    assert main(["plan", book, "-o", str(made_up / "plan.pdf")]) in (0, 1)
    assert len(drawn) > 300
    assert foreign(drawn) == []
