"""The words that titles of columns are known by, in the six languages of the pages. Data only.

Common practice, written down by hand; a title that is missing is judged by what stands below it. Folded: small letters,
no accents, single spaces.
"""

from __future__ import annotations

from namewright.roster.further_titles import FURTHER_TITLES
from namewright.roster.vocabulary import Role, fold, word_set

_ROLE_WORDS = {
    Role.FULL: """
        name, names, full name, full names, student, students, student name, student names, child, children, child
        name, child's name, name of student, pupil, pupils, learner, learners, nombre completo, alumno, alumna,
        alumnos, alumnas, alumno/a, alumnos/as, estudiante, estudiantes, estudante, estudantes, studente, studenti,
        studentessa, nino/a, nina/o, ninos, ninas, ninos/as, nom, nome, nombre y apellido, nombre y apellidos, nombres y
        apellidos, apellidos y nombre, apellidos y nombres, last name first name, first and last name, name of child,
        roster, camper, campers, kid, kids, scholar, nombre del nino, eleve, eleves, enfant, enfants, nom complet, nom
        et prenom, nom et prenoms, nom prenom, prenom et nom, prenom nom, kind, kinder, schuler, schulerin, schuler/in,
        schuler/innen, schuler:in, schuler*in, schulerinnen, schulerinnen und schuler, name vorname, vorname name, name
        und vorname, vor- und nachname, vorname und nachname, vorname nachname, nachname vorname, name des kindes,
        alunno, alunna, alunni, alunne, alunno/a, bambino, bambina, bambini, bambino/a, nome e cognome, cognome e nome,
        nominativo, nome completo, aluno, aluna, alunos, alunas, aluno/a, alunos/as, crianca, criancas, nome do aluno,
        nome da crianca, nome e apelido, nome e sobrenome, kiddo, kiddos, participant, participants, participante,
        participantes, teilnehmer, teilnehmerin, teilnehmende, lernende, partecipante, partecipanti, iscritto, iscritti,
        inscrito, inscritos, inscrit, inscrits, educando, educanda, educandos, peque, peques, kindname, kindsname,
        kindername, schulername, hijo, hija, hijo/a, hijos, figlio, figlia, figli, filho, filha, filho/a, vor- und
        zuname, zu- und vorname, ruf- und nachname, nach- und vorname, familien- und vorname, nachname und vorname,
        mom of, mum of, mother of, dad of, parent of, parents of, mama de, papa de, madre de, maman de, mere de, parents
        de, mama von, mutter von, eltern von, mamma di, papa di, mamme di, genitori di, mae de, pai de, pais de,
        familienname und vorname, apellido y nombre, apellido y nombres, nombres y apellido, nome e apelidos, nomes e
        apelidos, apelido e nome, sobrenome e nome, nome e cognomi""",
    Role.GIVEN: """
        first name, first names, firstname, first, fname, given name, given names, given, forename, forenames,
        student first name, nombre, nombres, primer nombre, nombre de pila, prenom, prenoms, prenom(s), premier
        prenom, vorname, vornamen, vorname(n), erster vorname, nome, nomi, nome di battesimo, primeiro nome, nome
        proprio, nomes proprios, voornaam, fn, f name, vn, vorn, pren, nombre pila, rufname und vorname""",
    Role.MIDDLE: """
        middle name, middle names, middle, middle initial, mi, m.i, second name, segundo nombre, otros nombres""",
    Role.FAMILY: """
        last name, last names, lastname, last, lname, family name, family names, family, surname, surnames, student
        last name, apellido, apellidos, primer apellido, segundo apellido, apellido paterno, apellido materno,
        apellido(s), nom de famille, nom usuel, nom de naissance, nom d'usage, noms, nachname, nachnamen, familienname,
        zuname, cognome, cognomi, sobrenome, sobrenomes, apelido, apelidos, ultimo nome, nome de familia, achternaam,
        tussenvoegsel, ln, l name, nn, nachn, nom famille, nome familia, family surname, familie, familia, famille,
        famiglia""",
    Role.GOES_BY: """
        goes by, nickname, nick name, preferred name, preferred, preferred first name, known as, called, usual name,
        apodo, sobrenombre, nombre preferido, le dicen, se le llama, conocido como, rufname, spitzname, kosename,
        genannt, gerufen, gebrauchsname,
        prenom usuel, prenom d'usage, surnom, soprannome, detto, detta, diminutivo, alcunha, apelido
        carinhoso, nome social, preferred forename, preferred given name, como e chamado, como e chamada, chosen name,
        name used,
        used name, everyday name, nombre usual, nombre de uso, nome abituale, nome usual, le decimos, le llamamos,
        se le dice, prenom prefere, on l'appelle, wird genannt, wird gerufen, si fa chiamare,
        answers to, name we use, responde a, repond a, hort auf, risponde a, atende por,
        viene chiamato, viene chiamata, nome preferito, nome preferido, e chamado de, e chamada de, chamado de,
        chamada de""",
    Role.PRACTISE: """
        practise, practice, practise name, practice name, name to practise, name to practice, name to write,
        practicar, nombre a practicar, nombre para practicar, practica, prenom a ecrire, ubungsname, nome da scrivere,
        nome para praticar""",
    Role.SUPPORT: """
        support, supports, support level, level of support, apoyo, apoyos, nivel de apoyo, soutien, niveau d'aide,
        unterstutzung, hilfe, hilfestufe, sostegno, livello di aiuto, apoio, nivel de apoio""",
    Role.HAND: """
        hand, writing hand, handedness, handed, dominant hand, l/r, r/l, left/right, right/left, left or right,
        right or left, left or right handed, right or left handed, mano, mano dominante, lateralidad, main, main
        dominante, lateralite, handigkeit, schreibhand, mano di scrittura, lateralita, mao, mao dominante,
        lateralidade""",
    Role.LINE_HEIGHT: """
        line height, line size, row height, lines, ruling, altura, altura de linea, alto de linea, altura del
        renglon, renglon, altura de renglon, hauteur de ligne, hauteur des lignes, zeilenhohe, linienhohe, altezza
        della riga, altura da linha""",
    Role.LETTERS: """
        letters, letter forms, letterforms, letras, formas de las letras, lettres, buchstaben, lettere""",
    Role.BEATS: """
        beats, syllables, claps, silabas, palmadas, syllabes, silben, sillabe""",
    Role.LANGUAGE: """
        language, home language, primary language, first language, native language, mother tongue, name language,
        language of the name, language of name, idioma, lengua, lengua materna, idioma del nombre, langue, langue
        maternelle, langue du prenom, langue du nom, sprache, muttersprache, herkunftssprache, familiensprache,
        erstsprache, home languages, language at home, language spoken at home, langue a la maison, langue parlee a la
        maison, sprache zu hause, sprachen zu hause, lengua en casa, idioma en casa, lengua de casa, lingua a casa,
        lingua parlata a casa, lingua em casa, lingua falada em casa, idioma em casa, sprache des namens, lingua,
        lingua madre, lingua materna, lingua del nome, idioma do nome""",
    Role.OTHER: """
        color, colour, favorite color, favourite colour, couleur, farbe, lieblingsfarbe, colore, animal, animale,
        lieblingstier, food, comida, cibo,
        id, student id, student number, number, no, num, nr, #, n.o, n.º, nº, n°, email, e-mail, email address,
        phone, phone number, telephone, mobile, cell, birthday, birth date, birthdate, date of birth, dob, d.o.b,
        date, age, grade, grade level, class, room, homeroom, teacher, section, period, group, table, gender, sex,
        pronouns, notes, note, comments, comment, parent, parents, guardian, parent name, address, allergies, bus,
        iep, ell, level, status, title, suffix, seat, correo, correo electronico, telefono, fecha de nacimiento,
        nacimiento, cumpleanos, fecha, edad, grado, clase, grupo, aula, salon, seccion, maestra, maestro, profesora,
        profesor, sexo, genero, notas, observaciones, matricula, numero, direccion, tutor, madre, padre, alergias,
        curp, rut, dni, date de naissance, ne(e) le, ne le, nee le, classe, sexe, adresse, responsable, responsable
        legal, remarque, remarques, observations, niveau, genre, geburtsdatum, geburtstag, geburtsort, geschlecht,
        klasse, gruppe, telefon, bemerkung, bemerkungen, notizen, alter, erziehungsberechtigte,
        erziehungsberechtigter, eltern, allergien, konfession, staatsangehorigkeit, lfd. nr, data di nascita, luogo
        di nascita, sesso, sezione, indirizzo, osservazioni, allergie, eta, genitore, genitori, codice fiscale, data
        de nascimento, nascimento, turma, sala, morada, endereco, telemovel, observacoes, encarregado de educacao,
        responsavel, idade, n.o de aluno, marca temporal, horodateur, zeitstempel, informazioni cronologiche,
        carimbo de data/hora, timestamp, bunk, cabin, snack, advisor, attendance, lunch, reading level, curso, comedor,
        f. nac, fecha nac, asistencia, domicilio, courriel, groupe, cantine, identifiant, fratrie,
        maitresse, mittagessen, geb. am, geburtstag am, anwesend, anwesenheit, scuolabus, gruppo, mensa,
        presenza, nato il, nato/a il, telefone, autocarro, almoco, presenca, nasc, username, user name, user, login,
        password, passcode, pin, usuario, nombre de usuario, contrasena, clave, nom d'utilisateur, utilisateur, mot de
        passe, benutzername, benutzer, passwort, kennwort, nome utente, utente, parola chiave, nome de utilizador,
        utilizador, nome de usuario, senha, palavra-passe,
        custody, legal custody, custodia, guardia y custodia, patria potestad, tutela, guarda, poder parental, garde,
        garde de l'enfant, autorite parentale, sorgerecht, obhut, affidamento, affido,
        geb.datum, geb. datum, geb.-datum, geb-datum, geburtsdat, data nasc, data de nasc, d. nasc, dt. nasc, d. nac""",
}

