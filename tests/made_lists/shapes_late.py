"""Shapes of list thought of when `shapes_fresh` had been mended: at their first look they are the honest measure."""

from __future__ import annotations

import random
from collections.abc import Sequence

from made_lists.judging import Made, Wanted
from made_lists.people import Person
from made_lists.registry import Registry
from made_lists.shapes_tuned import full, lines, paired, wanted

_KEPT = Registry()
SHAPES, CLEAN, HEADED, HEADLESS = _KEPT.shapes, _KEPT.clean, _KEPT.headed, _KEPT.headless
shape = _KEPT.shape
CARE = ("hazelnut", "carries an Auvi", "hip dysplasia", "no screens", "reads already", "Fridays only",
        "cries at drop-off", "Haselnüsse", "Hüftschiene", "nur vormittags", "kommt später", "noisettes",
        "appareil dentaire", "absent le lundi", "nocciole", "busto", "solo mattina", "avelãs", "só de manhã",
        "aparelho", "avellanas", "corsé", "solo por la mañana", "llega tarde", "Singulair", "PEG", "VNS",
        "Tagalog at home")


@shape()
def answers_in_blocks(rng: random.Random, some: Sequence[Person]) -> Made:
    first, last, third = rng.choice((("First name", "Last name", "Birthday"), ("Prénom", "Nom", "Né le"),
                                     ("Vorname", "Nachname", "Geburtstag"), ("Nombre", "Apellidos", "Nacimiento"),
                                     ("Nome", "Cognome", "Data di nascita")))
    return Made("\n\n".join(f"{first}: {one.given}\n{last}: {one.family}\n{third}: 1{rng.randrange(10)}/05/2020"
                            for one in some), wanted(some), (f"{first} {last} {third}",))


@shape()
def name_grade_room(rng: random.Random, some: Sequence[Person]) -> Made:
    return lines(some, lambda one: f"{full(one)}, {rng.choice(('K', 'PK', 'TK'))}, Room {rng.randrange(1, 20)}",
                 "Room K")


@shape()
def mail_with_its_head(rng: random.Random, some: Sequence[Person]) -> Made:
    head = rng.choice(("From: Jo Vale\nTo: Kim Olmo\nSubject: class list\n",
                       "De : Anne Vallon\nObjet : liste de classe\n",
                       "Von: Rita Talberg\nBetreff: Klassenliste\n", "De: Rosa Olmo\nAsunto: lista de clase\n"))
    return Made(head + "\n" + "\n".join(map(full, some)), wanted(some),
                ("Vale Kim Olmo Vallon Talberg Subject class list Objet liste classe Betreff Klassenliste Asunto",))


@shape()
def bullets_under_bullets(rng: random.Random, some: Sequence[Person]) -> Made:
    half = len(some) // 2
    heads = rng.choice((("Red table", "Blue table"), ("Gruppe Igel", "Gruppe Fuchs"), ("Groupe 1", "Groupe 2"),
                        ("Morning", "Afternoon")))
    rows = [f"- {heads[0]}", *(f"  - {one.given}" for one in some[:half]),
            f"- {heads[1]}", *(f"  - {one.given}" for one in some[half:])]
    return Made("\n".join(rows), wanted(some), heads)


@shape()
def dotted_leaders(rng: random.Random, some: Sequence[Person]) -> Made:
    return lines(some, lambda one: f"{full(one)} {'.' * rng.randrange(6, 20)} {rng.randrange(1, 30)}")


@shape()
def mum_and_her_number(rng: random.Random, some: Sequence[Person]) -> Made:
    who = rng.choice(("mum", "Mama", "maman", "mamá", "mãe", "dad"))
    return lines(some, lambda one: f"{full(one)} ({who} Jo 555-01{rng.randrange(10, 99)})", f"{who} Jo")


@shape()
def times_of_the_day(rng: random.Random, some: Sequence[Person]) -> Made:
    return lines(some, lambda one: f"{full(one)} 8:{rng.randrange(10, 59)} 15:{rng.randrange(10, 59)}")


@shape(HEADED)
def who_fetches(rng: random.Random, some: Sequence[Person]) -> Made:
    half = len(some) // 2
    titles = rng.choice(("Kind | Abholung durch", "Child | Picked up by", "Enfant | Vient le chercher",
                         "Niño | Lo recoge", "Bambino | Chi lo prende"))
    rows = [f"{full(one)} | {full(other)}" for one, other in paired(some)]
    return Made("\n".join((titles, *rows)), wanted(some[:half]), tuple(other.given for other in some[half:]))


@shape(HEADLESS)
def five_columns(rng: random.Random, some: Sequence[Person]) -> Made:
    half = len(some) // 2
    rows = [f"{one.family}\t{one.given}\t{rng.choice('MF')}\t0{rng.randrange(1, 9)}/05/2020\t{full(other)}"
            for one, other in paired(some)]
    return Made("\n".join(rows), wanted(some[:half]), tuple(other.given for other in some[half:]))


@shape(CLEAN)
def capitals_and_birthday(rng: random.Random, some: Sequence[Person]) -> Made:
    return lines(some, lambda one: f"{one.family.upper()} {one.given} (1{rng.randrange(10)}/05/2020)"
                 if len(one.family) > 2 else full(one))


@shape(CLEAN)
def ages_in_a_line(rng: random.Random, some: Sequence[Person]) -> Made:
    return Made(", ".join(f"{one.given} ({rng.randrange(4, 6)})" for one in some), wanted(some))


