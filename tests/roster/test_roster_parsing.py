"""Rosters as teachers have them, pasted: every line is read or accounted for."""

from __future__ import annotations

import unicodedata
from importlib import resources

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from namewright.message import Message, Problem, message, together
from namewright.names.clusters import clusters
from namewright.roster.children import Child, LineReport, Outcome, Roster, RosterError
from namewright.roster.labels import labels
from namewright.roster.parsing import PASTED, read_roster
from namewright.settings import Hand, NamePart, Support
from namewright.wording import wording


def only(text: str, part: NamePart = NamePart.GIVEN) -> LineReport:
    """Read a roster whose last line holds its only child, and return that line's report."""
    roster = read_roster(text, part=part)
    assert len(roster.children) == 1
    return roster.lines[-1]


def child(text: str, part: NamePart = NamePart.GIVEN) -> Child:
    found = only(text, part).child
    assert found is not None
    return found


FREE = [
    ("Katie", "Katie", "Katie", "", "one word is the given name"),
    ("Katie Moss", "Katie", "Katie", "Moss", "given, family"),
    ("Moss, Katie", "Katie", "Katie", "Moss", "family, given"),
    ("de la Cruz, Ana María", "Ana María", "Ana María", "de la Cruz", "a known pair behind a comma"),
    ("1. Katie Moss", "Katie", "Katie", "Moss", "numbered with a dot"),
    ("2) Katie Moss", "Katie", "Katie", "Moss", "numbered with a bracket"),
    ("#3 Katie Moss", "Katie", "Katie", "Moss", "numbered with a sign"),
    ("4\tKatie Moss", "Katie", "Katie", "Moss", "numbered with a tab"),
    ("• Katie Moss", "Katie", "Katie", "Moss", "a bullet"),
    ("[ ] Katie Moss", "Katie", "Katie", "Moss", "a tick box"),
    ("Katherine (Katie) Moss", "Katie", "Katherine", "Moss", "goes by, in brackets"),
    ("Moss, Katherine (Katie)", "Katie", "Katherine", "Moss", "goes by, behind the comma"),
    ('William "Will" Tarn', "Will", "William", "Tarn", "goes by, in quotation marks"),
    ("William “Will” Tarn", "Will", "William", "Tarn", "goes by, in curly ones"),
    ('Tarn, "Will"', "Will", "Will", "Tarn", "goes by, where the given name should stand"),
    ("Tarn, (Will)", "Will", "Will", "Tarn", "the same in brackets"),
    ("William 'Will' Tarn", "Will", "William", "Tarn", "goes by, in single ones"),
    ('"Moss, Katie"', "Katie", "Katie", "Moss", "a quoted cell of a file with one column"),
    ("Ana María López", "Ana María", "Ana María", "López", "a known pair is one given name"),
    ("Mary Kate Oak", "Mary Kate", "Mary Kate", "Oak", "so in English"),
    ("Juan Carlos", "Juan Carlos", "Juan Carlos", "", "a known pair alone has no family name"),
    ("María del Carmen Ruiz", "María del Carmen", "María del Carmen", "Ruiz", "a devotion"),
    ("Ana de la Cruz", "Ana", "Ana", "de la Cruz", "particles open the family name"),
    ("Kim van der Wold", "Kim", "Kim", "van der Wold", "Dutch particles"),
    ("Sofía García López", "Sofía", "Sofía", "García López", "two Spanish family names"),
    ("Juan Carlos García López", "Juan Carlos", "Juan Carlos", "García López", "a pair and two families"),
    ("Lena Rose Moss", "Lena", "Lena", "Moss", "a middle name is left out"),
    ("MOSS Katie", "Katie", "Katie", "Moss", "the family name in capitals, first"),
    ("Katie DE LA CRUZ", "Katie", "Katie", "de la Cruz", "the family name in capitals, last"),
    ("AJ Moss", "AJ", "AJ", "Moss", "initials are a name"),
    ("J.", "J.", "J.", "", "so is one initial"),
    ("A. J. Moss", "A. J.", "A. J.", "Moss", "and two with dots"),
    ("Keali'i Pua", "Keali'i", "Keali'i", "Pua", "kept as typed"),
    ("O'NEIL, SEAN", "Sean", "Sean", "O'Neil", "all capitals are mended"),
    ("Mary - Kate Moss", "Mary-Kate", "Mary-Kate", "Moss", "spaces about a hyphen"),
    ("John Moss Jr.", "John", "John", "Moss Jr.", "a suffix stays with the family"),
    ("Katie_Moss", "Katie", "Katie", "Moss", "an underscore is a space"),
    ("Ａｎａ Vey", "Ana", "Ana", "Vey", "full-width letters"),
    ("Зоя", "Зоя", "Зоя", "", "a script that we may not draw is not left out here"),
    ("Page Tull", "Page", "Page", "Tull", "a heading word can be a name"),
]


