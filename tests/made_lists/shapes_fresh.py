"""Shapes of list thought of as many teachers: written when `shapes_held` had been looked at, measured before a change.

Their remarks are in words that nobody had looked at, either.
"""

from __future__ import annotations

import random
from collections.abc import Callable, Sequence

from made_lists.judging import Made, Wanted
from made_lists.people import Person
from made_lists.registry import Registry
from made_lists.shapes_tuned import full, lines, paired, wanted

_KEPT = Registry()
SHAPES, CLEAN, HEADED, HEADLESS = _KEPT.shapes, _KEPT.clean, _KEPT.headed, _KEPT.headless
shape = _KEPT.shape
CARE = ("strawberries", "sunflower seeds", "bee stings", "Ventolin", "feeding tube", "walker", "no pork",
        "Grandma Tues", "late bus", "no photos please", "Erdbeeren", "Bienenstiche", "Rollator", "Neurodermitis",
        "keine Fotos", "Oma holt ab", "fraises", "piqûres d'abeille", "sans porc", "fauteuil roulant", "pas de photos",
        "PAI", "fragole", "punture d'ape", "sedia a rotelle", "viene la nonna", "morangos", "cadeira de rodas",
        "a avó busca",
        "fresas", "picadura de abeja", "muletas", "sin fotos", "la abuela recoge", "Tourette", "reflux", "Keppra")


@shape()
def french_care(rng: random.Random, some: Sequence[Person]) -> Made:
    return _cared(rng, some, lambda one, said: f"{one.family.upper()} {one.given} ({said})",
                  lambda one: f"{one.family.upper()} {one.given}")


@shape()
def german_care(rng: random.Random, some: Sequence[Person]) -> Made:
    return _cared(rng, some, lambda one, said: f"{one.family}, {one.given} – {said}",
                  lambda one: f"{one.family}, {one.given}")


@shape()
def italian_care(rng: random.Random, some: Sequence[Person]) -> Made:
    return _cared(rng, some, lambda one, said: f"{full(one)}: {said}", full)


@shape()
def portuguese_care(rng: random.Random, some: Sequence[Person]) -> Made:
    return _cared(rng, some, lambda one, said: f"{full(one)} [alergia: {said}]", full)


@shape()
def spanish_care(rng: random.Random, some: Sequence[Person]) -> Made:
    return _cared(rng, some, lambda one, said: f"{full(one)}, {said}", full)


@shape()
def care_under_a_name(rng: random.Random, some: Sequence[Person]) -> Made:
    return _cared(rng, some, lambda one, said: f"{full(one)}\n   {said}", full)


@shape(HEADLESS)
def care_in_a_column(rng: random.Random, some: Sequence[Person]) -> Made:
    sign = rng.choice(";\t")
    return _cared(rng, some, lambda one, said: f"{full(one)}{sign}{said}", lambda one: f"{full(one)}{sign}")


@shape(HEADLESS)
def care_behind_two_columns(rng: random.Random, some: Sequence[Person]) -> Made:
    return _cared(rng, some, lambda one, said: f"{rng.randrange(30)}\t{one.given}\t{one.family}\t\t{said}",
                  lambda one: f"{rng.randrange(30)}\t{one.given}\t{one.family}\t\t")


@shape()
def letter_with_signature(rng: random.Random, some: Sequence[Person]) -> Made:
    head, tail = rng.choice((
        ("Hi Kim,\n\nhere are my kids for Monday:", "Thanks,\nMrs. Vale\nK-2, Maple Room"),
        ("Bonjour,\nvoici la liste de ma classe :", "Bien cordialement,\nMme Vallon"),
        ("Liebe Kollegin,\nanbei meine Klasse:", "Viele Grüße\nFrau Talberg"),
        ("Hola, esta es mi lista:", "¡Muchas gracias!\nSra. Olmo"),
        ("Ciao Rita, ecco la mia classe", "Grazie mille\nMaestra Lena"),
        ("Olá, segue a minha lista", "Obrigada,\nProfessora Rute"),
        ("Good morning Tess", "Thanks so much! Ms Quill"),
    ))
    return Made("\n".join((head, "", *map(full if rng.random() < 0.5 else _given, some), "", tail)), wanted(some),
                ("Kim Vale Maple Bonjour Vallon Kollegin Talberg Olmo Rita Lena Rute Tess Quill kids Monday classe",))


@shape()
def jobs(rng: random.Random, some: Sequence[Person]) -> Made:
    tasks = ("Line leader", "Door holder", "Plant helper", "Weather watcher", "Snack helper", "Lights", "Librarian",
             "Calendar", "Mail", "Clean-up captain")
    pairs = list(zip(tasks, some, strict=False))
    return Made("\n".join(f"{task}: {one.given}" for task, one in pairs), wanted([one for _, one in pairs]), tasks)


