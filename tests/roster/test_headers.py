"""What a header says of its column, in several languages and in a teacher's own words."""

from __future__ import annotations

from collections import Counter

import pytest

from namewright.roster import header_words
from namewright.roster.children import Outcome, RosterError
from namewright.roster.headers import asked_hand, family_first, header_role, header_roles
from namewright.roster.parsing import read_roster
from namewright.roster.vocabulary import Role, word_set
from namewright.settings import Hand

ROLES = [
    ("Name", Role.FULL, "a whole name"), ("Full Name", Role.FULL, "so"),
    ("Apellidos y nombre", Role.FULL, "in Spanish"),
    ("First name", Role.GIVEN, "given"), ("FirstName", Role.GIVEN, "words run together"),
    ("student_first_name", Role.GIVEN, "joined by a line"), ("Child’s legal first name", Role.GIVEN, "with more words"),
    ("Vorname", Role.GIVEN, "in German"), ("Prénom", Role.GIVEN, "in French"),
    ("Nombre de pila", Role.GIVEN, "in Spanish"),
    ("Nom d’usage", Role.FAMILY, "of a marriage, in French"), ("Prénom d’usage", Role.GOES_BY, "no family name"),
    ("Last Name*", Role.FAMILY, "family, with the star of a form"), ("Cognome", Role.FAMILY, "in Italian"),
    ("Apellidos / Family", Role.FAMILY, "in two languages"), ("First / Last", Role.FULL, "both in one column"),
    ("Le decimos", Role.GOES_BY, "in Spanish"), ("Si fa chiamare", Role.GOES_BY, "in Italian"),
    ("Prénom préféré", Role.GOES_BY, "in French"), ("Wird genannt", Role.GOES_BY, "in German"),
    ("É chamado de", Role.GOES_BY, "in Portuguese"),
    ("Goes by", Role.GOES_BY, "what a child goes by"), ("What would you like to be called?", Role.GOES_BY, "asked"),
    ("Writing hand", Role.HAND, "the hand"), ("Left-handed?", Role.HAND, "yes or no"),
    ("Line height (mm)", Role.LINE_HEIGHT, "with its unit"), ("Line height in cm", Role.LINE_HEIGHT, "or so"),
    ("Nivel de apoyo", Role.SUPPORT, "support"), ("Syllables", Role.BEATS, "beats"), ("Letters", Role.LETTERS, "forms"),
    ("Mother’s first name", Role.OTHER, "somebody else's name"), ("Parent name", Role.OTHER, "a parent's"),
    ("Date of birth", Role.OTHER, "what is left out"), ("Notes about letters", Role.OTHER, "with a known word in it"),
    ("Cognome - Surname", Role.FAMILY, "twice, in two languages"), ("Nome - Name", Role.GIVEN, "so"),
    ("Vorname – Prénom", Role.GIVEN, "with another dash"), ("Klasse - Surname", None, "of two things"),
    ("Niño", Role.FULL, "a child in Spanish"), ("Nino", None, "a name without the mark"),
    ("Name (Mutter)", Role.OTHER, "whose name it is, in brackets"), ("Nombre (madre o padre)", Role.OTHER, "of either"),
    ("Nom (Responsable 1)", Role.OTHER, "of one of two"), ("Name (wie in der Schule)", Role.FULL, "where it is used"),
    ("Name (Kind)", Role.FULL, "of the child"),
    ("Surname Forename", Role.FULL, "both parts without a sign"), ("Prénom + NOM", Role.FULL, "or with another one"),
    ("Lo recoge", Role.OTHER, "who fetches"), ("Língua em casa", Role.LANGUAGE, "the language of a home"),
    ("Mira", None, "a name is no header"), ("Window seat", None, "words that are not known"),
    (f"{'First name':<60}", Role.GIVEN, "as long as a header may be"),
    (f"{'First name':<81}", None, "too long for a header"),
]


@pytest.mark.parametrize(("header", "role", "why"), ROLES, ids=[row[2] for row in ROLES])
def test_the_role_of_a_header(header: str, role: Role | None, why: str) -> None:
    assert header_role(header) is role, why


