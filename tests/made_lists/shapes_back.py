"""Shapes by the hand of `made_lists.shapes_apart`, kept back until the reader had been measured on them.

Written without a look at the reader; what is mended since is no longer a measure of unseen lists.
"""

from __future__ import annotations

import random
import unicodedata
from collections.abc import Sequence
from itertools import zip_longest

from made_lists.judging import Made, Wanted
from made_lists.people import Person
from made_lists.registry import Registry
from made_lists.shapes_apart import adults, birthday, by_full_name, by_given, in_parts, made

_REGISTRY = Registry()
SHAPES, CLEAN, HEADED, HEADLESS = _REGISTRY.shapes, _REGISTRY.clean, _REGISTRY.headed, _REGISTRY.headless
shape = _REGISTRY.shape


@shape()
def office_mail(rng: random.Random, group: Sequence[Person]) -> Made:
    """A mail from a Spanish school office: lines of the mail, a greeting, numbered two-surname names, a signature."""
    second = adults(rng, group, len(group))
    lines = [
        f"{at}.- {one.family} {other.family}, {one.given}"
        for at, (one, other) in enumerate(zip(group, second, strict=True), 1)
    ]
    return made(
        [
            "De: Secretaría <secretaria@example.org>",
            "Asunto: RV: Lista 3 años B",
            "Enviado: martes, 2 de septiembre de 2025 13:05",
            "",
            "Buenos días, Rosaura:",
            "",
            "Te paso el listado definitivo de 3 años B para el curso que empieza. Faltan dos por confirmar.",
            "",
            *lines,
            "",
            "Cualquier cosa me dices.",
            "Un saludo,",
            "",
            "Encarnita Valdecillo",
            "Secretaría del centro",
            "Tlf. 555 01 23",
        ],
        [Wanted((one.given,), f", {one.given}") for one in group],
        "Secretaría Rosaura Encarnita Valdecillo Buenos Cualquier saludo Lista Asunto Enviado centro Tlf Faltan",
    )


@shape(HEADED)
def lunch_count(rng: random.Random, group: Sequence[Person]) -> Made:
    """A week of lunches: a letter a day, A for absent, lines of totals at the foot."""
    title, head, marks, totals = rng.choice(
        (
            ("Lunch count week of Oct 6", "Name\tMon\tTue\tWed\tThu\tFri", "HHPPA", ("Hot", "Packed", "Milk only")),
            ("Mittagessen KW 41", "Kind\tMo\tDi\tMi\tDo\tFr", "xx--k", ("Summe", "vegetarisch")),
            ("Cantine semaine 41", "Élève\tLun\tMar\tJeu\tVen", "xx  a", ("Total", "dont sans porc")),
        )
    )
    days = head.count("\t")
    rows = [
        "\t".join((f"{one.given} {one.family[0]}.", *(rng.choice(marks).strip() for _ in range(days)))) for one in group
    ]
    foot = ["\t".join((each, *(str(rng.randrange(2, 12)) for _ in range(days)))) for each in totals]
    return made(
        [title, "", head, *rows, *foot],
        by_given(group),
        "Hot Packed Milk only Summe vegetarisch Total dont sans porc Lunch Mittagessen Cantine",
    )


@shape()
def scanned_paper(rng: random.Random, group: Sequence[Person]) -> Made:
    """A paper list read by a machine: names are whole; numbers, rules and the heading are spoilt."""
    numbers = ("{n}.", "{n},", "{n} .", "{n}-", "{n}", "({n}", "{n}.", "l{n}.")
    lines = [
        f"{rng.choice(('', '', '| ', '_', '• '))}{rng.choice(numbers).format(n=at)} "
        f"{one.given}{rng.choice((' ', '  '))}{one.family}"
        f"{rng.choice(('', '', ' |', ' .', ' __', ' ~'))}"
        for at, one in enumerate(group, 1)
    ]
    return made(
        ["K1NDERGARTEN  C1ass Iist   2O25/26", "Teacher: Ms A1derbrook", "_ _ _ _ _ _ _", *lines, "", "— 1 —"],
        by_full_name(group),
        "K1NDERGARTEN C1ass Iist Teacher A1derbrook Ms",
    )