@pytest.mark.parametrize(("line", "practice", "given_name", "family", "why"), FREE, ids=[row[0] for row in FREE])
def test_free_text(line: str, practice: str, given_name: str, family: str, why: str) -> None:
    """A name in free text is split by the rules, in the case its family writes it."""
    found = child(line)
    assert (found.practice, found.given, found.family) == (practice, given_name, family), why


NOTED = [
    ("Lena Rose Moss", message("roster.read_with_middle", given="Lena", middle="Rose", family="Moss"),
     "a middle name left out"),
    ("Vance, Xobrel", message("roster.read_by_comma", given="Xobrel", family="Vance"), "a family name by its comma"),
    ("Ana María López", message("roster.read", given="Ana María", family="López"), "a reading that could be otherwise"),
    ("KATIE MOSS", message("roster.case", typed="KATIE MOSS", written="Katie Moss"), "mended case"),
    ("Katie Moss b@quill.example", message("roster.email"), "an e-mail"),
    ("Katie Moss 03/04/2020", message("roster.date"), "a birthday"),
    ("Katie Moss (555) 010-0199", message("roster.phone"), "a telephone number"),
    ("Katie Moss (he/him)", message("roster.remark", words="he/him"), "pronouns"),
    ("Katie Moss – new", message("roster.remark", words="new"), "a remark behind a dash"),
    ("Katie Moss 🌟", message("roster.signs", signs="🌟"), "an emoji"),
    ("Keali'i", message("roster.okina", name="Keali'i"), "a mark between vowels may be an ʻokina"),
    ("Kati\u200be", message("roster.invisible", named=("U+200B zero width space",)), "an invisible character"),
]


@pytest.mark.parametrize(("line", "note", "why"), NOTED, ids=[row[2] for row in NOTED])
def test_what_was_changed_is_said(line: str, note: Message, why: str) -> None:
    """Whatever was left out, mended or guessed is in the notes of the line."""
    assert note in only(line).notes, why


@pytest.mark.parametrize("line", ["Katie Moss", "deShawn McKenna", "Zoë", "O’Neil, Finn", "Mary-Kate Oak"])
def test_a_plain_line_has_no_notes(line: str) -> None:
    """Where nothing was changed or guessed, nothing is said."""
    assert only(line).notes == ()


@pytest.mark.parametrize("line", ["Frau Müller", "Mme Dupont", "Klasse 1b", "Classe de CP", "Jungen", "Filles",
                                  "Meninas", "Generated by PowerOffice on 9/3/2026",
                                  "Gesamt: 24", "Totale 24", "Red group"])
def test_teachers_rooms_and_totals_in_other_languages(line: str) -> None:
    roster = read_roster(f"{line}\nKatie Moss")
    assert [child.practice for child in roster.children] == ["Katie"]


