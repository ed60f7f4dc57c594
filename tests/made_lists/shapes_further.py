"""Shapes of list written after `shapes_late` had been mended, and measured before the reader was changed again."""

from __future__ import annotations

import random
from collections.abc import Sequence

from made_lists.judging import Made
from made_lists.people import Person
from made_lists.registry import Registry
from made_lists.shapes_tuned import full, lines, paired, wanted

_KEPT = Registry()
SHAPES, CLEAN, HEADED, HEADLESS = _KEPT.shapes, _KEPT.clean, _KEPT.headed, _KEPT.headless
shape = _KEPT.shape


@shape(HEADED)
def school_export_with_a_block_above(rng: random.Random, some: Sequence[Person]) -> Made:
    above, titles, below = rng.choice((
        ("Class roster 2026-2027\nTeacher: Vale, J.\n", "#;Student;Grade;DOB;Home language;Bus", "Students: {}"),
        ("Klassenliste Schuljahr 2026/27\nKlassenleitung: Talberg\n", "Nr.;Schüler/in;Jg.;Geb.;Muttersprache;Bus",
         "Anzahl Schüler: {}"),
        ("Liste de classe 2026-2027\nEnseignante : Vallon\n", "N°;Élève;Niv.;Né(e) le;Langue maternelle;Car",
         "Nombre d’élèves : {}"),
        ("Listado del grupo 2026-2027\nTutora: Olmo\n", "N.º;Alumno/a;Nivel;F. nac.;Lengua materna;Ruta",
         "Alumnos: {}"),
        ("Elenco classe a.s. 2026/27\nDocente: Ferri\n", "N.;Alunno/a;Sez.;Nato il;Madrelingua;Bus", "Alunni: {}"),
        ("Lista da turma 2026/2027\nProfessora: Rute\n", "N.º;Aluno(a);Ano;Nasc.;Língua materna;Carrinha",
         "Total de alunos: {}"),
    ))
    rows = [f"{at};{one.family}, {one.given};K;{at:02}.05.2020;{rng.choice(('PL', 'TR', 'AR', ''))};{rng.randrange(9)}"
            for at, one in enumerate(some, 1)]
    return Made("\n".join((above, titles, *rows, below.format(len(some)))), wanted(some),
                ("Vale Talberg Vallon Olmo Ferri Rute Students Schüler élèves Alumnos Alunni alunos",))


@shape()
def answered_mail(rng: random.Random, some: Sequence[Person]) -> Made:
    head = rng.choice(("On Tue, Sep 8, 2026 at 4:12 PM Jo Vale <jo@mail.example> wrote:",
                       "Am 08.09.2026 um 16:12 schrieb Rita Talberg <rita@mail.example>:",
                       "Le mar. 8 sept. 2026 à 16:12, Anne Vallon <anne@mail.example> a écrit :",
                       "El mar, 8 sept 2026 a las 16:12, Rosa Olmo (<rosa@mail.example>) escribió:",
                       "Il giorno mar 8 set 2026 alle ore 16:12 Lena Ferri <lena@mail.example> ha scritto:",
                       "Rute Vaz <rute@mail.example> escreveu (terça, 8/09/2026 à(s) 16:12):"))
    rows = [f"> {full(one)}" for one in some]
    return Made("\n".join((head, ">", *rows)), wanted(some),
                ("Vale Talberg Vallon Olmo Ferri Rute Vaz wrote schrieb escreveu",))


@shape(HEADED)
def sign_up_form(rng: random.Random, some: Sequence[Person]) -> Made:
    titles = rng.choice((
        ("Timestamp", "Your name", "Child's first and last name", "Anything we should know?", "May we take photos?"),
        ("Zeitstempel", "Ihr Name", "Vor- und Nachname des Kindes", "Was sollten wir wissen?", "Fotos erlaubt?"),
        ("Horodateur", "Votre nom", "Prénom et nom de l'enfant", "Allergies, santé ?", "Photos autorisées ?"),
        ("Marca temporal", "Su nombre", "Nombre y apellido del niño o niña", "¿Alergias?", "¿Fotos?"),
        ("Informazioni cronologiche", "Il Suo nome", "Nome e cognome del bambino", "Allergie?", "Foto?"),
        ("Carimbo de data/hora", "O seu nome", "Nome e apelido da criança", "Alergias?", "Fotografias?"),
    ))
    care = ("none", "Penicillin", "Erdbeeren", "noix", "cacahuetes", "uova", "leite", "")
    rows = [f"9/{at}/2026 8:00:0{at % 10},{full(other)},{full(one)},{rng.choice(care)},{rng.choice(('Yes', 'No'))}"
            for at, (one, other) in enumerate(paired(some), 1)]
    half = len(some) // 2
    return Made("\n".join((",".join(titles), *rows)), wanted(some[:half]),
                (*(other.given for other in some[half:]), *filter(None, care)))