@shape()
def numbered_partners(rng: random.Random, some: Sequence[Person]) -> Made:
    pairs = [some[at : at + 2] for at in range(0, len(some), 2)]
    sign = rng.choice((" + ", " & ", " and ", " / ", " – "))
    return Made("\n".join(f"{at}. {sign.join(one.given for one in pair)}" for at, pair in enumerate(pairs, 1)),
                wanted(some))


@shape()
def present_and_absent(rng: random.Random, some: Sequence[Person]) -> Made:
    away, here = rng.choice((("Absent today", "Present"), ("Fehlt heute", "Da"), ("Absents", "Présents"),
                             ("Faltan", "Presentes"), ("Assenti", "Presenti")))
    return Made(f"{away}: {', '.join(one.given for one in some[:2])}\n"
                f"{here}: {', '.join(one.given for one in some[2:])}", wanted(some), (away, here))


@shape(CLEAN)
def a_sign_at_each_end(rng: random.Random, some: Sequence[Person]) -> Made:
    sign = rng.choice((",", ";", ".", " |", " -"))
    return lines(some, lambda one: f"{full(one)}{sign}")


@shape(HEADED)
def care_and_contact(rng: random.Random, some: Sequence[Person]) -> Made:
    half = len(some) // 2
    titles = rng.choice((("Nome", "Apelido", "Alergias", "Contacto"), ("Vorname", "Name", "Hinweis", "Notfall"),
                         ("Nombre", "Apellidos", "Cuidados", "Llamar a"), ("First", "Last", "Needs", "Call")))
    rows = [";".join((one.given, one.family, rng.choice(CARE), full(other)))
            for one, other in paired(some)]
    return Made("\n".join((";".join(titles), *rows)), wanted(some[:half]), tuple(other.given for other in some[half:]))


@shape()
def decorated_head(rng: random.Random, some: Sequence[Person]) -> Made:
    head = rng.choice(("★ Mrs. Olmo's Class 2026-27 ★\n~ ~ ~ ~ ~", "Welcome to Kindergarten!\n=========",
                       "Unsere Klasse\n---------", "Les petits lapins 2026/2027\n*****", "¡Bienvenidos!\n- - - - -",
                       "La nostra classe\n_______"))
    return Made(head + "\n" + "\n".join(map(full if rng.random() < 0.5 else _given, some)), wanted(some),
                ("Olmo's Olmo Class Welcome Unsere Klasse petits lapins Les Bienvenidos nostra classe",))


@shape()
def arrows(rng: random.Random, some: Sequence[Person]) -> Made:
    sign = rng.choice((" → ", " -> ", " => ", " ► "))
    where = rng.choice(("Room 4", "Ms Vale", "swings", "Werkraum", "bibliothèque"))
    return lines(some, lambda one: f"{full(one)}{sign}{where}", where)


@shape()
def ordinals(rng: random.Random, some: Sequence[Person]) -> Made:
    ends = {1: "st", 2: "nd", 3: "rd"}
    return Made("\n".join(f"{at}{ends.get(at, 'th')}: {full(one)}" for at, one in enumerate(some, 1)), wanted(some))


@shape()
def handles_under_names(rng: random.Random, some: Sequence[Person]) -> Made:
    return lines(some, lambda one: f"{full(one)}\n@fam{rng.randrange(100, 999)}")


@shape()
def groups_by_slash(rng: random.Random, some: Sequence[Person]) -> Made:
    names = [one.given for one in some]
    rows = [f"Group {'ABCDEFGH'[at // 3]} – {' / '.join(names[at : at + 3])}" for at in range(0, len(names), 3)]
    return Made("\n".join(rows), wanted(some), ("Group",))


@shape(CLEAN)
def underlined_title(rng: random.Random, some: Sequence[Person]) -> Made:
    title = rng.choice(("Name", "Names", "Students", "Kinder", "Élèves", "Alumnos", "Nomi"))
    return Made("\n".join((title, "-" * 12, *map(full, some))), wanted(some), (title,))


@shape()
def said_behind_a_name(rng: random.Random, some: Sequence[Person]) -> Made:
    form = rng.choice(("{} – {}", "{}: {}", "{}, {}", "{} ({})", "{} / {}", "{} {}"))
    return lines(some, lambda one: form.format(full(one), rng.choice(CARE)) if rng.random() < 0.3 else full(one), *CARE)


@shape()
def said_on_the_next_line(rng: random.Random, some: Sequence[Person]) -> Made:
    return lines(some, lambda one: full(one) + (f"\n{rng.choice(('', '– ', '  * '))}{rng.choice(CARE)}"
                                                if rng.random() < 0.25 else ""), *CARE)


@shape(HEADLESS)
def child_parent_phone(rng: random.Random, some: Sequence[Person]) -> Made:
    half = len(some) // 2
    rows = [f"{full(one)}; {other.given} {one.family}; 555-01{rng.randrange(10, 99)}"
            for one, other in paired(some)]
    return Made("\n".join(rows), wanted(some[:half]), tuple(other.given for other in some[half:]))


@shape(CLEAN)
def two_families_by_comma(rng: random.Random, some: Sequence[Person]) -> Made:
    pairs = paired(some)
    return Made("\n".join(f"{one.family} {other.family}, {one.given}" for one, other in pairs),
                tuple(Wanted((one.given,), one.given) for one, _ in pairs))


def _given(one: Person) -> str:
    return one.given
