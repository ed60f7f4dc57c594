"""Shapes of list that a class is asked for in and that schools have at hand; open: the reader may be mended by them."""

from __future__ import annotations

import random
from collections.abc import Sequence
from datetime import date, timedelta

from made_lists.household import each, given, initial, plain, sown, speak, titled, ways
from made_lists.judging import Made, Wanted, fold
from made_lists.papers import Say, aside, capitals, comma, dates, phone, written
from made_lists.people import Person
from made_lists.registry import Registry
from made_lists.shapes_tuned import full, wanted

_KEPT = Registry()
SHAPES, CLEAN, HEADED, HEADLESS = _KEPT.shapes, _KEPT.clean, _KEPT.headed, _KEPT.headless
MAY_ASK: set[str] = set()  # of these a careful human would ask about some names
shape = _KEPT.shape
NICKNAMES = ("Benny", "Mimi", "Lulu", "Nico", "Gigi", "Coco", "Bibi", "Jojo", "Kiki", "Fifi", "Momo", "Tati", "Zuzu",
             "Lilo", "Dede", "Rory", "Teddy", "Nell")
PARTICLES = ("de la", "von", "van der", "di", "dos", "del", "de", "zu", "al", "da")
# English, Spanish, French, German, Italian, Portuguese; a word may be written in several ways.
WORDS = {
    "hi": "Hi~Hello~Good morning|Hola~Buenos días|Bonjour~Coucou|Hallo~Guten Morgen|Ciao~Buongiorno|Olá~Bom dia",
    "here": "here's my class list for the name sheets.~Here are my kiddos!~below is the list you asked for:|aquí va "
            "la lista de mi clase.~te mando los nombres de mis peques:|voici la liste de ma classe.~voici mes élèves "
            "de cette année :|hier meine Klassenliste.~anbei die Namen unserer Kinder:|ecco l'elenco della mia "
            "sezione.~ti mando i nomi dei miei bimbi:|segue a lista da minha turma.~aqui vão os nomes dos meus "
            "meninos:",
    "more": "Let me know if you need anything else!~Two forms are still missing.~No hurry with the sheets.|Dime si "
            "necesitas algo más.~Faltan dos fichas todavía.|Dis-moi s'il te faut autre chose.~Il manque encore deux "
            "fiches.|Melde dich, wenn du noch etwas brauchst.~Zwei Zettel fehlen noch.|Fammi sapere se serve altro.~"
            "Mancano ancora due moduli.|Diz-me se precisares de mais alguma coisa.~Ainda faltam duas fichas.",
    "bye": "Thanks!~Best,~Thank you so much,|Gracias,~Un abrazo,|Merci !~Bonne journée,|Viele Grüße~Danke dir!~LG|"
           "Grazie!~Un saluto,|Obrigada!~Beijinhos,",
    "role": "Kindergarten, Room 4~PreK aide|Maestra de Infantil 5 años|Classe de GS|Gruppenleitung Igelgruppe|Sezione "
            "B~Scuola dell'infanzia|Educadora, sala 2",
    "sent": "Sent from my phone|Enviado desde mi móvil|Envoyé de mon téléphone|Von unterwegs gesendet|Inviato dal mio "
            "cellulare|Enviado do meu telemóvel",
    "and": "and|y|et|und|e|e",
    "noted": "new!,starts in October,half days,speaks Spanish at home|nueva incorporación,empieza en octubre,solo "
             "mañanas|arrive en octobre,mi-temps,nouveau|kommt ab Oktober,neu,nur vormittags|arriva a ottobre,solo "
             "mattina,nuovo arrivo|entra em outubro,só de manhã,aluno novo",
    "sheet": "#,Last,First,Full name,Initials,Table~No.,Last Name,First Name,Name for labels,Init.,Cubby|N.º,"
             "Apellidos,Nombre,Nombre completo,Iniciales,Mesa|N°,Nom,Prénom,Nom complet,Initiales,Table|Nr.,Nachname,"
             "Vorname,Name komplett,Kürzel,Tisch|N.,Cognome,Nome,Nome completo,Iniziali,Tavolo|N.º,Apelido,Nome,Nome "
             "completo,Iniciais,Mesa",
    "sum": "Total~Count|Total|Total|Summe~Anzahl|Totale|Total",
    "snack": "Snack sign-up~Who brings snack? October|Merienda compartida~¿Quién trae la merienda?|Goûter : "
             "inscriptions|Gesundes Frühstück – wer bringt was?|Merenda condivisa: chi porta cosa?|Lanche partilhado "
             "– inscrições",
    "turn": "Date,Child,Snack,Parent|Fecha,Niño/a,Merienda,Familia|Date,Enfant,Goûter,Parent|Datum,Kind,Was,Eltern|"
            "Data,Bambino,Merenda,Genitore|Data,Criança,Lanche,Encarregado",
    "snacks": "grapes,apple slices,crackers and cheese,mini muffins,pretzels|uvas,manzana en trozos,galletas,pan con "
              "queso|raisins,compotes,gâteau au yaourt,pommes|Trauben,Apfelschnitze,Brezeln,Käsewürfel|uva,mele a "
              "fette,cracker,yogurt|uvas,maçã cortada,bolachas,pão com queijo",
    "free": "open~(free)|libre|libre|frei~noch frei|libero|livre",
    "legal": "Student ID,Last Name,First Name,Preferred Name,Grade,DOB,Teacher,Status|Expediente,Apellidos,Nombre,"
             "Nombre de uso,Curso,F. nac.,Tutora,Estado|Identifiant,Nom,Prénom,Prénom d'usage,Niveau,Né(e) le,"
             "Enseignant,Statut|Schülernr.,Familienname,Vorname,Rufname,Stufe,Geb.-Datum,Lehrkraft,Status|Matricola,"
             "Cognome,Nome,Nome preferito,Classe,Data di nascita,Insegnante,Stato|N.º processo,Apelido,Nome,Nome "
             "preferido,Ano,Data nasc.,Docente,Estado",
    "grade": "KG~PK4|Inf5|GS|Vorschule|5 anni|JI",
    "state": "Active,Withdrawn~Enrolled,Transferred|Activo,Baja|Inscrit,Radié|aktiv,abgemeldet|Attivo,Ritirato|Ativo,"
             "Transferido",
    "plan": "Table groups~Seating by table|Grupos de mesa~Equipos|Îlots de la classe~Plan des tables|Tischgruppen~"
            "Sitzordnung|Gruppi tavolo|Mesas de trabalho",
    "tables": "Red table,Blue table,Green table,Yellow table,Orange table,Purple table|Mesa roja,Mesa azul,Mesa verde,"
              "Mesa amarilla,Mesa naranja,Mesa morada|Table rouge,Table bleue,Table verte,Table jaune,Table orange,"
              "Table violette|Roter Tisch,Blauer Tisch,Grüner Tisch,Gelber Tisch,Oranger Tisch,Lila Tisch|Tavolo "
              "rosso,Tavolo blu,Tavolo verde,Tavolo giallo,Tavolo arancione,Tavolo viola|Mesa vermelha,Mesa azul,Mesa "
              "verde,Mesa amarela,Mesa laranja,Mesa roxa",
    "wall": "Birthday wall~Our birthdays~Happy Birthday!|Nuestros cumpleaños~Panel de cumpleaños|Les anniversaires de "
            "la classe|Unser Geburtstagskalender~Geburtstage|I nostri compleanni|Os nossos aniversários",
    "months": "January,February,March,April,May,June,July,August,September,October,November,December|enero,febrero,"
              "marzo,abril,mayo,junio,julio,agosto,septiembre,octubre,noviembre,diciembre|janvier,février,mars,avril,"
              "mai,juin,juillet,août,septembre,octobre,novembre,décembre|Januar,Februar,März,April,Mai,Juni,Juli,"
              "August,September,Oktober,November,Dezember|gennaio,febbraio,marzo,aprile,maggio,giugno,luglio,agosto,"
              "settembre,ottobre,novembre,dicembre|janeiro,fevereiro,março,abril,maio,junho,julho,agosto,setembro,"
              "outubro,novembro,dezembro",
    "none": "no birthdays~none|nadie|personne|keine~niemand|nessuno|ninguém",
    "home": "Pick-up list~Authorized for pick-up~Dismissal|Personas autorizadas~Recogida|Personnes autorisées~Sorties|"
            "Abholliste~Abholberechtigte|Persone autorizzate al ritiro~Deleghe|Pessoas autorizadas~Saídas",
    "fetch": "Child,May pick up,Phone|Niño/a,Autorizados,Teléfono|Enfant,Personnes autorisées,Téléphone|Kind,"
             "Abholberechtigt,Telefon|Bambino,Delegati,Telefono|Criança,Autorizados,Telefone",
    "kin": "mom,dad,grandma,aunt,sitter|madre,padre,abuela,tía,canguro|mère,père,mamie,tante,nounou|Mutter,Vater,Oma,"
           "Tante,Tagesmutter|mamma,papà,nonna,zia,babysitter|mãe,pai,avó,tia,ama",
    "reading": "Reading groups~Guided reading – fall|Grupos de lectura|Groupes de lecture|Lesegruppen|Gruppi di "
               "lettura|Grupos de leitura",
    "level": "Level~Group|Nivel~Grupo|Niveau~Groupe|Stufe~Gruppe|Livello~Gruppo|Nível~Grupo",
    "when": "Mon/Wed,Tue/Thu,Fridays|lun/mié,mar/jue,viernes|lun./mer.,mar./jeu.,vendredi|Mo/Mi,Di/Do,freitags|"
            "lun/mer,mar/gio,venerdì|seg/qua,ter/qui,sextas",
    "letters": "letters,sounds,sight words|letras,sonidos,palabras|lettres,sons,mots-outils|Buchstaben,Laute,Wörter|"
               "lettere,suoni,parole|letras,sons,palavras",
    "list": "Class list~My class~Room 4|Lista de clase~Mis alumnos|Liste de la classe~Mes élèves|Klassenliste~Meine "
            "Klasse|Elenco~La mia classe|Lista da turma~A minha turma",
    "other": "twin of {};cousin of {};not next to {};best friends with {}|melliza de {};primo de {};no sentar con {}|"
             "jumeau de {};cousine de {};pas à côté de {}|Zwilling von {};Cousin von {};nicht neben {}|gemello di {};"
             "cugina di {};non vicino a {}|gémea de {};primo de {};não sentar com {}",
    "self": "left-handed;wears glasses;allergic to eggs;speaks Arabic at home;late on Mondays;very shy;already writes "
            "first name;bus|zurdo;lleva gafas;alergia al huevo;en casa hablan árabe;muy tímida;ya escribe su nombre|"
            "gaucher;porte des lunettes;allergie aux œufs;parle arabe à la maison;très timide;écrit déjà son prénom|"
            "Linkshänder;trägt Brille;Eierallergie;spricht zu Hause Arabisch;sehr schüchtern;schreibt den Namen schon|"
            "mancino;porta gli occhiali;allergia alle uova;a casa parla arabo;molto timida;scrive già il nome|canhoto;"
            "usa óculos;alergia ao ovo;em casa fala árabe;muito tímida;já escreve o nome",
    "gap": "open spot~(still empty)|(plaza libre)|(place libre)|(Platz frei)|(posto libero)|(vaga)",
    "please": "Good morning, families! Please write your child's name here so I can make the name cards.|Buenos días, "
              "familias. Por favor, escribid aquí el nombre de vuestro hijo o hija para las tarjetas.|Bonjour à tous, "
              "merci d'écrire ici le nom de votre enfant pour les étiquettes.|Liebe Eltern, bitte schreibt hier den "
              "Namen eures Kindes für die Namensschilder.|Buongiorno a tutti, scrivete qui il nome del vostro bambino "
              "per i cartellini.|Bom dia, famílias! Escrevam aqui o nome do vosso filho ou filha para os cartões.",
    "answer": "{};Hi, {} here!;{}, thank you!;My daughter is {};Our son is {} 😊;{} ❤️|"
              "{};¡Hola! {};{}, gracias;Mi hija es {};Nuestro hijo es {} 😊|"
              "{};Bonjour ! {};{}, merci !;Ma fille s'appelle {};Notre fils : {} 😊|"
              "{};Hallo! {};{}, danke!;Meine Tochter heißt {};Unser Sohn heißt {} 😊|"
              "{};Ciao! {};{}, grazie!;Mia figlia si chiama {};Nostro figlio è {} 😊|"
              "{};Olá! {};{}, obrigada!;A minha filha chama-se {};O nosso filho é o {} 😊",
    "teacher": "Ms. {}~Miss {}|Profe {}|Maîtresse {}|Frau {}|Maestra {}|Educadora {}",
    "goes": "goes by {};call her {};likes to be called {}|la llaman {};le dicen {}|se fait appeler {};dit {}|wird {} "
            "genannt;Rufname {}|detto {};si fa chiamare {}|tratam-no por {};gosta de ser chamada {}",
    "menu": "Home;Classes;Attendance;Messages 3;Reports|Inicio;Grupos;Asistencia;Mensajes 3;Informes|Accueil;Classes;"
            "Appel;Messages 3;Bilans|Start;Klassen;Anwesenheit;Nachrichten 3;Berichte|Home;Classi;Presenze;Messaggi 3;"
            "Report|Início;Turmas;Presenças;Mensagens 3;Relatórios",
    "room": "Room 4 ({} students)~Kindergarten A ({})|Infantil 5 años A ({} alumnos)|GS – salle 3 ({} élèves)|"
            "Igelgruppe ({} Kinder)|Sezione B ({} alunni)|Sala 2 ({} crianças)",
    "sort": "Sort by: Last name|Ordenar por: Apellidos|Trier par : Nom|Sortieren nach: Nachname|Ordina per: Cognome|"
            "Ordenar por: Apelido",
    "buttons": "Present,Absent,Late|Presente,Ausente,Retraso|Présent,Absent,Retard|Anwesend,Fehlt,Verspätet|Presente,"
               "Assente,Ritardo|Presente,Falta,Atraso",
    "edit": "Edit~View profile~⋮|Editar~Ver ficha~⋮|Modifier~Voir la fiche~⋮|Bearbeiten~Profil~⋮|Modifica~Vedi scheda~"
            "⋮|Editar~Ver ficha~⋮",
    "shown": "Showing 1–{0} of {0}|Mostrando 1-{0} de {0}|Affichage de 1 à {0} sur {0}|1–{0} von {0} Einträgen|1-{0} "
             "di {0}|A mostrar 1-{0} de {0}",
    "save": "Save   Cancel~+ Add student|Guardar   Cancelar~+ Añadir alumno|Enregistrer   Annuler~+ Ajouter un élève|"
            "Speichern   Abbrechen~+ Kind hinzufügen|Salva   Annulla~+ Aggiungi alunno|Guardar   Cancelar~+ Adicionar "
            "aluno",
    "whole": "Name|Apellidos y nombre|Nom et prénom|Name|Cognome e nome|Nome",
}


