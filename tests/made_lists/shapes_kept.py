"""Shapes by the hand of `made_lists.shapes_open`: the half that is measured and not looked at.

What is mended after somebody has read its lists is no longer a measure of unseen ones.
"""

from __future__ import annotations

import random
from collections.abc import Sequence
from html import escape
from itertools import zip_longest

from made_lists.judging import Made, Wanted
from made_lists.people import Person
from made_lists.registry import Registry
from made_lists.shapes_open import grown_ups, in_groups, listed, plain, told, wanted

_REGISTRY = Registry()
SHAPES, CLEAN, HEADED, HEADLESS = _REGISTRY.shapes, _REGISTRY.clean, _REGISTRY.headed, _REGISTRY.headless
MAY_ASK: set[str] = set()
shape = _REGISTRY.shape


@shape()
def quoted_thread(rng: random.Random, group: Sequence[Person]) -> Made:
    """A mail answered twice: the list stands behind two marks of quoting, signatures above and below it."""
    sender, office = grown_ups(rng, group, 2)
    top, wrote, ask, end = rng.choice((
        ("Here you go, see below! I'll be out Friday.", "On Tue, Aug 26, 2025 at 9:14 AM {0} wrote:",
         "Could you send me the final list for Room 3? Thanks!", "Sent from my phone"),
        ("Siehe unten, liebe Grüße", "Am 26.08.2025 um 09:14 schrieb {0}:",
         "kannst du mir die Liste der Igelgruppe schicken?", "Von unterwegs gesendet"),
        ("Voici la liste, bonne rentrée !", "Le mar. 26 août 2025 à 09:14, {0} a écrit :",
         "peux-tu m'envoyer la liste des petits ?", "Envoyé de mon téléphone"),
        ("Te la reenvío abajo, un abrazo", "El mar, 26 ago 2025 a las 9:14, {0} escribió:",
         "¿me pasas la lista de los de 3 años?", "Enviado desde mi teléfono"),
        ("Eccola qui sotto, a presto", "Il giorno mar 26 ago 2025 alle ore 09:14 {0} ha scritto:",
         "mi mandi l'elenco della sezione A?", "Inviato dal mio telefono"),
        ("Segue abaixo, beijinhos", "Em ter., 26 de ago. de 2025 às 09:14, {0} escreveu:",
         "podes mandar-me a lista da sala 2?", "Enviado do meu telemóvel"),
    ))
    who = f"{office.given} {office.family} <{plain(office.given).lower()}@example.org>"
    lines = [top, sender.given, end, "", wrote.format(who), f"> {ask}", ">",
             *(f"> > {at}) {one.given} {one.family}" for at, one in enumerate(group, 1)), "> >", f"> > {office.given}"]
    return listed(lines, wanted(group, "{given} {family}"), (sender.given, office.given, top, ask, end))


@shape()
def half_days(rng: random.Random, group: Sequence[Person]) -> Made:
    """A first name and an initial, and for some which days or which half of the day they come."""
    title, notes = rng.choice((
        ("Nursery 2s & 3s", ("(half days)", "M/W/F", "- am only", "Tu Th til noon", "(PM)", "full day")),
        ("Krippe + Kita", ("(halbtags)", "Mo/Mi/Fr", "- nur vormittags", "bis 12 Uhr", "Di+Do", "ganztags")),
        ("Petite section", ("(mi-temps)", "lun/jeu", "- matin seulement", "jusqu'à midi", "sieste à la maison")),
        ("Infantil 3 años", ("(media jornada)", "L/X/V", "- solo mañanas", "hasta las 12", "comedor M y J")),
        ("Sezione piccoli", ("(part-time)", "lun/mer", "- solo mattina", "fino alle 12", "giornata intera")),
        ("Sala dos 3 anos", ("(meio período)", "seg/qua", "- só de manhã", "até ao meio-dia", "integral")),
    ))
    lines = [f"{one.given} {one.family[0]}" + (f" {rng.choice(notes)}" if rng.random() < 0.5 else "") for one in group]
    return listed([title, *lines], wanted(group), (title, *notes))


