"""The words by which a line is known to be about the class or the list, in the six languages of the pages. Data only.

Common practice, written down by hand and modest: a word that is missing is judged by the other lines (``unlike``).
Folded: small letters, no accents, single spaces.
"""

from __future__ import annotations

from namewright.roster.vocabulary import word_set

HEADING_WORDS = word_set("""
    class, room, teacher, grade, period, group, table, section, homeroom, school, kindergarten, year, week, date,
    total, clase, aula, salon, grado, grupo, maestra, maestro, profesora, profesor, escuela, fecha, curso, seccion,
    morning, afternoon, am, pm, boys, girls, kids, ninos, ninas, classe, salle, groupe, garcons, filles, eleves,
    ecole, maternelle, annee, matin, klasse, raum, zimmer, gruppe, jungen, madchen, buben, schuljahr, vorschule,
    gesamt, summe, totale, sezione, gruppo, maschi, femmine, maschietti, femminucce, bambine, scuola, turma, sala,
    turno, meninos, meninas, escola, ano, manha, tarde, effectif, insgesamt, anzahl, matricole, varones, prek,
    pre-k, tk, tk/k, kinder, preescolar, combo, session, infantil, parvulos, parvulario, parvularia, prekinder,
    guarderia, prescolar, vorschulkinder, schulanfanger, kindergartenkinder, krippe, kindertagesstatte, preschool,
    nursery, reception, toddlers, preschoolers, kindergartners, kindergarteners, elementary, creche, pre-escolar,
    infantario, bercario, primaria, matutino, vespertino, kindergarden, eyfs, break, pause, pausa, descanso, recreo,
    intervalo, intervallo, ricreazione, mittagspause, dismissal, walkers, carpool, aftercare, compleanni,
    cumpleanos, anniversaires, aniversarios, birthdays, geburtstage, geburtstagskalender, elterngesprache,
    elternabend, tutorias, colloqui, entretiens, conferences,
    e-mails, emails, mails, vormittag, nachmittag, vormittags, nachmittags, mattina, mattino, pomeriggio, apres-midi,
    manana, groups, groupes, gruppen, grupos, gruppi, schedule,
    tagesplan, tagesablauf, stundenplan, horario, horaire, orario, plans, substitute, sub, vertretung, remplacante,
    remplacant, sustituta, sustituto, suplente, supplente, substituta, substituto, notizen, level, niveau, nivel,
    livello, stufe, autobus, scuolabus, autocarro, autocar, schulbus, minibus, pullman, pulmino, carrinha, onibus,
    route, stop, ligne, arret, trajet, linie, haltestelle, buslinie, percorso, fermata, linha, paragem, parada,
    cohort, cohorte, kohorte, coorte, reading, guided, lecture, lectura, lettura, leitura, math, maths, mathe""")
"""First words of a line that is about the class, if what follows is a number, a letter, a
title or nothing."""

LEVELS = word_set("""
    section, sections, educacion, educacao, educazione, infanzia, dell'infanzia, dell’infanzia, infancia, materna,
    ps, ms, gs, tps, cp, ciclo, cycle, kita, kiga, hort, pre, foundation, stage, eyfs, primary, tageseinrichtung,
    nido, asilo, jardin, jardim, colegio, childcare, daycare, headstart, list, roster, register, attendance,
    children, pupils, students, learners, names, kids, alumnos, alumnas, alumnado, ninos, ninas, estudiantes,
    nombres, enfants, eleves, petits, kinder, schuler, schulerinnen, namen, namensliste, klassenliste, gruppenliste,
    anwesenheitsliste, alunni, alunne, bambini, bambine, nomi, alunos, alunas, criancas, meninos, nomes, listado,
    elenco, liste, lista, listas, presences, appel, asistencia, presenze, chamada, pauta, relacion, ed, riders,
    care, line, clases, rentree, reunion, reuniao, day, days, mornings, afternoons, readers, tag, tage, tags, jour,
    jours, journee, dia, dias, jornada, giorno, giorni, giornata, ganztags, halbtags""")
"""Words that make a line a heading where every other word is one, a number or a small word, too."""

