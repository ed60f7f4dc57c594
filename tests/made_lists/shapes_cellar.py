"""Shapes of list from drawers, drills and books of the day; open: the reader may be mended by them."""

from __future__ import annotations

import random
from collections.abc import Sequence
from datetime import date, timedelta

from made_lists.household import each, hour, initial, plain, sown, speak, titled, ways
from made_lists.judging import Made
from made_lists.papers import aside, capitals, comma, dates, written
from made_lists.people import Person
from made_lists.registry import Registry
from made_lists.shapes_tuned import full, wanted

_KEPT = Registry()
SHAPES, CLEAN, HEADED, HEADLESS = _KEPT.shapes, _KEPT.clean, _KEPT.headed, _KEPT.headless
MAY_ASK: set[str] = set()  # of these a careful human would ask about some names
shape = _KEPT.shape
# English, Spanish, French, German, Italian, Portuguese; a word may be written in several ways.
WORDS = {
    "drill": "Fire drill – Room 4~Evacuation list|Simulacro de evacuación|Exercice incendie – salle 3~Liste "
             "d'évacuation|Feueralarm – Sammelliste~Räumungsliste|Prova di evacuazione|Simulacro de incêndio",
    "meet": "Meeting point: oak tree by the gate|Punto de encuentro: patio grande|Point de rassemblement : le préau|"
            "Sammelplatz: hinterer Hof|Punto di raccolta: cortile|Ponto de encontro: campo de jogos",
    "staff": "Adults:~Staff|Adultos:~Personal|Adultes :~Adultes|Erwachsene:~Personal|Adulti:~Personale|Adultos:",
    "kids": "Children ({})~Children:|Niños ({})~Alumnos:|Enfants ({})~Enfants :|Kinder ({})~Kinder:|Bambini ({})~"
            "Bambini:|Crianças ({})~Crianças:",
    "out": "All out at: ____|Hora de salida: ____|Tous dehors à : ____|Alle draußen um: ____|Tutti fuori alle: ____|"
           "Todos fora às: ____",
    "star": "Star of the week~Teddy's weekends|Protagonista de la semana|Élève de la semaine~Doudou de la classe|Kind "
            "der Woche~Wer nimmt den Bären mit?|Protagonista della settimana|Amigo da semana~Mascote em casa",
    "off": "no school,fall break|sin clase,vacaciones|vacances,férié|Ferien,frei|vacanza,ponte|férias,feriado",
    "week": "Week|Semana|Semaine~sem.|KW~Woche|Settimana|Semana",
    "far": "My class so far~New class (by phone)|Mi clase (por teléfono)|Ma classe, notée au téléphone|Meine Klasse – "
           "am Telefon notiert|La mia classe, presa al telefono|A minha turma, ao telefone",
    "spelt": "(sp?),(spelling?),– check spelling,(with an h?),(??)|(¿se escribe así?),(¿con h?),– revisar,(¿?)|"
             "(orthographe ?),(avec un y ?),– à vérifier,(??)|(Schreibweise?),(mit h?),– noch prüfen,(??)|(si scrive "
             "così?),(con la h?),– da verificare,(??)|(escreve-se assim?),(com h?),– confirmar,(??)",
    "missed": "Name,Absent,Late,%|Alumno/a,Faltas,Retrasos,%|Élève,Absences,Retards,%|Name,Fehltage,verspätet,%|"
              "Alunno,Assenze,Ritardi,%|Aluno,Faltas,Atrasos,%",
    "term": "Attendance term 1~Absences Sept–Dec|Asistencia 1er trimestre|Assiduité – 1er trimestre|Fehlzeiten 1. "
            "Halbjahr|Assenze primo quadrimestre|Assiduidade 1.º período",
    "mean": "Class average|Media de la clase|Moyenne de la classe|Durchschnitt|Media della classe|Média da turma",
    "groups": "Bears,Foxes,Owls|Osos,Zorros,Búhos|Ours,Renards,Hiboux|Bären,Füchse,Eulen|Orsi,Volpi,Gufi|Ursos,"
              "Raposas,Corujas",
    "moved": "Who moves where~Groups in fall|Cambios de grupo|Changements de groupe|Gruppenwechsel~Neue Gruppen|Cambi "
             "di gruppo|Mudanças de grupo",
    "years": "Child,Last year,This year|Niño/a,Curso pasado,Este curso|Enfant,L'an dernier,Cette année|Kind,Bisher,"
             "Ab Herbst|Bambino,Anno scorso,Quest'anno|Criança,Ano passado,Este ano",
    "stays": "stays|se queda|reste|bleibt|resta|fica",
    "new": "new|nuevo ingreso|nouveau|neu|nuovo|entra de novo",
    "gone": "moved away~left us|se ha mudado~baja|a déménagé~parti|weggezogen~abgemeldet|trasferito|mudou de cidade",
    "teeth": "Teeth we lost~Books read|Dientes caídos|Dents tombées~Livres lus|Wackelzähne~Gelesene Bücher|Denti "
             "caduti|Dentes que caíram",
    "sum": "Total|Total|Total|zusammen|Totale|Total",
    "sounds": "Speech goals~Caseload, spring|Objetivos de logopedia|Orthophonie – objectifs|Logopädie – Ziele|"
              "Obiettivi di logopedia|Terapia da fala – objetivos",
    "goals": "/k/ for /t/;lisp on /s/;two-word phrases;/th/ at word start;taking turns|/r/ inicial;sigmatismo;frases "
             "de dos palabras;turnos|/ch/ → /s/;zozotement;phrases de deux mots;tour de rôle|/k/ → /t/;/sch/ im "
             "Anlaut;Zweiwortsätze;Lispeln|/r/ iniziale;sigmatismo;frasi di due parole|/r/ inicial;/lh/ → /l/;frases "
             "de duas palavras",
    "seen": "2 x 20 min,Tue + Thu,in class|2 x 30 min,mar y jue,en aula|2 x 20 min,mar. + jeu.,en classe|1 x 45 Min.,"
            "Di + Do,in der Gruppe|2 x 30 min,mar e gio,in classe|1 x 45 min,ter e qui,na sala",
    "bumps": "Accident book~Bumps and scrapes|Registro de accidentes|Cahier des bobos~Registre d'infirmerie|"
             "Unfallbuch~Verbandbuch|Registro infortuni|Registo de acidentes",
    "bump": "Date,Time,Child,What happened,First aid,Staff|Fecha,Hora,Niño/a,Qué pasó,Cura,Firma|Date,Heure,Enfant,"
            "Accident,Soins,Adulte|Datum,Uhrzeit,Kind,Hergang,Erste Hilfe,Helfer|Data,Ora,Bambino,Accaduto,"
            "Medicazione,Firma|Data,Hora,Criança,Ocorrência,Cuidados,Assinatura",
    "falls": "fell off the slide,splinter in finger,grazed knee,bumped heads|se cayó del tobogán,golpe en la frente,"
             "astilla en el dedo|tombé du toboggan,genou écorché,écharde au doigt|von der Rutsche gefallen,Knie "
             "aufgeschürft,Splitter im Finger|caduto dallo scivolo,ginocchio sbucciato|caiu do escorrega,joelho "
             "esfolado",
    "cures": "cold pack,plaster,called home|hielo,tirita,llamada a casa|glace,pansement,parents appelés|gekühlt,"
             "Pflaster,Eltern angerufen|ghiaccio,cerotto,chiamata a casa|gelo,penso,telefonema para casa",
    "commented": "Commented|Comentado|Commenté|Kommentiert|Commentato|Comentado",
    "comments": "check birthday,form came back,ask grandma,half days from May|revisar fecha,entregó la hoja,preguntar "
                "a la abuela|vérifier la date,fiche rendue,demander à mamie|Geburtstag prüfen,Zettel ist da,Oma "
                "fragen,ab Mai halbtags|controllare la data,modulo consegnato,chiedere alla nonna|confirmar a data,"
                "ficha entregue,perguntar à avó",
    "list": "Class list~Kindergarten|Lista de clase|Liste de la classe|Klassenliste~Gruppenliste|Elenco|Lista da turma",
    "room": "Room 4|Aula 2|salle 3|Raum 12|aula 5|sala 1",
    "rides": "bus 2,walker,car|ruta 2,a pie,coche|car 2,à pied,voiture|Bus 2,zu Fuß,Auto|pulmino 2,a piedi,auto|"
             "carrinha 2,a pé,carro",
    "ditto": "ditto|ídem|idem|dito|idem|idem",
    "sheet": "First name,Last name,Group,Notes|Nombre,Apellidos,Grupo,Notas|Prénom,Nom,Groupe,Remarques|Vorname,"
             "Nachname,Gruppe,Notizen|Nome,Cognome,Gruppo,Note|Nome,Apelido,Grupo,Notas",
    "whole": "Name|Nombre y apellidos|Nom et prénom|Name|Nome e cognome|Nome",
    "short": "glasses,left-handed,no nuts|gafas,zurdo,sin nueces|lunettes,gaucher,sans noix|Brille,Linkshänder,keine "
             "Nüsse|occhiali,mancino,niente noci|óculos,canhoto,sem nozes",
    "tabs": "Sheet1   Sheet2   +|Hoja1   Hoja2   +|Feuil1   Feuil2   +|Tabelle1   Tabelle2   +|Foglio1   Foglio2   +|"
            "Folha1   Folha2   +",
    "fees": "Lunch money – September~Fees|Cuotas de comedor|Facturation cantine|Essensgeld – September|Rette mensa|"
            "Mensalidades – setembro",
    "bill": "Invoice,Child,Month,Amount,Paid|Recibo,Niño/a,Mes,Importe,Pago|Facture,Enfant,Mois,Montant,Réglé|Rechnung,"
            "Kind,Monat,Betrag,Stand|Ricevuta,Bambino,Mese,Importo,Saldo|Recibo,Criança,Mês,Valor,Pago",
    "month": "Sept|sept.|sept.|Sept.|sett.|set.",
    "paid": "paid;owes 12.00;credit 3.50|pagado;debe 12,00;a favor 3,50|payé;reste 12,00;avoir 3,50|bezahlt;offen "
            "12,00;Guthaben 3,50|pagato;deve 12,00;credito 3,50|pago;em falta 12,00;crédito 3,50",
    "by": "paid by|paga|payé par|zahlt|paga|paga",
}


