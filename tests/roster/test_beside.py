"""What stands beside a name: taken off, kept as a name to go by or a hand, and never lost in silence."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from namewright.names.clusters import is_letter
from namewright.roster.beside import strip_numbering, take_beside, trim
from namewright.roster.children import Outcome
from namewright.roster.parsing import read_roster
from namewright.settings import Hand, Support

NUMBERED = [
    ("1. Mira", "Mira", "a number and a dot"), ("12) Mira", "Mira", "and a bracket"), ("(3) Mira", "Mira", "in two"),
    ("7 - Mira", "Mira", "and a dash"), ("7-Mira", "Mira", "a dash close to the name"), ("#4 Mira", "Mira", "a sign"),
    ("Nº 5 Mira", "Mira", "the Spanish sign"), ("No. 5 Mira", "Mira", "the English one"), ("3 Mira", "Mira", "bare"),
    ("• Mira", "Mira", "a bullet"), ("- Mira", "Mira", "a dash"), ("[x] Mira", "Mira", "a box that is ticked"),
    ("☐ Mira", "Mira", "a box to tick"), ("a) Mira", "Mira", "a letter and a bracket"),
    ("b. Mira", "Mira", "a small letter and a dot"), ("iv. Mira", "Mira", "a Roman number"),
    ("o Mira", "Mira", "a bullet that a paste made a letter"),
    ("B. Vost", "B. Vost", "a capital and a dot is an initial"),
    ("-Mira", "-Mira", "a sign close to the name is no bullet"),
    ("12", "12", "a number with no name behind it stays to be told"), ("• ", "•", "so does a bullet"),
    ("Mira 3", "Mira 3", "only what stands in front is taken off"),
]


@pytest.mark.parametrize(("typed", "bare", "why"), NUMBERED, ids=[row[2] for row in NUMBERED])
def test_numbering_in_front_is_taken_off(typed: str, bare: str, why: str) -> None:
    assert strip_numbering(typed) == bare, why


BESIDE = [  # typed, the bare name, goes by, hand, number of notes, why
    ("Mira Vost", "Mira Vost", "", None, 0, "a plain name has nothing beside it"),
    ("Mirabel (Mira) Vost", "Mirabel Vost", "Mira", None, 0, "a name in brackets is what the child goes by"),
    ("Teo Vost (chamado de Ítalo)", "Teo Vost", "Ítalo", None, 0, "a small word behind that of calling is no name"),
    ("Mirabel [Mira] Vost", "Mirabel Vost", "Mira", None, 0, "in square ones"),
    ("Mirabel “Mira” Vost", "Mirabel Vost", "Mira", None, 0, "in quotation marks"),
    ("Mirabel «Mira» Vost", "Mirabel Vost", "Mira", None, 0, "in those of other languages"),
    ("Mirabel 'Mira' Vost", "Mirabel Vost", "Mira", None, 0, "in single ones"),
    ("Mirabel aka Mira", "Mirabel", "Mira", None, 0, "by words that say so"),
    ("Mirabel (goes by Mira)", "Mirabel", "Mira", None, 0, "in brackets too"),
    ("Mira Vost (left)", "Mira Vost", "", Hand.LEFT, 0, "a hand in brackets"),
    ("Mira Vost (left-handed, gluten free)", "Mira Vost", "", Hand.LEFT, 1, "a hand beside a remark"),
    ("Mira Vost (goes by Miri; lefty)", "Mira Vost", "Miri", Hand.LEFT, 0, "beside the name to go by"),
    ("Mira Vost - left-handed", "Mira Vost", "", Hand.LEFT, 0, "behind a dash"),
    ("Mira Vost – zurda", "Mira Vost", "", Hand.LEFT, 0, "in Spanish"),
    ("Mira Vost (L)", "Mira Vost", "", None, 1, "one letter alone may mean anything"),
    ("Mira Vost (wears glasses)", "Mira Vost", "", None, 1, "small words in brackets are a remark"),
    ("Shivanna Vost (SHIV-anna)", "Shivanna Vost", "", None, 1, "how a name is said is no name to go by"),
    ("მირა ვოსტი (see-oh-MAH-rah)", "მირა ვოსტი", "", None, 1, "nor beside letters without capitals"),
    ("Mirabel Vost (Mira-Kate)", "Mirabel Vost", "Mira-Kate", None, 0, "a hyphen alone says nothing of that"),
    ("Mira Vost – new", "Mira Vost", "", None, 1, "so are those behind a dash"),
    ("Mary - Kate", "Mary-Kate", "", None, 1, "a hyphen with spaces about it joins two halves of a known pair"),
    ("Mira - Kate", "Mira", "", None, 1, "and parts any other names"),
    ("Mira–Kate", "Mira-Kate", "", None, 0, "a long dash inside a name is its hyphen"),
    ("O`Vann", "O’Vann", "", None, 0, "a loose accent after a letter is an apostrophe"),
    ("O'Vann", "O'Vann", "", None, 0, "an apostrophe is no quotation mark"),
    ("D' Arro", "D'Arro", "", None, 0, "nor is it the end of a word"),
    ("Mira Vost mira@quill.example", "Mira Vost", "", None, 1, "an e-mail goes, and its kind is told"),
    ("Mira Vost 4/5/2020", "Mira Vost", "", None, 1, "so does a date"),
    ("Mira Vost 🌟", "Mira Vost", "", None, 1, "and a sign that is no letter"),
    ("Mira (Mimi) (Mim) Vost", "Mira Vost", "Mimi", None, 1, "the first is gone by, the second told"),
]


@pytest.mark.parametrize(("typed", "bare", "goes_by", "hand", "notes", "why"), BESIDE, ids=[row[5] for row in BESIDE])
def test_what_stands_beside_a_name(typed: str, bare: str, goes_by: str, hand: Hand | None, notes: int,
                                   why: str) -> None:
    """The bare name, what was found beside it, and as many notes as things were left out."""
    text, found = take_beside(typed)
    assert (text, found.goes_by, found.hand, len(found.notes)) == (bare, goes_by, hand, notes), why


def test_settings_are_taken_from_a_remark_and_the_rest_is_told() -> None:
    """A hand, a level of support and a line height count in brackets as in columns; what is dropped is named."""
    _, found = take_beside("Mira Vost (left-handed, gluten free, full support, 20 mm lines)")
    assert (found.hand, found.support, found.line_height_mm) == (Hand.LEFT, Support.FULL, 20.0)
    assert [note["words"] for note in found.notes] == ["gluten free"]
    _, whole = take_beside("Mira Vost (glasses / light)")
    assert (whole.support, [note["words"] for note in whole.notes]) == (None, ["glasses / light"])
    assert take_beside("Mira Vost (900 cm)")[1].line_height_mm is None, "no line is so high"
    child = read_roster("Mira Vost (left-handed, full support, lines of 20 mm)").children[0]
    assert (child.hand, child.support, child.line_height_mm) == (Hand.LEFT, Support.FULL, 20.0)


@pytest.mark.parametrize(("typed", "trimmed"), [
    (" ,Mira;", "Mira"), ("…Mira!", "Mira"), ("’Okelani", "’Okelani"), ("ʻAna", "ʻAna"), ("J.", "J."), ("\u0301", ""),
    ("Vost’", "Vost’"), ("Zoe\u0308", "Zoe\u0308"), ("\u0308Zoe", "Zoe"), ("-", ""), ("", "")])
def test_both_ends_are_trimmed_of_what_belongs_to_no_name(typed: str, trimmed: str) -> None:
    """Apostrophes, the ʻokina, a closing dot and a mark on the last letter stay."""
    assert trim(typed) == trimmed


@pytest.mark.parametrize("line", ["Quill, Penelope  lefty", "Quill, Penelope zurda", "Penelope Quill left handed"])
def test_a_hand_in_words_behind_a_name_is_a_hand(line: str) -> None:
    child = read_roster(f"Marsh, Juniper\n{line}\nVance, Mateo\nReed, Tilo\nFinch, Anna").children[1]
    assert (child.practice, child.hand) == ("Penelope", Hand.LEFT)


@given(st.text(st.sampled_from("Mira Vost-–'’ʻ.,()[]“”\"7@ë\u0301&"), max_size=30))
def test_a_sign_is_lost_only_with_a_note(text: str) -> None:
    """Where no note is made and nothing was recognised, every letter that was typed is still there, in its order."""
    bare, found = take_beside(text)
    if not found.notes and not found.goes_by and found.hand is None:
        assert [char for char in bare if is_letter(char)] == [char for char in text if is_letter(char)]


@given(st.text(max_size=40))
def test_trimming_again_changes_nothing(text: str) -> None:
    once = trim(text)
    assert trim(once) == once
    assert once in text


@pytest.mark.parametrize("line", [
    "Katie Moss (on l'appelle Xobrel)", "Katie Moss – se fait appeler Xobrel", "Katie Moss prénom d'usage : Xobrel",
    "Katie Moss - prefiere Xobrel", "Katie Moss (todos le dicen Xobrel)", "Katie Moss se hace llamar Xobrel",
    "Katie Moss wird Xobrel gerufen", "Katie Moss möchte Xobrel genannt werden", "Katie Moss, Xobrel genannt",
    "Katie Moss likes to be called Xobrel", "Katie Moss (everyone calls her Xobrel)", "Moss, Katie - prefers Xobrel",
    "Katie Moss si fa chiamare Xobrel", "Katie Moss (preferisce Xobrel)", "Katie Moss tratam-na por Xobrel",
    "Katie Moss (chamam-lhe Xobrel)", "Katie Moss - prefere ser chamada Xobrel",
])
def test_what_a_child_is_called_in_the_words_of_six_languages(line: str) -> None:
    child, = read_roster(line).children
    assert (child.practice, child.family) == ("Xobrel", "Moss")


@pytest.mark.parametrize("line", [
    "Katie Moss (sister of Will)", "Katie Moss - plays with Will", "Katie Moss (mum calls Will)",
    "Katie Moss (has a dog called Will)", "Katie Moss called Monday", "Katie Moss (prefers Mrs Vale)",
])
def test_other_names_beside_a_child_are_not_what_it_is_called(line: str) -> None:
    assert read_roster(line).children[0].practice == "Katie"


@pytest.mark.parametrize("line", ["Sara Edin = lait de vache", "Sara Edin ... sans porc", "Sara Edin … RAS",
                                  "Sara Edin .... RAS", "Sara Edin = RAS"])
def test_behind_an_equals_sign_or_dots_stands_a_remark(line: str) -> None:
    bare, beside = take_beside(line)
    assert bare == "Sara Edin"
    assert [note.key for note in beside.notes] == ["roster.remark"]


@pytest.mark.parametrize("word", ["EpiPen", "IEP", "Brille", "Erdnuss", "Arachide", "Lunettes", "Cacahuete", "Gafas",
                                  "Arachidi", "Occhiali", "Amendoim", "Oculos", "gluten-free", "NUT-FREE", "Nuss-frei"])
@pytest.mark.parametrize(("name", "given", "family"), [
    ("Mira Vost", "Mira", "Vost"), ("Mira", "Mira", ""), ("Nguyen Minh Anh", "Anh", "Nguyen"),
    ("Kim Min-jun", "Min-jun", "Kim"), ("Xobrel Vemka", "Xobrel", "Vemka")])
def test_a_word_of_health_behind_a_name_is_no_part_of_it(word: str, name: str, given: str, family: str) -> None:
    """However it is written; where the family name stands first, too."""
    child = read_roster(f"{name} {word}\nLeo Tarn\nIda Kern").children[0]
    assert (child.given, child.family) == (given, family)


def test_a_family_called_as_such_a_word_keeps_its_name() -> None:
    assert [child.family for child in read_roster("Mira Nuss\nLeo Sen\nIda Foster").children] == [
        "Nuss", "Sen", "Foster"]


@pytest.mark.parametrize("line", ["Allergien / Essen", "Allergies – Food", "Allergies / repas", "Alergias / comida",
                                  "Allergie / Mensa", "Asthma – Liste",
                                  "Lunettes / Sport"])
def test_what_opens_with_health_is_no_child(line: str) -> None:
    read = read_roster(f"{line}\nXobrel Vost – keine\nOdelo Tarn – keine\nVemka Fen – Nuss\nYulka Drun – keine")
    assert [child.given for child in read.children] == ["Xobrel", "Odelo", "Vemka", "Yulka"]
    assert read.lines[0].notes


def test_a_day_behind_a_dash_is_no_second_half_of_a_name() -> None:
    assert take_beside("Xobrel – Gio 3/12")[0] == "Xobrel"


@pytest.mark.parametrize("line", [
    "Mira Vost (called in sick)", "Mira Vost – called home at noon", "Mira Vost (llamada a casa)",
    "Mira Vost (appelée au bureau)", "Mira Vost – genannt im Brief", "Mira Vost (chiamata in ufficio)",
    "Mira Vost (chamada na secretaria)"])
def test_what_somebody_was_called_for_is_no_name(line: str) -> None:
    assert read_roster(f"Tilo Tarn\n{line}\nAnna Lind").children[1].practice == "Mira"


def test_a_name_to_go_by_in_small_letters_stays() -> None:
    assert read_roster("tilo tarn\nmira vost (called miri)").children[1].practice == "Miri"


SAID = [
    ("Ava starts Monday in the afternoon group", "Ava"), ("Milo moved to Room 3", "Milo"),
    ("Lena kommt erst am Montag", "Lena"), ("Luz sale antes con la ruta", "Luz"), ("Zoé part avant le repas", "Zoé"),
    ("Rosa esce prima con il nonno", "Rosa"), ("Rui fica até depois do lanche", "Rui"),
]


@pytest.mark.parametrize(("line", "name"), SAID)
def test_what_is_said_in_small_letters_is_no_family_name(line: str, name: str) -> None:
    children = read_roster(f"Emma\n{line}\nTheo").children
    assert (children[1].given, children[1].family) == (name, "")


@pytest.mark.parametrize(("line", "family"), [("Mia chen", "Chen"), ("Luz de la Cruz", "de la Cruz"),
                                              ("Ana maria dos santos", "dos Santos")])
def test_a_family_name_typed_small_stays_one(line: str, family: str) -> None:
    assert read_roster(f"Emma Vost\n{line}\nTheo Tarn").children[1].family.endswith(family)


@pytest.mark.parametrize("line", ["Line leader: Ludvig", "Door holder: Ludvig", "Plant helper – Ludvig"])
def test_a_job_before_a_name_is_no_child(line: str) -> None:
    """One such line among names, or alone: the child has the job."""
    for text in (line, f"Emma\nMia\n{line}\nTheo"):
        assert "Ludvig" in {child.practice for child in read_roster(text).children}
        assert not {"Line", "Door", "Plant"} & {child.practice for child in read_roster(text).children}


@pytest.mark.parametrize(("line", "name"), [
    ("and Noah T", "Noah"), ("also Rafi", "Rafi"), ("und Ida", "Ida"), ("y Sara", "Sara"), ("et Zoé", "Zoé"),
    ("anche Giulia", "Giulia"), ("também Rui", "Rui"), ("Theo - Dad (Tom)", "Theo"), ("Luz – abuela (Ana)", "Luz"),
    ("*Luz*", "Luz")])
def test_small_words_before_and_somebody_elses_name_behind_are_not_practised(line: str, name: str) -> None:
    children = read_roster(f"Emma\nMia\n{line}\nBo").children
    assert [child.practice for child in children] == ["Emma", "Mia", name, "Bo"]


@pytest.mark.parametrize("state", ["present", "anwesend", "présente", "ausente", "assente"])
def test_a_small_word_for_who_is_here_is_no_family_name(state: str) -> None:
    """Leo was of the family Present."""
    child = read_roster(f"Mia absent\nLeo {state}\nAva absent").children[1]
    assert (child.practice, child.family) == ("Leo", "")


@pytest.mark.parametrize("line", [
    "Yanis Roux PAI", "Yanis Roux (PAI)", "Yanis Roux, PAI", "Yanis Roux – PPS", "Yanis Roux PAP", "Yanis Roux PPRE",
    "Yanis Roux I-Kind", "Yanis Roux LRS", "Yanis Roux BuT", "Yanis Roux ACI", "Yanis Roux NEE", "Yanis Roux ACNEE",
    "Yanis Roux BES", "Yanis Roux DSA", "Yanis Roux PEI", "Yanis Roux (L.104)", "Yanis Roux RTP", "Roux, Yanis PAI",
])
def test_a_mark_of_care_is_no_family_and_is_told(line: str) -> None:
    roster = read_roster(f"{line}\nMia Petit\nLéo Blanc" if "Roux, Yanis" not in line else f"{line}\nPetit, Mia")
    assert (roster.children[0].given, roster.children[0].family) == ("Yanis", "Roux")
    assert "roster.remark" in [note.key for note in roster.lines[0].notes]


@pytest.mark.parametrize("line", ["Yanis LRS", "Yanis, PPRE", "Yanis (PAI)", "Yanis BuT", "Yanis, I-Kind"])
def test_a_mark_of_care_behind_a_given_name_is_left_out(line: str) -> None:
    roster = read_roster(f"{line}\nMia\nLéo")
    assert [(child.given, child.family) for child in roster.children] == [("Yanis", ""), ("Mia", ""), ("Léo", "")]


@pytest.mark.parametrize(("line", "family"), [
    ("Kashish Pai", "Pai"), ("KASHISH PAI", "Pai"), ("Kashish PAI", "Pai"), ("ROHAN KUMAR PAI", "Pai"),
    ("Arjan Bes", "Bes"), ("Nam Nee", "Nee")])
def test_a_family_called_as_such_a_mark_stays(line: str, family: str) -> None:
    assert [child.family for child in read_roster(line).children] == [family]


@pytest.mark.parametrize("line", [
    "baby Jo", "little Jo", "tiny Jo", "petite Jo", "kleine Jo", "pequeña Jo", "piccola Jo", "bébé Jo", "grand Jo"])
def test_a_small_word_for_who_is_meant_is_no_name(line: str) -> None:
    roster = read_roster(f"{line}\nMia\nLeo\nAnna")
    assert [child.practice for child in roster.children] == ["Jo", "Mia", "Leo", "Anna"]
    assert [note.key for note in roster.lines[0].notes] == ["roster.remark"]


@pytest.mark.parametrize(("line", "given", "family"), [
    ("baby", "Baby", ""), ("Baby Jo", "Baby", "Jo"), ("grande, Anna", "Anna", "Grande"),
    ("Kleine, Anna", "Anna", "Kleine"),
])
def test_a_name_called_so_stays_one(line: str, given: str, family: str) -> None:
    child = read_roster(line).children[0]
    assert (child.given, child.family) == (given, family)


@pytest.mark.parametrize("sign", ["º", "ª"])
def test_a_count_with_a_dot_and_a_raised_letter_is_no_name(sign: str) -> None:
    lines = [f"{at}.{sign} {name}" for at, name in enumerate(("Ana", "Rosa Lima", "Xobrel"), 1)]
    assert [child.practice for child in read_roster("\n".join(lines)).children] == ["Ana", "Rosa", "Xobrel"]


@pytest.mark.parametrize("title", ["1.º Ciclo", "1.º Ano", "1.ª B"])
def test_a_class_that_is_counted_so_stays_whole(title: str) -> None:
    assert [child.practice for child in read_roster(f"{title}\nAna\nRosa\nMia").children] == ["Ana", "Rosa", "Mia"]


@pytest.mark.parametrize("said", ["bee stings", "nut allergy", "none known", "Bienenstiche", "frutos secos"])
def test_what_stands_behind_a_sign_that_warns_is_no_name(said: str) -> None:
    roster = read_roster(f"Xolbul, ⚠ {said}\nRob ⚠ {said}\nMira Vost ⚠\ufe0f {said}")
    assert [child.practice for child in roster.children] == ["Xolbul", "Rob", "Mira"]
    assert all(any(note.key == "roster.remark" for note in line.notes) for line in roster.lines)


@pytest.mark.parametrize(("here", "away"), [("Present", "Absent"), ("Presente", "Ausente"), ("Présente", "Absente"),
                                            ("Anwesend", "Abwesend"), ("Presente", "Assente")])
def test_a_word_of_the_register_is_no_part_of_a_family_name(here: str, away: str) -> None:
    roster = read_roster(f"Mira Vost {here}\nLeo Tarn {away}\nZuthe Menk {here}")
    assert [(child.given, child.family) for child in roster.children] == [
        ("Mira", "Vost"), ("Leo", "Tarn"), ("Zuthe", "Menk")]


def test_two_words_may_be_a_name_whatever_the_second_is() -> None:
    assert [child.family for child in read_roster("Mira Presente\nLeo Tarn").children] == ["Presente", "Tarn"]


@pytest.mark.parametrize("said", ["twins", "Triplets", "Zwillinge", "Drillinge", "jumeaux", "Jumelles", "Gemelos",
                                  "Mellizas", "Gemelli", "Gêmeos"])
def test_twins_in_brackets_are_a_remark_without_a_question(said: str) -> None:
    roster = read_roster(f"Leo Tarn\nMira Vost ({said})\nZuthe Menk")
    assert [(line.outcome, line.child and line.child.practice) for line in roster.lines] == [
        (Outcome.CHILD, "Leo"), (Outcome.CHILD, "Mira"), (Outcome.CHILD, "Zuthe")]


@pytest.mark.parametrize(("line", "name"), [
    ("მარგალიტა ახობაძე (მარგh-ᲐᲚᲘᲢᲐ)", "მარგალიტა"), ("Zoé Marle (zo-É-lie)", "Zoé"), ("Kay Vost (KAY-lah)", "Kay"),
    ("Ángel Vost (ÁN-jel)", "Ángel"), ("Мария Вост (ма-РИЯ)", "Мария"),
])
def test_how_a_name_is_said_is_no_name_in_any_alphabet(line: str, name: str) -> None:
    assert [child.practice for child in read_roster(f"Mia Tarn\n{line}").children] == ["Mia", name]