COLOURS = word_set("""
    red, blue, green, yellow, orange, purple, pink, brown, black, white, grey, gray, rojo, rojos, azul, azules, verde,
    verdes, amarillo, amarillos, naranja, morado, morados, rosa, blanco, negro, rouge, rouges, bleu, bleus, vert, verts,
    jaune, jaunes, violet, rose, blanc, noir, rot, blau, grun, gelb, lila, rosso, rossi, blu, verdi, giallo, gialli,
    arancione, arancioni, viola, vermelho, vermelhos, azuis, amarelo, amarelos, laranja, roxo""")
"""Colours that groups are called by, where each block of a list opens with another one."""

COLOUR_FORMS = word_set("""
    rote, roter, rotes, blaue, blauer, blaues, grune, gruner, grunes, gelbe, gelber, gelbes, schwarze, weisse,
    weisser, braune, brauner, oranger, orangene, rosane, violette, violetter, roja, rojas, amarilla, amarillas, morada,
    blanca, negra, bleue, bleues, verte, vertes, blanche, noire, violetta, rossa, rosse, gialla, gialle, bianca, nera,
    vermelha, vermelhas, amarela, amarelas, roxa, branca, preta""")
"""The same as they stand beside a word for a group; some are names."""

BESIDE_CLASS = word_set("""
    petite, petit, moyenne, moyen, moyens, grande, grand, grands, grandes, small, big, little, older, younger,
    junior, senior, kleine, grosse, mittlere, piccoli, mezzani, grandi, pequenos, medianos, mayores, medios,
    primera, primero, primer, premiere, premier, erste, prima, primo, primeira, primeiro, segunda, segundo, second,
    seconda, secondo, deuxieme, zweite, tercera, tercero, terza, terceira, full, half, day, all, whole, complete,
    completa, new, current, old, aged, ages, age, edad, eta, idade, alter, anos, ano, years, year, yrs, yr, yo, ans,
    an, jahre, jahren, jahr, anni, anno, mois, meses, mes, months, mesi, monate, as, of, for, and, y, e, et, und,
    para, pour, fur, per, com, con, with, mit, avec, in, im, am, to, bis, from, vom, zum, leute, tutti, tous, en,
    entre, hasta, au, al, a, l'ecole, l’ecole, our, my, here, today, this, total, number, numero, nombre, anzahl,
    effectif, car, after, before, until, pick, up, bus, uhr, h, late, early""")
"""Words that may stand beside those: sizes, ages, small words."""

DATED_OPENINGS = word_set("as of, a fecha, stand vom, stand am, aggiornato al, atualizado em, mise a, mis a")
"""Two words that open a line with the day of a list."""

NOTE_WORDS = word_set("""
    note, notes, nb, n.b, ps, p.s, p.d, pd, please, reminder, remember, important, attention, fyi, nota, notas,
    aviso, importante, atencion, recuerden, recordatorio, remarque, rappel, hinweis, achtung, wichtig, bitte,
    avviso, attenzione, promemoria, atencao, lembrete, observacao, obs, subs, todo, recado, mot, recados""")
"""First words of a note to an adult, with a colon or words in small letters behind them."""

PLEASE = word_set("please, bitte, svp, s.v.p, s'il vous plait, s’il vous plait, por favor, per favore")
"""What is said to an adult and never in a name."""

PLACES = word_set("""
    room, table, school, elementary, preschool, kindergarten, session, classroom, academy, group, team, groupe,
    grupo, gruppo, gruppe, gruppen, ecole, maternelle, escola, scuola, schule, primary, nursery""")
"""Last words of a line that names a class or a school: ``Rainbow Room``."""

OVER_NAMES = word_set("""
    club, clubs, folders, order, orders, jobs, chart, helpers, rotation, rotations, schedule, signup, sign-up,
    volunteers, slips, santa, dienste, mappen, helfer, ag, encargados, encargadas, tareas, turnos, carpetas, metiers,
    ateliers, responsables, incarichi, compiti, ajudantes, tarefas, clube, pastas, responsaveis""")
"""Last words of what stands over names and is no class: ``Friday Folders``, ``Les métiers``."""

CLASS_OPENINGS = word_set("""
    classe, clase, klasse, salle, sala, aula, salon, raum, zimmer, gruppe, groupe, grupo, gruppo, turma, sezione,
    seccion, room, group, team, table, tisch, mesa, tavolo, equipe, equipo, kita, kiga, krippe, hort, kindergarten,
    kinderhaus, kindertagesstatte, grundschule, vorschule, jardin, jardim, escuela, colegio, guarderia, ecole,
    maternelle, creche, scuola, asilo, nido, escola, infantario, infantil, section, nursery, preschool, school,
    ceip, gruppenliste, klassenliste, kinderliste, sitzplan, stundenplan, essensplan, dienstplan""")
