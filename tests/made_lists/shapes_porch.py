"""Shapes of list that are brought along from home and hall: plays, cards, chats, visits, charts and notes."""

from __future__ import annotations

import random
from collections.abc import Sequence

from made_lists.household import each, given, hour, plain, shuffled, sown, speak, titled, ways
from made_lists.judging import Made
from made_lists.papers import address, aside, comma, dates, phone, written
from made_lists.people import Person
from made_lists.registry import Registry
from made_lists.shapes_tuned import full, wanted

_KEPT = Registry()
SHAPES, CLEAN, HEADED, HEADLESS = _KEPT.shapes, _KEPT.clean, _KEPT.headed, _KEPT.headless
MAY_ASK: set[str] = set()  # of these a careful human would ask about some names
shape = _KEPT.shape
# English, Spanish, French, German, Italian, Portuguese; a word may be written in several ways.
WORDS = {
    "play": "Christmas play~Nativity – who plays what|Obra de Navidad~Reparto del belén|Spectacle de Noël~Rôles de la "
            "crèche|Krippenspiel~Rollen Weihnachtsspiel|Recita di Natale~I ruoli|Teatro de Natal~Papéis do presépio",
    "roles": "Narrator,Mary,Joseph,Shepherd,Sheep,Star,King,Innkeeper,Angel,Donkey|Narrador,María,José,Pastor,Oveja,"
             "Estrella,Rey mago,Posadero,Ángel,Burro|Narrateur,Marie,Joseph,Berger,Mouton,Étoile,Roi mage,Aubergiste,"
             "Ange,Âne|Erzähler,Maria,Josef,Hirte,Schaf,Stern,König,Wirt,Engel,Esel|Narratore,Maria,Giuseppe,Pastore,"
             "Pecora,Stella,Re magio,Oste,Angelo,Asino|Narrador,Maria,José,Pastor,Ovelha,Estrela,Rei mago,"
             "Estalajadeiro,Anjo,Burro",
    "choir": "Choir|Coro|Chorale|Chor|Coro|Coro",
    "and": "and|y|et|und|e|e",
    "role": "Role,Child|Papel,Niño/a|Rôle,Élève|Rolle,Kind|Ruolo,Bambino|Papel,Criança",
    "lines": "has two lines,knows the song,costume from home|tiene dos frases,disfraz de casa|deux phrases,costume "
             "maison|zwei Sätze,Kostüm von zu Hause|due battute,costume da casa|duas falas,fato de casa",
    "rehearsal": "Rehearsal Thursday 10:00|Ensayo el jueves 10:00|Répétition jeudi 10h00|Probe am Donnerstag, 10 Uhr|"
                 "Prova giovedì ore 10|Ensaio quinta-feira às 10h",
    "logins": "Reading site logins~Tablet passwords|Claves de la tableta~Usuarios y contraseñas|Identifiants "
              "tablettes|Zugangsdaten Lese-App~Passwörter Tablets|Accessi tablet~Credenziali|Acessos ao site~"
              "Palavras-passe",
    "login": "Student,Username,Password~Name,Login,Picture password|Alumno,Usuario,Contraseña|Élève,Identifiant,Mot "
             "de passe|Name,Benutzername,Passwort~Kind,Login,Kennwort|Alunno,Nome utente,Password|Aluno,Utilizador,"
             "Palavra-passe~Nome,Usuário,Senha",
    "secrets": "blue,sun,fish,red,tree,cat,happy,frog|azul,sol,pez,rojo,gato,feliz,luna|bleu,soleil,chat,rouge,lune,"
               "poisson|blau,Sonne,Fisch,rot,Baum,Katze,Mond|blu,sole,pesce,rosso,gatto,luna|azul,sol,peixe,gato,lua,"
               "flor",
    "members": "{} members~Group · {} participants|{} participantes~Grupo · {} miembros|{} membres~Groupe · {} "
               "participants|{} Mitglieder~Gruppe · {} Teilnehmer|{} partecipanti~Gruppo · {} membri|{} participantes~"
               "Grupo · {} membros",
    "group": "Kindergarten parents|Familias Infantil 5 años|Parents de la GS|Eltern Vorschule|Genitori sezione A|Pais "
             "do pré-escolar",
    "you": "You|Tú|Vous|Du|Tu|Você~Tu",
    "admin": "Group admin~Admin|Admin. del grupo|Admin du groupe|Gruppenadmin|Amministratore|Admin do grupo",
    "parent": "{0} ({1}'s mum)~{0} – {1}'s dad~{1}'s mom~{0}, mom of {1}~Mum {1}|{0} mamá de {1}~{0} (papá de {1})~"
              "Mamá {1}~Mamá de {1}|{0} maman de {1}~{0} (papa de {1})~Maman de {1}~Papa {1}|{0} Mama von {1}~{0} "
              "(Papa von {1})~Mama {1}~Papa von {1}|{0} mamma di {1}~{0} (papà di {1})~Mamma di {1}~Mamma {1}|{0} mãe "
              "de {1}~{0} (pai de {1})~Mãe de {1}~Mãe {1}",
    "status": "Available,At work,Busy|Disponible,En el trabajo,Ocupado|Disponible,Au travail,Occupé|Verfügbar,Bei der "
              "Arbeit,Beschäftigt|Disponibile,Al lavoro,Occupato|Disponível,No trabalho,Ocupado",
    "visits": "Home visits~Home visits – first week|Visitas a las familias|Visites à domicile|Hausbesuche|Visite alle "
              "famiglie|Visitas às famílias",
    "family": "{} family~Family {}~The {} family|Familia {}~Fam. {}|Famille {}~Fam. {}|Familie {}~Fam. {}|Famiglia {}~"
              "Fam. {}|Família {}",
    "streets": "{} Mill Road,{} Oak Lane,{} Church Street|Calle Mayor {},Avenida del Río {}|{} rue des Lilas,{} "
               "avenue du Port|Bachgasse {},Schulweg {}|Via del Mulino {},Via Larga {}|Rua da Fonte {},Rua Nova {}",
    "doors": "ring twice,dog in the yard,second floor,grandma opens|llamar dos veces,hay perro,segundo piso|sonner "
             "deux fois,chien,deuxième étage|zweimal klingeln,Hund,zweiter Stock|suonare due volte,cane,secondo piano|"
             "tocar duas vezes,cão no pátio,segundo andar",
    "days": "Mon,Tue,Wed,Thu|lun,mar,mié,jue|lun.,mar.,jeu.|Mo,Di,Mi,Do|lun,mar,mer,gio|seg,ter,qua,qui",
    "letters": "Letter check~Letter names – October|Control de letras~Letras que conocen|Connaissance des lettres|"
               "Buchstabentest~Buchstaben|Riconoscimento lettere|Letras que conhecem",
    "missing": "missing~not yet~still needs|faltan~le faltan|manque~à revoir|fehlen noch~noch nicht|mancano~da "
               "rivedere|faltam~ainda não",
    "knows": "knows|conoce|connaît|kennt|conosce|conhece",
    "all": "all!~all of them|todas~¡todas!|toutes~tout acquis|alle~alle!|tutte|todas",
    "known": "Name,Upper case,Lower case,Missing|Nombre,Mayúsculas,Minúsculas,Faltan|Prénom,Majuscules,Minuscules,À "
             "revoir|Name,Große,Kleine,Fehlen|Nome,Maiuscole,Minuscole,Mancano|Nome,Maiúsculas,Minúsculas,Faltam",
    "beside": "No.,Name,DOB|Nº,Alumno,F. nac.|N°,Élève,Né(e) le|Nr.,Name,geb.|N.,Alunno,Nato il|N.º,Nome,Nasc.",
    "rooms": "Room 4,Room 5~Ms. Bell's class,Mr. Ford's class~KA,KB|Infantil 5 A,Infantil 5 B~Clase A,Clase B|GS 1,GS "
             "2~Classe A,Classe B|Klasse 1a,Klasse 1b~Gruppe 1,Gruppe 2|Sezione A,Sezione B|Turma A,Turma B~Sala 1,"
             "Sala 2",
    "award": "CERTIFICATE,This certificate is awarded to~Star Award,presented to|DIPLOMA,Se otorga a~Diploma de honor,"
             "para|DIPLÔME,décerné à~Certificat,remis à|URKUNDE,für~Urkunde,Diese Urkunde erhält|DIPLOMA,conferito a~"
             "Attestato,assegnato a|DIPLOMA,atribuído a~Certificado,entregue a",
    "reasons": "for being a kind friend,for super reading,for helping others,for trying hard|por ser buen compañero,"
               "por leer tan bien,por ayudar a los demás|pour sa gentillesse,pour ses progrès en lecture,pour son "
               "aide|für Hilfsbereitschaft,für tolles Lesen,für Mut|per la gentilezza,per la lettura,per l'impegno|"
               "pela simpatia,pela leitura,pelo esforço",
    "signed": "Signed:~Teacher:|Firmado:~La maestra:|Signature :~L'enseignante :|Unterschrift:~Lehrerin:|Firma:~La "
              "maestra:|Assinado:~A educadora:",
    "wall": "Our name wall~Name wall|Nuestros nombres~Pared de nombres|Nos prénoms~Mur des prénoms|Unsere Namen~"
            "Namenwand|I nostri nomi~Muro dei nomi|Os nossos nomes~Parede de nomes",
    "growing": "How tall are we?~Growth chart|¿Cuánto medimos?~Tallas y pesos|Notre toise~Tailles et poids|Wie groß "
               "sind wir?~Messlatte|Quanto siamo alti?~Crescita|Quanto medimos?~Tabela de crescimento",
    "sizes": "Name,Height,Weight,Shoe~Child,Sept.,Jan.,Shoe size|Nombre,Talla,Peso,Calzado~Niño,Sept.,Enero,Pie|"
             "Prénom,Taille,Poids,Pointure~Enfant,Sept.,Janv.,Pointure|Name,Größe,Gewicht,Schuhe~Kind,Sept.,Jan.,"
             "Schuhgröße|Nome,Altezza,Peso,Scarpe~Bambino,Sett.,Genn.,Scarpe|Nome,Altura,Peso,Calçado~Criança,Set.,"
             "Jan.,Pé",
    "absent": "absent,not measured|ausente,sin medir|absent,pas mesuré|fehlt,nicht gemessen|assente,non misurato|"
              "faltou,por medir",
    "sheet": "First,Last,Age,Group,Paid~Name,Surname,Age,Bus,OK|Nombre,Apellidos,Edad,Grupo,Pagado|Prénom,Nom,Âge,"
             "Groupe,Payé|Vorname,Nachname,Alter,Gruppe,Bezahlt|Nome,Cognome,Età,Gruppo,Pagato|Nome,Apelido,Idade,"
             "Grupo,Pago",
    "errors": "#REF!,#N/A,#VALUE!,#NAME?|#¡REF!,#N/D,#¡VALOR!,#¿NOMBRE?|#REF!,#N/A,#VALEUR!,#NOM?|#BEZUG!,#NV,#WERT!,"
              "#NAME?|#RIF!,#N/D,#VALORE!,#NOME?|#REF!,#N/D,#VALOR!,#NOME?",
    "truths": "TRUE,FALSE|VERDADERO,FALSO|VRAI,FAUX|WAHR,FALSCH|VERO,FALSO|VERDADEIRO,FALSO",
    "counts": "=COUNTA(A2:A30)|=CONTARA(A2:A30)|=NBVAL(A2:A30)|=ANZAHL2(A2:A30)|=CONTA.VALORI(A2:A30)|"
              "=CONTAR.VAL(A2:A30)",
    "friend": "Secret friend~Gift exchange|Amigo invisible|Ami secret~Noël secret|Wichteln~Wichtelliste|Amico segreto|"
              "Amigo secreto~Amigo oculto",
    "gives": "gives to~has|regala a~le toca|offre à~tire|beschenkt~zieht|regala a~pesca|dá a~tirou",
    "note": "Kindergarten~Monday~My class|Clase~Lunes~Mi clase|Classe~Lundi~Ma classe|Meine Klasse~Montag|La mia "
            "sezione~Lunedì|A minha sala~Segunda",
    "edited": "Edited yesterday, 21:14~Today 8:05|Editado ayer, 21:14~Hoy 8:05|Modifié hier, 21:14~Aujourd'hui 8:05|"
              "Bearbeitet gestern, 21:14~Heute 8:05|Modificato ieri, 21:14~Oggi 8:05|Editado ontem, 21:14~Hoje 8:05",
    "buy": "To buy~Shopping:~To do|Comprar~Pendiente:|À acheter~À faire :|Einkaufen~Noch zu tun:|Da comprare~Da fare:|"
           "Comprar~Por fazer:",
    "things": "glue sticks,wipes,tape,name tags,print the letter,call the office|pegamento,toallitas,cinta,imprimir "
              "la carta,llamar a secretaría|colle,lingettes,scotch,imprimer le mot,appeler le bureau|Klebestifte,"
              "Feuchttücher,Elternbrief drucken,Büro anrufen|colla,salviette,nastro,stampare l'avviso,chiamare la "
              "segreteria|cola,toalhitas,fita-cola,imprimir o recado,ligar à secretaria",
    "arrivals": "Sign-in sheet~Arrivals|Registro de entrada|Feuille d'arrivée~Émargement|Bring- und Abholliste|"
                "Registro ingressi|Registo de entradas",
    "arrival": "Child,In,Brought by,Out,Collected by|Niño/a,Entrada,Lo trae,Salida,Lo recoge|Enfant,Arrivée,Amené par,"
               "Départ,Repris par|Kind,Gebracht um,von,Abgeholt um,von|Bambino,Entrata,Accompagnato da,Uscita,"
               "Ritirato da|Criança,Entrada,Entregue por,Saída,Recolhida por",
    "grown": "mum,dad,gran|mamá,papá,abuela|maman,papa,mamie|Mama,Papa,Oma|mamma,papà,nonna|mãe,pai,avó",
}