GOES_BY_WORDS = ("goes by", "be called", "known as", "nickname", "apodo", "le dicen", "preferred name")
"""A longer header that holds one of these names the column of what a child goes by."""

CALLED_QUESTIONS = ("should we call", "como llamamos", "como le decimos", "comment appeler", "comment devons-nous",
                    "wie sollen wir", "wie nennen", "come chiamare", "como devemos chamar", "como chamar")
"""Questions of a form for what a child goes by, even where they name the school."""

ASKING = word_set("what, how, como, comment, come, wie, quel, que, welchen, qual, quale, cual, by")
BE_CALLED = word_set("""
    llamemos, llamen, llamarle, llamarla, digamos, decirle, appelions, appeler, l'appelle, l'appelions, appele, appelee,
    chiamiamo, chiamare, chiamarlo, chiamarla, chiamato, chiamata, chamemos, chamar, chamado, chamada, trata-lo,
    genannt, gerufen, rufen, nennen, called, call, known""")
"""A question of a form that opens with one of the first and has one of the second asks what a child goes by."""

IN_USE = word_set("""
    preferred, chosen, used, usual, everyday, usuel, d'usage, usage, utilise, choisi, courant, prefere, uso, d'uso,
    usado, utilizado, preferido, elegido, habitual, social, sociale, preferito, usato, scelto, abituale, d'elezione,
    elezione,
    elettivo, escolhido, bevorzugter, bevorzugt, gewunschter, gewahlter, verwendeter, benutzter, gebrauchlicher, usa,
    using, uses, utilisee, usata, usada, benutzt, verwendet, gebraucht""")