LEFT_OUT = [
    ("🌟🌟", "no_letter", "only emoji"),
    ("-----", "no_letter", "only punctuation"),
    ("12345", "only_numbers", "only a number"),
    ("\u0301\u0302", "only_accents", "only marks"),
    ("Ms. Adair", "adult", "an adult"),
    ("Room 4 – Ms. Adair's class", "heading_class", "a room"),
    ("Grade K", "heading_word", "a grade"),
    ("Morning group:", "heading_colon", "a line that ends in a colon"),
    ("The Heron Class", "heading_class", "the name of a class"),
    ("24 students", "heading_only", "a total"),
    ("Quorra, Vexil, Zorb", "several", "several children on a line"),
    ("x" * 200, "long_name", "a name past 60 letters"),
    ("x" * 500, "long_cell", "a cell past any name"),
    ("(absent)", "no_name", "a remark and no name"),
]


@pytest.mark.parametrize(("line", "reason", "why"), LEFT_OUT, ids=[row[2] for row in LEFT_OUT])
def test_what_is_left_out_says_why(line: str, reason: str, why: str) -> None:
    """A line that is no child is left out with its reason, and the next child is still read."""
    roster = read_roster(f"{line}\nKatie Moss")
    outcome = Outcome.HEADING if reason.startswith(("heading", "adult")) else Outcome.LEFT_OUT
    assert [report.outcome for report in roster.lines] == [outcome, Outcome.CHILD], why
    assert roster.lines[0].notes[0].key == f"roster.{reason}", roster.lines[0].notes


def test_sixty_letters_are_the_limit() -> None:
    """Sixty clusters are practised; one more is left out."""
    assert child("Ẹ̀" + "ẹ̀" * 59).practice == "Ẹ̀" + "ẹ̀" * 59
    with pytest.raises(RosterError) as refused:
        read_roster("Ẹ̀" + "ẹ̀" * 60)
    assert refused.value.lines[0].notes == (message("roster.long_name", count=61, most=60),)


HEADERS = [
    ("First name\tLast name\nKatie\tMoss", "tabs"),
    ("Last,First\nMoss,Katie", "commas, family first"),
    ("Apellidos;Nombre\nMoss;Katie", "semicolons, Spanish"),
    ("Given|Surname\nKatie|Moss", "bars"),
    ("Student ID\tStudent\n7\tMoss, Katie", "a whole-name column"),
    ("No.  Name  Grade\n1  Katie Moss  K", "columns of spaces"),
    ('"Family","Given"\n"Moss","Katie"', "quoted cells"),
    ("Nombre\tApellido paterno\nKatie\tMoss", "Nombre beside Apellido is given"),
    ("Student\tLast name\nKatie\tMoss", "Student beside Last name is given"),
    ("Last name\tGiven\tMiddle\nMoss\tKatie\tRose", "a middle-name column"),
    ("Heron Class\t\n\nGiven\tFamily\nKatie\tMoss", "titles above the header"),
    ("name\nKatie Moss", "one column"),
    ("Alumnos:\nKatie Moss", "one column, with a colon"),
]


@pytest.mark.parametrize(("text", "why"), HEADERS, ids=[row[1] for row in HEADERS])
def test_headers(text: str, why: str) -> None:
    """A header row says which column is which, in either order and language."""
    found = child(text)
    assert (found.practice, found.family) == ("Katie", "Moss"), why
    assert Outcome.HEADER in [report.outcome for report in read_roster(text).lines]


def test_given_column_is_kept_whole() -> None:
    """Where columns say so, two given names and two family names stay together."""
    found = child("Nombre\tApellidos\nAna Lucinda\tLópez Ruiz")
    assert (found.practice, found.family) == ("Ana Lucinda", "López Ruiz")