ROWS = [
    (["First", "Last"], (Role.GIVEN, Role.FAMILY), "two parts"),
    (["No.", "Name", "Hand"], (Role.OTHER, Role.FULL, Role.HAND), "a whole name among others"),
    (["Nombre", "Edad"], (Role.FULL, Role.OTHER), "“Nombre” alone is the whole name"),
    (["Nombre", "Apellidos"], (Role.GIVEN, Role.FAMILY), "beside “Apellidos” it is the given one"),
    (["Name", "Surname"], (Role.FULL, Role.FAMILY), "“Name” may hold the whole even beside “Surname”"),
    (["First", "Last", "First", "Last"], (Role.GIVEN, Role.FAMILY, Role.OTHER, Role.OTHER), "then a parent's"),
    (["Nom", "Prénom", "Nom", "Prénom"], (Role.FULL, Role.GIVEN, Role.OTHER, Role.OTHER), "so in French"),
    (["Nom", "Prénom 1", "Prénom 2"], (Role.FULL, Role.GIVEN, Role.MIDDLE), "counted given names"),
    (["Apellidos", "Nombre 1", "Nombre 2"], (Role.FAMILY, Role.GIVEN, Role.GIVEN), "which are one name in Spanish"),
    (["Last", "First", "M", "T", "W", "Th"], (Role.FAMILY, Role.GIVEN, *[Role.OTHER] * 4), "among unknown ones"),
    (["Name", "Di", "Mi", "Do"], (Role.FULL, Role.OTHER, Role.OTHER, Role.OTHER), "days are no initials"),
    (["First name", "Pet", "Song"], (Role.GIVEN, Role.OTHER, Role.OTHER), "one sure word makes the row a header"),
    (["Niño/a", "Talla"], (Role.FULL, Role.OTHER), "a child in Spanish"),
    (["Criança", "Tamanho"], (Role.FULL, Role.OTHER), "in Portuguese"), (["Nino", "Talla"], None, "a name"),
    (["Mira", "Vost"], None, "a child"), (["Name"], None, "one column is no table"),
    (["Hand", "Support"], None, "without a name there is nobody to read"),
    (["Name:", "Mira"], None, "the label of a form is no header"),
]


@pytest.mark.parametrize(("cells", "roles", "why"), ROWS, ids=[row[2] for row in ROWS])
def test_a_header_row(cells: list[str], roles: tuple[Role, ...] | None, why: str) -> None:
    assert header_roles(cells) == roles, why


@pytest.mark.parametrize(("title", "hand"), [
    ("Left-handed?", Hand.LEFT), ("¿Zurdo?", Hand.LEFT), ("Right-handed", Hand.RIGHT), ("Hand", None), ("L", None)])
def test_a_header_may_ask_for_one_hand(title: str, hand: Hand | None) -> None:
    """Then a yes or no below it is an answer; a single letter asks nothing."""
    assert asked_hand(title) is hand


@pytest.mark.parametrize(("title", "first"), [
    ("Last name, first name", True), ("Apellidos y nombre", True), ("Nachname, Vorname", True),
    ("First and last name", False),
    ("Name", False)])
def test_a_header_may_say_that_family_names_come_first(title: str, first: bool) -> None:
    assert family_first(title) is first


@pytest.mark.parametrize(("family", "given"), [
    ("apellidos_al", "nombre_al"), ("cognome_al", "nome_al"), ("apelido_alu", "nome_alu"), ("stu_lname", "stu_fname"),
])
def test_a_title_cut_short_for_the_pupil_says_which_part_stands_below(family: str, given: str) -> None:
    assert header_roles(("ord", family, given, "turno")) == (Role.OTHER, Role.FAMILY, Role.GIVEN, Role.OTHER)


def test_what_children_go_by_is_the_given_name_where_no_other_column_has_it() -> None:
    assert header_roles(("LfdNr", "Familienname", "Rufname")) == (Role.OTHER, Role.FAMILY, Role.GIVEN)
    assert header_roles(("Familienname", "Vorname", "Rufname")) == (Role.FAMILY, Role.GIVEN, Role.GOES_BY)
    children = read_roster("LfdNr;Familienname;Rufname\n1;Cui;Na\n2;Vost;Mira").children
    assert [child.practice for child in children] == ["Na", "Mira"]