def _words(say: Say, key: str) -> list[str]:
    return [word.strip() for word in say(key).split(";")]


@shape()
def loft_typed_mail(rng: random.Random, some: Sequence[Person]) -> Made:
    """Every child between the greeting and the sign-off; not the two adults."""
    say, reader, writer = speak(rng, WORDS), *aside(rng, some, 2)
    form, way, notes = rng.randrange(4), ways(rng), each(say, "noted")
    text = [f"{say('hi')} {reader.given},", *[""] * rng.randrange(2), say("here"), *[""] * rng.randrange(2)]
    if form == 0:
        names = [*map(rng.choice((full, given)), some)]
        text.append(f"{', '.join(names[:-1])} {say('and')} {names[-1]}{rng.choice(('', '.'))}")
    for at, one in enumerate(some if form else (), 1):
        note = sown(rng, notes, 0.12)
        note = rng.choice((" ({})", " - {}")).format(note) if note else ""
        text.append(f"{('', '', '- ', f'{at}. ')[form]}{way(one)}{note}")
    text += [""] + [say("more")] * (rng.random() < 0.6) + [say("bye"), rng.choice((writer.given, full(writer)))]
    text += [say("role")] * (rng.random() < 0.4) + ["", say("sent")] * (rng.random() < 0.3)
    told = [say(key) for key in ("hi", "here", "more", "bye", "role", "sent")]
    return Made("\n".join(text), wanted(some), (*told, *notes, reader.given, full(writer)))


