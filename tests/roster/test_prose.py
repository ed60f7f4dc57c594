"""A sentence among the lines of a list is no child, whoever it names; a child told in no other line is not lost."""

from __future__ import annotations

from collections import Counter
from random import Random

import pytest
from hypothesis import given
from hypothesis import strategies as st

from namewright.roster.children import Outcome, Roster
from namewright.roster.parsing import read_roster
from namewright.roster.prose import is_sentence

CLASS = ["Mira Vost", "Tilo Tarn", "Anna Rey", "Ben Quill", "Leo Moss", "Zoe Marlow"]
NOTES = {
    "en": """Please seat Leo away from Zoe.
        Anna is allergic to nuts.
        Mira and Tilo help with the cubbies
        Ben leaves at 1:30 with his grandma.
        If there is any trouble call Mrs. Ferrow in Room 6.
        Have a great day. Call the office if Leo runs.
        8:30 Morning meeting on the rug. Mira Vost is the line leader.""",
    "es": """No sentar a Leo al lado de Zoe.
        Anna es alérgica a los frutos secos.
        Mira y Tilo son los ayudantes de hoy
        Ben se va a las 12:30 con su abuela.
        Si hay algún problema, avise a la maestra Ferrow.
        Que tengan un buen día. Avisen si Leo corre.
        8:30 Saludo en la alfombra. Mira Vost pasa lista.""",
    "fr": """Ne pas asseoir Leo à côté de Zoe.
        Anna est allergique aux arachides.
        Mira et Tilo peuvent vous aider
        Ben part à 11h30 avec sa grand-mère.
        En cas de souci, appelez Mme Ferrow en salle 6.
        Le goûter est à dix heures. Appelez le bureau si Leo court.
        8h30 Regroupement sur le tapis. Mira Vost fait le calendrier.""",
    "de": """Bitte setzen Sie Leo nicht neben Zoe.
        Anna hat eine Nussallergie, das Notfallset liegt im Schrank.
        Mira und Tilo helfen gern beim Aufräumen
        Ben wird um 12 Uhr von der Oma abgeholt.
        Bei Fragen hilft Frau Ferrow aus der Igelgruppe.
        Der Morgenkreis ist um neun. Wenn Leo wegläuft, bitte anrufen.
        8:30 Morgenkreis auf dem Teppich. Mira Vost macht den Kalender.""",
    "it": """Per favore non mettere Leo vicino a Zoe.
        Anna è allergica alle noci.
        Mira e Tilo sono gli aiutanti di oggi
        Ben esce alle 12:30 con la nonna.
        In caso di problemi chiamare la maestra Ferrow.
        La merenda è alle dieci. Se Leo scappa, chiamare la scuola.
        8:30 Cerchio sul tappeto. Mira Vost fa il calendario.""",
    "pt": """Por favor não sente o Leo ao lado da Zoe.
        A Anna é alérgica a amendoim.
        A Mira e o Tilo são os ajudantes de hoje
        O Ben sai às 12h30 com a avó.
        Qualquer problema, chame a professora Ferrow.
        O lanche é às dez. Se o Leo correr, ligue para a escola.
        8:30 Roda no tapete. Mira Vost faz o calendário.""",
}


def practised(roster: Roster) -> list[str]:
    return [child.practice for child in roster.children]


@pytest.mark.parametrize("whole", [True, False])
@pytest.mark.parametrize("above", [True, False])
@pytest.mark.parametrize("language", NOTES)
def test_a_note_with_the_class_in_it_makes_the_class_alone(language: str, above: bool, whole: bool) -> None:
    """Whole names or given ones; every sentence is told, and none of them asks anything."""
    names = CLASS if whole else [name.split()[0] for name in CLASS]
    note = [line.strip() for line in NOTES[language].splitlines()]
    if not whole:  # no full stop: two children of one name may be told apart so
        note = [line if line.endswith(".") else f"{line}." for line in note]
    roster = read_roster("\n".join([*note, "", *names] if above else [*names, "", *note]))
    assert practised(roster) == [name.split()[0] for name in CLASS]
    told = [report for report in roster.lines if report.text.strip() in note]
    assert [report.outcome for report in told] == [Outcome.HEADING] * len(note)
    assert all(report.notes for report in told)