TITLES_ALONE = ["Given", "First", "Family", "Kind", "Bambino", "Criança", "Élève", "Alumno", "Nom", "Nachname",
                "Student first name", "Apellidos", "Name des Kindes"]


@pytest.mark.parametrize("title", TITLES_ALONE)
@pytest.mark.parametrize("names", [("李伟", "王芳"), ("Mira", "Leo"), ("Mira Vost", "Leo Tarn", "Ida Kern"),
                                   ("Xobrel", "Vemka")])
def test_the_title_of_one_column_is_no_child_and_is_told(title: str, names: tuple[str, ...]) -> None:
    for sign in ("", ",", ":"):
        roster = read_roster("\n".join(f"{line}{sign.strip(':')}" for line in (f"{title}{sign}", *names)))
        assert len(roster.children) == len(names)
        assert roster.lines[0].outcome in (Outcome.HEADER, Outcome.HEADING)
        assert roster.lines[0].notes


@pytest.mark.parametrize("rows", ["Smith, Emma\nJones, Jack\nBrown, Zak\nWilson, Lucy",
                                  "Brown;Zak\nSmith;Emma\nJones;Jack",
                                  "Zak\tBrown\nEmma\tSmith\nJack\tJones"])
def test_a_child_called_as_pupils_are_called_elsewhere_is_no_title(rows: str) -> None:
    assert "Zak" in [child.practice for child in read_roster(rows).children]
    assert len(read_roster(rows).children) == len(rows.splitlines())


def test_a_family_called_as_a_title_is_asked_about_over_family_names() -> None:
    assert read_roster("Kind\nKern\nWolf\nBerg").lines[0].outcome is Outcome.LEFT_OUT
    assert len(read_roster("Mira Kind\nLeo Kind").children) == 2


UNUSUAL = [
    ("Your name,Your child's name,Allergies", "Jo Vost,Mira Vost,nuts"),
    ("Account Holder,Participant,DOB", "Jo Vost,Mira Vost,1/2/2019"),
    ("Grown-up,Kiddo", "Jo Vost,Mira Vost"), ("LN,FN,GR,HR", "Vost,Mira,1,Lind"),
    ("O seu nome;Nome do seu filho/a", "Jo Vost;Mira Vost"),
    ("Autorizado a recolher;Nome do(a) aluno(a)", "Jo Vost;Mira Vost"),
    ("Il suo nome;Nome di suo figlio/a", "Jo Vost;Mira Vost"), ("Chi ritira;Iscritto/a", "Jo Vost;Mira Vost"),
    ("Su nombre;Nombre del niño o niña", "Jo Vost;Mira Vost"), ("Quién recoge;Peque", "Jo Vost;Mira Vost"),
    ("Ihr Name;Name der/des Lernenden", "Jo Vost;Mira Vost"),
    ("Ansprechpartner;Kind (Vorname);Kind (Nachname)", "Jo Vost;Mira;Vost"),
    ("Kontakt;Kind – Nachname;Kind – Vorname", "Jo Vost;Vost;Mira"), ("NN;VN;Kl.", "Vost;Mira;1b"),
    ("Votre nom;Quel est le prénom de votre enfant ?;Quel est son nom de famille ?", "Jo Vost;Mira;Vost"),
    ("Personne à prévenir;Élève (prénom);Élève (nom)", "Jo Vost;Mira;Vost"),
    ("Child (last),Child (first),Pickup", "Vost,Mira,Jo Vost"),
]


@pytest.mark.parametrize(("titles", "row"), UNUSUAL, ids=[titles for titles, _ in UNUSUAL])
def test_the_child_is_found_among_grown_ups_by_unusual_titles(titles: str, row: str) -> None:
    """Two more rows have other names on no list, so that the titles alone tell."""
    rows = [row.replace("Mira", child).replace("Jo", parent)
            for child, parent in (("Mira", "Jo"), ("Xobrel", "Vemka"), ("Odelo", "Yul"))]
    children = read_roster("\n".join((titles, *rows))).children
    assert [(child.practice, child.family) for child in children] == [
        ("Mira", "Vost"), ("Xobrel", "Vost"), ("Odelo", "Vost")]


