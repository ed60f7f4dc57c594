"""Lines that a mail program wrapped are one paragraph again: no half of a name is a child, and no two children one."""

from __future__ import annotations

import textwrap

import pytest

from namewright.roster.children import Outcome, RosterError
from namewright.roster.parsing import read_roster
from namewright.roster.pasted import Line
from namewright.roster.wrapped import from_wrapped

KNOWN = ["Mia Vost", "Leo Berg", "Ava Hill", "Tom Reed", "Ida Frost", "Noah Lind", "Emma Kern", "Paul Weber",
         "Lena Roth"]
RARE = ["Xobrel Vemkassen", "Tarnul Dofrinov", "Mogat Lenviberg", "Outhnar Pelkowala", "Zirmal Hultström",
        "Vexil Quorrikian", "Fántain Drosk", "Ámdiam Trellberg", "Kwoulan Bistrom"]
LEADS = [("In my class this year I have {}.", "and"), ("Este curso tengo en clase a {}.", "y"),
         ("Cette année j'ai dans ma classe {}.", "et"), ("In meiner Gruppe sind dieses Jahr {}.", "und"),
         ("Quest'anno nella mia sezione ci sono {}.", "e"), ("Este ano tenho na minha sala {}.", "e")]


def wrapped(text: str, width: int, sign: str = "") -> str:
    return "\n".join(sign + row for row in textwrap.wrap(text, width, break_on_hyphens=False))


def practised(text: str) -> list[str]:
    return [child.practice for child in read_roster(text).children]


def given(names: list[str]) -> list[str]:
    return [name.split()[0] for name in names]


@pytest.mark.parametrize("sign", ["", "> ", ">> "])
@pytest.mark.parametrize("width", [40, 48, 60, 72, 90])
@pytest.mark.parametrize(("lead", "and_"), LEADS)
@pytest.mark.parametrize("names", [KNOWN, RARE])
def test_a_class_told_in_a_mail(names: list[str], lead: str, and_: str, width: int, sign: str) -> None:
    row = lead.format(f"{', '.join(names[:-1])} {and_} {names[-1]}")
    mail = f"{sign}Hi Petra,\n{sign}\n{wrapped(row, width, sign)}\n{sign}\n{sign}Best wishes,\n{sign}Leonor Cunha"
    assert practised(mail) == given(names)


@pytest.mark.parametrize("width", [38, 50, 72])
@pytest.mark.parametrize("sign", [", ", "; ", " / "])
@pytest.mark.parametrize("names", [KNOWN, RARE])
def test_names_alone_in_wrapped_lines(names: list[str], sign: str, width: int) -> None:
    assert practised(wrapped(sign.join(names), width)) == given(names)


@pytest.mark.parametrize("width", [30, 45, 72])
@pytest.mark.parametrize("names", [KNOWN, RARE])
def test_family_names_before_a_comma_in_wrapped_lines(names: list[str], width: int) -> None:
    turned = [", ".join(reversed(name.split())) for name in names]
    assert practised(wrapped("; ".join(turned), width)) == given(names)


@pytest.mark.parametrize("bullet", ["", "• ", "- "])
@pytest.mark.parametrize("names", [KNOWN, RARE])
def test_groups_of_which_each_is_wrapped(names: list[str], bullet: str) -> None:
    rows = [wrapped(f"{bullet}{label}: {', '.join(some)}", 44) for label, some in (("Owls", names[:4]),
                                                                                   ("Foxes", names[4:]))]
    assert practised("\n".join(rows)) == given(names)


def test_halves_that_may_be_two_children_are_asked_about() -> None:
    text = "In my class I have Mia Vost, Leo Berg, Paul\nEmma, Noah Lind, Ava Hill, Tom Reed and Ida\nFrost."
    read = read_roster(text)
    assert [child.practice for child in read.children] == ["Mia", "Leo", "Noah", "Ava", "Tom", "Ida"]
    assert [line.text.strip(",") for line in read.lines if line.outcome is Outcome.LEFT_OUT] == ["Paul Emma"]


ROWS = [
    "Mia Vost, Leo Berg, Ava Hill, Tom Reed\nIda Frost, Noah Lind, Emma Kern, Paul\nLena Roth, Bo Oak, Al Kern",
    "Vost, Mia\nBergmann-Lindqvist, Leo\nTarn, Ava\nBergmann-Lindqvist, Maximilian\nHill, Tom",
    "Mia Vost, T/Th\nMaximiliana Bergmann, M-F\nAva Tarn-Hillenbrand, M/W/F\nTom Reed, M/W/F\nIda Frost, Tu W Th",
    "Mia Vost is allergic to nuts and is picked up\nLeo Berg needs help with the zip of the coat\nAva likes it",
    "mia is allergic to nuts and is picked up daily\nleo needs help with the zip of the coat",
    "Owls: Mia, Leo, Ava and the new boy Tom with\nFoxes: Ida, Noah, Emma and Paul, both of them",
    "Mia Vost;nuts;bus 4 and then home with the aunt\nLeo Berg;eggs;bus 5 and then home"]


@pytest.mark.parametrize("text", ROWS)
def test_lines_that_each_stand_for_themselves_stay(text: str) -> None:
    lines = [Line(row, at) for at, row in enumerate(text.split("\n"))]
    assert from_wrapped(lines) == (lines, [])


LETTERS = [
    """I wanted to let you know that we have changed the plan for the trip on
Friday. Please send your child with a raincoat, a lunch and a small bag
for the bus. The children in my class this year are listed below so that
you can write the name tags at home together.""",
    """anbei die Liste der Kinder für das nächste Schuljahr. Bitte prüft, ob
alle Namen richtig geschrieben sind, und meldet euch bis Freitag bei
mir, falls etwas fehlt. Die Gruppen werden erst nach den Ferien
eingeteilt, weil noch einige Anmeldungen offen sind und wir auf Antwort
warten.""",
    """voici la liste des enfants de la classe pour la sortie de jeudi prochain au
musée. Merci de prévoir un pique-nique et un vêtement de pluie, car la météo
est incertaine.""",
    """> os paso la lista de la clase para que vayáis preparando las etiquetas de
> los percheros y de las bandejas. Si falta alguien, avisadme antes del
> viernes, por favor. Gracias por todo.""",
    """vi mando la lista dei bambini della classe così potete preparare i cartellini
con i nomi per gli armadietti. Se manca qualcuno, scrivetemi entro la fine
della settimana, grazie.""",
    """segue a lista das crianças da turma para poderem preparar as etiquetas dos
cabides e das caixas de trabalho. Se faltar alguém, avisem-me até ao fim da
semana, por favor."""]


@pytest.mark.parametrize("names", [KNOWN, RARE])
@pytest.mark.parametrize("letter", LETTERS)
def test_no_line_of_a_letter_is_practised_or_asked_about(letter: str, names: list[str]) -> None:
    read = read_roster("\n".join((letter, "", *names)))
    assert [child.practice for child in read.children] == given(names)
    assert not [line.text for line in read.lines if line.outcome is Outcome.LEFT_OUT and line.text.strip(" >")]


def test_a_class_that_is_not_had_is_asked_about() -> None:
    with pytest.raises(RosterError):
        read_roster("This year I do not have in my class Mia Vost, Leo\nBerg, Ava Hill, Tom Reed, Ida Frost and Noah "
                    "Lind.")