GIVEN_WORDS = word_set("name, forename, nombre, prenom, vorname, nome, firstname")
"""A title with one of each, and nothing else, is over what a child goes by: ``Nome d'elezione``."""
IN_CLASS = word_set("""
    at, in, school, class, classroom, daily, que, en, a, clase, escuela, aula, classe, l'ecole, ecole, au, quotidien,
    schule, klasse, der, nella, scuola, na, escola, turma, sala, dia""")
"""Words that may stand beside those two: ``Name used at school``."""
WITHIN = word_set("at, in, en, a, au, im, nella, nel, na, no, em")
WHERE_CALLED = word_set("""
    school, class, classroom, clase, escuela, cole, aula, classe, ecole, l'ecole, schule, klasse, unterricht, kita,
    scuola, escola, turma, sala""")
"""Where a name is used: ``Name in der Schule``; ``Nom de l’école`` is that of the school."""

LANGUAGE_WORDS = word_set("""
    language, languages, idioma, idiomas, lengua, lenguas, langue, langues, lingua, lingue, linguas""")
"""A longer title with one of these is over the language of a child: ``Home language``, ``Língua em casa``."""

REACHED = word_set("""
    phone, telephone, phone number, email, e-mail, mail, telefon, telefonnummer, telefono, correo, telephone, courriel,
    cellulare, telefone, telemovel, portable""")
"""Titles over how somebody is reached: words that stand in no row of a child."""