@shape()
def porch_cast(rng: random.Random, some: Sequence[Person]) -> Made:
    say, way = speak(rng, WORDS), plain(rng)
    roles, said = shuffled(rng, each(say, "roles")), each(say, "lines")
    text, left, first = titled(rng, say("play")), list(some), rng.random() < 0.6
    sign = rng.choice((": ", " – ", ": ", "\t", " = "))
    if sign == "\t" and rng.random() < 0.5:
        text += ["\t".join(each(say, "role")[::1 if first else -1])]
    for role in roles:
        count = rng.choice((1, 1, 1, 2, 3)) if first else 1
        taken, left = left[:count], left[count:]
        names = list(map(way, taken))
        joined = ", ".join(names[:-1]) + f" {say('and')} {names[-1]}" if len(names) > 1 else "".join(names)
        if names:
            note = f" ({rng.choice(said)})" if rng.random() < 0.15 else ""
            text.append((f"{role}{sign}{joined}" if first else f"{joined}{sign}{role}") + note)
    if left:
        text += ["", f"{say('choir')}:", *map(way, left)]
    text += ["", say("rehearsal")] if rng.random() < 0.4 else []
    return Made("\n".join(text), wanted(some), (*roles, *said, say("play"), say("choir"), say("rehearsal"),
                                                *each(say, "role")))


