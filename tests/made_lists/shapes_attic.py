"""Shapes of list from inboxes, walls and notes of the day, opened long after the reader had first met them."""

from __future__ import annotations

import random
import textwrap
from collections.abc import Sequence

from made_lists.household import each, given, hour, initial, plain, shuffled, sown, speak, titled, ways
from made_lists.judging import Made
from made_lists.papers import aside, comma, dates, written
from made_lists.people import Person
from made_lists.registry import Registry
from made_lists.shapes_tuned import full, wanted

_KEPT = Registry()
SHAPES, CLEAN, HEADED, HEADLESS = _KEPT.shapes, _KEPT.clean, _KEPT.headed, _KEPT.headless
MAY_ASK: set[str] = set()  # of these a careful human would ask about some names
shape = _KEPT.shape
# English, Spanish, French, German, Italian, Portuguese; a word may be written in several ways.
WORDS = {
    "parents": "Dear parents of~To the families of|Estimadas familias de~A las familias de|Chers parents de~Aux "
               "familles de|Liebe Eltern von~An die Eltern von|Cari genitori di~Alle famiglie di|Caros pais de~Às "
               "famílias de",
    "and": "and|y|et|und|e|e",
    "news": "on Friday we go to the farm. Please send boots and a snack.|el viernes vamos a la granja. Traigan botas y "
            "merienda.|vendredi nous allons à la ferme. Prévoyez des bottes et un goûter.|am Freitag fahren wir zum "
            "Bauernhof. Bitte Stiefel und ein Brot mitgeben.|venerdì andiamo in fattoria. Servono stivali e merenda.|"
            "na sexta vamos à quinta. Tragam botas e lanche.",
    "bye": "Best wishes,~Thank you,|Un saludo,|Cordialement,|Viele Grüße|Cordiali saluti|Cumprimentos,",
    "naps": "Nap room~Rest time|Siesta|Plan du dortoir~Sieste|Schlafraum~Mittagsschlaf|Il riposino|Sesta~Dormitório",
    "mat": "Mat~Cot|Colchoneta~Cuna|Lit~Couchette|Matte~Bett|Brandina~Lettino|Colchão~Cama",
    "sleeps": "by the window,wakes at 2,own blanket,does not sleep,needs teddy|junto a la ventana,no duerme,manta de "
              "casa,con chupete|près de la fenêtre,ne dort pas,avec doudou,réveil 14h30|am Fenster,schläft nicht,"
              "eigene Decke,wecken um 14 Uhr|vicino alla finestra,non dorme,con peluche,sua coperta|junto à janela,"
              "não dorme,com chupeta,manta de casa",
    "free": "free~empty|libre~vacía|libre~vide|frei|libero~vuota|livre~vazio",
    "done": "Portraits done~Self-portrait finished|Autorretrato hecho~Ya han pintado|Portraits terminés~Ont déjà peint|"
            "Selbstporträt fertig~Schon gemalt|Autoritratto fatto~Hanno già dipinto|Autorretrato feito~Já pintaram",
    "todo": "Still to do~Not yet|Faltan~Por hacer|Reste à faire~Pas encore|Fehlen noch~Noch offen|Da fare~Mancano|Por "
            "fazer~Faltam",
    "band": "Who plays what~Spring concert – instruments|Instrumentos|Nos instruments~Orchestre de la classe|Wer "
            "spielt was?~Klangorchester|Gli strumenti~Concerto|Instrumentos~Orquestra da sala",
    "tools": "drum,triangle,maracas,bells,tambourine|tambor,triángulo,maracas,pandereta,cascabeles|tambour,triangle,"
             "maracas,grelots,xylophone|Trommel,Triangel,Rassel,Glocken,Klanghölzer|tamburo,triangolo,maracas,"
             "sonagli,legnetti|tambor,triângulo,maracas,pandeireta,guizos",
    "show": "Art show – wall labels~Our exhibition|Exposición – carteles|Exposition – cartels|Ausstellung – Schildchen|"
            "Mostra – cartellini|Exposição – legendas",
    "works": "Rainy day;My cat;The blue house;A big whale;Me and Grandma;Night|Día de lluvia;Mi gato;La casa azul;Una "
             "ballena;La noche|Jour de pluie;Mon chat;La maison bleue;La baleine;La nuit|Regentag;Meine Katze;Das "
             "blaue Haus;Der Wal;Nacht|Giorno di pioggia;Il mio gatto;La casa blu;La balena;Notte|Dia de chuva;O meu "
             "gato;A casa azul;A baleia;Noite",
    "paints": "watercolor,crayon,collage,clay|acuarela,cera,collage,barro|aquarelle,pastel,collage,argile|"
              "Wasserfarbe,Wachskreide,Collage,Ton|acquerello,pastelli,collage,argilla|aguarela,lápis de cera,colagem,"
              "barro",
    "age": "age|años|ans|Jahre|anni|anos",
    "lent": "Tablets and headphones~Device list|Tabletas de clase|Tablettes prêtées|Tablets – Ausgabe|Tablet della "
            "classe|Tablets da sala",
    "device": "Device,Child,Serial no.,Remark|Equipo,Niño/a,N.º serie,Nota|Appareil,Enfant,N° série,Remarque|Gerät,"
              "Kind,Seriennr.,Bemerkung|Dispositivo,Bambino,N. serie,Nota|Equipamento,Criança,N.º série,Nota",
    "faults": "charger missing,cracked corner,ok|falta cargador,pantalla rota,ok|chargeur manquant,écran fêlé,ok|"
              "Ladekabel fehlt,Ecke gesprungen,ok|manca caricatore,schermo rotto,ok|falta carregador,ecrã partido,ok",
    "choose": "-- Select a student --~Choose a child…|Seleccione un alumno~-- Elegir --|-- Choisir un élève --~"
              "Sélectionner…|Bitte wählen …~-- Kind auswählen --|Seleziona un alunno~-- Scegli --|-- Escolha um aluno "
              "--~Selecionar…",
    "label": "Student:|Alumno:|Élève :|Kind:|Alunno:|Aluno:",
    "all": "All students|Todos los alumnos|Tous les élèves|Alle Kinder|Tutti gli alunni|Todos os alunos",
    "send": "Cancel,Save|Cancelar,Guardar|Annuler,Enregistrer|Abbrechen,Speichern|Annulla,Salva|Cancelar,Guardar",
    "hello": "Hi|Hola|Bonjour|Hallo|Ciao|Olá",
    "have": "In my class this year I have|Este curso tengo en clase a|Cette année j'ai dans ma classe|In meiner Gruppe "
            "sind dieses Jahr|Quest'anno nella mia sezione ci sono|Este ano tenho na minha sala",
    "inbox": "Inbox (3 unread)~Inbox|Bandeja de entrada|Boîte de réception|Posteingang|Posta in arrivo|Caixa de "
             "entrada",
    "subjects": "{} absent today;{} – fever;Absence: {};{} will be late|{} no va hoy;{} – fiebre;Ausencia: {};{} llega "
                "tarde|{} absent aujourd'hui;{} – fièvre;Absence : {};{} sera en retard|{} fehlt heute;{} – Fieber;"
                "Krankmeldung: {};{} kommt später|{} assente oggi;{} – febbre;Assenza: {};{} arriva tardi|{} falta "
                "hoje;{} – febre;Falta: {};{} chega mais tarde",
    "others": "Kitchen;Menu for next week|Cocina;Menú de la semana|Cantine;Menus de la semaine|Küche;Speiseplan|Cucina;"
              "Menù della settimana|Cozinha;Ementa da semana",
    "bank": "Trip account~Payments received|Ingresos excursión|Virements reçus|Kontoauszug Gruppenkasse|Bonifici "
            "ricevuti|Transferências recebidas",
    "columns": "Date,Payer,Reference,Amount|Fecha,Ordenante,Concepto,Importe|Date,Émetteur,Libellé,Montant|Datum,"
               "Auftraggeber,Verwendungszweck,Betrag|Data,Ordinante,Causale,Importo|Data,Ordenante,Descritivo,Valor",
    "purpose": "farm trip {};{} farm trip;trip for {}|granja {};excursión {};{} granja|sortie ferme {};{} sortie ferme|"
               "Ausflug {};{} Bauernhof;Gruppenkasse {}|gita {};gita fattoria {};{} gita|visita quinta {};{} visita",
    "log": "Activity~Recent changes|Actividad reciente|Activité récente|Verlauf~Aktivitäten|Attività recenti|Atividade "
           "recente",
    "added": "{0} added {1};{1} was added by {0}|{0} ha añadido a {1};{0} añadió a {1} al grupo|{0} a ajouté {1};{1} a "
             "été ajouté(e) par {0}|{0} hat {1} hinzugefügt;{1} wurde von {0} hinzugefügt|{0} ha aggiunto {1};{1} "
             "aggiunto da {0}|{0} adicionou {1};{1} foi adicionado por {0}",
    "removed": "{0} removed {1}|{0} ha eliminado a {1}|{0} a retiré {1}|{0} hat {1} entfernt|{0} ha rimosso {1}|{0} "
               "removeu {1}",
    "session": "Session notes – OT~Therapy notes|Notas de sesión|Comptes rendus de séance|Therapienotizen~Ergotherapie|"
               "Note di seduta|Notas de sessão",
    "aims": "Goal,Today,Next|Objetivo,Hoy,Próximo|Objectif,Séance,Prochaine fois|Ziel,Heute,Weiter|Obiettivo,Oggi,"
            "Prossima volta|Objetivo,Hoje,Próxima",
    "notes": "cuts along a line;tripod grip;zips own coat;tired, short session;7/10 alone;more practice|recorta una "
             "línea;pinza correcta;cansado, sesión corta;7/10 solo;más práctica|découpe sur un trait;tenue du crayon;"
             "fatigue, séance courte;7/10 sans aide;à poursuivre|schneidet auf der Linie;Dreipunktgriff;müde, kurz "
             "gearbeitet;7/10 allein;weiter üben|ritaglia sulla linea;presa a tre dita;stanco, seduta breve;7/10 da "
             "solo;ancora esercizio|recorta na linha;pega correta;cansaço, sessão curta;7/10 sem ajuda;continuar",
}