HAND_WORDS = word_set("hand, mano, main, mao")
WRITING_WORDS = word_set("""
    write, writes, writing, escribe, escribir, escritura, ecrit, ecrire, ecriture, d'ecriture, schreibt, schreiben,
    scrive, scrivere, scrittura, escreve, escrever, escrita, dominant, dominante, preferred""")
"""A title with one of the first and one of the second is over the hand that a child writes with."""

CHILD_WORDS = word_set("""
    student, student's, students, child, child's, childs, children's, pupil, pupil's, learner, learner's, camper,
    camper's, kid, kid's, alumno, alumna, alumno/a, estudiante, estudante, studente, nino, nina, nino/a, hijo, hija,
    hijo/a, eleve, l'eleve, enfant, l'enfant, kindes, kind, schulers, schulerin, schuler, schuler/in, alunno, alunna,
    dell'alunno, dell'alunna, bambino, bambina, figlio, figlia, aluno, aluna, crianca, filho, filha, kiddo, kiddo's,
    kiddos, son's, daughter's, participant, participant's, participante, teilnehmer, teilnehmers, teilnehmerin,
    lernende, lernenden, lernender, partecipante, iscritto, iscritta, inscrit, inscrite, inscrito, inscrita, educando,
    educanda, scholar, scholar's, bimbo, bimba, peque, menor""")
"""Words that say a column is about the child, where another is about somebody else."""

ABOUT_THE_CHILD = CHILD_WORDS | word_set("""
    legal, del, de, la, el, du, votre, des, der, ihres, ihr, tuo, suo, il, di, do, da, o, seu, sua, what, is,
    the, your, of, my, please, enter, cual, es, su, quel, est, le, wie, ist, lautet, qual, e, or, ou, oder, al,
    alu, alum, stu, stud, elv, sch, schul, son, sa, vos, leur, ton, ta, what's, whats, vostro, vostra, suoi,
    dello, della, seus, suas, legale, legaux, officiel, officiels, oficial, oficiales, amtlich, amtlicher, amtliche,
    offiziell, offizieller, offizielle, ufficiale, civil, civile, anagrafico, registro, registered, official, passport,
    l'etat, etat, d'etat, standesamtlicher, ausweis, laut, im, pass, reisepass, legales, legali, legais, legaler,
    oficiais, ufficiali, officielle, officielles, amtliches, amtlichen, registral, registrado, registrada, anagrafica,
    anagrafe, all'anagrafe, dall'anagrafe, dell'anagrafe, naissance, pasaporte, passeport, passaporto, dni, documento,
    certidao, atto, acta, acte, papers""")
"""Words that a header may carry besides what the column holds: ``Child's legal first name``."""

ORDINALS = {word: number for number, words in enumerate((
    "first, erstes, ersten, premier, premiere, primer, primera, primo, prima, primeiro, primeira",
    "second, zweites, zweiten, deuxieme, seconde, segundo, segunda, secondo, seconda",
    "third, drittes, dritten, troisieme, tercer, tercera, terzo, terza, terceiro, terceira",
    "fourth, viertes, vierten, quatrieme, cuarto, cuarta, quarto, quarta"), 1) for word in word_set(words)}
"""Which child of a family a title is about, right before the word for a child."""

YOURS = word_set("your, my, votre, ihr, su, suo, tuo, seu, vostro, vuestro, tu, ton")
"""Words by which a form asks who fills it in, where another column is said to be the child's: ``Your name``."""

CHILD_CALLED = word_set("""
    como se llama, comment s'appelle, wie heisst, come si chiama, como se chama""")
"""Questions of a form that ask for the child's whole name."""

NOT_NAMES = word_set("""
    date, birth, birthday, dob, phone, email, e-mail, mail, address, number, id, grade, gender, sex, age, allergy,
    allergies, medical, notes, comments, language, fecha, nacimiento, telefono, correo, direccion, edad, grado,
    notas, bus""")
"""A longer header that holds one of these is of a column that is left out."""

_SAYS_NAME = word_set("""
    name, names, firstname, lastname, fname, lname, surname, forename, nombre, nombres, apellido, apellidos,
    student, students, vorname, vornamen, nachname, familienname, zuname, prenom, prenoms, cognome, sobrenome,
    apelido, apelidos, kind, kinder, schuler, schulerin, eleve, eleves, enfant, enfants, alunno, alunni, aluno,
    alunos, camper, campers, child, children, bambino, bambina, bambini, alumno, alumna, alumnos, alumnas,
    estudiante, voornaam, achternaam, pupil, pupils, learner, learners, nino/a, nina/o, ninos, alunna, crianca,
    criancas, kiddo, kiddos, participant, participants, participante, participantes, teilnehmer, teilnehmerin,
    teilnehmende, partecipante, partecipanti, educando, educanda, kindname, kindsname, kindername, schulername,
    nominativo, nominativi, naam, leerling, leerlingen, roepnaam, namn, navn, fornavn, etternavn""")