def test_tables_without_header() -> None:
    """Without a header, tabs mean given first, unless particles or capitals speak for the other order."""
    given_first = read_roster("Katie\tMoss\t7\nBen\tOak\t8")
    assert [c.practice for c in given_first.children] == ["Katie", "Ben"]
    family_first = read_roster("MOSS\tKatie\nDE LA CRUZ\tBen")
    assert [(c.practice, c.family) for c in family_first.children] == [("Katie", "Moss"), ("Ben", "de la Cruz")]
    assert given_first.notes == (message("roster.no_header", given="Katie", family="Moss"),)
    assert not {note.key for line in given_first.lines for note in line.notes} & {"roster.no_header"}


def test_repeated_header_and_whole_name_in_a_table() -> None:
    """A header repeated on the next page is a header; a whole name typed into one cell is split."""
    roster = read_roster("Family\tGiven\nMoss\tKatie\nFamily\tGiven\nBen Oak")
    assert [c.practice for c in roster.children] == ["Katie", "Ben"]
    assert roster.lines[2].outcome is Outcome.HEADER


def test_quoted_cell_over_two_lines() -> None:
    """A quoted cell may hold a line end; both lines are accounted for."""
    roster = read_roster('Given,Family,Notes\nKatie,Moss,"likes\nbirds"\nBen,Oak,')
    assert [c.practice for c in roster.children] == ["Katie", "Ben"]
    assert roster.lines[2].notes == (message("roster.continues", line=2),)


@pytest.mark.parametrize(("text", "columns", "practised"), [
    ("Zorb\tQuix\nVexil\tQuorra", "given,family", ["Zorb", "Vexil"]),
    ("Zorb\tQuix\nVexil\tQuorra", "family,given", ["Quix", "Quorra"]),
    ("7;Zorb;Quix\n8;Vexil;Quorra", "other,family,given", ["Quix", "Quorra"]),
    ("Mia Chen\tAnna Bell\nLeo Park\tRuth Olmo", "name,other", ["Mia", "Leo"]),
])
def test_columns_that_nothing_tells_apart_are_asked_about(text: str, columns: str, practised: list[str]) -> None:
    """Reading stops with both readings; the answer becomes a line of titles, and the list is then read as said."""
    with pytest.raises(RosterError) as asked:
        read_roster(text)
    said = asked.value.message
    assert said.key in ("roster.two_readings", "roster.two_wholes")
    assert said["one"] != said["other"]
    assert columns in (said["columns"], said["or_columns"])
    assert f"--columns {said['columns']}" in wording("en").say(said)
    roster = read_roster(text, columns=columns)
    assert [child.practice for child in roster.children] == practised
    assert [child.practice for child in read_roster(roster.text).children] == practised


@pytest.mark.parametrize("columns", ["zip", "other", "given;family", ""])
def test_words_for_columns(columns: str) -> None:
    if columns:
        with pytest.raises(Problem):
            read_roster("Mia\tChen", columns=columns)
    else:
        assert read_roster("Mia\tChen", columns=columns).children


SETTINGS = [
    ("Support", "partial", Support.PARTIAL),
    ("Nivel de apoyo", "Completo", Support.FULL),
    ("apoyo", "leve", Support.LIGHT),
    ("Hand", "L", Hand.LEFT),
    ("Mano", "zurda", Hand.LEFT),
    ("Mano", "diestro", Hand.RIGHT),
    ("Handedness", "right-handed", Hand.RIGHT),
    ("Line height", "5/8 in", 15.875),
    ("Line height (in)", "1", 25.4),
    ("Altura de línea (cm)", "1,5", 15.0),
    ("Line height", "80", 80.0),
    ("Line height", "4", 4.0),
]


@pytest.mark.parametrize(("header", "cell", "expected"), SETTINGS)
def test_own_settings(header: str, cell: str, expected: object) -> None:
    """A child's own column sets support, hand or line height, in English and Spanish."""
    found = child(f"Name\t{header}\nKatie Moss\t{cell}")
    assert {found.support, found.hand, found.line_height_mm} - {None} == {expected}
    assert only(f"Name\t{header}\nKatie Moss\t{cell}").notes == ()


