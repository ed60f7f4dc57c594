"""Titles of columns in further languages, for a list from a family's country or another school. Data only.

The common words over names there and over what stands beside them, from memory; a title that is missing is judged by
what stands below it.
"""

from __future__ import annotations

from namewright.roster.vocabulary import Role, word_set

FURTHER_TITLES = {
    Role.FULL: word_set("""
        naam, volledige naam, leerling, leerlingen, imię i nazwisko, nazwisko i imię, uczeń, uczniowie, фио, ф.и.о,
        имя и фамилия, фамилия и имя, фамилия имя, имя фамилия, ученик, ученики, піб, п.і.б, прізвище та ім'я,
        прізвище та ім’я, учень, ad soyad, adı soyadı, öğrenci, nume, nume și prenume, numele și prenumele, tanuló,
        gyermek, gyermek neve, név, jméno a příjmení, příjmení a jméno, žák, meno a priezvisko, žiak, namn, navn,
        fulde navn, fullt navn, nimi, oppilas, ονοματεπώνυμο, μαθητής, ime i prezime, prezime i ime, učenik,
        ime in priimek, učenec, име и фамилия, име и презиме, الاسم, الاسم الكامل, اسم الطالب, اسم الطفل, שם, שם מלא,
        שם התלמיד, שם הילד, 姓名, 学生姓名, 學生姓名, 氏名, 名前, お名前, 児童名, 이름, 성명, 학생 이름, 학생,
        họ và tên, họ tên, tên học sinh, emri dhe mbiemri, emri mbiemri, nome completo"""),
    Role.GIVEN: word_set("""
        imię, имя, имя ребёнка, ім'я, ім’я, име, adı, prenume, keresztnév, utónév, jméno, křestní jméno, meno, förnamn,
        fornavn, etunimi, όνομα, ime, الاسم الأول, שם פרטי, 名, emri"""),
    Role.GOES_BY: word_set("roepnaam, tilltalsnamn, kaldenavn, kutsumanimi"),
    Role.FAMILY: word_set("""
        familienaam, nazwisko, фамилия, прізвище, soyad, soyadı, nume de familie, családnév, vezetéknév, příjmení,
        priezvisko, efternamn, efternavn, etternavn, sukunimi, επώνυμο, prezime, priimek, презиме, العائلة, اسم العائلة,
        الكنية, שם משפחה, 姓, 姓氏, mbiemri"""),
    Role.OTHER: word_set("""
        groep, klas, geboortedatum, telefoon, klasa, data urodzenia, класс, клас, дата рождения, дата народження, sınıf,
        sınıfı, clasa, osztály, třída, trieda, klass, luokka, razred, τάξη, الصف, כיתה, 班级, 班級, 班, クラス, 組,
        ふりがな, フリガナ, 반, 학년, lớp, ngày sinh, data e lindjes"""),
}
"""As they are written; whoever looks a title up folds them as the title."""