@shape()
def cellar_fire_drill(rng: random.Random, some: Sequence[Person]) -> Made:
    say, way, adults = speak(rng, WORDS), ways(rng), aside(rng, some, rng.randrange(1, 4))
    form, row, text = rng.randrange(4), rng.random() < 0.5, titled(rng, say("drill"))
    sign, behind = (("", ""), ("☐ ", ""), ("", " ____"), ("[ ] ", ""))[form]
    text += [say("meet")] if rng.random() < 0.6 else []
    staff = [f"{say('staff')} {', '.join(map(full, adults))}" if ":" in say("staff") and row else "\n".join(
        [say("staff"), *(f"{sign}{full(one)}{behind}" for one in adults)]), ""]
    kids = [say("kids").format(len(some)), *(f"{sign}{way(one)}{behind}" for one in some), ""]
    text += [*staff, *kids] if rng.random() < 0.7 else [*kids, *staff]
    text += [say("out")] if rng.random() < 0.6 else []
    told = (say("drill"), say("meet"), say("staff"), say("kids"), say("out"), *map(full, adults))
    return Made("\n".join(text).strip(), wanted(some), told)


@shape()
def cellar_star_weeks(rng: random.Random, some: Sequence[Person]) -> Made:
    say, way, form = speak(rng, WORDS), ways(rng), rng.randrange(4)
    text, sign = titled(rng, say("star")), rng.choice((": ", " ", "\t", " – "))
    monday, number = date(2024, 9, 2) + timedelta(7 * rng.randrange(4)), rng.randrange(34, 40)
    for one in some:
        while rng.random() < 0.12:
            text.append(f"{_week(monday, number, form, say('week'))}{sign}{rng.choice(each(say, 'off'))}")
            monday, number = monday + timedelta(7), number % 52 + 1
        text.append(f"{_week(monday, number, form, say('week'))}{sign}{way(one)}")
        monday, number = monday + timedelta(7), number % 52 + 1
    text += [f"{_week(monday, number, form, say('week'))}{sign}".rstrip()] if rng.random() < 0.3 else []
    return Made("\n".join(text), wanted(some), (say("star"), say("week"), *each(say, "off")))