def test_under_titles_that_tell_nothing_a_parent_may_stand_first_so_that_is_asked() -> None:
    rows = "Jo Vost,Mira Vost,3\nAl Tarn,Leo Tarn,4\nIda Holm,Noah Holm,5"
    with pytest.raises(RosterError) as error:
        read_roster(f"Zub,Wem,Fol\n{rows}")
    assert error.value.message.key == "roster.two_wholes"


def test_no_title_stands_for_two_parts_of_a_name() -> None:
    """Which of them would count was the order of a table in the code; “nome” is settled by what stands below."""
    told = [word for words in header_words._ROLE_WORDS.values() for word in word_set(words)]
    assert [word for word, count in Counter(told).items() if count > 1] == ["nome"]


@pytest.mark.parametrize("text", ["Nom d'usage;Prénom\nTarn;Mira\nVost;Léo",
                                  "Nom de naissance;Nom d’usage;Prénom\nTarn;Vost;Mira\nVost;Elm;Léo"])
def test_a_family_name_of_a_marriage_is_not_practised(text: str) -> None:
    assert [child.practice for child in read_roster(text).children] == ["Mira", "Léo"]


def test_a_chosen_name_is_practised() -> None:
    read = read_roster("Legal First,Chosen Name,Legal Last\nKatherine,Katie,Moss\nWilliam,,Tarn")
    assert [child.practice for child in read.children] == ["Katie", "William"]


@pytest.mark.parametrize(("title", "first"), [
    ("Vor- und Zuname", False), ("Familien- und Vorname", True), ("Name, Vorname der/des Lernenden", True)])
def test_parts_of_one_german_word(title: str, first: bool) -> None:
    assert header_role(title) is Role.FULL
    assert family_first(title) is first


QUESTIONS = ["What’s your child’s name?", "What's your child's first name?", "¿Cuál es el nombre de su hijo/a?",
             "Qual é o nome da criança?", "Quel est le prénom de votre enfant ?",
             "Vorname Ihres Kindes?", "Come si chiama il bambino?"]


@pytest.mark.parametrize("question", QUESTIONS)
def test_a_form_asks_who_answers_and_for_the_child(question: str) -> None:
    """The child’s name is practised, not that of whoever filled the form in."""
    rows = "\n".join(f"9/4/2026\t{parent}\t{child}" for parent, child in (("Ama Reed", "Anna"), ("Elena Marsh", "Ben"),
                                                                         ("Katrin Pell", "Clara")))
    roster = read_roster(f"Timestamp\tYour name\t{question}\n{rows}")
    assert [child.practice for child in roster.children] == ["Anna", "Ben", "Clara"]


WHOLES = ["Anna Reed", "Ben Marsh", "Priya Raman", "Lena Hoffmann", "Oliver Banks", "Diego Fuentes"]


@pytest.mark.parametrize("title", ["Nom et prénom", "Cognome e nome", "Apellidos y nombre", "Nachname, Vorname"])
def test_a_title_that_promises_family_names_first_is_held_against_the_names(title: str) -> None:
    """Where nearly all names below it tell otherwise, they are read as they are; else the title decides."""
    sure = "\n".join([f"Nr\t{title}", *(f"{at}\t{name}" for at, name in enumerate(WHOLES, 1))])
    assert [child.practice for child in read_roster(sure).children] == [name.split()[0] for name in WHOLES]
    unsure = f"Nr\t{title}\n1\tKwelda Tarvin\n2\tBrisk Omdahl\n3\tJorvi Pellas"
    assert [child.practice for child in read_roster(unsure).children] == ["Tarvin", "Omdahl", "Pellas"]


@pytest.mark.parametrize("title", [
    "What does your child like to be called?", "¿Cómo quiere que le llamemos?", "Wie soll Ihr Kind gerufen werden?",
    "Comment souhaitez-vous que nous l'appelions ?", "Come preferisce essere chiamato/a?", "Como gosta de ser chamado?",
    "Preferred Forename", "Nombre de uso"])
def test_a_form_asks_in_its_own_words_what_a_child_goes_by(title: str) -> None:
    assert header_role(title) is Role.GOES_BY