@shape(HEADED)
def loft_helper_columns(rng: random.Random, some: Sequence[Person]) -> Made:
    """The first names of a sheet that has other columns made of them."""
    say, joined = speak(rng, WORDS), rng.choice((full, comma))
    heads, order = each(say, "sheet"), [0, 1, 2, *rng.sample((3, 4, 5), rng.randrange(1, 4))]
    order = [2, 1, *order[3:]] if rng.random() < 0.3 else order
    rows = [[heads[at] for at in order]]
    for number, one in enumerate(some, 1):
        cells = (str(number), one.family, one.given, joined(one), f"{one.given[0]}{one.family[0]}",
                 str(rng.randrange(1, 7)))
        rows.append([cells[at] for at in order])
    text = [written(rows, rng.choice(("\t", "\t", "\t", ";")))]
    text += [rng.choice((f"{say('sum')}\t{len(some)}", f"\t\t{len(some)}", f"{say('sum')}: {len(some)}",
                         f"=COUNTA(B2:B{len(some) + 1})"))] if rng.random() < 0.5 else []
    return Made("\n".join(text), wanted(some), (*heads, say("sum")))


@shape()
def loft_snack_turns(rng: random.Random, some: Sequence[Person]) -> Made:
    """The child of each turn; neither the food nor the parent, nor a turn that nobody took."""
    say, way, form = speak(rng, WORDS), plain(rng), rng.randrange(3)
    write, monday = rng.choice(("{0}/{1}", "{1}.{0}.", "{1:02}/{0:02}", "{1:02}.{0:02}.24")), date(2024, 9, 2)
    adults, food, rows = aside(rng, some, len(some)), each(say, "snacks"), list[list[str]]()
    for adult, one in zip(adults, some, strict=True):
        for free in (rng.random() < 0.08) * [True] + [False]:
            monday += timedelta(7)
            row = [say("free"), "", ""] if free else [way(one), rng.choice(food), adult.given]
            rows.append([write.format(monday.month, monday.day), *row])
    if form == 0:
        sign = rng.choice(("\t", ";", " | "))
        text = [written([each(say, "turn"), *rows], sign)]
    elif form == 1:
        text = [f"{row[0]} {' – '.join(filter(None, row[1:3]))}" for row in rows]
    else:
        text = [f"{row[0]}: {row[1]} ({row[3]}) – {row[2]}" if row[2] else f"{row[0]}: {rng.choice(('', '____'))}"
                for row in rows]
    known = (say("snack"), *each(say, "turn"), *food, say("free"), *(one.given for one in adults))
    return Made("\n".join((*titled(rng, say("snack")), *text)), wanted(some), known)