@shape()
def attic_parents_of(rng: random.Random, some: Sequence[Person]) -> Made:
    say, way, form = speak(rng, WORDS), rng.choice((full, full, given, initial)), rng.randrange(3)
    names, writer = list(map(way, some)), aside(rng, some, 1)[0]
    row = f"{', '.join(names[:-1])} {say('and')} {names[-1]}"
    if form == 0:
        text = [f"{say('parents')} {row},", ""]
    elif form == 1:
        text = [f"{say('parents')}:", *names, ""]
    else:
        text = [f"{say('parents')}:", "; ".join(names), ""]
    text += [say("news"), "", say("bye"), full(writer)]
    return Made("\n".join(text), wanted(some), (say("parents"), say("news"), say("bye"), full(writer)))


@shape()
def attic_nap_mats(rng: random.Random, some: Sequence[Person]) -> Made:
    say, way, sign = speak(rng, WORDS), plain(rng), rng.choice((" – ", ": ", " ", "\t"))
    text, number = titled(rng, say("naps")), 0
    for one in some:
        number += 1
        if rng.random() < 0.08:
            text.append(f"{say('mat')} {number}{sign}{say('free')}")
            number += 1
        told = sown(rng, each(say, "sleeps"), 0.4)
        behind = (f", {told}" if rng.random() < 0.5 else f" ({told})") if told else ""
        text.append(f"{say('mat')} {number}{sign}{way(one)}{behind}")
    return Made("\n".join(text), wanted(some), (say("naps"), say("mat"), say("free"), *each(say, "sleeps")))