@shape()
def twins_and_siblings(rng: random.Random, group: Sequence[Person]) -> Made:
    """Twins on one line before the family they share; for others a brother or sister who is in another class."""
    twins, and_, sibling = rng.choice((
        ("(twins)", "&", "(big sister {0} in 2nd grade)"), ("(Zwillinge)", "und", "(Bruder {0} in der 2b)"),
        ("(jumeaux)", "et", "(sœur de {0}, CE1)"), ("(mellizos)", "y", "(hermana de {0}, 2.º B)"),
        ("(gemelli)", "e", "(fratello di {0}, 2ª B)"), ("(gêmeos)", "e", "(irmã do {0}, 2.º ano)"),
    ))
    older = grown_ups(rng, group, len(group))
    first, second, *rest = group
    lines = [f"{one.given} {one.family}" + (f" {sibling.format(other.given)}" if rng.random() < 0.3 else "")
             for one, other in zip(rest, older, strict=False)]
    lines.insert(rng.randrange(len(lines)), f"{first.given} {and_} {second.given} {first.family} {twins}")
    return listed(lines, [*wanted((first, second)), *wanted(rest, "{given} {family}")],
                  (twins, sibling.replace("{0}", ""), *(one.given for one in older)))


@shape()
def family_first(rng: random.Random, group: Sequence[Person]) -> Made:
    """A register in which the family stands first, in capitals, as in Hungarian, Chinese or French offices."""
    title = rng.choice(("Névsor – Katica csoport", "Name list (FAMILY Given)", "Danh sách lớp Mầm", "Liste d'appel"))
    lines = [f"{one.family.upper()} {one.given}" for one in group]
    return listed([title, "", *lines, "", f"({len(group)})"], wanted(group, "{family} {given}"), (title,))


@shape(HEADED)
def page_source(rng: random.Random, group: Sequence[Person]) -> Made:
    """The source of a page from a school site: a table with a caption, the names with a link, a room in each row."""
    head, caption = rng.choice((
        (("Child", "Room", "Lunch"), "Junior K"), (("Kind", "Raum", "Essen"), "Vorschule"),
        (("Enfant", "Salle", "Repas"), "Maternelle"), (("Niño/a", "Aula", "Comedor"), "Infantil"),
        (("Bambino", "Aula", "Mensa"), "Infanzia"), (("Criança", "Sala", "Almoço"), "Jardim"),
    ))
    rows = [f'  <tr><td><a href="/c/{rng.randrange(100, 999)}">{escape(one.given)} {escape(one.family)}</a></td>'
            f"<td>{rng.randrange(1, 4)}</td><td>&#10003;</td></tr>" for one in group]
    lines = ['<table class="list">', f"  <caption>{caption}&nbsp;A</caption>",
             "  <tr>" + "".join(f"<th>{each}</th>" for each in head) + "</tr>", *rows, "</table>"]
    return listed(lines, wanted(group, "{given}"), (caption, *head))


@shape()
def ticked_notes(rng: random.Random, group: Sequence[Person]) -> Made:
    """A note with boxes to tick, under headings: whose portfolio is finished and what is still missing."""
    done, missing, notes = rng.choice((
        ("Portfolios finished", "Still missing", ("self-portrait", "photo page", "handprint")),
        ("Mappen fertig", "Fehlt noch", ("Selbstbild", "Fotoseite", "Handabdruck")),
        ("Cahiers terminés", "À compléter", ("autoportrait", "photo", "empreinte")),
        ("Carpetas listas", "Faltan", ("autorretrato", "foto", "huella")),
        ("Cartelline finite", "Da completare", ("autoritratto", "foto", "impronta")),
        ("Portefólios prontos", "Em falta", ("autorretrato", "foto", "mão pintada")),
    ))
    first, second = in_groups(group, 2)
    lines = [f"## {done}", "", *(f"- [x] **{one.given}** {one.family}" for one in first), "", f"## {missing}", "",
             *(f"- [ ] **{one.given}** {one.family} _{rng.choice(notes)}_" for one in second)]
    return listed(lines, wanted(group, "{given}"), (done, missing, *notes))


@shape(HEADED)
def shifted_register(rng: random.Random, group: Sequence[Person]) -> Made:
    """A register copied from a spreadsheet: a title over joined cells, an empty first column, ticks and absences."""
    title, head, signs = rng.choice((
        ("Attendance — week 9", ("Pupil", "M", "T", "W", "Th", "F"), ("✓", "✓", "✓", "A", "L")),
        ("Anwesenheit KW 45", ("Kind", "Mo", "Di", "Mi", "Do", "Fr"), ("x", "x", "x", "e", "k")),
        ("Présences semaine 45", ("Élève", "L", "M", "J", "V"), ("•", "•", "•", "abs", "ret")),
        ("Asistencia semana 9", ("Alumno", "L", "M", "X", "J", "V"), ("/", "/", "/", "F", "R")),
        ("Presenze settimana 9", ("Alunno", "L", "M", "M", "G", "V"), ("P", "P", "P", "A", "R")),
        ("Presenças semana 9", ("Aluno", "S", "T", "Q", "Q", "S"), ("P", "P", "P", "F", "A")),
    ))
    days = len(head) - 1
    rows = ["\t".join(("", f"{one.family}, {one.given}", *(rng.choice(signs) for _ in range(days)))) for one in group]
    lines = ["\t" + title + "\t" * days, "\t" * (days + 1), "\t" + "\t".join(head), *rows]
    return listed(lines, wanted(group, "{family}, {given}"), (title, head[0]))