def _week(monday: date, number: int, form: int, word: str) -> str:
    friday = monday + timedelta(4)
    return (f"{monday.day}.{monday.month}.–{friday.day}.{friday.month}.", f"{monday:%d/%m} - {friday:%d/%m}",
            f"{word} {number}", f"{monday.month}/{monday.day}-{friday.month}/{friday.day}")[form]


@shape(MAY_ASK)
def cellar_spelling_unsure(rng: random.Random, some: Sequence[Person]) -> Made:
    say, way = speak(rng, WORDS), plain(rng)
    doubts, share, sign = each(say, "spelt"), rng.choice((0.2, 0.5, 0.8)), rng.choice(("", "", "- ", "#"))
    text = titled(rng, say("far"))
    for at, one in enumerate(some, 1):
        text.append(f"{f'{at}. ' if sign == '#' else sign}{way(one)} {sown(rng, doubts, share)}".strip())
    return Made("\n".join(text), wanted(some), (*doubts, say("far")))


@shape()
def cellar_absence_totals(rng: random.Random, some: Sequence[Person]) -> Made:
    say, way, form = speak(rng, WORDS), plain(rng), rng.randrange(4)
    heads, text, mark = each(say, "missed"), titled(rng, say("term")), rng.choice(".,")
    rows = [[way(one), str(rng.randrange(13)), str(rng.randrange(5)), f"{rng.randrange(80, 100)}{mark}"
             f"{rng.randrange(10)}"] for one in some]
    if form == 0:
        text.append(written([heads, *rows], rng.choice(("\t", ";", " | "))))
    elif form == 1:
        text += [f"{name:26}{absent:>4}{late:>4}  {share} %" for name, absent, late, share in rows]
    elif form == 2:
        text += [f"{row[0]}: {row[1]} {heads[1].lower()}, {row[2]} {heads[2].lower()}" for row in rows]
    else:
        text += [f"{row[0]} {row[1]}/{row[2]} ({row[3]}%)" for row in rows]
    text += [f"{say('mean')}: {rng.randrange(85, 97)}{mark}{rng.randrange(10)} %"] if rng.random() < 0.5 else []
    return Made("\n".join(text), wanted(some), (*heads[1:], say("term"), say("mean")))