@shape()
def a_note_on_a_phone(rng: random.Random, some: Sequence[Person]) -> Made:
    about = ("out fri", "ask mom", "new shoes", "krank", "malade lundi", "falta lunes", "assente", "sai cedo")
    head = rng.choice(("kids today", "kinder heute", "présents", "hoy", "oggi", "hoje", "Class"))
    return Made("\n".join((head, *(f"{one.given.lower()} {one.family.lower()}"
                                   + (f" - {rng.choice(about)}" if rng.random() < 0.3 else "") for one in some))),
                wanted(some), (*about, head))


@shape()
def read_from_a_photo(rng: random.Random, some: Sequence[Person]) -> Made:
    """Slips of a program that reads print: a bar for a one, stray dots and bars at the ends, wide spaces."""
    def slipped(at: int, one: Person) -> str:
        number = str(at).replace("1", rng.choice("l|I1")).replace("5", rng.choice("S5")).replace("0", rng.choice("O0"))
        space, end = rng.choice((" ", "  ")), rng.choice(("", "", " .", " |", " _", "~"))
        return f"{number}{rng.choice(('.', ',', ')', ' .'))}{space}{full(one)}{end}"

    return Made("\n".join(slipped(at, one) for at, one in enumerate(some, 1)), wanted(some))


@shape()
def bus_stops(rng: random.Random, some: Sequence[Person]) -> Made:
    bus, stop = rng.choice((("Bus 12", "Elm & 3rd"), ("Buslinie 4", "Marktplatz"), ("Car n° 2", "Place du Four"),
                            ("Ruta 3", "Calle Sol"), ("Scuolabus 1", "Via Lunga"), ("Carrinha 2", "Largo Novo")))
    half = len(some) // 2
    rows = [f"7:{rng.randrange(10, 59)} {stop} – {full(one)}" if rng.random() < 0.3 else full(one) for one in some]
    return Made("\n".join((bus, *rows[:half], "", f"{bus} ({stop})", *rows[half:])), wanted(some), (bus, stop))


@shape()
def lunch_choices(rng: random.Random, some: Sequence[Person]) -> Made:
    said = rng.choice((("hot lunch", "packed", "salad", "pizza"), ("Menü 1", "Brotzeit", "vegetarisch"),
                       ("cantine", "pique-nique", "sans viande"), ("comedor", "tupper", "menú blando"),
                       ("mensa", "pranzo al sacco", "in bianco"), ("almoço", "marmita", "dieta")))
    sign = rng.choice((" – ", ": ", "\t", ", ", " ... "))
    return lines(some, lambda one: f"{full(one)}{sign}{rng.choice(said)}", *said)


@shape()
def class_photo(rng: random.Random, some: Sequence[Person]) -> Made:
    back, middle, away = rng.choice((
        ("Back row (left to right)", "Front row", "Not pictured"), ("Hinten von links", "Vorne", "Es fehlt"),
        ("Rang du haut, de gauche à droite", "Devant", "Absent"), ("Fila de atrás (izq. a der.)", "Delante", "Falta"),
        ("In alto da sinistra", "Seduti", "Manca"), ("Fila de trás", "À frente", "Ausente"),
    ))
    names = [one.given if rng.random() < 0.2 else full(one) for one in some]
    half = len(names) // 2
    return Made(f"{back}: {', '.join(names[:half])}\n{middle}: {', '.join(names[half:-1])}\n{away}: {names[-1]}",
                wanted(some), (back, middle, away))


@shape()
def birthdays_by_month(rng: random.Random, some: Sequence[Person]) -> Made:
    one_month, other = rng.choice((("September", "October"), ("SEPTEMBER", "OKTOBER"), ("Septembre", "Octobre"),
                                   ("Septiembre", "Octubre"), ("Settembre", "Ottobre"), ("Setembro", "Outubro")))
    form = rng.choice(("{d} – {n}", "{n} ({d})", "{d}: {n}", "{n} {d}.", "{n} 🎂 {d}"))
    rows = [form.format(d=rng.randrange(1, 29), n=full(one)) for one in some]
    half = len(some) // 2
    return Made("\n".join((one_month, *rows[:half], other, *rows[half:])), wanted(some), (one_month, other))


@shape()
def siblings_noted(rng: random.Random, some: Sequence[Person]) -> Made:
    said = rng.choice(("({o}'s sister)", "({o}'s little brother)", "(Bruder von {o})", "(Schwester: {o}, 3a)",
                       "(frère de {o})", "(hermana de {o})", "(fratello di {o})", "(irmã do {o})", "– sibling: {o}",
                       "(twin of {o})", "sib. {o} in 2B"))
    half = len(some) // 2
    return Made("\n".join(f"{full(one)} {said.format(o=other.given)}" for one, other in paired(some)),
                wanted(some[:half]), (*(other.given for other in some[half:]), "Bruder Schwester frère hermana irmã"))