@shape()
def class_photo(rng: random.Random, group: Sequence[Person]) -> Made:
    """Who stands where in the class photo, a row a line; who is not in it; the grown-ups beside the children."""
    rows, absent, adults = rng.choice((
        (("Back row (l. to r.): ", "Middle row: ", "Front row, sitting: "), "Not pictured: ",
         "Teachers: Mrs. {0}, Mr. {1}"),
        (("Hinten v.l.n.r.: ", "Mitte: ", "Vorne sitzend: "), "Es fehlt: ", "Erzieher: Frau {0}, Herr {1}"),
        (("En haut, de g. à d. : ", "Au milieu : ", "Assis : "), "Absent : ", "Adultes : Mme {0}, M. {1}"),
        (("Arriba (izq. a dcha.): ", "En medio: ", "Sentados: "), "Falta: ", "Maestras: Sra. {0}, Sra. {1}"),
        (("In alto da sinistra: ", "Al centro: ", "Seduti: "), "Assente: ", "Maestre: sig.ra {0}, sig.ra {1}"),
        (("Em cima, da esq.: ", "Ao meio: ", "Sentados: "), "Faltou: ", "Educadoras: D. {0}, D. {1}"),
    ))
    *stand, last = group
    pair = grown_ups(rng, group, 2)
    lines = [rows[at] + ", ".join(one.given for one in some) for at, some in enumerate(in_groups(stand, 3))]
    lines += [absent + last.given, adults.format(*(one.family for one in pair))]
    return listed(lines, wanted(group), (*rows, absent, *(one.family for one in pair)))