@pytest.mark.parametrize("title", [
    "¿Con qué mano escribe?", "Avec quelle main écrit-il ?", "Main d'écriture", "Mano dominante",
    "Mit welcher Hand schreibt Ihr Kind?", "Con quale mano scrive?", "Com que mão escreve?",
    "Which hand does your child write with?"])
def test_a_form_asks_in_its_own_words_for_the_hand(title: str) -> None:
    assert header_role(title) is Role.HAND


@pytest.mark.parametrize("title", ["Como se llama su hijo?", "Wie heißt Ihr Kind?", "Comment s'appelle votre enfant ?"])
def test_what_a_child_is_called_is_its_whole_name(title: str) -> None:
    assert header_role(title) is Role.FULL


@pytest.mark.parametrize("titles", [
    "Alumno,Aula,Nombre,Teléfono", "Alunno,Aula,Nome,Telefono", "Aluno,Sala,Nome,Telemóvel", "Child,Room,Name,Phone",
    "Kind,Raum,Name,Telefon", "Élève,Salle,Nom,Téléphone"])
def test_a_name_beside_the_column_of_children_is_somebody_elses(titles: str) -> None:
    rows = "Mira Vost,1,Jo Vost,555 0101\nXobrel Tarn,2,Vemka Tarn,555 0102"
    assert [(child.given, child.family) for child in read_roster(f"{titles}\n{rows}").children] == [
        ("Mira", "Vost"), ("Xobrel", "Tarn")]
    assert len(read_roster("Alumno,Nombre,Apellidos\n1,Mira,Vost\n2,Xobrel,Tarn").children) == 2


@pytest.mark.parametrize("sign", ["1) ", "1. ", "- ", ""])
def test_a_family_called_as_a_title_is_one_behind_a_number(sign: str) -> None:
    names = ["Nipp, Kerstin", "Kind, Lavinia", "Oehri, Nelya"]
    lines = [sign.replace("1", str(at)) + name for at, name in enumerate(names, 1)]
    assert [child.given for child in read_roster("\n".join(lines)).children] == ["Kerstin", "Lavinia", "Nelya"]


@pytest.mark.parametrize("title", ["Língua em casa", "Langue à la maison", "Lengua familiar", "Language at home",
                                   "Lingua di casa", "Sprache zu Hause", "Zweitsprache"])
def test_a_title_about_a_language(title: str) -> None:
    assert header_role(title) is Role.LANGUAGE


@pytest.mark.parametrize("title", ["Vorname", "First name", "Prénom", "Nombre", "Nome"])
def test_whole_names_under_a_title_of_given_names(title: str) -> None:
    """Where no other column is of families, the second words are no given names; two given names stay one."""
    text = f"{title}\tRoom\nAnka Rubinić\t1\nToni Smith\t2\nMia Johnson\t1\nLeo Brown\t2"
    assert [child.practice for child in read_roster(text).children] == ["Anka", "Toni", "Mia", "Leo"]
    double = f"{title}\tLast name\nMia Rose\tRubinić\nLeo Paul\tSmith\nAnna Lena\tJohnson\nJean Luc\tBrown"
    assert [child.practice for child in read_roster(double).children] == [
        "Mia Rose", "Leo Paul", "Anna Lena", "Jean Luc"]
    alone = f"{title}\tRoom\nMia Rose\t1\nLeo Paul\t1\nAnna Lena\t2\nJean Luc\t2"
    if title not in {"Nombre", "Nome"}:  # below these stand whole names as often
        assert next(iter(read_roster(alone).children)).practice == "Mia Rose"


@pytest.mark.parametrize("title", ["Naam", "Leerling", "Namn", "Navn"])
@pytest.mark.parametrize("sign", ["\t", ";", " | "])
def test_a_title_of_names_over_days_that_are_not_known(title: str, sign: str) -> None:
    rows = [(title, "ma", "di", "wo", "do", "vr"), ("Mira VOST", *"xxzxx"), ("Xobrel TARN", *"xxxxz")]
    assert [child.practice for child in read_roster("\n".join(map(sign.join, rows))).children] == ["Mira", "Xobrel"]


@pytest.mark.parametrize(("given", "family"), [
    ("Wie heißt Ihr Kind mit Vornamen?", "Wie heißt Ihr Kind mit Nachnamen?"),
    ("¿Cómo se llama su hijo? (nombre)", "¿Cómo se llama su hijo? (apellidos)"),
    ("Come si chiama (nome)?", "Come si chiama (cognome)?")])