SAYS_NAME = _SAYS_NAME | {fold(word) for role in (Role.FULL, Role.GIVEN, Role.FAMILY)
                          for word in FURTHER_TITLES[role] if not word.isascii()}
"""A header cell with one of these makes a header row by itself: no child is called so."""

MAYBE_WHOLE = frozenset(map(fold, word_set(
    "nombre, nombres, nome, nomes, nomi, имя, ім'я, име, jméno, meno, όνομα, ime, adı")))
"""Headers of a given name that stand over whole names where no column has family names."""

NAME_OR_FAMILY = frozenset(("nom", "name"))
"""What titles of whole names open with that stand over family names, too, in French and German."""

SIDES = word_set("""
    boys, girls, ninos, ninas, chicos, chicas, varones, mujeres, garcons, filles, jungen, madchen, jungs, madels, buben,
    maschi, femmine, maschietti, femminucce, bambini, bambine, meninos, meninas, rapazes, raparigas""")
"""Titles of columns of children, one beside the other."""

SOMEBODY_ELSE = word_set("""
    account holder, payer, payer name, paid by, registered by, picked up by, pickup, pick-up, pick up, authorized
    pickup, authorised pickup, adult, adults, kontakt, abholberechtigt, abholung, abholer, abgeholt von, wird
    abgeholt von, personne a prevenir, personne a contacter, personne autorisee, personnes autorisees, qui vient
    chercher, vient le chercher, vient la chercher, representant legal, chi ritira, chi lo prende, chi la prende, lo
    prende, la prende, delegati, persona delegata, persone delegate, quien recoge, lo recoge, la recoge, quien lo
    recoge, quien la recoge, persona autorizada, personas autorizadas, autorizado a recoger, representante legal,
    pessoa autorizada, pessoas autorizadas, quem busca, autorizado a recolher, autorizados a recolher, relationship,
    relation, parentesco, parentela, grau de parentesco, lien, lien de parente, beziehung, buddy, reading buddy,
    partner, staff, role, rolle, ruolo, rol, papel, funktion, fonction, cargo, brought by, dropped off by, collected by,
    signed in by, signed out by, gebracht von, geholt von, ubergeben an, amene par, amenee par, depose par, repris par,
    reprise par, recupere par, lo trae, la trae, traido por, entregado a, recogido por, accompagnato da, accompagnata
    da, portato da, portata da, ritirato da, ritirata da, entregue por, entregue a, trazido por, trazida por, recolhido
    por, recolhida por""")
"""Titles over names of grown-ups and of other children, besides those with a word of `OTHER_PEOPLE`."""

HEADER_WORDS = {
    **{fold(word): role for role, words in FURTHER_TITLES.items() for word in words},
    **{word: role for role, words in _ROLE_WORDS.items() for word in word_set(words)},
    **dict.fromkeys(SOMEBODY_ELSE, Role.OTHER),
}
"""Folded header text to what the column holds."""

SOLO_HEADERS = word_set("""
    name, names, full name, first name, first names, given name, given names, last name, student, students, student
    name, student names, pupils, children, learners, class list, roster, nombre, nombres, nombre completo, alumnos,
    alumnas, estudiantes, lista, lista de alumnos, eleves, liste des eleves, enfants, noms, prenoms, kinder, namen,
    namensliste, klassenliste, schulerinnen und schuler, schuler, alunni, elenco alunni, elenco, bambini, nomi,
    alunos, lista de alunos, criancas, nomes, prenom nom, nom prenom, vorname nachname, name vorname, nome cognome,
    cognome nome, nome sobrenome, nombre apellido, nombre apellidos, apellidos nombre, nome apelido, apelido nome,
    nachname vorname, family name given name, given name family name, last first, vorname, vornamen, prenom, nome,
    campers, last name first name, ninos, nombre y apellido, nombre y apellidos, apellidos y nombre, apellidos y
    nombres, nombres y apellidos, first last, first name last name, first and last name, name list, my class""")
"""A whole line that says what the lines below it are."""