"""First words of a class that is named after something: ``Salle des Tournesols``."""

LINES = word_set("ruta, route, ligne, linie, linea, linha, rota, recorrido, percorso, trajet, tour, autocarro, autobus")
"""A bus by its number: ``Ruta 4``; alone some are names."""

CLASS_ENDINGS = ("gruppe", "gruppen", "klasse", "schule", "kindergarten", "tagesstatte", "kalender", "gesprache",
                 "kinder", "nraum", "zimmer", "liste", "listen")
"""Endings of German words in one for a class, its room or a list: ``Bärengruppe``, ``Erlenraum``, ``Telefonliste``."""

ENDS = word_set("end, ende, fin, fine, fim")

LISTS = word_set("list, roster, class, liste, klasse, klassenliste, classe, lista, listado, clase, elenco, turma")
"""Words of a line below a list: ``Ende der Liste``."""

OUR = word_set("""
    our, my, unsere, unser, meine, mein, notre, nos, ma, mes, mon, nuestra, nuestro, nuestras, nuestros, mi, mis,
    nostra, nostro, nostri, nossa, nosso, nossas, nossos, minha, minhas, meus""")
"""What stands before a word for a class or for children, behind an article or none: ``Unsere Klasse``."""

ARTICLES = word_set("the, la, le, les, el, los, las, il, lo, i, gli, a, o, os, as, die, der, das")

TODAY = word_set("""
    today, tomorrow, now, heute, morgen, jetzt, aujourd'hui, aujourd’hui, demain, hoy, manana, ahora, oggi, domani,
    adesso, hoje, amanha, agora""")
"""What stands beside a word for children over a list: ``kids today``."""

ROLLS = word_set("""
    roll call, class register, attendance sheet, attendance register, cahier d'appel, registre d'appel,
    registro de clase, registro di classe, diario de classe, chamada, registro, appello, asistencia, presenze""")
"""Words that open a list of who is there; Roll alone is a name."""

ON_SCREENS = word_set("""
    home, save, cancel, print, export, next, previous, back, edit, delete, close, add, filter, sort, search, settings,
    logout, refresh, submit, send, messages, reports, showing, speichern, abbrechen, drucken, exportieren, weiter,
    zuruck, bearbeiten, loschen, schliessen, hinzufugen, filtern, sortieren, suchen, einstellungen, abmelden, senden,
    nachrichten, berichte, start, startseite, klassen, classes, accueil, enregistrer, annuler, imprimer, exporter,
    suivant, precedent, retour, modifier, supprimer, fermer, ajouter, filtrer, trier, rechercher, parametres, envoyer,
    deconnexion, rapports, affichage, inicio, guardar, cancelar, imprimir, exportar, siguiente, anterior, volver,
    editar, eliminar, cerrar, anadir, filtrar, ordenar, buscar, ajustes, enviar, salir, mensajes, informes, mostrando,
    clases, salva, annulla, stampa, esporta, avanti, indietro, modifica, elimina, chiudi, aggiungi, filtra, ordina,
    cerca, impostazioni, invia, esci, messaggi, rapporti, report, classi, salvar, gravar, seguinte, voltar, apagar,
    fechar, adicionar, pesquisar, definicoes, configuracoes, sair, mensagens, relatorios, turmas, exibindo, anzeige,
    presenze, attendance, anwesenheit, presences, asistencia, presencas, entries, eintrage, eintragen, entrees,
    registros, elementi, elementos, results, ergebnisse, resultats, resultados, risultati""")
"""What stands on the buttons and in the menu of a page that is copied whole: ``Save   Cancel``."""

GREETINGS = word_set("""
    hi, hello, dear, hey, oi, thanks, thank, regards, cheers, sincerely, hola, gracias, saludos, estimada, estimado,
    bonjour, salut, merci, cordialement, chers, cheres, hallo, danke, liebe, lieber, gruss, ciao, grazie, saluti,
    ola, buongiorno, obrigado, obrigada, estimados, estimadas, caros, caras, prezados, welcome, willkommen,
    bienvenue, bienvenidos, bienvenidas, benvenuti, benvenute, bem-vindos, bem-vindas, boas-vindas,
    hiya, coucou, bonsoir, moin, servus, salve, buenas""")