def test_a_question_for_one_part_of_the_name_is_for_that_part(given: str, family: str) -> None:
    assert header_roles(["Zeit", family, given]) == (Role.OTHER, Role.FAMILY, Role.GIVEN)


def test_a_row_with_question_marks_is_no_row_of_titles() -> None:
    text = "VOSTRÖM Xobrel\t???\nTARNESCU Vemka\t???, brings juice\nREYSKI Tunzo\tpirate\nELMOV Quilba\ttiger"
    assert [child.practice for child in read_roster(text).children] == ["Xobrel", "Vemka", "Tunzo", "Quilba"]


LEGAL_AND_USED = [
    ("Legal first name", "Preferred name", "Last name"), ("Legal First", "Used name", "Surname"),
    ("Nombre legal", "Nombre preferido", "Apellido"), ("Nombre oficial", "Nombre de uso", "Apellidos"),
    ("Nombre legal", "Nombre social", "Apellido"), ("Prénom officiel", "Prénom d’usage", "Nom"),
    ("Prénom de l'état civil", "Prénom usuel", "Nom"), ("Amtlicher Vorname", "Rufname", "Nachname"),
    ("Offizieller Vorname", "Gerufen", "Nachname"), ("amtlicher Vorname", "Vorname (bevorzugt)", "Familienname"),
    ("Nome legale", "Nome preferito", "Cognome"), ("Nome anagrafico", "Nome d'uso", "Cognome"),
    ("Nome legale", "Nome d’elezione", "Cognome"), ("Nome legal", "Nome social", "Apelido"),
    ("Nome civil", "Nome preferido", "Sobrenome"), ("Nome de registro", "Nome social", "Apelido"),
]


@pytest.mark.parametrize(("legal", "used", "family"), LEGAL_AND_USED)
@pytest.mark.parametrize("order", [(0, 1), (1, 0), (0, 1, 2), (2, 1, 0), (2, 0, 1)])
def test_the_used_name_is_practised_and_the_legal_one_where_no_other_is_used(
        legal: str, used: str, family: str, order: tuple[int, ...]) -> None:
    rows = [(legal, used, family), ("Theodora", "Theo", "Vost"), ("Xobrel", "", "Quix"), ("Mia", "Mia", "Tarn")]
    for sign in ("\t", ";", ","):
        text = "\n".join(sign.join(row[at] for at in order) for row in rows)
        assert [child.practice for child in read_roster(text).children] == ["Theo", "Xobrel", "Mia"]


def test_words_of_use_are_none_beside_family_names_and_hands() -> None:
    assert header_role("Nom d'usage") is Role.FAMILY
    assert header_role("Preferred hand") is Role.HAND
    assert header_role("Usual bus") is not Role.GOES_BY


def test_a_title_that_is_a_family_name_too_is_a_title_beside_how_somebody_is_reached() -> None:
    text = ("Niño;Parada;Hora;;Teléfono\nSerafín;Plaza Vieja;07:00;Omar Vaca;555-0143\n"
            "Xobrel;Calle Mayor;07:03;Ida Rey;555-0190")
    assert [child.practice for child in read_roster(text).children] == ["Serafín", "Xobrel"]


@pytest.mark.parametrize("titles", [
    "Apellidos legales\tNombre legal\tNombre usado", "Apellidos\tNombre registral\tNombre que usa en clase",
    "Nom d'état civil\tPrénom d'état civil\tPrénom d'usage",
    "Nom de naissance\tPrénoms de naissance\tPrénom utilisé à l'école",
    "Familienname laut Pass\tVorname laut Pass\tGenannt",
    "Amtlicher Nachname\tAmtlicher Vorname\tIn der Schule verwendeter Name",
    "Cognome anagrafico\tNome anagrafico\tNome usato a scuola", "Cognome\tNome all'anagrafe\tCome si fa chiamare",
    "Apelido legal\tNome legal\tNome usado na escola", "Legal last name\tLegal first name\tName used at school"])