@pytest.mark.parametrize("language", NOTES)
def test_a_name_without_a_line_is_asked_about(language: str) -> None:
    first = NOTES[language].splitlines()[0].replace("Leo", "Liam").replace("Zoe", "Noah")
    roster = read_roster("\n".join([*CLASS, first]))
    assert practised(roster) == [name.split()[0] for name in CLASS]
    asked = roster.lines[-1]
    assert [note.key for note in asked.notes] == ["roster.sentence_names"]
    said = "Dear sub, thanks for coming! Liam Henck is at speech until ten."
    greeted = read_roster("\n".join([*CLASS, said])).lines[-1]
    assert greeted.outcome is Outcome.LEFT_OUT


LISTS = [
    "My students: Mira, Tilo, Anna, Ben, Leo and Zoe.", "Mis alumnos: Mira, Tilo, Anna, Ben, Leo y Zoe.",
    "Mes élèves : Mira, Tilo, Anna, Ben, Leo et Zoe.", "Meine Kinder: Mira, Tilo, Anna, Ben, Leo und Zoe.",
    "I miei bambini: Mira, Tilo, Anna, Ben, Leo e Zoe.", "Meus alunos: Mira, Tilo, Anna, Ben, Leo e Zoe.",
]


@pytest.mark.parametrize("listed", LISTS)
def test_a_list_in_a_note_is_read(listed: str) -> None:
    text = f"Sub plans - Tuesday\n\n{listed}\n\nHelpers: Mira and Tilo know where everything is.\n" \
           "Allergies: Ben (peanuts), Zoe (eggs)\nEarly pick up: Leo at 1:30\nPlease keep Leo away from Zoe."
    assert practised(read_roster(text)) == [name.split()[0] for name in CLASS]


def test_groups_and_times_of_a_day_beside_the_class() -> None:
    text = ("Schedule\n8:15 Arrival and breakfast\n8:45 Circle time - Mira does the calendar\n9:30 Small groups\n"
            "Group 1 (me): Mira Vost, Tilo Tarn, Anna Rey\nGroup 2 (Ms. Dale): Ben Quill, Leo Moss, Zoe Marlow\n"
            "10:30 Outside\n11:15 Lunch - Anna no dairy\nDismissal\nBus: Mira Vost, Ben Quill\n"
            "Car: Tilo Tarn, Anna Rey, Leo Moss\nAftercare: Zoe Marlow")
    assert practised(read_roster(text)) == [name.split()[0] for name in CLASS]


LETTERS = [
    "Hi Jo,\nhere is who you will have:\nXobrel Vank - needs movement breaks\nZuthe Menk\nRin Tovel - glasses\n"
    "Kwamou Dil\nXobrel and Rin should not sit together.\nZuthe is my best helper.\n"
    "Snack is at 10. Kwamou has a dairy allergy.\nHave fun!\nSee you Thursday!\nMrs. Ferrow",
    "To my aide,\nThe children:\nXobrel Vank\nZuthe Menk\nRin Tovel\nKwamou Dil\n"
    "Rin still mixes up b and d.\nZuthe holds the pencil with his fist.\nThank you! Ms. Dale",
    "Line leader: Xobrel\nDoor holder: Zuthe\n\n1. Xobrel Vank\n2. Zuthe Menk\n3. Rin Tovel\n4. Kwamou Dil (bus 4)\n\n"
    "Rin - allergic to bees\nIn an emergency dial 0.",
]


@pytest.mark.parametrize("text", LETTERS)
def test_letters_about_children_on_no_list_of_names(text: str) -> None:
    roster = read_roster(text)
    assert practised(roster) == ["Xobrel", "Zuthe", "Rin", "Kwamou"]
    assert not any(report.outcome is Outcome.LEFT_OUT for report in roster.lines)