"""First words of a line of a letter."""

GREETING_PHRASES = word_set("""
    good morning, good afternoon, good evening, hi all, hello all, guten morgen, guten tag, sehr geehrte, buenos
    dias, buenas tardes, bom dia, boa tarde, boa noite, buon giorno, buona sera, guten abend, hi there, hello there""")
"""Two words that open a letter."""

DEARS = word_set("""
    dear, hi, hello, hey, liebe, lieber, hallo, chere, cher, bonjour, salut, querida, querido, estimada, estimado,
    hola, hiya, coucou, bonsoir, moin, servus, salve, cara, caro, carissima, carissimo, gentile, egregio, ciao, prezada,
    prezado, ola, oi, beste, lieve, hoi, dag, geachte""")
"""Words before the name of whom a letter is for; some are names, so the lines around must tell."""

MAIL_LABELS = word_set("""
    from, subject, sent, von, betreff, gesendet, objet, envoye, asunto, enviado, oggetto, inviato, assunto, da, de,
    re, enviada, verzonden, onderwerp""")
"""Labels at the head of a message."""

CLOSINGS = word_set("""
    xx, xxx, xoxo,
    thanks, thank you, many thanks, thanks again, best, best wishes, best regards, kind regards, warm regards,
    warmly, regards, cheers, sincerely, yours, love, see you, merci, merci beaucoup, merci bien, cordialement, bien
    cordialement, bonne journee, a bientot, bises, danke, danke schon, vielen dank, besten dank, viele grusse, liebe
    grusse, beste grusse, herzliche grusse, schone grusse, mit freundlichen grussen, lg, vg, mfg, gracias, muchas
    gracias, mil gracias, saludos, un saludo, saludos cordiales, un abrazo, atentamente, grazie, grazie mille, molte
    grazie, saluti, cordiali saluti, un saluto, a presto, obrigado, obrigada, muito obrigado, muito obrigada,
    cumprimentos, melhores cumprimentos, com os melhores cumprimentos, um abraco, abraco, beijinhos, all the best,
    take care, with thanks, with best wishes, with love, talk soon, yours truly, yours sincerely, hugs, bien a toi,
    bien a vous, amities, amicalement, bonne soiree, bon week-end, merci d'avance, bis bald, alles liebe, schones
    wochenende, herzlichst, cari saluti, un caro saluto, un abbraccio, distinti saluti, abracos, beijos, ate logo,
    ate breve, atenciosamente, com carinho, bom fim de semana, besos, un beso, hasta pronto, cordialmente, un
    cordial saludo, con carino, have fun, good luck, viel spass, viel gluck, viel freude, bon courage, bonne chance,
    bonne rentree, suerte, mucha suerte, buena suerte, buon lavoro, buona fortuna, buon divertimento, boa sorte, bom
    trabalho, groeten, groetjes, met vriendelijke groet, met vriendelijke groeten, vriendelijke groet, hartelijke
    groeten, hartelijke groet, veel groeten, bedankt, dank je wel, alvast bedankt""")
"""What a letter about a list ends with; below it stands who wrote it."""

PHONES = word_set("""
    tel, telephone, phone, ph, mobile, mob, cell, fax, telefon, handy, mobil, telefono, movil, portable, cellulare,
    telefone, telemovel, celular, whatsapp""")
"""Words before a telephone number that stands alone."""

PRINTED = word_set("""
    printed, updated, confidential, roster, revised, impreso, actualizado, lista, attendance, generated, created,
    exported, downloaded, source, aggiornato, aggiornata, atualizado, atualizada, actualizada, mise, generado,
    creado, exportado, genere, cree, exporte, imprime, edite, liste, erstellt, gedruckt, exportiert, aktualisiert,
    stand, quelle, generato, creato, esportato, stampato, gerado, criado, impresso""")
"""First words of a line that a program or a teacher prints above or below a list."""

NOBODY = word_set("""
    nobody, none, no one, noone, niemand, keiner, keine, personne, aucun, aucune, nadie, ninguno, ninguna, nessuno,
    nessuna, ninguem, nenhum, nenhuma""")
"""What stands for the children of a group or a month where there are none."""