@shape(HEADED)
def merged_group_cells(rng: random.Random, group: Sequence[Person]) -> Made:
    """A spreadsheet whose first column was merged over each group, so that only a group's first row has it."""
    title, head, groups, total = rng.choice(
        (
            ("\tPRÉ-ESCOLAR 2025/26\t\t", "Sala\tNome\tApelido\tObs.", ("Azul", "Amarela", "Verde"), "Total"),
            (
                "\tGRUPOS DE TRABAJO\t\t",
                "Grupo\tNombre\tApellido\tObservaciones",
                ("Delfines", "Tortugas", "Erizos"),
                "Total",
            ),
            ("\tSmall groups – Fall\t\t", "Group\tFirst\tLast\tNotes", ("Otters", "Foxes", "Owls"), "Total"),
        )
    )
    rows = []
    for name, part in zip(groups, in_parts(rng, group, 3), strict=True):
        rows += [
            f"{name if at == 0 else ''}\t{one.given}\t{one.family}\t{rng.choice(('', '', 'NEE', 'PT/OT', '!'))}"
            for at, one in enumerate(part)
        ]
    return made(
        [title, "\t\t\t", head, *rows, f"{total}\t{len(group)}\t\t"],
        [Wanted((one.given,), one.given) for one in group],
        "Azul Amarela Verde Delfines Tortugas Erizos Otters Foxes Owls Total NEE PT OT GRUPOS",
    )


@shape()
def phone_chain(rng: random.Random, group: Sequence[Person]) -> Made:
    """Who calls whom: the child, then its parents with their given names and numbers."""
    title, mum, dad = rng.choice(
        (
            ("Catena telefonica sez. B", "mamma", "papà"),
            ("Telefonliste Marienkäfer", "Mama", "Papa"),
            ("Liste téléphonique – Petite section", "maman", "papa"),
            ("Phone tree Room 5", "mom", "dad"),
        )
    )
    grown = adults(rng, group, 2 * len(group))
    dash = rng.choice((" – ", ": ", " → ", " ("))
    lines = [
        f"{one.given} {one.family}{dash}{mum} {grown[2 * at].given} 0333 555 0{rng.randrange(100, 999)}"
        f"{f', {dad} {grown[2 * at + 1].given} 0333 555 0{rng.randrange(100, 999)}' if at % 2 else ''}"
        f"{')' if '(' in dash else ''}"
        for at, one in enumerate(group)
    ]
    return made(
        [title, "", *lines],
        by_full_name(group),
        " ".join(one.given for one in grown)
        + " mamma papà Mama Papa maman papa mom dad Catena Telefonliste Marienkäfer Liste Phone",
    )


@shape()
def numbered_side_by_side(rng: random.Random, group: Sequence[Person]) -> Made:
    """Two groups side by side, each with its own numbers and its name above; one is longer."""
    left, right = rng.choice(
        (("Les Lapins", "Les Renards"), ("Gruppe Rot", "Gruppe Blau"), ("Morning", "Afternoon"), ("Grupo 1", "Grupo 2"))
    )
    cut = rng.randrange(1, len(group))
    full = rng.random() < 0.5
    halves = [
        [f"{at}\t{one.given}{' ' + one.family if full else ''}" for at, one in enumerate(part, 1)]
        for part in (group[:cut], group[cut:])
    ]
    rows = [f"{one}\t\t{other}" for one, other in zip_longest(*halves, fillvalue="\t")]
    return made(
        [f"\t{left}\t\t\t{right}", *rows], by_given(group), "Lapins Renards Gruppe Rot Blau Morning Afternoon Grupo Les"
    )


@shape()
def days_of_attendance(rng: random.Random, group: Sequence[Person]) -> Made:
    """A pre-school's morning and afternoon children, each with the days it comes."""
    morning, afternoon, days, new = rng.choice(
        (
            ("AM (8:15–11:00)", "PM (12:15–3:00)", ("M/W/F", "T/Th", "M-F", "Tu W Th"), "starts Nov 3"),
            ("Vormittag", "Nachmittag", ("Mo–Mi", "Di/Do", "Mo–Fr", "Mi Do Fr"), "ab 3.11."),
            ("Matin", "Après-midi", ("lu/ma/je", "ve", "tous les jours", "lu–je"), "dès le 3/11"),
        )
    )
    cut = rng.randrange(1, len(group))
    form = rng.choice(("{who} ({days})", "{who} - {days}", "{who}, {days}", "{who}   {days}"))
    lines = [
        form.format(who=f"{one.given} {one.family}", days=rng.choice(days)) + (f" {new}" if rng.random() < 0.1 else "")
        for one in group
    ]
    return made(
        [morning, *lines[:cut], "", afternoon, *lines[cut:]],
        by_full_name(group),
        f"AM PM Vormittag Nachmittag Matin Après-midi {new} " + " ".join(days).replace("/", " ").replace("–", " "),
    )