BAD_SETTINGS = [
    ("Support", "lots", "no_support"),
    ("Hand", "up", "no_hand"),
    ("Line height", "3.9", "no_line_height"),
    ("Line height", "81 mm", "no_line_height"),
    ("Line height", "tall", "no_line_height"),
    ("Line height", "9" * 400, "no_line_height"),
    ("Line height", "1/0 in", "no_line_height"),
    ("Goes by", "12", "no_practise"),
]


@pytest.mark.parametrize(("header", "cell", "note"), BAD_SETTINGS)
def test_a_bad_setting_leaves_the_child_in(header: str, cell: str, note: str) -> None:
    """A value that cannot be read gives the class default and a note, never a lost child."""
    report = only(f"Given\tFamily\t{header}\nKatie\tMoss\t{cell[:300]}")
    assert report.child == Child("Katie", "Katie", "Katie", "Moss", 2)
    assert [(one.key, one["cell"]) for one in report.notes] == [(f"roster.{note}", cell[:40])]


PRACTISE = [
    ("Practise", "family", NamePart.GIVEN, "Moss", "a child may practise another part"),
    ("Practise", "both", NamePart.GIVEN, "Katherine Moss", "or both"),
    ("Practicar", "nombre", NamePart.FAMILY, "Katherine", "in Spanish"),
    ("Practise", "Kit", NamePart.BOTH, "Kit", "a literal name stands as it is"),
    ("Goes by", "Kit", NamePart.GIVEN, "Kit", "a goes-by name takes the given name's place"),
    ("Nickname", "Kit", NamePart.BOTH, "Kit Moss", "and only that place"),
    ("Preferred name", "Kit", NamePart.FAMILY, "Moss", "so not the family name's"),
    ("Apodo", "-", NamePart.GIVEN, "Katherine", "a dash is none"),
]


@pytest.mark.parametrize(("header", "cell", "part", "expected", "why"), PRACTISE, ids=[row[4] for row in PRACTISE])
def test_name_to_practise(header: str, cell: str, part: NamePart, expected: str, why: str) -> None:
    """The name to practise is the row's wish, else the class's part."""
    assert child(f"Given\tFamily\t{header}\nKatherine\tMoss\t{cell}", part).practice == expected, why


def test_a_missing_part_is_said() -> None:
    """Where the wanted part is missing the other is practised, with a note."""
    report = only("Given\tFamily\n\tMoss")
    assert report.child is not None
    assert report.child.practice == "Moss"
    assert report.notes == (message("roster.no_given", other="Moss"),)


LABELS = [
    ("Ava Birrell\nAva Dunmar", ["Ava B.", "Ava D."], "by family initial"),
    ("Ava Moss\nAva Mott\nBen Oak", ["Ava Moss", "Ava Mott", "Ben"], "by more letters"),
    ("Ava Moran\nAva Mottley", ["Ava Mor.", "Ava Mot."], "by as few letters as it takes"),
    ("Ava\nAva", ["Ava 1", "Ava 2"], "by number"),
    ("Ava Moss\nAva Moss", ["Ava Moss 1", "Ava Moss 2"], "by number behind the family name"),
    ("Ava\nAva Moss", ["Ava", "Ava M."], "one without a family name"),
    ("AVA MOSS\nava oak", ["Ava M.", "Ava O."], "once the case is mended"),
]


@pytest.mark.parametrize(("text", "expected", "why"), LABELS, ids=[row[2] for row in LABELS])
def test_labels(text: str, expected: list[str], why: str) -> None:
    """Two children of one practised name are both kept and told apart."""
    assert [c.label for c in read_roster(text).children] == expected, why


def test_a_number_passes_over_a_label_that_is_taken() -> None:
    """No two labels are alike, even where a child is called as another would be numbered."""
    assert labels([("Ava", ""), ("Ava", ""), ("Ava 1", "")]) == ("Ava 2", "Ava 3", "Ava 1")