@shape(HEADED)
def loft_register_export(rng: random.Random, some: Sequence[Person]) -> Made:
    """The preferred name where there is one; whether a child who has left is of the class, the export does not say."""
    say, day, teacher = speak(rng, WORDS), dates(rng), aside(rng, some, 1)[0]
    heads, states = each(say, "legal"), each(say, "state")
    nicknames = _nicknames(rng, some)
    order = [0, 1, 2, 3, *rng.sample((4, 5, 6, 7), rng.randrange(1, 5))]
    rows, here, left = [[heads[at] for at in order]], list[Wanted](), list[Wanted]()
    for at, one in enumerate(some):
        nickname = nicknames.pop() if nicknames and rng.random() < 0.15 else ""
        state = states[at > 2 and 7 in order and rng.random() < 0.08]
        cells = (f"{rng.randrange(10000, 99999)}", one.family, one.given, nickname, say("grade"), day(),
                 rng.choice((comma, initial))(teacher) if at < 1 else "", state)
        cells = (*cells[:6], rows[1][order.index(6)] if at and 6 in order else cells[6], state)
        rows.append([cells[column] for column in order])
        (left if state == states[1] else here).append(Wanted((nickname or one.given,), one.given))
    known = (*heads, *states, say("grade"), full(teacher))
    return Made(written(rows, rng.choice((",", ",", ";", "\t")), rng.random() < 0.3), tuple(here), known, tuple(left))