@shape()
def comments_at_the_foot(rng: random.Random, group: Sequence[Person]) -> Made:
    """A shared document saved as text: letters in brackets behind some names, the comments under the list."""
    notes = (
        "Can she sit near the window?",
        "Left-handed!",
        "new spelling, checked with mum",
        "Moved to table 3 — Wilma",
        "OT on Tuesdays",
    )
    at = dict(zip(sorted(rng.sample(range(len(group)), min(len(group), 4))), "abcd", strict=False))
    full = rng.random() < 0.5
    lines = [
        f"{one.given}{' ' + one.family if full else ''}{f'[{at[place]}]' if place in at else ''}"
        for place, one in enumerate(group)
    ]
    return made(
        ["Room 3 – who is who", "", *lines, "", *(f"[{sign}]{rng.choice(notes)}" for sign in at.values())],
        by_given(group),
        "Can she sit window Left-handed Left handed new spelling checked Moved table Wilma OT Tuesdays Room who",
    )


@shape()
def parent_addresses(rng: random.Random, group: Sequence[Person]) -> Made:
    """Each child with the mail addresses of its parents, made of the family name where it has plain letters."""
    sign = rng.choice((" – ", ": ", " <", ", ", "\t"))
    lines = []
    for one in group:
        plain = (
            "".join(
                char for char in unicodedata.normalize("NFKD", one.family) if char.isascii() and char.isalpha()
            ).lower()
            or "familia"
        )
        second = f"; {plain[:1]}.{plain}{rng.randrange(10, 99)}@example.net" if rng.random() < 0.4 else ""
        lines.append(
            f"{one.given} {one.family}{sign}{plain}{rng.randrange(100)}@example.org{'>' if '<' in sign else ''}{second}"
        )
    return made(["E-mails 🐞", *lines], by_full_name(group), "E-mails mails example org net")


@shape(HEADED)
def ages_and_ticks(rng: random.Random, group: Sequence[Person]) -> Made:
    """Columns lined up by blanks: the child, its age in years and months, a tick for a paper, the hand."""
    head, ages, hands = rng.choice(
        (
            (("Name", "Alter", "Foto-OK", "Hand"), ("4;7", "5;0", "4;11"), "RL"),
            (("Child", "Age", "Photo", "Hand"), ("4y 7m", "5y", "4y 11m"), "RL"),
            (("Enfant", "Âge", "Photo", "Main"), ("4 ans 7 m", "5 ans", "4 ans 1/2"), "DG"),
        )
    )
    rows = [(f"{one.given} {one.family}", rng.choice(ages), rng.choice("✓✓✗"), rng.choice(hands)) for one in group]
    wide = max(len(name) for name, *_ in rows) + 3
    lines = [f"{name:{wide}}{age:12}{tick:10}{hand}" for name, age, tick, hand in [head, *rows]]
    return made(lines, by_full_name(group), "Name Alter Foto Hand Child Age Photo Enfant Âge Main ans")


@shape(HEADED)
def guardian_column(rng: random.Random, group: Sequence[Person]) -> Made:
    """A Portuguese office's table: whole names of two families, and the grown-up in charge in a column like it."""
    grown = adults(rng, group, 2 * len(group))
    rows = [
        f"{at}\t{one.given} {grown[2 * at - 2].family} {one.family}\t{birthday(rng, '{d:02}-{m:02}-{y}')}"
        f"\t{grown[2 * at - 1].given} {one.family}\t91 555 0{rng.randrange(100, 999)}"
        for at, one in enumerate(group, 1)
    ]
    head = [
        "Agrupamento de Escolas do Vale – Jardim de Infância",
        "Sala 2 | Educadora: Albertina Queimado",
        "",
        "N.º\tNome completo\tData nasc.\tEnc. de Educação\tTelemóvel",
    ]
    return made(
        [*head, *rows],
        [Wanted((one.given,), f"{one.given} {grown[2 * at].family}") for at, one in enumerate(group)],
        "Agrupamento Escolas Vale Jardim Infância Sala Educadora Albertina Queimado "
        + " ".join(one.given for one in grown),
    )