@shape()
def cellar_moved_groups(rng: random.Random, some: Sequence[Person]) -> Made:
    say, way, text = speak(rng, WORDS), plain(rng), list[str]()
    groups, arrow, form = each(say, "groups"), rng.choice((" → ", " -> ", " > ", " => ")), rng.randrange(3)
    rows, left = [each(say, "years")], list[Person]()
    for at, one in enumerate(some):
        before, after = rng.sample([*groups, groups[0]], 2)
        kind = rng.random()
        if kind < 0.1 and at > 2:
            left.append(one)
            after = say("gone")
        elif kind < 0.25:
            before = say("new")
        told = f"{before}{arrow}{after}" if before != after else f"{say('stays')} ({before})"
        text.append(f"{way(one)}: {told}" if form == 0 else f"{way(one)} – {told}")
        rows.append([way(one), before, after])
    text = [written(rows, rng.choice(("\t", ";", " | ")))] if form == 2 else text
    known = (*groups, *rows[0], say("moved"), say("stays"), say("new"), say("gone"), *map(full, left))
    return Made("\n".join((*titled(rng, say("moved")), *text)), wanted([one for one in some if one not in left]), known)


@shape()
def cellar_tallies(rng: random.Random, some: Sequence[Person]) -> Made:
    say, way, stroke = speak(rng, WORDS), plain(rng), rng.choice(("|", "I", "x ", "★", "l", "🦷", "✓"))
    text, sign, counts = titled(rng, say("teeth")), rng.choice((" ", ": ", "  ", "\t", " – ")), list[int]()
    for one in some:
        counts.append(rng.choice((0, 1, 1, 2, 3, 4, 5, 7)))
        fives = [stroke * min(5, counts[-1] - start) for start in range(0, counts[-1], 5)]
        strokes = " ".join(fives) if stroke in "|Il" else stroke * counts[-1]
        text.append(f"{way(one)}{sign}{strokes or rng.choice(('–', '0', ''))}".rstrip())
    text += [f"{say('sum')}: {sum(counts)}"] if rng.random() < 0.4 else []
    return Made("\n".join(text), wanted(some), (say("teeth"), say("sum"), *("I" * at for at in range(1, 6))))