def test_doubled_quotation_marks_in_a_cell() -> None:
    """RFC 4180: two quotation marks inside a quoted cell are one; here they hold the goes-by name."""
    assert child('Given,Family\n"William ""Will""",Tarn').practice == "Will"
    assert child('Given,Family\n"""Will""","Tarn, Jr."').family == "Tarn, Jr."


def test_an_exact_repeat_is_kept_and_noted() -> None:
    """The same line twice is two children, and the second says so."""
    roster = read_roster("Ava Moss\nBen Oak\nAva Moss")
    assert len(roster.children) == 3
    assert roster.lines[2].notes == (message("roster.repeat", line=1),)


@pytest.mark.parametrize(
    ("text", "told", "accounted"),
    [
        ("", message("roster.empty", source=PASTED), 0),
        ("\n \n\t", message("roster.empty", source=PASTED), 3),
        ("Name\n\n", message("roster.only_header", source=PASTED, line=1), 2),
        ("12\n13", together(message("roster.nobody", source=PASTED, line=1, text="12"),
                           message("roster.only_numbers"), message("roster.one_each")), 2),
        ("a\n" * 100_001, message("roster.text_long", source=PASTED, count=100_001, most=100_000), 0),
    ],
)
def test_no_children_is_an_error(text: str, told: Message, accounted: int) -> None:
    """A text without a child says so in a sentence, and still accounts for its lines."""
    with pytest.raises(RosterError) as caught:
        read_roster(text)
    assert caught.value.message == told
    assert len(caught.value.lines) == accounted


def accounted(text: str) -> None:
    """Check the promises that hold for any text at all."""
    failed: RosterError | None = None
    try:
        roster = read_roster(text)
    except RosterError as error:
        failed = error
    if failed:
        assert wording("en").say(failed.message)
        assert len(failed.lines) == len(text.splitlines())
        return
    assert [report.line for report in roster.lines] == list(range(1, len(roster.lines) + 1))
    assert list(dict.fromkeys(report.source_line for report in roster.lines)) == list(
        range(1, len(text.splitlines()) + 1))
    assert [r.child for r in roster.lines if r.child] == list(roster.children)
    assert len({c.label for c in roster.children}) == len(roster.children)
    for report in roster.lines:
        assert (report.child is not None) == (report.outcome is Outcome.CHILD)
        assert report.notes or report.outcome is not Outcome.LEFT_OUT
    for found in roster.children:
        assert 1 <= len(clusters(found.practice)) <= 60
        assert unicodedata.normalize("NFC", found.practice) == found.practice


PIECES = st.sampled_from(
    [
        "\t",
        ",",
        ";",
        '"',
        "(",
        ")",
        "\n",
        "\r\n",
        " ",
        "  ",
        "Name",
        "Given",
        "Family",
        "Hand",
        "L",
        "Ana",
        "MOSS",
        "de",
        "la",
        "O'",
        "ʻ",
        "-",
        "7",
        ".",
        "Goes by",
        "both",
        "\u0301",
        "|",
        "Line height",
        "9/0",
        "'",
        "“",
        "²",
        "é",
        "İ",
        "\u200d",
        "mm",
        "@",
        "Room",
        ":",
        " – ",
    ]
)


@settings(max_examples=250, deadline=None)
@given(st.lists(PIECES, max_size=40).map("".join))
def test_any_mixture_is_accounted_for(text: str) -> None:
    """Whatever a roster is made of, each line is accounted for and no label is given twice."""
    accounted(text)


@settings(max_examples=250, deadline=None)
@given(st.text(max_size=80))
def test_any_text_is_accounted_for(text: str) -> None:
    """The same for any text of Unicode."""
    accounted(text)


@pytest.mark.parametrize("line", ["{}. Kate{} “Kit” Moss-O'Neil, k@quill.example", "KATE\tMOSS\t{}{}", "Zoë Moss{}{}"])
def test_a_long_roster_is_read_whole(line: str) -> None:
    """Two thousand lines of any kind are two thousand children."""
    text = "\n".join(line.format(n, "") for n in range(2000))
    assert len(read_roster(text).children) == 2000