def _login(rng: random.Random, one: Person) -> str:
    return rng.choice((address(rng, one).split("@")[0].replace(".", ""), f"k{rng.randrange(100, 999)}"))


@shape()
def porch_logins(rng: random.Random, some: Sequence[Person]) -> Made:
    say, way = speak(rng, WORDS), ways(rng)
    titles, words, sign = each(say, "login"), each(say, "secrets"), rng.choice(("-", " ", ""))
    rows = [(way(one), _login(rng, one), sign.join((*rng.sample(words, 2), str(rng.randrange(2, 99))))) for one in some]
    head = titled(rng, say("logins"), 0.5)
    if rng.random() < 0.4:
        text = "\n\n".join(f"{row[0]}\n{titles[1]}: {row[1]}\n{titles[2]}: {row[2]}" for row in rows)
    else:
        text = written([titles, *rows], rng.choice(("\t", "\t", ";", " | ")))
    return Made("\n".join((*head, text)), wanted(some), (*titles, *words, say("logins")))


@shape(MAY_ASK)
def porch_group_members(rng: random.Random, some: Sequence[Person]) -> Made:
    say, adults = speak(rng, WORDS), aside(rng, some, len(some) + 2)
    told = rng.choice((0.0, 0.3))
    text = [say("group"), say("members").format(len(some) + 3), say("you")]
    for at, (one, two) in enumerate(zip(some, adults, strict=False)):
        text.append(say("parent").format(two.given, one.given))
        text += [phone(rng)] if rng.random() < told else []
        text += [say("admin")] if at == 0 else []
        text += [sown(rng, each(say, "status"), 1)] if rng.random() < told else []
    text += [phone(rng), f"~{adults[-1].given}"] if rng.random() < 0.5 else []
    return Made("\n".join(text), wanted(some), (*(two.given for two in adults), say("group"), say("you"), say("admin"),
                                                *each(say, "status"), *each(say, "grown"), say("members")))


