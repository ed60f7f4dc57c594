"""Shapes of list as kept from January to June, thought of by another hand; this half is measured only.

See ``shapes_spring`` for how the two were told apart. No list of these is looked at while the reader is mended.
"""

from __future__ import annotations

import random
from collections.abc import Sequence

from made_lists.judging import Made, Wanted
from made_lists.people import Person
from made_lists.registry import Registry
from made_lists.shapes_tuned import full, wanted

_KEPT = Registry()
SHAPES, CLEAN, HEADED, HEADLESS = _KEPT.shapes, _KEPT.clean, _KEPT.headed, _KEPT.headless
shape = _KEPT.shape
HELLO = (
    "Hi! Thank you so much for being with us today.\nThese are the children:",
    "¡Hola! Gracias por estar hoy con nosotros.\nEstos son los niños:",
    "Bonjour et merci d'être là aujourd'hui.\nVoici les enfants :",
    "Hallo und danke, dass du heute da bist.\nDas sind die Kinder:",
    "Ciao e grazie di essere qui oggi.\nQuesti sono i bambini:",
    "Olá e obrigada por estar aqui hoje.\nEstas são as crianças:")
TO_KNOW = (
    ("needs the bathroom often", "is a great helper", "sits by the door", "may cry at drop-off"),
    ("va mucho al baño", "ayuda muy bien", "se sienta junto a la puerta", "puede llorar al llegar"),
    ("va souvent aux toilettes", "aide très bien", "assis près de la porte", "pleure parfois le matin"),
    ("muss oft zur Toilette", "hilft gern", "sitzt an der Tür", "weint manchmal am Morgen"),
    ("va spesso in bagno", "aiuta volentieri", "siede vicino alla porta", "a volte piange al mattino"),
    ("vai muito ao banheiro", "ajuda muito bem", "senta perto da porta", "às vezes chora de manhã"))
BYE = (
    "Lunch is at 11:15. Work for early finishers is in the blue bin.\nThank you! Mrs. Alder",
    "El almuerzo es a las 11:15. Hay más hojas en la caja azul.\n¡Gracias! Sra. Alder",
    "On mange à 11 h 15. Il y a d'autres fiches dans le bac bleu.\nMerci ! Mme Alder",
    "Mittagessen ist um 11:15 Uhr. Weitere Blätter liegen in der blauen Kiste.\nDanke! Frau Alder",
    "Si mangia alle 11:15. Altre schede sono nella scatola blu.\nGrazie! Maestra Alder",
    "O almoço é às 11h15. Há mais folhas na caixa azul.\nObrigada! Profª Alder")


@shape()
def substitute_note(rng: random.Random, some: Sequence[Person]) -> Made:
    """Leave a note for a substitute: a greeting, the children, some with a word to know, and a goodbye."""
    at = rng.randrange(6)
    first, join = rng.random() < 0.5, rng.choice((" – ", " - ", ": "))
    lines = [(one.given if first else full(one)) + (join + rng.choice(TO_KNOW[at]) if rng.random() < 0.3 else "")
             for one in some]
    return Made("\n".join((HELLO[at], "", *lines, "", BYE[at])), wanted(some), (*TO_KNOW[at], HELLO[at], BYE[at]))


EXPORTED = (
    ("Class Roster Report", ("Student ID", "Student", "Grade", "Birthdate", "Homeroom"), "K", "Total students:"),
    ("Listado de alumnos", ("Matrícula", "Alumno", "Grado", "Fecha de nacimiento", "Grupo"), "Preescolar", "Total:"),
    ("Liste des élèves", ("N° élève", "Élève", "Niveau", "Date de naissance", "Classe"), "GS", "Effectif :"),
    ("Klassenliste", ("Schülernr.", "Schüler", "Stufe", "Geburtsdatum", "Klasse"), "1", "Anzahl:"),
    ("Elenco alunni", ("Matricola", "Alunno", "Anno", "Data di nascita", "Sezione"), "Infanzia", "Totale:"),
    ("Relação de alunos", ("Matrícula", "Aluno", "Ano", "Data de nascimento", "Turma"), "Pré", "Total:"))


@shape(HEADED)
def office_export(rng: random.Random, some: Sequence[Person]) -> Made:
    """Copy what the office's program shows: a title, the day it was printed, a table, and a count under it."""
    title, head, grade, total = EXPORTED[rng.randrange(6)]
    rows = [(str(rng.randrange(100000, 999999)), f"{one.family}, {one.given}", grade,
             f"{rng.randrange(1, 29):02}/{rng.randrange(1, 13):02}/2020", "A-4") for one in some]
    table = ["\t".join(row) for row in (head, *rows)]
    return Made("\n".join((f"{title}  01/22/2026", "", *table, f"{total} {len(some)}")), wanted(some), (title, *head))