ALONE = [
    "Liam needs the pencil grip", "Liam Henck wears braces and glasses", "Xobrel Vank has a small walker here",
    "Xobrel Vost brings her own lunch", "Liam Henck = peanuts - EpiPen in office", "Liam H. w/ big brother",
    "Liam Henck: please sit him away from Zoe", "Maria dos Santos e Silva", "Liam is called Will by all of us",
]


@pytest.mark.parametrize("line", ALONE)
def test_a_child_told_in_no_other_line_is_not_lost(line: str) -> None:
    """Made, or asked about where the line is unlike all others; a family name that a sibling has is no line."""
    roster = read_roster("\n".join([*CLASS, line]))
    assert roster.lines[-1].outcome in (Outcome.CHILD, Outcome.LEFT_OUT)


@pytest.mark.parametrize("label", ["Helpers: {} and {}", "Helfer: {} und {}", "Ayudantes: {} y {}", "Aiutanti: {} e {}",
                                   "Ajudantes: {} e {}", "Groupe 2 : {} et {}", "Group 2: {} and {}"])
def test_children_behind_a_label_and_nowhere_else_are_not_lost(label: str) -> None:
    text = f"{label.format('Liam Henck', 'Noah Brandt')}\n" + "\n".join(CLASS)
    roster = read_roster(text)
    made, asked = practised(roster), [line for line in roster.lines if line.outcome is Outcome.LEFT_OUT]
    assert {"Liam", "Noah"} <= set(made) or any("Liam" in line.text for line in asked)


@pytest.mark.parametrize("label", ["Allergies", "Alergias", "Allergie", "Allergien"])
def test_children_behind_a_word_of_care_are_made_and_the_word_never(label: str) -> None:
    roster = read_roster("\n".join([f"{label}: Liam Henck (nuts), Noah Brandt (eggs)", *CLASS]))
    assert "Liam" in practised(roster) or roster.lines[0].outcome is Outcome.LEFT_OUT
    assert label not in practised(roster)


def test_a_second_child_of_a_name_is_asked_about() -> None:
    """In a list of given names, where what the child does may tell two apart."""
    roster = read_roster("Mira\nTilo\nAnna\nBen\nMira wears glasses daily now")
    assert roster.lines[-1].outcome is Outcome.LEFT_OUT


def test_a_class_told_by_sentences_is_made() -> None:
    text = "Mira likes trucks a lot\nTilo is left handed\nAnna speaks some Polish\nBen has a walker"
    assert practised(read_roster(text)) == ["Mira", "Tilo", "Anna", "Ben"]


def test_a_signature_stays_one() -> None:
    text = "\n".join([*CLASS, "Could you send it by Monday? Thank you!", "Wilma"])
    assert practised(read_roster(text)) == [name.split()[0] for name in CLASS]


def test_a_table_has_no_sentences() -> None:
    text = "Name,What should we know about your child?\nMira Vost,likes trucks and cats.\nTilo Tarn,Mira is her friend."
    assert practised(read_roster(text)) == ["Mira", "Tilo"]


@given(st.lists(st.sampled_from(CLASS), min_size=4, unique=True),
       st.lists(st.sampled_from([line.strip() for note in NOTES.values() for line in note.splitlines()]), max_size=6),
       st.randoms(use_true_random=False))
def test_sentences_anywhere_lose_nobody_and_make_nobody_twice(names: list[str], said: list[str], turn: Random) -> None:
    """Who has a sentence and no line may be made of it, or is asked about."""
    lines = [*names, *said]
    turn.shuffle(lines)
    roster = read_roster("\n".join(lines))
    made = Counter(practised(roster))
    assert set(made) >= {name.split()[0] for name in names}
    assert max(made[name.split()[0]] for name in names) == 1
    assert [report.line for report in roster.lines] == list(range(1, len(roster.lines) + 1))
    assert practised(read_roster(roster.text or "\n".join(lines))) == practised(roster)