@shape()
def attic_done_and_to_do(rng: random.Random, some: Sequence[Person]) -> Made:
    say, way, form = speak(rng, WORDS), rng.choice((full, given, initial)), rng.randrange(4)
    cut, text = rng.randrange(1, len(some)), list[str]()
    for title, part in ((say("done"), some[:cut]), (say("todo"), some[cut:])):
        names, count = list(map(way, part)), f" ({len(part)})" if form == 3 else ""
        if form == 0:
            text.append(f"{title}: {', '.join(names)}.")
        elif form == 1:
            text += [f"{title}:", *(f"{'✓' if part[0] is some[0] else '○'} {name}" for name in names), ""]
        else:
            text += [f"{title}{count}", *(f"• {name}" if form == 2 else name for name in names), ""]
    return Made("\n".join(text).strip(), wanted(some), (say("done"), say("todo")))


@shape()
def attic_instruments(rng: random.Random, some: Sequence[Person]) -> Made:
    say, way, form = speak(rng, WORDS), plain(rng), rng.randrange(4)
    tools, text = shuffled(rng, each(say, "tools")), titled(rng, say("band"))
    mine = [rng.choice(tools) for _ in some]
    if form < 2:
        text += [f"{way(one)} – {tool}" if form else f"{tool}: {way(one)}"
                 for one, tool in zip(some, mine, strict=True)]
    elif form == 2:
        for tool in tools:
            names = [way(one) for one, played in zip(some, mine, strict=True) if played == tool]
            text += [f"{tool.capitalize()}: {', '.join(names)}"] if names else []
    else:
        seen = dict.fromkeys(tools, 0)
        for one, tool in zip(some, mine, strict=True):
            seen[tool] += 1
            text.append(f"{tool} {seen[tool]}  {way(one)}")
    return Made("\n".join(text), wanted(some), (say("band"), *tools))