@shape(HEADED)
def row_for_each_guardian(rng: random.Random, group: Sequence[Person]) -> Made:
    """An export of contacts: a child has as many rows as grown-ups, told by its number; it is one child."""
    grown = adults(rng, group, 2 * len(group))
    rows = []
    for at, one in enumerate(group):
        number, born = 40100 + at, birthday(rng, "{y}-{m:02}-{d:02}")
        rows += [
            f"{number},{one.family},{one.given},{born},{adult.given},{one.family},{kind},555-01{rng.randrange(10, 99)}"
            for adult, kind in zip(grown[2 * at :][: rng.choice((1, 2, 2))], ("Mother", "Father"), strict=False)
        ]
    head = (
        "Student ID,Student Last Name,Student First Name,Date of Birth,"
        "Contact First Name,Contact Last Name,Relationship,Phone"
    )
    return made(
        [head, *rows],
        [Wanted((one.given,), f"{one.family},{one.given}") for one in group],
        "Mother Father Contact " + " ".join(one.given for one in grown),
    )


@shape()
def siblings_elsewhere(rng: random.Random, group: Sequence[Person]) -> Made:
    """Some children have brothers and sisters in other rooms, whose names stand behind theirs."""
    grown = adults(rng, group, len(group))
    forms = rng.choice(
        (
            ("", "", " (brother: {x}, Rm 6)", " – {x}'s little sister", " (twin {x} is in Ms. Alderbrook's class)"),
            ("", "", " (Bruder {x}, Vorschule)", " – Schwester von {x} (3b)", " (Zwilling {x} bei Frau Quastel)"),
            ("", "", " (frère de {x}, CP)", " – petite sœur de {x}", " (jumeau : {x}, chez Mme Perdrizel)"),
        )
    )
    full = rng.random() < 0.5
    lines = [
        f"{one.given}{' ' + one.family if full else ''}{rng.choice(forms).format(x=other.given)}"
        for one, other in zip(group, grown, strict=True)
    ]
    return made(
        lines,
        by_given(group),
        "brother Rm sister little twin Alderbrook Bruder Vorschule Schwester "
        "Zwilling Quastel frère sœur jumeau Perdrizel "
        + " ".join(one.given for one in grown),
    )


@shape()
def told_in_a_sentence(rng: random.Random, group: Sequence[Person]) -> Made:
    """A short message that names the class in one sentence, with a greeting before and a thank-you after."""
    before, and_, after = rng.choice(
        (
            ("Hi! My class this year:", " and ", "Could I have the cards by Monday please? Thank you!!\nWilma, Room 3"),
            (
                "Hola, estos son mis peques de este año:",
                " y ",
                "¿Me lo puedes tener para el lunes? ¡Mil gracias!\nRemedios",
            ),
            ("Bonjour, voici les prénoms de mes élèves :", " et ", "Merci beaucoup, bonne journée\nMme Perdrizel"),
            ("Liebe Kollegin, meine Kinder heißen", " und ", "Vielen Dank und liebe Grüße\nHeidrun Quastel"),
        )
    )
    names = ", ".join(one.given for one in group[:-1]) + and_ + group[-1].given
    return made(
        [f"{before} {names}.", *after.split("\n")],
        by_given(group),
        "Hi class Could Monday Thank Wilma Room Hola peques lunes gracias Mil Remedios Bonjour "
        "prénoms élèves Merci beaucoup Perdrizel "
        "Liebe Kollegin Kinder heißen Vielen Dank Grüße Heidrun Quastel",
    )


@shape(HEADED)
def headings_in_three_languages(rng: random.Random, group: Sequence[Person]) -> Made:
    """An international school: headings in three languages, the name in use, the hand, a level."""
    rows = []
    nicks = dict(zip(rng.sample(range(len(group)), 2), ("Bibsi", "Kiki"), strict=True))
    for at, one in enumerate(group):
        rows.append(
            f"{one.family}\t{one.given}\t{nicks.get(at, '')}\t"
            f"{rng.choice(('L/G/I', 'R/D/D'))}\t{rng.choice(('pre-A', 'A1', 'native', ''))}"
        )
    head = (
        "Family name / Nom / Apellido\tGiven name / Prénom / Nombre\t"
        "Called / Prénom usuel / Nombre habitual\tHand / Main / Mano\tEnglish"
    )
    wanted = [Wanted((nicks.get(at, one.given),), f"{one.family}\t{one.given}") for at, one in enumerate(group)]
    return made(
        ["Early Years 2 – Année 2025/26", head, *rows],
        wanted,
        "Early Years Année native pre-A pre A1 Family Given Called Hand",
    )