@shape()
def cellar_sound_targets(rng: random.Random, some: Sequence[Person]) -> Made:
    say, way, form = speak(rng, WORDS), plain(rng), rng.randrange(3)
    goals, seen, text = say("goals").split(";"), each(say, "seen"), titled(rng, say("sounds"))
    for one in some:
        age = f"{rng.randrange(3, 6)};{rng.randrange(12)}"
        told = ", ".join(rng.sample(goals, rng.randrange(1, 3)))
        told += f" – {rng.choice(seen)}" if rng.random() < 0.5 else ""
        text.append((f"{way(one)} ({age}) – {told}", f"{way(one)}, {age}: {told}", f"{way(one)}  {age}  {told}")[form])
    return Made("\n".join(text), wanted(some), (*goals, *seen, say("sounds")))


@shape()
def cellar_bumps(rng: random.Random, some: Sequence[Person]) -> Made:
    say, way, adults, day = speak(rng, WORDS), plain(rng), aside(rng, some, 3), dates(rng, 2024)
    form, heads, text = rng.randrange(3), each(say, "bump"), titled(rng, say("bumps"))
    rows = [[day(), hour(rng, 8, 15), way(one), rng.choice(each(say, "falls")), rng.choice(each(say, "cures")),
             initial(rng.choice(adults))] for one in some]
    if form == 0:
        text.append(written([heads, *rows], rng.choice(("\t", ";", " | "))))
    elif form == 1:
        text += [f"{row[0]} {row[1]} {row[2]} – {row[3]}, {row[4]} ({row[5]})" for row in rows]
    else:
        text += [f"{row[0]}: {row[2]} – {row[3]}. {row[4].capitalize()}." for row in rows]
    known = (*heads, *each(say, "falls"), *each(say, "cures"), *map(full, adults), say("bumps"))
    return Made("\n".join(text), wanted(some), known)