def _nicknames(rng: random.Random, some: Sequence[Person]) -> list[str]:
    names = {word for one in some for word in fold(full(one)).split()}
    return [name for name in rng.sample(NICKNAMES, len(NICKNAMES)) if fold(name) not in names]


@shape()
def loft_tables(rng: random.Random, some: Sequence[Person]) -> Made:
    """Every child; no table."""
    say, way, form = speak(rng, WORDS), rng.choice((given, given, initial, full)), rng.randrange(4)
    count = max(2, min(6, len(some) // rng.choice((3, 4, 5))))
    heads, text = each(say, "tables")[:count], titled(rng, say("plan"))
    groups = [[way(one) for one in some[at::count]] for at in range(count)]
    if form == 0:
        text += [line for head, group in zip(heads, groups, strict=True) for line in (head, *group, "")]
    elif form == 1:
        text += [f"{head}: {', '.join(group)}" for head, group in zip(heads, groups, strict=True)]
    elif form == 2:
        rows = [[group[at] if at < len(group) else "" for group in groups] for at in range(len(groups[0]))]
        text.append(written([heads, *rows], "\t"))
    else:
        text += [f"{head} ({len(group)}) – {', '.join(group)}" for head, group in zip(heads, groups, strict=True)]
    return Made("\n".join(text).strip(), wanted(some), (say("plan"), *heads))


@shape()
def loft_birthday_wall(rng: random.Random, some: Sequence[Person]) -> Made:
    """Every child under its month; no month, and nobody where none is."""
    say, way, form = speak(rng, WORDS), rng.choice((given, given, initial, full)), rng.randrange(4)
    months, text = each(say, "months"), titled(rng, say("wall"), 0.85)
    born: list[list[tuple[int, Person]]] = [[] for _ in months]
    for one in some:
        rng.choice(born).append((rng.randrange(1, 29), one))
    nobody = rng.choice(("", "–", say("none")))
    month_first = rng.random() < 0.5
    for month, who in zip(months, born, strict=True):
        days = [(at, way(one)) for at, one in sorted(who, key=lambda both: both[0])]
        if form == 0 and (days or nobody):
            text += [month, *([f"{at} {name}" for at, name in days] or [nobody]), ""]
        elif form == 1 and (days or nobody):
            text.append(f"{month}: {', '.join(f'{name} ({at})' for at, name in days) or nobody}")
        elif form == 2:
            text += [f"{name} – {f'{month} {at}' if month_first else f'{at} {month}'}" for at, name in days]
        elif days:
            text += [f"🎂 {month.upper()}", *(f"{name} {at}" for at, name in days)]
    return Made("\n".join(text).strip(), wanted(some), (say("wall"), *months, say("none")))


@shape()
def loft_pick_up(rng: random.Random, some: Sequence[Person]) -> Made:
    """The child; none of the adults who may fetch it."""
    say, way, form = speak(rng, WORDS), rng.choice((full, full, comma)), rng.randrange(4)
    adults, kin, rows, text = aside(rng, some, 2 * len(some)), each(say, "kin"), list[list[str]](), list[str]()
    for at, one in enumerate(some):
        first, second = Person(adults[2 * at].given, one.family), adults[2 * at + 1]
        who = [f"{full(first)} ({rng.choice(kin[:2])})", f"{full(second)} ({rng.choice(kin[2:])})"]
        who, number = who[:1 + (rng.random() < 0.5)], phone(rng)
        rows.append([way(one), ", ".join(who), number])
        if form == 1:
            text.append(f"{full(one)} – {rng.choice(kin[:2])} {first.given} {number}")
        elif form == 2:
            text += [way(one), *(f"   {name} {phone(rng)}" for name in who), ""]
        elif form == 3:
            text.append(f"{full(one)}: {' / '.join(who)}")
    text = text or [written([each(say, "fetch"), *rows], rng.choice(("\t", ";", " | ")))]
    known = (say("home"), *each(say, "fetch"), *kin, *(one.given for one in adults), *(one.family for one in adults))
    return Made("\n".join((*titled(rng, say("home")), *text)).strip(), wanted(some), known)


@shape()
def loft_reading_groups(rng: random.Random, some: Sequence[Person]) -> Made:
    """Every child of every level; no level, no day, no score."""
    say, way, form = speak(rng, WORDS), rng.choice((given, initial, full)), rng.randrange(4)
    text, count, out = titled(rng, say("reading")), rng.randrange(2, 5), rng.choice((26, 40, 50))
    names, known = rng.choice(("ABCD", "1234", ("A/B", "C/D", "E", "F/G"))), each(say, "letters")
    for at in range(count):
        head = f"{say('level')} {names[at]}"
        head += rng.choice(("", f" ({rng.choice(each(say, 'when'))})")) + rng.choice(("", ":"))
        group = some[at::count]
        if form == 0:
            text.append(f"{head.strip(':')}: {', '.join(map(way, group))}")
        else:
            rows = [f"{way(one)} {rng.randrange(out)}/{out}" if form == 1 else f"{way(one)} – {rng.randrange(out)} "
                    f"{rng.choice(known)}" if form == 2 else f"• {way(one)}" for one in group]
            text += [head, *rows, ""]
    return Made("\n".join(text).strip(), wanted(some), (say("reading"), say("level"), *each(say, "when"), *known))


@shape()
def loft_remarks(rng: random.Random, some: Sequence[Person]) -> Made:
    """Every child once, though a remark names another one."""
    say, way, sign = speak(rng, WORDS), plain(rng), rng.choice((" ({})", " – {}", " -- {}", " [{}]", ": {}"))
    text, dot, share = titled(rng, say("list")), rng.choice((". ", ") ", " ", ".")), rng.choice((0.2, 0.4, 0.7))
    places, empty = [*some], rng.randrange(2, 30)
    for at, one in enumerate(places, 1):
        text += [f"{at}{dot}{say('gap')}"] * (at == empty)
        other = rng.choice([each for each in some if each is not one])
        note = rng.choice((rng.choice(_words(say, "other")).format(other.given), *rng.sample(_words(say, "self"), 3)))
        text.append(f"{at + (at >= empty)}{dot}{way(one)}{sign.format(note) if rng.random() < share else ''}")
    told = [note.format("") for note in (*_words(say, "other"), *_words(say, "self"))]
    return Made("\n".join(text), wanted(some), (say("list"), say("gap"), *told))


@shape()
def loft_two_columns(rng: random.Random, some: Sequence[Person]) -> Made:
    """Every child of both columns."""
    say, way, form = speak(rng, WORDS), rng.choice((full, full, comma, capitals, initial)), rng.randrange(3)
    half, text = (len(some) + 1) // 2, titled(rng, say("list"))
    numbered, sign = rng.random() < 0.6, rng.choice((". ", " ", ") "))
    names = [f"{at}{sign}{way(one)}" if numbered else way(one) for at, one in enumerate(some, 1)]
    wide = max(map(len, names)) + rng.randrange(3, 9)
    for at in range(half):
        left, right = names[at], names[at + half] if at + half < len(names) else ""
        text.append((f"{left:{wide}}{right}", f"{left}\t{right}", f"{left} | {right}")[form].rstrip(" |\t"))
    return Made("\n".join(text), wanted(some), (say("list"),))


@shape()
def loft_thread(rng: random.Random, some: Sequence[Person]) -> Made:
    """The child whom each family names; none of those who write."""
    say, way, form = speak(rng, WORDS), rng.choice((full, full, given)), rng.randrange(3)
    teacher, *adults = aside(rng, some, len(some) + 1)
    parents = [Person(adult.given, one.family) for adult, one in zip(adults, some, strict=True)]
    write, day = rng.choice((full, given)), f"{rng.randrange(1, 29)}/{rng.randrange(1, 13)}/24"
    text, minute = list[str](), 480
    told = [(say("teacher").format(teacher.family), say("please")), *(
        (write(parent), rng.choice(_words(say, "answer")).format(way(one)))
        for parent, one in zip(parents, some, strict=True))]
    for who, what in told:
        minute += rng.randrange(1, 9)
        time = f"{minute // 60}:{minute % 60:02}"
        text += ([f"[{day}, {time}:{rng.randrange(60):02}] {who}: {what}"], [f"{day}, {time} - {who}: {what}"],
                 [who, time, what, ""])[form]
    answers = [answer.format("") for answer in _words(say, "answer")]
    known = (say("please"), *answers, full(teacher), say("teacher"), *(one.given for one in adults))
    return Made("\n".join(text).strip(), wanted(some), known)


@shape(MAY_ASK)
def loft_nicknames(rng: random.Random, some: Sequence[Person]) -> Made:
    """The name that a child goes by; in brackets and quotes it may be either."""
    say, form, right = speak(rng, WORDS), rng.randrange(4), list[Wanted]()
    nicknames, text = _nicknames(rng, some), titled(rng, say("list"))
    for one in some:
        nickname = nicknames.pop() if nicknames and rng.random() < 0.35 else ""
        said = rng.choice(_words(say, "goes")).format(nickname)
        line = (f"{full(one)} ({nickname})", f'{one.given} "{nickname}" {one.family}', f"{full(one)} – {said}",
                f"{one.given} ({nickname}) {one.family}")[form] if nickname else full(one)
        text.append(line)
        either = (nickname,) if form == 2 else (nickname, one.given)
        right.append(Wanted(either if nickname else (one.given,), one.given))
    return Made("\n".join(text), tuple(right), (say("list"), *(said.format("") for said in _words(say, "goes"))))


@shape()
def loft_web_register(rng: random.Random, some: Sequence[Person]) -> Made:
    """Every child of the page; no button, count or letters in a circle."""
    say, way, form = speak(rng, WORDS), rng.choice((full, comma, comma)), rng.randrange(3)
    menu, buttons, circle = _words(say, "menu"), each(say, "buttons"), rng.random() < 0.4
    text = menu if rng.random() < 0.5 else ["   ".join(menu)] * (rng.random() < 0.6)
    text = [*text, say("room").format(len(some)), *[say("sort")] * (rng.random() < 0.5)]
    text += [f"{say('whole')}\t" + "\t".join(buttons)] if form == 0 else []
    for one in some:
        text += [f"{one.given[0]}{one.family[0]}".upper()] if circle and form else []
        if form == 0:
            text.append("\t".join((way(one), *rng.choice((("", "✓", ""), ("✓", "", ""), ("✓", "", ""))))))
        elif form == 1:
            text += [way(one), " ".join(buttons)]
        else:
            text += [way(one), rng.choice((buttons[0], buttons[0], buttons[2])), say("edit")]
    text += [say("shown").format(len(some))] * (rng.random() < 0.6) + [say("save")] * (rng.random() < 0.5)
    told = (*menu, *buttons, say("room"), say("sort"), say("edit"), say("shown"), say("save"), say("whole"))
    return Made("\n".join(text), wanted(some), told)


@shape(MAY_ASK)
def loft_long_families(rng: random.Random, some: Sequence[Person]) -> Made:
    """The given name, of two given names the first or both; no word of a family of two names or with a particle."""
    say, form, text, right = speak(rng, WORDS), rng.randrange(4), list[str](), list[Wanted]()
    for one, other in zip(some, aside(rng, some, len(some)), strict=True):
        family = rng.choice((one.family, f"{one.family} {other.family}", f"{one.family}-{other.family}",
                             f"{rng.choice(PARTICLES)} {one.family}"))
        pair = rng.random() < 0.2 and form in (1, 2)
        both = f"{one.given} {other.given}" if pair else one.given
        text.append((f"{both} {family}", f"{family}, {both}", f"{family.upper()}, {both.upper()}",
                     f"{both} {family.upper()}")[form])
        right.append(Wanted((one.given, both), one.given))
    return Made("\n".join((*titled(rng, say("list")), *text)), tuple(right), (say("list"),))