@pytest.mark.parametrize(
    "text",
    [
        "(" * 50_000,
        '"a",' * 50_000,
        "a " * 50_000,
        "ab-" * 50_000,
        "1 " * 50_000,
        '"' + '""' * 50_000,
        "a\u0301" * 50_000,
        " -" * 50_000 + "a",
        "a,b\n" + '"' * 50_000,
    ],
)
def test_hostile_lines_end(text: str) -> None:
    """A line made to be slow is accounted for like any other."""
    accounted(text)


MESSY = "\ufeff" + "\r\n".join(
    [
        "Room 6 — Ms. Ferrow's class",
        "",
        "No.\tApellidos / Family\tFirst name\tGoes by\tHand\tSupport\tDOB\tParent e-mail",
        "1\tDE LA HUERTA\tANA MARÍA\t\tzurda\tparcial\t4/5/2020\ta@quill.example",
        "2\tTarn\tWilliam “Will”\t\tR\t\t1/2/2020\t",
        "3\tO’Dunn\tZoe\u0308\t\tL\tfull\t\t",
        "4\tvan der Wold\tMary-Kate\tMK\tr\tlight\t\t",
        "\t\t\t\t\t\t\t",
        "5\tOrrin\u00a0\tＢｅａ\t\tboth\tsome\t\t",
        "6\tKapuna\tKealiʻi\t\t\t\t\t",
        "7\tOrrin\tBea\t\t\t\t\t",
        "No.\tFamily\tFirst name\tGoes by\tHand\tSupport\tDOB\tParent e-mail",
        "8\tMcTAVERY\tDESHAWN\t\t\t\t\t",
        "\t\t🌟\t\t\t\t\t",
        "Total: 8",
    ]
)


def messy() -> Roster:
    return read_roster(MESSY)


def test_messy_roster_children() -> None:
    """An invented class in an invented place, with everything at once, gives its eight children."""
    assert [(c.practice, c.label, c.family, c.hand, c.support) for c in messy().children] == [
        ("Ana María", "Ana María", "de la Huerta", Hand.LEFT, Support.PARTIAL),
        ("Will", "Will", "Tarn", Hand.RIGHT, None),
        ("Zoë", "Zoë", "O’Dunn", Hand.LEFT, Support.FULL),
        ("MK", "MK", "van der Wold", Hand.RIGHT, Support.LIGHT),
        ("Bea", "Bea Orrin 1", "Orrin", Hand.UNSETTLED, None),
        ("Kealiʻi", "Kealiʻi", "Kapuna", None, None),
        ("Bea", "Bea Orrin 2", "Orrin", None, None),
        ("Deshawn", "Deshawn", "McTavery", None, None),
    ]


def test_messy_roster_lines() -> None:
    """And every one of its lines is accounted for."""
    c, h, b, x = Outcome.CHILD, Outcome.HEADER, Outcome.BLANK, Outcome.LEFT_OUT
    t = Outcome.HEADING
    assert [line.outcome for line in messy().lines] == [t, b, h, c, c, c, c, b, c, c, c, h, c, x, t]


def test_demo_roster() -> None:
    """The demo class that ships with the package has 24 children and one cell to ask the teacher about."""
    text = resources.files("namewright").joinpath("demo.txt").read_text(encoding="utf-8")
    roster = read_roster(text)
    assert len(roster.children) == 24
    assert [c.label for c in roster.children if c.practice == "Ava"] == ["Ava B.", "Ava D."]
    assert sum(c.hand is Hand.LEFT for c in roster.children) == 4
    sizes = [len(c.practice) for c in roster.children]
    assert (min(sizes), max(sizes)) == (2, 14)
    asked = [note.key for line in roster.lines for note in line.notes if note.key.startswith("roster.no_")]
    assert asked == ["roster.no_hand"]