@shape()
def attic_exhibition(rng: random.Random, some: Sequence[Person]) -> Made:
    say, way, form = speak(rng, WORDS), rng.choice((full, full, given)), rng.randrange(4)
    works, text = say("works").split(";"), titled(rng, say("show"))
    left, right = rng.choice((("“", "”"), ('"', '"'), ("«", "»"), ("„", "“")))
    for at, one in enumerate(some, 1):
        work, paint, old = f"{left}{rng.choice(works)}{right}", rng.choice(each(say, "paints")), rng.randrange(4, 7)
        aged = f"{say('age')} {old}" if say("age") == "age" else f"{old} {say('age')}"
        text += ([work, f"{way(one)}, {aged}", paint, ""], [f"{way(one)} ({old}): {work}, {paint}"],
                 [f"{at}. {work} – {way(one)}, {paint}"], [f"{way(one)}, {aged}", work, ""])[form]
    return Made("\n".join(text).strip(), wanted(some), (say("show"), say("age"), *works, *each(say, "paints")))


@shape()
def attic_devices(rng: random.Random, some: Sequence[Person]) -> Made:
    say, way, form = speak(rng, WORDS), rng.choice((full, comma)), rng.randrange(3)
    heads, faults, code = each(say, "device"), each(say, "faults"), rng.choice(("TAB-", "KG", "T", "H-0"))
    text, sign = titled(rng, say("lent")), rng.choice((" → ", "  ", " = "))
    rows = [[f"{code}{at:02}", way(one), "".join(rng.choices("23456789CDFGHJKMX", k=8)), sown(rng, faults, 0.5)]
            for at, one in enumerate(some, 1)]
    if form == 0:
        text.append(written([heads, *rows], rng.choice(("\t", ";", " | "))))
    elif form == 1:
        text += [f"{row[0]}{sign}{row[1]}{f' ({row[3]})' if row[3] else ''}" for row in rows]
    else:
        text += ["\t".join((row[0], row[2], row[1], row[3])).strip() for row in rows]
    return Made("\n".join(text), wanted(some), (say("lent"), *heads, *faults, *(row[2] for row in rows)))


@shape()
def attic_choose_list(rng: random.Random, some: Sequence[Person]) -> Made:
    say, way, coded = speak(rng, WORDS), ways(rng), rng.random() < 0.3
    names = [say("choose"), *([say("all")] if rng.random() < 0.4 else []), *map(way, some)]
    if coded:
        body = [f'  <option value="{"" if at == 0 else rng.randrange(1000, 9999)}">{name}</option>'
                for at, name in enumerate(names)]
        text = ['<select name="student">', *body, "</select>"]
    else:
        text = [*([say("label")] if rng.random() < 0.5 else []), *names]
        text += each(say, "send") if rng.random() < 0.4 else []
    return Made("\n".join(text), wanted(some), (say("choose"), say("all"), say("label"), *each(say, "send"), "student"))


@shape()
def attic_wrapped_mail(rng: random.Random, some: Sequence[Person]) -> Made:
    say, adults, sign = speak(rng, WORDS), aside(rng, some, 2), rng.choice(("", "", "> "))
    names = list(map(full, some))
    body = f"{say('have')} {', '.join(names[:-1])} {say('and')} {names[-1]}."
    rows = textwrap.wrap(body, rng.choice((48, 60, 72)), break_on_hyphens=False, break_long_words=False)
    text = [f"{say('hello')} {adults[0].given},", "", *rows, "", say("bye"), full(adults[1])]
    known = (say("hello"), say("have"), say("bye"), *map(full, adults))
    return Made("\n".join(f"{sign}{row}".rstrip() for row in text), wanted(some), known)


