"""A list that was unfolded: what is kept of it is read again as it was read first."""

from __future__ import annotations

import pytest

from namewright.roster.children import Outcome, Roster
from namewright.roster.kept import AS_A_TABLE
from namewright.roster.parsing import read_roster
from namewright.settings import NamePart

# Each list was read otherwise from its own lines, once they were unfolded: a child lost or made, or an order asked for.
DOUBTFUL = (
    "Mirelle - Ostavan\nZaphron - Ostavan\nTilomena\nBrisko\n",
    "l.  Gydlin Neiloian .\n2.  Lexa Bromas .\n3, Niarsha Kwiarian\n4,  Boushykwu Rurtra\n5 .  Teirkwin Nyaxy\n",
    "|, Falra Dermethberg Dermeth .\n2) Xekwair Nomkwalta |\n3,  Zatyvia Keinvar~\n4 .  Kwapheyer Nyamne\n",
    "Assenti: Mira\nMirAssenti: Zell\nPresenti: Otta, Bramo\n",
    "Roger R., Alice  Philippe T., Elisabeth C., RENE p., Jeanne p.\n",
    "Vorname: Brou\nNachna Yythy\nGeburtstag: 16/05/2020\n\nVorname: Zampi\nNachname: Gylge\nGeburtstag: 13/05/2020\n\n"
    "Vname: Hymny\nNachname: Geith\nGeburtstag: 15/05/2020\n\n"
    "Vorname: Zeiil\nNachname: Saron\nGeburtstag: 11/05/2020\n",
    "\tGrupo \t\tGrupo 2\n1\t;Gideon\t\t1\t>eMANUEL\n\t\t\t2\tBosibori\n\t\t\t3\tfRanklin\n\t\t\t4\tDoris\n"
    "\t\t\t5\tJeff\n\t\t\t6\tNduku\n\t\t\t7\tNaomi\n",
)


def _who(roster: Roster) -> list[tuple[str, str, str]]:
    return [(one.practice, one.given, one.family) for one in roster.children]


@pytest.mark.parametrize("part", NamePart)
@pytest.mark.parametrize("text", DOUBTFUL)
def test_what_is_kept_is_read_as_it_was(text: str, part: NamePart) -> None:
    """The same children for every part of the name, on the lines that were told, and as many lines are asked about."""
    roster = read_roster(text, part=part)
    again = read_roster(roster.text or text, part=part)
    assert _who(again) == _who(roster)
    assert [one.line for one in again.children] == [one.line for one in roster.children]
    asked = [sum(line.outcome is Outcome.LEFT_OUT for line in one.lines) for one in (roster, again)]
    assert asked[0] <= asked[1]


def test_the_children_stay_though_a_question_is_not_asked_again() -> None:
    """What may be a child or not is asked when it is pasted; from then on the children are as they were made."""
    roster = read_roster(
        "Boleias para a quinta 16/05\n\nProf. ПътечкОВА (5 Lugares): БетиНО + бЛАгой + Клим + Илка\n"
        "Ainda sem boleia: Дамяна + Хубан\n")
    assert [line.outcome for line in roster.lines if "Клим" in line.text] == [Outcome.LEFT_OUT]
    assert _who(read_roster(roster.text)) == _who(roster)


def test_a_list_that_becomes_a_table_says_so_and_accounts_for_every_line() -> None:
    text = DOUBTFUL[4]
    roster = read_roster(text)
    assert AS_A_TABLE in roster.notes
    assert [(line.line, line.text) for line in roster.lines] == list(enumerate(roster.text.splitlines(), 1))
    assert {line.source_line for line in roster.lines} == {1}
    assert [line.child.practice for line in roster.lines if line.child] == [one.practice for one in roster.children]
    left = next(line for line in roster.lines if "Alice  Philippe T." in line.text)
    assert left.outcome is Outcome.LEFT_OUT
    assert "roster.several" in [note.key for note in left.notes]


def test_lines_that_are_still_one_each_stay_as_they_were_typed() -> None:
    """Nothing is written anew where each line is a line: the whole text tells again what it told."""
    roster = read_roster(DOUBTFUL[1])
    assert (roster.text, AS_A_TABLE in roster.notes, len(roster.children)) == ("", False, 5)
    assert [line.text for line in roster.lines] == DOUBTFUL[1].splitlines()


@pytest.mark.parametrize("text", [
    "Mia, Leo, Bo\n", "Mira Vost\nLeo Dolt\n", "Sun: Mia, Leo, Bo\nMoon: Otta, Katie, Ava\n"])
def test_a_list_that_is_read_alike_stays_in_its_own_words(text: str) -> None:
    assert AS_A_TABLE not in read_roster(text).notes
    assert "First name" not in read_roster(text).text