WAYS = (
    ("Bus 4", "Bus 12 (blue)", "Walkers", "Car riders", "After-care"),
    ("Autobús 4", "Autobús 12 (azul)", "Caminan", "Los recogen en coche", "Se quedan en la tarde"),
    ("Car 4", "Car 12 (bleu)", "À pied", "En voiture", "Garderie"),
    ("Bus 4", "Bus 12 (blau)", "Fußgänger", "Werden abgeholt", "Hort"),
    ("Scuolabus 4", "Scuolabus 12 (blu)", "A piedi", "In macchina", "Doposcuola"),
    ("Ônibus 4", "Ônibus 12 (azul)", "A pé", "De carro", "Período integral"))
HOME = ("Dismissal list – updated Feb. 9", "Lista de salida – 9 de febrero", "Sorties – mise à jour du 9 février",
        "Heimweg – Stand 9. Februar", "Uscita – aggiornato al 9 febbraio", "Lista de saída – 9 de fevereiro")


@shape()
def ways_home(rng: random.Random, some: Sequence[Person]) -> Made:
    """Write under each way home who goes that way, with an empty line between."""
    at = rng.randrange(6)
    under: dict[str, list[str]] = {}
    whole = rng.random() < 0.6
    for one in some:
        under.setdefault(rng.choice(WAYS[at]), []).append(full(one) if whole else f"{one.given} {one.family[0]}.")
    blocks = ["\n".join((way, *under[way])) for way in WAYS[at] if way in under]
    return Made("\n\n".join((HOME[at], *blocks)), wanted(some), (*WAYS[at], HOME[at]))


ORDERED = (
    ("Book order – March", "books", "$", "paid", "owes", "Total"),
    ("Pedido de libros – marzo", "libros", "€", "pagado", "debe", "Total"),
    ("Commande de livres – mars", "livres", "€", "payé", "à payer", "Total"),
    ("Buchbestellung – März", "Bücher", "€", "bezahlt", "offen", "Summe"),
    ("Ordine libri – marzo", "libri", "€", "pagato", "da pagare", "Totale"),
    ("Pedido de livros – março", "livros", "R$", "pago", "falta pagar", "Total"))


@shape()
def book_orders(rng: random.Random, some: Sequence[Person]) -> Made:
    """Keep who ordered how many books, for how much, and whether it was paid."""
    title, books, money, paid, owes, total = ORDERED[rng.randrange(6)]
    join = rng.choice((" - ", ", ", " / "))
    counts = [rng.randrange(2, 6) for _ in some]
    lines = [join.join((full(one), f"{count} {books}", f"{money}{count * 3}.50", paid if rng.random() < 0.7 else owes))
             for one, count in zip(some, counts, strict=True)]
    text = "\n".join((title, *lines, f"{total}: {sum(counts)} {books}"))
    return Made(text, wanted(some), (title, books, paid, owes, total))


AILING = (
    ("ALLERGIES AND HEALTH – confidential", "none known",
     ("peanuts, tree nuts (EpiPen in the office)", "asthma – inhaler in backpack", "bee stings", "no dairy")),
    ("ALERGIAS Y SALUD – confidencial", "ninguna",
     ("cacahuates y nueces (EpiPen en la oficina)", "asma – inhalador en mochila", "picaduras de abeja", "sin leche")),
    ("ALLERGIES ET SANTÉ – confidentiel", "aucune",
     ("arachides, noix (EpiPen au bureau)", "asthme – inhalateur dans le sac", "piqûres d'abeille", "sans lait")),
    ("ALLERGIEN UND GESUNDHEIT – vertraulich", "keine bekannt",
     ("Erdnüsse, Nüsse (EpiPen im Büro)", "Asthma – Spray im Rucksack", "Bienenstiche", "keine Milch")),
    ("ALLERGIE E SALUTE – riservato", "nessuna",
     ("arachidi, noci (EpiPen in segreteria)", "asma – spray nello zaino", "punture d'ape", "niente latte")),
    ("ALERGIAS E SAÚDE – confidencial", "nenhuma",
     ("amendoim, nozes (EpiPen na secretaria)", "asma – bombinha na mochila", "picada de abelha", "sem leite")))