FREE_SEATS = NOBODY | word_set("""
    free, empty, vacant, open, free seat, empty seat, frei, leer, freier platz, unbesetzt, vide, libre, place libre,
    place vide, vacio, vacia, vacante, asiento libre, libero, vuoto, posto libero, livre, vazio, vaga, lugar livre, x,
    xx, xxx, n/a, tbd, tba, tbc, vacancy, open seat, open spot, open place, free place, free spot, empty spot,
    available, unassigned, unfilled, to be determined, to be announced, not assigned, noch frei, noch offen, platz frei,
    freier sitzplatz, nicht besetzt, zu vergeben, noch zu vergeben, n.n, nn, libres, place vacante, place disponible,
    disponible, a pourvoir, a definir, non attribue, non attribuee, siege libre, plaza libre, plaza vacante, lugar
    vacante, puesto libre, por asignar, sin asignar, por definir, libera, vacanti, posto vacante, posto vuoto,
    disponibile, da definire, da assegnare, non assegnato, vago, lugar vago, lugar vazio, vaga livre, disponivel, por
    preencher, a preencher, nao atribuido""")
"""What stands in a seat of a plan, or in a line of a list, where no child is."""

EXAMPLES = word_set("""
    example, sample, test, demo, dummy, placeholder, template, ejemplo, prueba, muestra, exemple, modele, essai,
    beispiel, muster, vorlage, esempio, prova, exemplo, teste, amostra""")
"""Words of a row that shows how others are to be filled in: ``Example Student``, ``Muster Kind``."""

IN_A_ROOM = word_set("""
    board, whiteboard, white board, smartboard, smart board, blackboard, chalkboard, screen, door, doors, exit,
    entrance, window, windows, desk, teacher desk, teacher's desk, teacher, carpet, rug, front, back, front of room,
    back of room, front of class, sink, aisle, cubbies, library, tafel, wandtafel, tur, ture, eingang, ausgang,
    fenster, pult, lehrerpult, lehrertisch, teppich, vorne, hinten, gang, waschbecken, garderobe, leseecke, tableau,
    tableau blanc, tableau noir, porte, entree, sortie, fenetre, fenetres, bureau, bureau de la maitresse, tapis,
    devant, fond, couloir, lavabo, pizarra, pizarron, puerta, entrada, salida, ventana, ventanas, escritorio, mesa
    de la maestra, mesa del maestro, mesa del profesor, alfombra, delante, detras, pasillo, lavagna, porta, ingresso,
    uscita, finestra, finestre, cattedra, tappeto, davanti, corridoio, quadro, quadro branco, lousa, saida, janela,
    janelas, secretaria, mesa da professora, tapete, frente, fundo, corredor""")
"""What a plan of seats shows beside the seats."""

WAITING = word_set("""
    waiting list, wait list, waitlist, wait-list, waitlisted, waiting, on the waiting list, warteliste,
    auf der warteliste, nachrucker, liste d'attente, en attente, liste complementaire, lista de espera, en espera,
    en lista de espera, lista d'attesa, lista di attesa, in lista d'attesa, in attesa, em espera, em lista de espera,
    fila de espera""")
"""What stands over children who may come, or before one."""

NO_SCHOOL = word_set("""
    no school, no class, no classes, school closed, closed, holiday, holidays, day off, off, break, vacation, pd day,
    schulfrei, frei, ferien, feiertag, keine schule, geschlossen, ferie, ferme, vacances, pas d'ecole,
    pas d’ecole, pas de classe, conge, pont, festivo, no hay clase, no hay clases, sin clase, sin clases, vacaciones,
    puente, cerrado, feriado, festa, chiuso, niente scuola, vacanza, vacanze, ponte, ferias, sem aulas, nao ha aulas,
    nao ha aula, fechado""")
"""What stands behind a day on which nobody comes."""

CHILDREN = word_set("""
    kids, children, pupils, students, class, kinder, schuler, klasse, ninos, ninas, alumnos, alumnas, peques, clase,
    enfants, eleves, classe, bambini, bambine, alunni, alunne, criancas, alunos, alunas, meninos, turma""")
"""Words for the children of a class, as a sentence about them has them."""

MAYBE = word_set("""
    probably, maybe, perhaps, possibly, presumably, likely, unsure, vielleicht, wahrscheinlich, vermutlich, eventuell,
    evtl, peut-etre, probablement, quizas, quiza, probablemente, posiblemente, acaso, forse, probabilmente, magari,
    talvez, provavelmente, possivelmente""")