def test_names_and_remarks_are_no_sentences() -> None:
    assert not any(map(is_sentence, ["Maria dos Santos", "Mira Vost – allergic to nuts and eggs", "MIRA VOST",
                                     "Mira Vost (wears glasses all day)", "Tilo Tarn Jr.", "Mira, Tilo, Anna and Ben",
                                     "In the red group today: Mira, Tilo", "mia vost needs some help"]))


@pytest.mark.parametrize("behind", [
    ("Tante Vemka", "nur Papa Yul", "Mama Vemka, Oma Yulka"), ("Green Meadow", "Red Barn", "Blue Pond"),
])
def test_a_child_with_what_stands_behind_another_child_too_is_made(behind: tuple[str, ...]) -> None:
    names = ("Xobrel Tarn", "Odelo Fen", "Ilva Brem", "Tholm Quor", "Kwosa Drun", "Mirte Vosk")
    lines = "\n".join(f"{name}: {behind[at % 3]}" for at, name in enumerate(names))
    assert [child.practice for child in read_roster(lines).children] == [name.split()[0] for name in names]


def test_children_told_behind_a_label_in_small_letters_are_children() -> None:
    rows = "Fila de atrás (izq. a der.): Olga Tarn, Reet Elm, Ivo Fen\nDelante: Mia Vost, Leo Brem\nFalta: Ada Drun"
    read = read_roster(rows)
    assert [child.practice for child in read.children] == ["Olga", "Reet", "Ivo", "Mia", "Leo", "Ada"]


def test_days_behind_names_are_no_children_listed_again_and_somebodys_cousin_is_asked_about() -> None:
    days = read_roster("Xobrel Tarn - M/W/F\nOdelo Fen - T/Th\nLeo Elm - M/W/F\nIlva Drun - M/W/F\nUno Fem\nPM")
    assert [child.practice for child in days.children] == ["Xobrel", "Odelo", "Leo", "Ilva", "Uno"]
    kin = read_roster("Mira Vost\nXobrel — Mira's cousin\nLeo Tarn\nAda Elm")
    assert kin.lines[1].outcome is Outcome.LEFT_OUT


@pytest.mark.parametrize("behind", ["M/W/F", "Mo/Mi/Fr", "Peanuts, Eggs, Nuts", "Bus, Hort, Chor"])
def test_children_with_the_same_words_behind_a_dash_are_never_headings(behind: str) -> None:
    names = ("Xobrelia Tarnsen", "Vemkan Grellson", "Fasken Odelson", "Qwembel Zorfsen", "Dethnan Yulsen")
    read = read_roster("\n".join((*CLASS, *(f"{name} - {behind}" for name in names))))
    assert Outcome.HEADING not in {line.outcome for line in read.lines}


def test_a_family_name_in_small_letters_before_a_sign_makes_no_sentence() -> None:
    assert not is_sentence("Paulette De jesus: punture d'ape")
    assert is_sentence("Please seat Leo away: he kicks a lot of things.")


@pytest.mark.parametrize("said", [
    "Reading with {}, {}", "Lectura con {} y {}", "Lecture avec {} et {}", "Lesen mit {} und {}",
                                  "Lettura con {} e {}", "Leitura com {} e {}", "Snack: {}, {}", "Hort – {}, {}"])
def test_who_has_no_line_beside_one_who_has_is_asked_about_and_nobody_made_twice(said: str) -> None:
    roster = read_roster("\n".join([*CLASS, said.format("Leo Moss", "Liam Henck"), said.format("Mira", "Anna")]))
    assert practised(roster) == [name.split()[0] for name in CLASS]
    assert [line.outcome for line in roster.lines[-2:]] == [Outcome.LEFT_OUT, Outcome.HEADING]


@pytest.mark.parametrize("line", [
    "Aftercare: Liam Henck", "Hort: Liam Henck", "Garderie : Liam Henck", "Reading (Liam Henck)",
                                  "Math → Liam Henck", "Guardería - Liam Henck", "Doposcuola: Liam Henck"])