@pytest.mark.parametrize("order", [(0, 1, 2), (1, 0, 2), (2, 0, 1), (2, 1, 0)])
def test_the_name_in_use_is_practised_and_that_of_papers_is_not(titles: str, order: tuple[int, ...]) -> None:
    """The name of the papers was practised, or the used name stood for it."""
    rows = [titles.split("\t"), ["Moss", "Elisabeth", "Lisa"], ["Xobrel", "Tarnul", "Tarn"]]
    read = read_roster("\n".join("\t".join(row[at] for at in order) for row in rows)).children
    assert [(child.practice, child.given, child.family) for child in read] == [
        ("Lisa", "Elisabeth", "Moss"), ("Tarn", "Tarnul", "Xobrel")]


@pytest.mark.parametrize("title", ["School name", "Name of school", "Name der Schule", "Nom de l'école",
                                   "Nome da escola"])
def test_the_name_of_a_school_is_no_name_in_use(title: str) -> None:
    assert header_role(title) in (Role.OTHER, None)


@pytest.mark.parametrize("given", ["First name", "Nombre", "Prénom", "Vorname", "Nome"])
def test_further_given_names_that_are_counted_beside_a_first_one_are_middle_names(given: str) -> None:
    family = {"Nombre": "Apellidos", "Prénom": "Nom", "Vorname": "Nachname", "Nome": "Cognome"}.get(given, "Last name")
    text = f"{family};{given};{given} 2;{given} 3\nVost;Mira;Ida;\nTarn;Xobrel;;"
    assert [child.practice for child in read_roster(text).children] == ["Mira", "Xobrel"]


@pytest.mark.parametrize("title", ["mom of", "mamá de", "maman de", "Mama von", "mamma di", "mãe de"])
def test_whose_mother_somebody_is_tells_the_child(title: str) -> None:
    text = f"{title}\tmother\tphone\nMira Vost\tJo\t555-0143\nXobrel Tarn\tIda\t555-0190\nLeo Quix\tAnna\t555-0191"
    assert [child.practice for child in read_roster(text).children] == ["Mira", "Xobrel", "Leo"]


@pytest.mark.parametrize("titles", [
    ("Nome", "Presente", "Falta", "Atraso"), ("Nome", "Presente", "Assente", "Ritardo"), ("Nombre", "Asiste", "Falta")])
def test_what_a_register_says_beside_one_title_of_names_is_a_title(titles: tuple[str, ...]) -> None:
    text = "\n".join(("\t".join(titles), "Xobrel, Mira\t✓\t\t", "Talvo, Leo\t\t✓\t", "Marlik, Ada\t✓\t\t"))
    assert [child.practice for child in read_roster(text).children] == ["Mira", "Leo", "Ada"]


def test_a_child_beside_what_a_register_says_is_no_title() -> None:
    assert header_roles(("Nome", "Presente")) is None
    assert header_roles(("Vost", "Presente", "Falta")) is None


@pytest.mark.parametrize("title", [
    "Name at school", "Name in class", "Called in class", "Nombre en la escuela", "Cómo se le llama en clase",
    "Prénom en classe", "Appelée à l'école", "Name in der Schule", "Wird in der Schule genannt", "Nome a scuola",
    "Chiamato in classe", "Nome na escola", "Name we use", "Answers to"])
def test_the_name_at_school_is_what_a_child_goes_by(title: str) -> None:
    roster = read_roster(f"First name,Surname,{title}\nXobrel,Tarn,Xob\nMira,Vost,\nEleonora,Quix,Nora")
    assert [child.practice for child in roster.children] == ["Xob", "Mira", "Nora"]


@pytest.mark.parametrize("title", [
    "Name of school", "Nom de l'école", "Name der Schule", "Nombre de la escuela", "Nome della scuola", "School name",
    "Custody", "Custodia", "Guardia y custodia", "Garde", "Sorgerecht", "Affidamento", "Guarda"])
def test_the_name_of_a_school_and_who_has_custody_are_none(title: str) -> None:
    assert header_role(title) in (None, Role.OTHER)
    roster = read_roster(f"Grupo\t{title}\tAlumno\nA\tAna\tXobrel Tarn\nB\tJo\tMira Vost\nA\tIda\tLeo Quix")
    assert [child.practice for child in roster.children] == ["Xobrel", "Mira", "Leo"]