@shape(MAY_ASK)
def attic_inbox(rng: random.Random, some: Sequence[Person]) -> Made:
    say, way, form = speak(rng, WORDS), rng.choice((full, full, given)), rng.randrange(3)
    senders = [Person(adult.given, one.family) for adult, one in zip(aside(rng, some, len(some)), some, strict=True)]
    mails = [(full(adult), rng.choice(say("subjects").split(";")).format(way(one)), hour(rng, 7, 9))
             for adult, one in zip(senders, some, strict=True)]
    kitchen, menu = say("others").split(";")
    mails.insert(rng.randrange(1, len(mails)), (kitchen, menu, hour(rng, 7, 9))) if rng.random() < 0.5 else None
    text = titled(rng, say("inbox"), 0.5)
    for mail in mails:
        text += (["\t".join(mail)], [*mail, ""], [f"{mail[2]}  {mail[0]}  {mail[1]}"])[form]
    subjects = say("subjects").replace("{}", "").split(";")
    known = (say("inbox"), kitchen, menu, *subjects, *(one.given for one in senders))
    return Made("\n".join(text).strip(), wanted(some), known)


@shape(MAY_ASK)
def attic_bank_statement(rng: random.Random, some: Sequence[Person]) -> Made:
    say, way, form, day = speak(rng, WORDS), rng.choice((full, full, given)), rng.randrange(3), dates(rng, 2024)
    payers = [Person(adult.given, one.family) for adult, one in zip(aside(rng, some, len(some)), some, strict=True)]
    heads, mark, text = each(say, "columns"), rng.choice(".,"), titled(rng, say("bank"), 0.5)
    rows = [[day(), full(payer), rng.choice(say("purpose").split(";")).format(way(one)), f"{rng.choice((12, 12, 24))}"
             f"{mark}50"] for payer, one in zip(payers, some, strict=True)]
    if form == 0:
        text.append(written([heads, *rows], rng.choice(("\t", ";", " | "))))
    elif form == 1:
        text += [f"{row[0]}  {row[1]}  {row[2]}  +{row[3]} €" for row in rows]
    else:
        for row in rows:
            text += [f"{row[0]} {row[1]}  {row[3]} €", f"{heads[2]}: {row[2]}", ""]
    known = (*heads, *say("purpose").replace("{}", "").split(";"), say("bank"), *(one.given for one in payers))
    return Made("\n".join(text).strip(), wanted(some), known)


@shape()
def attic_activity_log(rng: random.Random, some: Sequence[Person]) -> Made:
    say, way, staff = speak(rng, WORDS), rng.choice((full, full, given)), aside(rng, some, 2)
    text, left, form, day = titled(rng, say("log")), list[Person](), rng.randrange(3), dates(rng, 2024)
    for at, one in enumerate(some):
        gone = rng.random() < 0.1 and at > 2
        left += [one] if gone else []
        told = rng.choice(say("removed" if gone else "added").split(";")).format(full(staff[at % 2]), way(one))
        text.append((f"{told} · {hour(rng, 8, 16)}", f"{day()} {hour(rng, 8, 16)} {told}", told)[form])
    said = "; ".join((say("added"), say("removed"))).replace("{0}", "").replace("{1}", "")
    known = (say("log"), said, *map(full, staff), *map(full, left))
    return Made("\n".join(text), wanted([one for one in some if one not in left]), known)


@shape()
def attic_session_notes(rng: random.Random, some: Sequence[Person]) -> Made:
    say, way = speak(rng, WORDS), rng.choice((full, full, given, initial))
    form, day = rng.randrange(3), dates(rng, 2024)
    text, aims, notes = titled(rng, say("session")), each(say, "aims"), say("notes").split(";")
    for one in some:
        told = [f"{aim}: {note}" for aim, note in zip(aims, rng.sample(notes, 3), strict=True)]
        told = told[:rng.randrange(2, 4)]
        if form == 0:
            text += [f"{way(one)} – {hour(rng, 8, 13)}", *told, ""]
        elif form == 1:
            text += [f"{way(one)}, {day()}", "; ".join(told), ""]
        else:
            text.append(f"{day()} {way(one)}: {'. '.join(told)}.")
    return Made("\n".join(text).strip(), wanted(some), (say("session"), *aims, *notes))