@shape()
def how_to_say_it(rng: random.Random, group: Sequence[Person]) -> Made:
    """Names with how they are said, in capitals and hyphens, or what they rhyme with."""
    forms = rng.choice((
        ("(say: {0})", "[{0}]", '- sounds like "{0}"', "({0})"), ("(gesprochen {0})", "[{0}]", "sprich: {0}"),
        ("(se prononce {0})", "[{0}]", "- dire « {0} »"), ("(se pronuncia {0})", "[{0}]", "se dice {0}"),
        ("(si legge {0})", "[{0}]", "pronuncia: {0}"), ("(lê-se {0})", "[{0}]", "diz-se {0}"),
    ))
    lines, said = [], []
    for one in group:
        name = plain(one.given).replace("-", "")
        cut = max(2, len(name) // 2)
        sound = f"{name[:cut].upper()}-{name[cut:].lower().replace('i', 'ee').replace('c', 'k')}h"
        has = name.isascii() and rng.random() < 0.5  # said in the letters of the list
        said += [sound] if has else []
        lines.append(f"{one.given} {one.family}" + (f" {rng.choice(forms).format(sound)}" if has else ""))
    return listed(lines, wanted(group, "{given} {family}"), (*said, " ".join(forms).replace("{0}", "")))


@shape(MAY_ASK)
def comings_and_goings(rng: random.Random, group: Sequence[Person]) -> Made:
    """Who starts later, who has left, and under a heading of its own who waits for a place."""
    starts, left, waiting = rng.choice((
        (("starts 3 Nov", "NEW!", "back after winter break"), "left in Sept", "Waiting list:"),
        (("kommt ab 3.11.", "NEU", "Eingewöhnung ab Mo"), "abgemeldet", "Warteliste:"),
        (("arrive le 3 nov.", "nouvelle", "rentrée échelonnée"), "radié", "Liste d'attente :"),
        (("empieza el 3 de nov", "nueva", "vuelve en enero"), "baja", "Lista de espera:"),
        (("inizia il 3 nov", "nuovo", "inserimento da lunedì"), "ritirato", "Lista d'attesa:"),
        (("começa a 3 nov", "novo", "volta em janeiro"), "saiu", "Lista de espera:"),
    ))
    gone, *queue = grown_ups(rng, group, 3)
    lines = [f"{one.given} {one.family}" + (f" - {rng.choice(starts)}" if rng.random() < 0.3 else "") for one in group]
    lines.insert(len(lines) // 2, f"~~{gone.given} {gone.family}~~ {left}")
    lines += ["", waiting, *(f"{one.given} {one.family}" for one in queue)]
    made = listed(lines, wanted(group, "{given} {family}"), (*starts, left, waiting, gone.given))
    return Made(made.text, made.children, made.remarks, tuple(wanted(queue, "{given} {family}")))


@shape(HEADED)
def reading_groups(rng: random.Random, group: Sequence[Person]) -> Made:
    """Reading groups beside each other: a colour or an insect over each column, the children below, ragged."""
    heads = rng.choice((
        ("Ladybugs", "Crickets", "Fireflies"), ("Rot", "Gelb", "Grün"), ("Rouges", "Jaunes", "Verts"),
        ("Rojo", "Amarillo", "Verde"), ("Rossi", "Gialli", "Verdi"), ("Vermelho", "Amarelo", "Verde"),
    ))
    first, second, third = group[:(a := len(group) // 2)], group[a:(b := a + len(group) // 4 + 1)], group[b:]
    rows = zip_longest(*([one.given for one in some] for some in (first, second, third)), fillvalue="")
    lines = ["\t".join(heads), *("\t".join(row) for row in rows)]
    return listed(lines, wanted(group), heads)


@shape()
def birthday_months(rng: random.Random, group: Sequence[Person]) -> Made:
    """Birthdays by month, the day in brackets; months without one; those of the holidays together."""
    months, none = rng.choice((
        (("September", "October", "November", "December", "January", "Summer birthdays"), "none :("),
        (("September", "Oktober", "November", "Dezember", "Januar", "Ferienkinder"), "niemand"),
        (("Septembre", "Octobre", "Novembre", "Décembre", "Janvier", "Vacances d'été"), "personne"),
        (("Septiembre", "Octubre", "Noviembre", "Diciembre", "Enero", "Cumples de verano"), "nadie"),
        (("Settembre", "Ottobre", "Novembre", "Dicembre", "Gennaio", "Estate"), "nessuno"),
        (("Setembro", "Outubro", "Novembro", "Dezembro", "Janeiro", "Férias"), "ninguém"),
    ))
    parts = [*in_groups(group, 5)]
    parts.insert(rng.randrange(len(parts)), [])
    lines = []
    for month, some in zip(months, parts, strict=False):
        days = sorted(rng.sample(range(1, 31), len(some)))
        named = (f"{one.given} ({day})" for one, day in zip(some, days, strict=True))
        lines.append(f"{month}: {', '.join(named) if some else none}")
    return listed(lines, wanted(group), (*months, none))


@shape(MAY_ASK)
def note_for_the_substitute(rng: random.Random, group: Sequence[Person]) -> Made:
    """Free prose for whoever stands in tomorrow: children by what they need, the aide by name."""
    aide = grown_ups(rng, group, 1)[0]
    opening, one_, some_, last, end = rng.choice((
        ("Hi! Thanks for covering. {0} (my aide) knows where everything is.",
         ("The line leader is {0}.", "{0} needs help with the zipper.", "{0} naps with a blue blanket."),
         "On the rug you'll have {0}.", "and", "Have fun!"),
        ("Hallo, danke fürs Einspringen. {0} (Praktikant) weiß Bescheid.",
         ("Tischdienst hat {0}.", "{0} braucht Hilfe beim Anziehen.", "{0} wird um 12 abgeholt."),
         "In der Bauecke sind {0}.", "und", "Viel Spaß!"),
        ("Bonjour et merci de me remplacer. {0} (ATSEM) connaît la classe.",
         ("Le chef de rang est {0}.", "{0} a besoin de son doudou.", "{0} part à midi."),
         "Au coin lecture il y a {0}.", "et", "Bon courage !"),
        ("¡Hola! Gracias por sustituirme. {0} (auxiliar) sabe dónde está todo.",
         ("El encargado es {0}.", "{0} necesita ayuda con la cremallera.", "{0} se va a las 12."),
         "En la alfombra están {0}.", "y", "¡Suerte!"),
    ))
    first, second, third, *rest = group
    named = [form.format(one.given) for form, one in zip(one_, (first, second, third), strict=True)]
    told_ = [some_.format(told([one.given for one in rest], last))] if len(rest) > 1 else []
    rest = rest if told_ else []
    lines = [opening.format(aide.given), " ".join(named), *told_, end]
    words = " ".join((opening, *one_, some_, end)).replace("{0}", "")
    return listed(lines, wanted((first, second, third, *rest)), (aide.given, words))


@shape(CLEAN)
def long_families(rng: random.Random, group: Sequence[Person]) -> Made:
    """Families of several words, particles and prefixes before the comma; the given name behind it."""
    others = grown_ups(rng, group, len(group))
    forms = ("de la {0} {1}", "van der {0}", "O'{0}", "Mc{0}", "{0}-{1}", "dos {0} {1}", "al-{0}", "{0} y {1}",
             "Di {0}", "von {0}", "{0} {1}", "{0}", "Le {0}", "d'{0}", "St. {0}")
    rows = [(rng.choice(forms).format(one.family, other.family), one.given)
            for one, other in zip(group, others, strict=True)]
    return listed([f"{family}, {given}" for family, given in rows],
                  [Wanted((given,), f"{family}, {given}") for family, given in rows], ())


@shape(HEADED)
def contacts_beside(rng: random.Random, group: Sequence[Person]) -> Made:
    """A table with two rows of headings: over the child nothing, over each grown-up whose contact it is."""
    first, second, head = rng.choice((
        ("Contact 1", "Contact 2", ("Child", "Name", "Cell", "Name", "Cell")),
        ("Kontakt 1", "Kontakt 2", ("Kind", "Name", "Mobil", "Name", "Mobil")),
        ("Responsable 1", "Responsable 2", ("Enfant", "Nom", "Tél.", "Nom", "Tél.")),
        ("Contacto 1", "Contacto 2", ("Niño/a", "Nombre", "Móvil", "Nombre", "Móvil")),
        ("Contatto 1", "Contatto 2", ("Bambino/a", "Nome", "Cell.", "Nome", "Cell.")),
        ("Contacto 1", "Contacto 2", ("Criança", "Nome", "Tlm.", "Nome", "Tlm.")),
    ))
    adults = grown_ups(rng, group, 2 * len(group))
    rows = []
    for one, mother, father in zip(group, adults[::2], adults[1::2], strict=True):
        phones = [f"555-{rng.randrange(1000, 9999)}" for _ in range(2)]
        rows.append("\t".join((f"{one.given} {one.family}", f"{mother.given} {mother.family}", phones[0],
                               *rng.choice(((f"{father.given} {one.family}", phones[1]), ("", ""))))))
    lines = [f"\t{first}\t\t{second}\t", "\t".join(head), *rows]
    return listed(lines, wanted(group, "{given} {family}"), [one.given for one in adults])


@shape()
def after_school(rng: random.Random, group: Sequence[Person]) -> Made:
    """A sign-up for the afternoon, filled in by parents: a time, the child, the year, who pays and a telephone."""
    title, mothers, year, times = rng.choice((
        ("After-school clay club, $4 a day, sign below!", ("mom", "dad", "grandma"), ("K", "PreK", "K-2"),
         ("3:15-4:00", "3.15-4", "3:15 pm")),
        ("Nachmittagsbetreuung – bitte eintragen", ("Mama", "Papa", "Oma"), ("Vorschule", "Gr. 2"),
         ("15:15", "15.15 Uhr", "15-16 Uhr")),
        ("Garderie du soir - inscriptions", ("maman", "papa", "mamie"), ("PS", "MS", "GS"),
         ("16h30", "16h30-17h30", "16:30")),
        ("Extraescolar de barro - apuntarse aquí", ("mamá", "papá", "abuela"), ("3 años", "4 años B"),
         ("16:30", "16:30-17:30", "4 y media")),
        ("Doposcuola - iscrizioni", ("mamma", "papà", "nonna"), ("3 anni", "sez. B"),
         ("15:30", "15.30-16.30", "ore 15:30")),
        ("Oficina de barro - inscrições", ("mãe", "pai", "avó"), ("pré", "jardim II"),
         ("15h30", "15h30-16h30", "15:30")),
    ))
    adults = grown_ups(rng, group, len(group))
    lines = [f"{rng.choice(times)} {one.given} {one.family}, {rng.choice(year)}, "
             f"{rng.choice(mothers)} {adult.given} 555-{rng.randrange(1000, 9999)}"
             for one, adult in zip(group, adults, strict=True)]
    return listed([title, *lines], wanted(group, "{given} {family}"), (title, *mothers, *(one.given for one in adults)))