@shape()
def allergy_sheet(rng: random.Random, some: Sequence[Person]) -> Made:
    """Write behind each child's name, some hyphened from two families, what it must not eat."""
    title, none, ills = AILING[rng.randrange(6)]
    join = rng.choice((": ", " - ", " – "))
    names = [f"{full(one)}-{some[at - 1].family}" if rng.random() < 0.15 else full(one) for at, one in enumerate(some)]
    lines = [name + join + (rng.choice(ills) if rng.random() < 0.4 else none) for name in names]
    return Made("\n".join((title, "", *lines)), tuple(Wanted((one.given,), one.given) for one in some),
                (title, none, *ills))


SNACKS = (
    ("Snack sign-up", ("Mon", "Tue", "Wed", "Thu", "Fri"), ("fruit", "crackers", "juice", "cheese sticks")),
    ("Turnos de merienda", ("Lun", "Mar", "Mié", "Jue", "Vie"), ("fruta", "galletas", "jugo", "queso")),
    ("Goûters", ("Lun", "Mar", "Mer", "Jeu", "Ven"), ("fruits", "biscuits", "jus", "fromage")),
    ("Obstfrühstück", ("Mo", "Di", "Mi", "Do", "Fr"), ("Äpfel", "Brezeln", "Saft", "Käse")),
    ("Turni merenda", ("Lun", "Mar", "Mer", "Gio", "Ven"), ("frutta", "biscotti", "succo", "formaggio")),
    ("Lanche da turma", ("Seg", "Ter", "Qua", "Qui", "Sex"), ("fruta", "biscoitos", "suco", "queijo")))


@shape()
def snack_sign_up(rng: random.Random, some: Sequence[Person]) -> Made:
    """Copy a sign-up sheet: the day, the child, what it brings, and days that nobody has taken."""
    title, days, foods = SNACKS[rng.randrange(6)]
    join = rng.choice((" – ", " - ", "\t"))
    lines: list[str] = []
    waiting = list(some)
    while waiting:
        date = f"{days[len(lines) % 5]} {1 + len(lines) // 25}/{1 + len(lines) % 25}"
        free = rng.random() < 0.15
        lines.append(date + join + ("________" if free else full(waiting.pop(0)) + join + rng.choice(foods)))
    return Made("\n".join((title, *lines)), wanted(some), (title, *days, *foods))


AT_THUMB = (("new", "absent today", "birthday friday"), ("nueva", "falta hoy", "cumple el viernes"),
            ("nouveau", "absent", "anniv vendredi"), ("neu", "fehlt heute", "geburtstag freitag"),
            ("nuova", "assente oggi", "compie venerdì"), ("novo", "faltou hoje", "faz anos sexta"))


@shape()
def typed_on_a_phone(rng: random.Random, some: Sequence[Person]) -> Made:
    """Type on a phone: small letters, a full stop where two spaces fell, a picture, and a word in brackets."""
    at = rng.randrange(6)
    whole = rng.choice(("given", "initial", "family"))
    lines = []
    for one in some:
        rest = {"given": "", "initial": f" {one.family[0]}", "family": f" {one.family}"}[whole]
        end = rng.choice(("", "", "", "", ".", " ", " 🌸", " 😊", f" ({rng.choice(AT_THUMB[at])})"))
        lines.append((one.given + rest).lower() + end)
    return Made("\n".join(lines), wanted(some), AT_THUMB[at])


SLOTS = (("Mon", "Wed", "Speech groups", "lunch", "evaluations"),
         ("Lun", "Mié", "Grupos de terapia", "almuerzo", "informes"),
         ("Lun", "Mer", "Groupes d'orthophonie", "repas", "bilans"),
         ("Mo", "Mi", "Sprachgruppen", "Pause", "Berichte"),
         ("Lun", "Mer", "Gruppi di logopedia", "pranzo", "relazioni"),
         ("Seg", "Qua", "Grupos de fono", "almoço", "relatórios"))


@shape()
def therapy_schedule(rng: random.Random, some: Sequence[Person]) -> Made:
    """Keep a therapist's day: the time, and the one, two or three who come then; a time for lunch, one for reports."""
    first, second, title, lunch, reports = SLOTS[rng.randrange(6)]
    join = rng.choice((", ", " + ", " & "))
    waiting = list(some)
    lines = [title, first]
    minutes = 480
    while waiting:
        group = [waiting.pop(0) for _ in range(min(len(waiting), rng.randrange(1, 4)))]
        lines.append(f"{minutes // 60}:{minutes % 60:02} " + join.join(one.given for one in group))
        minutes += 30
        if minutes == 690:
            lines.append(f"{minutes // 60}:{minutes % 60:02} {lunch}")
            minutes += 30
    lines.append(f"{minutes // 60}:{minutes % 60:02} {reports}")
    return Made("\n".join(lines), wanted(some), (first, second, title, lunch, reports))