"""Words before a name of which somebody is not sure."""

OPENERS = MAYBE | word_set("""
    to, the, a, an, if, when, while, because, please, there, this, these, that, those, it, he, she, they, we, you,
    i, his, her, their, our, your, my, all, both, each, every, everyone, everybody, some, most, no, not, nobody, do,
    don't, don’t, at, in, on, for, from, after, before, during, by, until, and, but, also, only, then, first, once,
    any, have, make, let, be, keep, give, ask, remind, watch, send, seat, sit, pair, tell, help, check, call, today,
    tomorrow, el, la, los, las, un, una, unos, unas, si, cuando, porque, por, para, en, con, de, del, desde, hasta,
    despues, antes, durante, hay, este, esta, estos, estas, ellos, ellas, todos, todas, cada, tambien, solo, pero,
    y, se, su, sus, nuestro, nuestra, cualquier, hoy, manana, recuerde, recuerden, le, les, une, des, quand,
    lorsque, parce, ne, pas, pour, au, aux, avec, du, apres, avant, pendant, il, elle, ils, elles, nous, vous, ce,
    cet, cette, ces, tous, toutes, chaque, aussi, mais, et, veuillez, aujourd'hui, aujourd’hui, demain, der, die,
    das, ein, eine, einer, wenn, falls, weil, bei, beim, bitte, nicht, kein, keine, im, am, um, auf, fur, von, vom,
    nach, vor, wahrend, mit, ohne, es, er, sie, wir, ihr, alle, jeder, jede, jedes, auch, nur, aber, und, dann,
    danach, hier, dort, heute, morgen, lo, gli, uno, quando, perche, non, per, al, alla, di, da, dal, dalla, dopo,
    prima, ci, c'e, c’e, questo, questa, questi, queste, tutti, tutte, ogni, anche, ma, e, qualsiasi, oggi, domani,
    in, nel, nella, nello, o, os, as, uma, nao, em, na, nos, nas, ao, com, depois, ha, estes, tambem, mas, qualquer,
    hoje, amanha, lembre, diesen, diese, dieser, dieses, diesem, merci, gracias, grazie, danke, obrigada""")
"""Words that open a sentence and are no child there, a name though some may be: small words, and what is asked."""

JOBS = word_set("""
    leader, holder, helper, helpers, caboose, calendar, lights, library, librarian, weather, plants, ventana, fenetre,
    messenger, snacks, recess, duty, job, off, lider, fila, puerta, plantas, calendario, luces, biblioteca, tiempo,
    mensajero, mensajera, ayudante, encargado, encargada, descanso, descansan, rang, porte, plantes, arrosage,
    calendrier, lumieres, lumiere, bibliotheque, meteo, messager, facteur, responsable, repos, reihe, tur, blumen,
    kalender, licht, bucherei, wetter, bote, tafel, frei, pause, capofila, porta, piante, luci, tempo, messaggero,
    aiutante, incaricato, riposo, luzes, luz, mensageiro, ajudante, folga, planta, janela, finestra, attendance""")
"""What children do for their class, in labels before their names: ``Line leader``, ``Luces``."""
JOB_ENDINGS = ("dienst", "helfer", "helferin", "wart", "leader")

MANY_ADULTS = word_set("""
    staff, adults, teachers, aides, helpers, volunteers, chaperones, grown-ups, grownups, personal, adultos, docentes,
    maestras, maestros, profesores, profesoras, voluntarios, voluntarias, acompanantes, adultes, personnel,
    enseignants, enseignantes, educateurs, accompagnateurs, benevoles, encadrants, erwachsene, lehrerinnen,
    lehrkrafte, erzieherinnen, betreuer, begleitpersonen, freiwillige, adulti, personale, insegnanti, maestre,
    educatrici, accompagnatori, volontari, pessoal, professores, professoras, educadoras, auxiliares, acompanhantes,
    equipe educative, equipo docente, substitutes, suplentes, vertretungen, remplacants, supplenti, emergency contacts,
    emergency numbers, contactos de emergencia, telefonos de emergencia, numeros de emergencia, contacts d'urgence,
    numeros d'urgence, notfallkontakte, notfallnummern, notrufnummern, contatti di emergenza, numeri di emergenza,
    contatos de emergencia""")
"""Words for several adults beside a class; alone, before a sign or over names."""