@shape(HEADED)
def groups_as_columns(rng: random.Random, some: Sequence[Person]) -> Made:
    names = [one.given for one in some][: len(some) // 3 * 3]
    titles = rng.choice((("Owls", "Foxes", "Bees"), ("Rote Gruppe", "Blaue Gruppe", "Grüne Gruppe"),
                         ("Table 1", "Table 2", "Table 3"), ("Lundi", "Mardi", "Jeudi")))
    rows = ["\t".join(names[at : at + 3]) for at in range(0, len(names), 3)]
    return Made("\n".join(("\t".join(titles), *rows)), wanted(some[: len(names)]), titles)


@shape(HEADED)
def child_and_parents(rng: random.Random, some: Sequence[Person]) -> Made:
    titles = rng.choice((("Child", "Mother", "Father"), ("Kind", "Mutter", "Vater"), ("Élève", "Mère", "Père"),
                         ("Alumno", "Madre", "Padre"), ("Bambino", "Mamma", "Papà"), ("Aluno", "Mãe", "Pai")))
    third = len(some) // 3
    rows = [";".join(map(full, (some[at], some[third + at], some[2 * third + at]))) for at in range(third)]
    return Made("\n".join((";".join(titles), *rows)), wanted(some[:third]),
                tuple(one.given for one in some[third : 3 * third]))


@shape(HEADLESS)
def parent_in_brackets(rng: random.Random, some: Sequence[Person]) -> Made:
    half = len(some) // 2
    who = rng.choice(("mother", "Mutter", "mère", "madre", "mãe", "grandma", "foster mom"))
    rows = [f"{full(one)}\t{full(other)} ({who})" for one, other in paired(some)]
    return Made("\n".join(rows), wanted(some[:half]), (*(other.given for other in some[half:]), who))


@shape()
def twins(rng: random.Random, some: Sequence[Person]) -> Made:
    one, other, rest = some[0], some[1], some[2:]
    join, about = rng.choice((("and", "twins"), ("und", "Zwillinge"), ("et", "jumeaux"), ("y", "gemelos"),
                              ("e", "gemelli"), ("&", "twins")))
    rows = [f"{one.given} {join} {other.given} {one.family} ({about})", *map(full, rest)]
    rng.shuffle(rows)
    return Made("\n".join(rows), wanted(some), ("twins Zwillinge jumeaux gemelos gemelli",))


@shape()
def said_like(rng: random.Random, some: Sequence[Person]) -> Made:
    said = ("see-oh-MAH-rah", "SHIV-awn", "rhymes with tuna", "EYE-da", "say: ZHWOW", "like “key”", "soft G")
    return lines(some, lambda one: f"{full(one)} ({rng.choice(said)})" if rng.random() < 0.3 else full(one),
                 *(word for each in said for word in (each, each.strip("“”"))))


@shape()
def pronouns(rng: random.Random, some: Sequence[Person]) -> Made:
    said = ("she/her", "he/him", "they/them", "elle", "él", "sie/ihr", "lei")
    return lines(some, lambda one: f"{full(one)} ({rng.choice(said)})", *said)


@shape()
def a_program_s_list(rng: random.Random, some: Sequence[Person]) -> Made:
    form = rng.choice(('["{}"]', "- name: {}", '"{}",', "'{}',"))
    if form.startswith("["):
        return Made("[" + ", ".join(f'"{full(one)}"' for one in some) + "]", wanted(some))
    return lines(some, lambda one: form.format(full(one)), "name")


@shape()
def copied_from_a_screen(rng: random.Random, some: Sequence[Person]) -> Made:
    under = rng.choice(("Student", "Last seen today", "Member", "Schüler", "Élève", "0 messages"))
    return lines(some, lambda one: f"{full(one)}\n{under}", under)


@shape()
def odd_numbers(rng: random.Random, some: Sequence[Person]) -> Made:
    form = rng.choice(("{}- {}", "{}/ {}", "{} {}", "({}) {}", "#{} {}", "{}) {}", "{}.{}", "{}: {}", "N° {} {}"))
    return Made("\n".join(form.format(at, full(one)) for at, one in enumerate(some, 1)), wanted(some))


@shape()
def pages_of_a_print(rng: random.Random, some: Sequence[Person]) -> Made:
    half = len(some) // 2
    head = rng.choice(("Class list – page {} of 2", "Liste des élèves   page {}/2", "Klassenliste Seite {} von 2",
                       "Elenco alunni  pag. {}", "Lista de alumnos – página {}"))
    return Made("\n".join((head.format(1), *map(full, some[:half]), "", head.format(2), *map(full, some[half:]))),
                wanted(some), ("Class list page liste élèves Klassenliste Seite Elenco alunni pag Lista alumnos",))


@shape()
def stars_and_a_legend(rng: random.Random, some: Sequence[Person]) -> Made:
    legend = rng.choice(("* = new this week", "* allergies, see folder", "* neu", "* nouvel élève",
                         "(*) va a logopedia"))
    rows = [full(one) + (rng.choice((" *", "*", " (*)")) if rng.random() < 0.3 else "") for one in some]
    return Made("\n".join((*rows, "", legend)), wanted(some), ("new allergies see folder neu nouvel élève logopedia",))


@shape(CLEAN)
def middle_initials(rng: random.Random, some: Sequence[Person]) -> Made:
    return lines(some, lambda one: f"{one.given} {rng.choice('ABJLMR')}. {one.family}")


@shape(CLEAN)
def quoted_family_comma(rng: random.Random, some: Sequence[Person]) -> Made:
    return lines(some, lambda one: f'"{one.family}, {one.given} {rng.choice("ABJLMR")}.","K","Birch"', "Birch K")


@shape(CLEAN)
def one_line_family_comma(rng: random.Random, some: Sequence[Person]) -> Made:
    return Made("; ".join(f"{one.family}, {one.given}" for one in some), wanted(some))


@shape(CLEAN)
def givens_and_initials_in_a_line(rng: random.Random, some: Sequence[Person]) -> Made:
    return Made(", ".join(f"{one.given} {one.family[0]}." for one in some), wanted(some))


@shape()
def day_before_the_name(rng: random.Random, some: Sequence[Person]) -> Made:
    form = rng.choice(("2020-0{m}-1{d} {n}", "1{d}.0{m}. {n}", "1{d}/0{m}  {n}", "May 1{d}: {n}", "1{d} mai : {n}",
                       "{n} – Sept 1{d}", "{n} 1{d} de mayo"))
    return lines(some, lambda one: form.format(m=rng.randrange(1, 10), d=rng.randrange(10), n=full(one)),
                 "May mai Sept mayo")


@shape()
def rows_of_seats(rng: random.Random, some: Sequence[Person]) -> Made:
    word = rng.choice(("Row", "Reihe", "Rang", "Fila", "Table", "Group"))
    names = [one.given for one in some]
    rows = [f"{word} {at // 4 + 1}: {', '.join(names[at : at + 4])}" for at in range(0, len(names), 4)]
    return Made("\n".join(rows), wanted(some), (word,))


@shape()
def pegs(rng: random.Random, some: Sequence[Person]) -> Made:
    word = rng.choice(("Cubby", "Peg", "Haken", "Casier", "Percha", "Armadietto", "Locker"))
    sign = rng.choice((" – ", ": ", " - ", " "))
    return Made("\n".join(f"{word} {at}{sign}{full(one)}" for at, one in enumerate(some, 1)), wanted(some), (word,))


@shape()
def who_comes(rng: random.Random, some: Sequence[Person]) -> Made:
    said = rng.choice((("yes", "no", "maybe"), ("ja", "nein", "vielleicht"), ("oui", "non", "peut-être"),
                       ("sí", "no", "quizás"), ("coming", "not coming", "sick"), ("✅", "❌", "❓")))
    return lines(some, lambda one: f"{full(one)} – {rng.choice(said)}", *said)


@shape()
def pictures_before_names(rng: random.Random, some: Sequence[Person]) -> Made:
    sign = rng.choice(("⭐ ", "🐻 ", "✏️ ", "🌈", "👉 ", "❤️ "))
    return lines(some, lambda one: sign + (full(one) if rng.random() < 0.5 else one.given))


@shape()
def called_otherwise(rng: random.Random, some: Sequence[Person]) -> Made:
    how = rng.choice(("{a} {f} (everyone calls her {b})", "{a} {f}, genannt {b}", "{a} {f} (dite {b})",
                      "{a} {f} (le decimos {b})", "{a} {f} detto {b}", "{a} {f} (wird {b} gerufen)",
                      "{a} {f} – answers to {b}"))
    pairs = paired(some)
    return Made("\n".join(how.format(a=one.given, f=one.family, b=other.given) for one, other in pairs),
                tuple(Wanted((other.given, one.given), one.given) for one, other in pairs),
                ("everyone calls her genannt dite decimos detto wird gerufen answers",))


def _given(one: Person) -> str:
    return one.given


def _cared(rng: random.Random, some: Sequence[Person], said: Callable[[Person, str], str],
           plain: Callable[[Person], str]) -> Made:
    """Return a list where a third of the children have a remark."""
    return lines(some, lambda one: said(one, rng.choice(CARE)) if rng.random() < 0.34 else plain(one),
                 *(word for each in CARE for word in (each, *each.split("'")) if word != "a"))