ALL_DAY = ("All day", "Todo el día", "Toute la journée", "Ganztägig", "Tutto il giorno", "Dia inteiro")
OF_MONTH = (
    ("January", "February", "March", "April"), ("de enero", "de febrero", "de marzo", "de abril"),
    ("janvier", "février", "mars", "avril"), ("Januar", "Februar", "März", "April"),
    ("gennaio", "febbraio", "marzo", "aprile"), ("de janeiro", "de fevereiro", "de março", "de abril"))


@shape()
def birthdays_in_a_calendar(rng: random.Random, some: Sequence[Person]) -> Made:
    """Copy birthdays from a calendar: whose it is, the day, and that it lasts all day, on three lines."""
    at = rng.randrange(6)
    lines: list[str] = []
    for one in some:
        of = "d'" if one.given[0] in "AEIOUÉÈÂÎÔ" else "de "
        whose = (f"{one.given}'s birthday", f"Cumpleaños de {one.given}", f"Anniversaire {of}{one.given}",
                 f"Geburtstag von {one.given}", f"Compleanno di {one.given}", f"Aniversário de {one.given}")[at]
        day, month = rng.randrange(1, 29), rng.choice(OF_MONTH[at])
        date = (f"{month} {day}", f"{day} {month}", f"{day} {month}", f"{day}. {month}", f"{day} {month}",
                f"{day} {month}")[at]
        lines += [whose, date, ALL_DAY[at]]
    remarks = (ALL_DAY[at], "birthday Cumpleaños Anniversaire Geburtstag Compleanno Aniversário", *OF_MONTH[at])
    return Made("\n".join(lines), wanted(some), remarks)


TWINS = ("twins", "gemelos", "jumeaux", "Zwillinge", "gemelli", "gêmeos")
TWIN_AND = (" and ", " y ", " et ", " und ", " e ", " e ")


@shape()
def twins_on_a_line(rng: random.Random, some: Sequence[Person]) -> Made:
    """Write a class of whole names with twins on one line, both given names before their family's."""
    at = rng.randrange(6)
    join = TWIN_AND[at] if rng.random() < 0.6 else " & "
    lines = [full(one) for one in some[:-2]]
    said = f" ({TWINS[at]})" if rng.random() < 0.6 else ""
    lines.insert(rng.randrange(len(lines) + 1), f"{some[-2].given}{join}{full(some[-1])}{said}")
    return Made("\n".join(lines), wanted(some), (TWINS[at],))


ENROLLED = ("Alumnos inscritos 2025-2026", "Grupo 3°A – lista de asistencia", "Turma Pré II – lista de chamada",
            "Alunos matriculados – Educação Infantil", "Class 1A – family names first")


@shape()
def two_families_in_capitals(rng: random.Random, some: Sequence[Person]) -> Made:
    """Print a list in capitals, both family names and a comma before the given name, numbered."""
    title = rng.choice(ENROLLED)
    comma = rng.choice((", ", ","))
    names = [f"{one.family} {some[at - 1].family}{comma}{one.given}".upper() for at, one in enumerate(some)]
    mark = rng.choice(("{:02} ", "{}. ", "{}\t"))
    lines = [mark.format(at) + name for at, name in enumerate(names, 1)]
    return Made("\n".join((title, *lines)), wanted(some), (title,))