@shape(CLEAN)
def numbered_otherwise(rng: random.Random, some: Sequence[Person]) -> Made:
    def number(at: int) -> str:
        ones = ("", "I", "II", "III", "IV", "V", "VI", "VII", "VIII", "IX")
        return {
            "roman": f"{'X' * (at // 10)}{ones[at % 10]}. ", "zero": f"{at:02} ",
            "circled": f"{chr(0x245F + min(at, 20))} ", "of": f"{at}/24 ", "square": f"[{at}] ", "degree": f"{at}° ",
            "ordinal": f"{at}º - ", "letter": f"{'abcdefghijklmnopqrstuvwxyz'[(at - 1) % 26]}) ",
            "keycap": f"{at % 10}\ufe0f\u20e3 ", "tick": "✅ ", "bracket": f"({at:02}) ",
        }[kind]

    kind = rng.choice(("roman", "zero", "circled", "of", "square", "degree", "ordinal", "letter", "keycap", "tick",
                       "bracket"))
    return Made("\n".join(number(at) + full(one) for at, one in enumerate(some, 1)), wanted(some))


_GONE = ("~~", "left 9/12", "MOVED", "abgemeldet", "weggezogen", "parti", "a déménagé", "radié", "baja", "se mudó",
         "ritirato", "trasferita", "saiu", "transferida")


@shape()
def left_or_new(rng: random.Random, some: Sequence[Person]) -> Made:
    forms = rng.choice((
        ("NEW! {}", "{} - left 9/12", "{} (starts Monday)", "{} MOVED", "~~{}~~", "*new* {}"),
        ("NEU: {}", "{} – abgemeldet", "{} (ab Montag)", "{} weggezogen", "neu! {}"),
        ("Nouveau : {}", "{} – parti", "{} (arrive lundi)", "{} a déménagé", "{} - radié"),
        ("¡NUEVA! {}", "{} – baja", "{} (empieza el lunes)", "{} se mudó", "{} (alta)"),
        ("NUOVO: {}", "{} – ritirato", "{} (da lunedì)", "{} trasferita"),
        ("NOVO! {}", "{} – saiu", "{} (começa segunda)", "{} transferida"),
    ))
    made = lines(some, lambda one: rng.choice(forms).format(full(one)) if rng.random() < 0.3 else full(one),
                 *(form.replace("{}", "") for form in forms))
    whole, gone = ([one for line, one in zip(made.text.split("\n"), made.children, strict=True)
                    if any(said in line for said in _GONE) is off] for off in (False, True))
    return Made(made.text, tuple(whole), made.remarks, tuple(gone))  # who is struck off or said to have left


@shape()
def half_days(rng: random.Random, some: Sequence[Person]) -> Made:
    said = rng.choice((("AM", "PM", "full day", "M/W/F", "T/Th"), ("Mo-Mi", "bis 12", "ganztags", "VM", "halbtags"),
                       ("matin", "a-m", "mi-temps", "journée"), ("mañana", "jornada completa", "L-X-V"),
                       ("mattina", "tempo pieno", "lun-mer"), ("manhã", "integral", "meio período")))
    form = rng.choice(("{} {}", "{} ({})", "{} - {}", "{}, {}"))
    return lines(some, lambda one: form.format(full(one), rng.choice(said)), *said)


@shape()
def abbreviations_of_teachers(rng: random.Random, some: Sequence[Person]) -> Made:
    said = rng.choice((("ELL2", "SpEd", "RTI", "504", "GATE", "T1"), ("LRS", "DaZ", "FöB", "I-Kind", "ETEP"),
                       ("PPS", "PAI", "ULIS", "RASED", "UPE2A"), ("NEE", "PT", "AL", "ACI", "NEAE"),
                       ("BES", "DSA", "L.104", "PDP", "PEI"), ("NEE", "RTP", "AEE", "PLNM")))
    form = rng.choice(("{} ({})", "{} - {}", "{} / {}", "{}, {}", "{} [{}]", "{} *{}*"))
    return lines(some, lambda one: form.format(full(one), rng.choice(said)) if rng.random() < 0.4 else full(one), *said)


@shape()
def hands_in_six_languages(rng: random.Random, some: Sequence[Person]) -> Made:
    said = rng.choice((("left-handed", "right-handed", "lefty"),
                       ("Linkshänder", "Linkshänderin", "Rechtshänder", "links"),
                       ("gaucher", "gauchère", "droitier", "droitière"), ("zurdo", "zurda", "diestra"),
                       ("mancino", "mancina", "destrimano"), ("canhoto", "canhota", "destro", "destra")))
    form = rng.choice(("{} ({})", "{} – {}", "{}, {}", "{}: {}", "{} [{}]"))
    return lines(some, lambda one: form.format(full(one), rng.choice(said)) if rng.random() < 0.4 else full(one), *said)