@shape()
def cellar_margin_comments(rng: random.Random, some: Sequence[Person]) -> Made:
    say, way, hand = speak(rng, WORDS), ways(rng), rng.choice(("KB", "A", "MT", "SJ"))
    text, foot, at_foot, told = titled(rng, say("list")), list[str](), rng.random() < 0.5, each(say, "comments")
    for one in some:
        mark = f"[{hand}{len(foot) + 1}]"
        noted = rng.random() < 0.3
        text.append(f"{way(one)}{mark if noted else ''}")
        if noted:
            foot.append(f"{say('commented')} {mark}: {rng.choice(told)}")
            text += [] if at_foot else foot[-1:]
    text += ["", *foot] if at_foot else []
    return Made("\n".join(text).strip(), wanted(some), (say("list"), say("commented"), *told))


@shape()
def cellar_ditto(rng: random.Random, some: Sequence[Person]) -> Made:
    say, way = speak(rng, WORDS), rng.choice((full, full, comma, capitals))
    sign = rng.choice(("\t", "   ", " – ", "; "))
    again, rides, last = rng.choice(("″", '"', "''", "„", "– “ –", say("ditto"))), each(say, "rides"), ""
    text = titled(rng, say("list"))
    for at, one in enumerate(some):
        ride = rng.choice((last, last, *rides)) or rides[0]
        text.append(sign.join((way(one), again if at else say("room"), again if ride == last else ride)))
        last = ride
    return Made("\n".join(text), wanted(some), (say("list"), say("room"), *rides, again))


@shape(HEADED)
def cellar_sheet_photo(rng: random.Random, some: Sequence[Person]) -> Made:
    say, parted, sign = speak(rng, WORDS), rng.random() < 0.5, rng.choice(("\t", "\t", " | ", "   "))
    first, last, group, notes = each(say, "sheet")
    way = rng.choice((full, comma))
    head = [first, last, group, notes] if parted else [say("whole"), group, notes]
    text = [sign.join(("", *"ABCD"[:len(head)])).strip(" ")] if rng.random() < 0.8 else []
    text.insert(0, f"A1   fx   {head[0]}") if rng.random() < 0.3 else None
    rows = [head, *([*((one.given, one.family) if parted else (way(one),)), rng.choice(each(say, "groups")),
                     sown(rng, each(say, "short"), 0.4)] for one in some)]
    text += [sign.join((str(at), *row)).rstrip(" |") for at, row in enumerate(rows, 1)]
    text += [str(len(rows) + 1), str(len(rows) + 2)] if rng.random() < 0.5 else []
    text += [say("tabs")] if rng.random() < 0.5 else []
    known = (*head, *each(say, "groups"), *each(say, "short"), say("tabs"))
    return Made("\n".join(text), wanted(some), known)


@shape()
def cellar_fees(rng: random.Random, some: Sequence[Person]) -> Made:
    say, way, form = speak(rng, WORDS), rng.choice((full, full, comma)), rng.randrange(3)
    adults, heads, states = aside(rng, some, len(some)), each(say, "bill"), say("paid").split(";")
    text, mark, number = titled(rng, say("fees")), rng.choice(".,"), rng.randrange(200, 4000)
    rows = [[f"{number + at}", way(one), say("month"), f"{rng.randrange(30, 90)}{mark}{rng.choice(('00', '50'))}",
             rng.choice(states)] for at, one in enumerate(some)]
    if form == 0:
        text.append(written([heads, *rows], rng.choice(("\t", ";", " | "))))
    elif form == 1:
        text += [f"{row[0]}  {row[1]}  {row[2]}  {row[3]} €  {row[4]}" for row in rows]
    else:
        parents = [Person(adult.given, one.family) for adult, one in zip(adults, some, strict=True)]
        text += [f"{full(one)} – {row[3]} €, {row[4]} ({say('by')} {full(parent)})"
                 for row, one, parent in zip(rows, some, parents, strict=True)]
    text += [f"{say('sum')}: {rng.randrange(300, 900)}{mark}00 €"] if rng.random() < 0.4 else []
    known = (*heads, *states, say("month"), say("by"), say("fees"), say("sum"), *(one.given for one in adults))
    return Made("\n".join(text), wanted(some), known)