MAILED = (
    ("From: School Office <office@school.example>\nTo: Ms. Alder\nDate: Thu, Jan 22, 2026 at 8:14 AM\n"
     "Subject: Updated class list\n\nHi Ms. Alder,\nplease find the updated list for your room below.\n",
     "\nLet me know if anything is missing.\n\nKind regards,\nPat Bruun\nSchool Office\nTel. 555-0100"),
    ("De: Secretaría <secretaria@escuela.example>\nPara: Maestra Alder\nFecha: jue, 22 ene 2026 8:14\n"
     "Asunto: Lista actualizada\n\nBuenos días, maestra:\nle envío la lista actualizada de su grupo.\n",
     "\nQuedo pendiente de cualquier cambio.\n\nSaludos cordiales,\nPat Bruun\nSecretaría\nTel. 555-0100"),
    ("De : Secrétariat <secretariat@ecole.example>\nÀ : Mme Alder\nEnvoyé : jeudi 22 janvier 2026 08:14\n"
     "Objet : Liste à jour\n\nBonjour,\nvoici la liste à jour de votre classe.\n",
     "\nDites-moi s'il manque quelqu'un.\n\nBien cordialement,\nPat Bruun\nSecrétariat\nTél. 555-0100"),
    ("Von: Sekretariat <sekretariat@schule.example>\nAn: Frau Alder\nGesendet: Donnerstag, 22. Januar 2026 08:14\n"
     "Betreff: Aktuelle Klassenliste\n\nLiebe Frau Alder,\nanbei die aktuelle Liste Ihrer Klasse.\n",
     "\nBitte melden Sie sich, falls jemand fehlt.\n\nMit freundlichen Grüßen\nPat Bruun\nSekretariat\nTel. 555-0100"),
    ("Da: Segreteria <segreteria@scuola.example>\nA: Maestra Alder\nData: gio 22 gen 2026 08:14\n"
     "Oggetto: Elenco aggiornato\n\nBuongiorno maestra,\necco l'elenco aggiornato della sezione.\n",
     "\nMi faccia sapere se manca qualcuno.\n\nCordiali saluti,\nPat Bruun\nSegreteria\nTel. 555-0100"),
    ("De: Secretaria <secretaria@escola.example>\nPara: Profª Alder\nEnviado: quinta-feira, 22 de jan. de 2026 08:14\n"
     "Assunto: Lista atualizada\n\nBom dia, professora,\nsegue a lista atualizada da sua turma.\n",
     "\nAvise se faltar alguém.\n\nAtenciosamente,\nPat Bruun\nSecretaria\nTel. 555-0100"))


@shape()
def mail_from_the_office(rng: random.Random, some: Sequence[Person]) -> Made:
    """Paste an e-mail whole: who sent it, a greeting, the children one a line, and who signed."""
    before, after = MAILED[rng.randrange(6)]
    way = rng.randrange(3)
    lines = [(full(one), f"{one.family}, {one.given}", f"- {full(one)}")[way] for one in some]
    return Made("\n".join((before, *lines, after)), wanted(some), (before, after))


SLIPS = (("Zoo trip – permission slips", "Returned:", "Still missing:"),
         ("Visita al zoológico – permisos", "Entregaron:", "Faltan:"),
         ("Sortie au zoo – autorisations", "Rendues :", "Manquent :"),
         ("Zoobesuch – Zettel", "Abgegeben:", "Fehlen noch:"),
         ("Gita allo zoo – permessi", "Consegnati:", "Mancano:"),
         ("Passeio ao zoológico – autorizações", "Entregaram:", "Faltam:"))


@shape()
def permission_slips(rng: random.Random, some: Sequence[Person]) -> Made:
    """Keep whose slip is back and whose is missing: two headings with the children under them."""
    title, back, missing = SLIPS[rng.randrange(6)]
    cut = rng.randrange(1, len(some))
    tick, none = rng.choice((("✓ ", "✗ "), ("☑ ", "☐ "), ("[x] ", "[ ] "), ("", "")))
    lines = (title, back, *(tick + full(one) for one in some[:cut]), "",
             missing, *(none + full(one) for one in some[cut:]))
    return Made("\n".join(lines), wanted(some), (title, back, missing))


VALENTINES = (
    ("Hi everyone! 👋 Here are the kids' names for Valentine's cards ❤️", "{} in all! No candy please 🙏"),
    ("¡Hola familias! 👋 Aquí va la lista para las tarjetas ❤️", "¡Son {}! Sin dulces por favor 🙏"),
    ("Coucou les parents ! 👋 Voici les prénoms pour les cartes ❤️", "{} en tout ! Pas de bonbons svp 🙏"),
    ("Hallo zusammen! 👋 Hier die Namen für die Karten ❤️", "Insgesamt {}! Bitte nichts Süßes 🙏"),
    ("Ciao a tutti! 👋 Ecco i nomi per i biglietti ❤️", "In tutto {}! Niente caramelle per favore 🙏"),
    ("Oi, famílias! 👋 Segue a lista para os cartões ❤️", "São {} no total! Sem doces por favor 🙏"))


@shape()
def message_among_parents(rng: random.Random, some: Sequence[Person]) -> Made:
    """Send the class to the parents' group: a greeting, the children with a picture behind some, and a count."""
    before, after = VALENTINES[rng.randrange(6)]
    bare = rng.random() < 0.6
    lines = [rng.choice(("", "", "💛 ", "• ")) + (one.given if bare else full(one)) + rng.choice(("", "", " 🌟"))
             for one in some]
    return Made("\n".join((before, *lines, after.format(len(some)))), wanted(some), (before, after))