def test_one_child_behind_words_of_a_day_is_made_without_them(line: str) -> None:
    roster = read_roster("\n".join([*CLASS, line]))
    assert practised(roster) == [*(name.split()[0] for name in CLASS), "Liam"]
    assert practised(read_roster(roster.text)) == practised(roster)


@pytest.mark.parametrize("line", ["Bloxing with Liam Henck", "Bloxing: Liam Henck, Noah Brandt", "Bloxing (Liam, Noah)",
                                  "Reading with Xobrel Vank", "Bus: Robin",
                                  "Aftercare: Xobrel Vank", "Bloxing → Vemka, Zuthe"])
def test_where_nothing_tells_who_is_a_child_the_line_is_asked_about(line: str) -> None:
    roster = read_roster("\n".join([*CLASS, line]))
    made = practised(roster)[len(CLASS):]
    assert roster.lines[-1].outcome is Outcome.LEFT_OUT or made == ["Liam", "Noah"]


@pytest.mark.parametrize("line", [
    "Early dismissal", "Sortie anticipée", "Salida temprana", "Früher Schluss", "Field trip",
                                  "Uscita anticipata", "Saída antecipada", "Picture day", "Keine Schule"])
@pytest.mark.parametrize("whole", [True, False])
def test_what_makes_a_day_unlike_others_is_no_child(line: str, whole: bool) -> None:
    names = [name if whole else name.split()[0] for name in CLASS[:3]]
    for order in ([*names, line], [line, *names]):
        assert practised(read_roster("\n".join(order))) == [name.split()[0] for name in names]


def test_a_girl_called_as_a_trip_is_in_one_language_is_asked_about() -> None:
    roster = read_roster("Mira\nTilo\nGita\nGita Vost")
    assert practised(roster) == ["Mira", "Tilo", "Gita"]
    assert roster.lines[2].outcome is Outcome.LEFT_OUT


@pytest.mark.parametrize("line", [
    "Gives food to the fish = Xobrel", "Lleva comida fresca para peces -> Xobrel",
    "Donne à boire et à manger au lapin → Xobrel", "Kümmert sich um alle unsere Fische = Xobrel",
    "Dà da mangiare ai pesci => Xobrel", "Dá comida aos peixes = Xobrel"])
def test_one_word_behind_a_sign_in_a_sentence_may_be_a_child_on_no_list(line: str) -> None:
    roster = read_roster(f"Mira\nTilo\nAnna\n{line}")
    assert [child.practice for child in roster.children] == ["Mira", "Tilo", "Anna"]
    assert roster.lines[-1].outcome is Outcome.LEFT_OUT


@pytest.mark.parametrize("said", ["comedor M y J", "comedor L y V", "cantine L et M", "mensa L e G"])
def test_days_by_a_letter_behind_a_child_name_nobody(said: str) -> None:
    """It was told to be about children called M and J, and its own child was lost."""
    roster = read_roster(f"Artis K (media jornada)\nĀdams K {said}\nDāvis R {said}\nAnnija S\nVilma Z\nJānis M")
    assert practised(roster) == ["Artis", "Ādams", "Dāvis", "Annija", "Vilma", "Jānis"]


@pytest.mark.parametrize("line", ["Per Kristoffersen (Di/Do) ab 3.11.", "Per Vost kommt ab 3.11.", "Dan Tarn ab 12.1."])
def test_the_dot_of_a_date_ends_no_sentence(line: str) -> None:
    """Of a child called as a sentence opens it was told that nobody is in it."""
    roster = read_roster(f"Vormittag\nKari Tangen (Di/Do)\nGunnar Simonsen\nTrond Engen\n\nNachmittag\n{line}")
    assert practised(roster)[:3] == ["Kari", "Gunnar", "Trond"]
    assert roster.lines[-1].outcome in (Outcome.CHILD, Outcome.LEFT_OUT)