@shape()
def porch_home_visits(rng: random.Random, some: Sequence[Person]) -> Made:
    say, day = speak(rng, WORDS), dates(rng, 2024)
    doors, form = each(say, "doors"), rng.choice(("{f} ({g}), {s}", "{f} – {g} – {s}", "{f}, {s} ({g})", "{f}: {g}"))
    when, text = rng.choice(("", "day", "weekday")), titled(rng, say("visits"))
    for one in some:
        street = rng.choice(each(say, "streets")).format(rng.randrange(1, 90))
        line = form.format(f=say("family").format(one.family), g=one.given, s=street)
        at = {"": "", "day": f"{day()} ", "weekday": f"{rng.choice(each(say, 'days'))} {hour(rng, 14, 18)} "}[when]
        note = sown(rng, doors, 0.2)
        text.append(f"{at}{line}" + (f" – {note}" if note else ""))
    return Made("\n".join(text), wanted(some), (*doors, say("visits"), say("family"), *each(say, "streets"),
                                                *each(say, "days")))


@shape()
def porch_letters_known(rng: random.Random, some: Sequence[Person]) -> Made:
    say, way, form = speak(rng, WORDS), plain(rng), rng.randrange(3)
    joint, text = rng.choice((", ", " ", "-")), titled(rng, say("letters"))
    rows: list[list[str]] = []
    for one in some:
        lacking = sorted(rng.sample("abcdefghijklmnopqrstuvwxyz", rng.randrange(6)))
        shown = joint.join(lacking) or say("all")
        rows.append([way(one), str(26 - len(lacking) // 2), str(26 - len(lacking)), shown])
        if form == 0:
            text.append(f"{way(one)}: {26 - len(lacking)}/26" + (f", {say('missing')} {shown}" if lacking else ""))
        elif form == 1:
            text.append(f"{way(one)} – {say('missing') if lacking else say('knows')} {shown}")
    text += [written([each(say, "known"), *rows], rng.choice(("\t", ";", " | ")))] if form == 2 else []
    return Made("\n".join(text), wanted(some), (*each(say, "known"), say("missing"), say("all"), say("knows"),
                                                say("letters")))


@shape(HEADED)
def porch_two_classes_beside(rng: random.Random, some: Sequence[Person]) -> Made:
    say, day, way = speak(rng, WORDS), dates(rng), rng.choice((full, full, comma))
    half, keep = len(some) // 2 + rng.randrange(2), rng.randrange(1, 4)
    titles = each(say, "beside")[0 if keep == 3 else 1:][:max(keep, 1)]
    blocks = []
    for part in (some[:half], some[half:]):
        cells = [([str(at)] if keep == 3 else []) + [way(one)] + ([day()] if keep > 1 else [])
                 for at, one in enumerate(part, 1)]
        blocks.append([*cells, *[[""] * len(titles)] * (max(half, len(some) - half) - len(part))])
    gap = [""] if rng.random() < 0.7 else []
    rooms = [[room, *[""] * (len(titles) - 1)] for room in each(say, "rooms")]
    rows = [[*rooms[0], *gap, *rooms[1]], *([] if keep == 1 else [[*titles, *gap, *titles]]),
            *([*left, *gap, *right] for left, right in zip(*blocks, strict=True))]
    text = written(rows, rng.choice(("\t", "\t", ";")))
    return Made(text, wanted(some), (*titles, *each(say, "rooms")))


@shape()
def porch_certificates(rng: random.Random, some: Sequence[Person]) -> Made:
    say, teacher, way = speak(rng, WORDS), aside(rng, some, 1)[0], rng.choice((full, full, given))
    day, (top, to), reasons = dates(rng, 2024)(), each(say, "award"), each(say, "reasons")
    rule, signed = rng.choice(("", "", "----------", "✂ - - - - - -")), rng.random() < 0.6
    blocks = []
    for one in some:
        block = [top, to, way(one), rng.choice(reasons)]
        blocks.append("\n".join(block + ([f"{say('signed')} {full(teacher)}", day] if signed else [])))
    return Made(f"\n{rule}\n".join(blocks), wanted(some), (top, to, *reasons, say("signed"), full(teacher)))


@shape()
def porch_name_wall(rng: random.Random, some: Sequence[Person]) -> Made:
    say, form, empty = speak(rng, WORDS), rng.randrange(4), rng.random() < 0.4
    way, text = rng.choice((given, given, full)) if form < 2 else given, titled(rng, say("wall"))
    starts = sorted({one.given[0].upper() for one in some} | (set("ABCDEFGHIJKLMNOPQRSTUVWXYZ") if empty else set()))
    for start in starts:
        names = [way(one) for one in some if one.given[0].upper() == start]
        shown = rng.choice((start, start)) if form % 2 else f"{start}{start.lower()}"
        if form < 2:
            text += [shown, *names]
        else:
            text.append(f"{shown}{': ' if form == 2 else ' – '}{', '.join(names)}".rstrip())
    return Made("\n".join(text), wanted(some), (say("wall"),))


@shape()
def porch_measured(rng: random.Random, some: Sequence[Person]) -> Made:
    say, way, sign = speak(rng, WORDS), ways(rng), rng.choice((" – ", "\t", ", ", "  ", ";"))
    titles, absent, mark = each(say, "sizes"), each(say, "absent"), rng.choice((".", ","))
    way = plain(rng) if sign in ", " else way
    unit = rng.random() < 0.7
    rows = []
    for one in some:
        cells = [f"{rng.randrange(98, 125)}{' cm' if unit else ''}", f"{rng.randrange(15, 26)}{mark}{rng.randrange(10)}"
                 f"{' kg' if unit else ''}", str(rng.randrange(25, 32))]
        rows.append([way(one), *(cells if rng.random() < 0.9 else [rng.choice(absent)])])
    head = [titles] if sign in "\t;" and rng.random() < 0.8 else []
    text = "\n".join((*titled(rng, say("growing"), 0.5), *(sign.join(row) for row in (*head, *rows))))
    return Made(text, wanted(some), (*titles, *absent, say("growing")))


@shape(HEADED)
def porch_formula_cells(rng: random.Random, some: Sequence[Person]) -> Made:
    say = speak(rng, WORDS)
    truths, errors, titles = each(say, "truths"), each(say, "errors"), each(say, "sheet")
    broken = rng.sample(range(2, 5), rng.randrange(1, 3))
    rows = [titles]
    for one in some:
        row = [one.given, one.family, str(rng.randrange(4, 7)), rng.choice("AB"), rng.choice(truths)]
        rows.append([errors[at % 4] if at in broken and rng.random() < 0.8 else cell for at, cell in enumerate(row)])
    rows.append([say("counts") if rng.random() < 0.5 else str(len(some)), "", errors[0], "", ""])
    if rng.random() < 0.5:
        rows = [["", *"ABCDE"], *([str(at), *row] for at, row in enumerate(rows, 1))]
    return Made(written(rows, rng.choice(("\t", "\t", ";"))), wanted(some), (*truths, *errors, *titles, say("counts")))


@shape(MAY_ASK)
def porch_secret_friend(rng: random.Random, some: Sequence[Person]) -> Made:
    say, way = speak(rng, WORDS), plain(rng)
    sign = rng.choice((" → ", " -> ", f" {say('gives')} ", " > "))
    turn = rng.randrange(1, len(some))
    text = titled(rng, say("friend"))
    text += [f"{way(one)}{sign}{way(some[(at + turn) % len(some)])}" for at, one in enumerate(some)]
    return Made("\n".join(text), wanted(some), (say("friend"), say("gives")))


@shape()
def porch_note_with_jobs(rng: random.Random, some: Sequence[Person]) -> Made:
    say, way = speak(rng, WORDS), plain(rng)
    off, on = rng.choice((("☐ ", "☑ "), ("- [ ] ", "- [x] "), ("[ ] ", "[X] "), ("○ ", "● "), ("□ ", "✓ ")))
    things = rng.sample(each(say, "things"), rng.randrange(2, 5))
    children = [say("note"), *((on if rng.random() < 0.3 else off) + way(one) for one in some)]
    jobs = [say("buy"), *((on if rng.random() < 0.4 else off) + thing for thing in things)]
    parts = [children, jobs] if rng.random() < 0.7 else [jobs, children]
    if rng.random() < 0.6:
        parts[0].insert(rng.randrange(2), say("edited"))
    text = "\n\n".join("\n".join(part) for part in parts)
    return Made(text, wanted(some), (say("note"), say("edited"), say("buy"), *things))


@shape()
def porch_arrivals(rng: random.Random, some: Sequence[Person]) -> Made:
    say, adults, way = speak(rng, WORDS), aside(rng, some, 2 * len(some)), rng.choice((full, full, comma, given))
    kin, titles, form = each(say, "grown"), each(say, "arrival"), rng.randrange(3)
    text, rows = titled(rng, say("arrivals"), 0.5), []
    for one, two, three in zip(some, adults[::2], adults[1::2], strict=True):
        who = [f"{two.given} {two.family}", rng.choice(kin)] if rng.random() < 0.5 else [rng.choice(kin), full(three)]
        if form == 0:
            text.append(f"{hour(rng, 7, 9)} {way(one)} ({who[0]}) – {hour(rng, 15, 18)} ({who[1]})")
        rows.append([way(one), hour(rng, 7, 9), who[0], hour(rng, 15, 18), who[1]])
    text += [written([titles, *rows], rng.choice(("\t", ";", " | ")))] if form else []
    return Made("\n".join(text), wanted(some), (*map(full, adults), *kin, *titles, say("arrivals")))
