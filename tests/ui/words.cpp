#include "ui/words/local_dates.h"
#include "ui/words/number_ranges.h"
#include "ui/words/taxon_text.h"
#include "ui/words/wording.h"

#include <catch2/catch.hpp>

#include <QDate>

using namespace warmbench;
using namespace warmbench::literals;
using namespace warmbench::ui;

TEST_CASE("Botanical names are italic, the cross and ranks and cultivars upright") {
    CHECK(taxonHtml("Abelia × grandiflora") == QStringLiteral("<i>Abelia </i>× <i>grandiflora</i>"));
    CHECK(taxonHtml("Ceanothus 'Concha'") == QStringLiteral("<i>Ceanothus </i>‘Concha’"));
    CHECK(taxonHtml("Viburnum tinus 'Eve Price'") == QStringLiteral("<i>Viburnum tinus </i>‘Eve Price’"));
    CHECK(taxonHtml("Hebe salicifolia var. egmontiana") ==
          QStringLiteral("<i>Hebe salicifolia </i>var. <i>egmontiana</i>"));
    CHECK(taxonHtml("Rosa <b>") == QStringLiteral("<i>Rosa &lt;b&gt;</i>"));
    CHECK(taxonHtml("").isEmpty());
}

TEST_CASE("Temperatures follow the unit chosen and show a decimal only where there is one") {
    const QLocale british(QLocale::English, QLocale::UnitedKingdom);
    CHECK(Wording(british).temperature(18_degC) == QStringLiteral("18\u00A0°C"));
    CHECK(Wording(british).temperature(17.5_degC) == QStringLiteral("17.5\u00A0°C"));
    CHECK(Wording(QLocale(QLocale::German)).temperature(17.5_degC) == QStringLiteral("17,5\u00A0°C"));
    CHECK(Wording(british, true).temperature(20_degC) == QStringLiteral("68\u00A0°F"));
}

TEST_CASE("Lengths are told to the millimetre where they have one, and no longer than they need") {
    const Wording british(QLocale(QLocale::English, QLocale::UnitedKingdom));
    CHECK(british.metres(Millimetres{12'000}) == QStringLiteral("12.0"));
    CHECK(british.metres(Millimetres{350}) == QStringLiteral("0.35"));
    CHECK(british.metres(Millimetres{2'996}) == QStringLiteral("2.996"));
    CHECK(Wording(QLocale(QLocale::German)).metres(Millimetres{1'040}) == QStringLiteral("1,04"));
}

TEST_CASE("Dates are in the words and order of the locale") {
    const Day day = *Day::make(2027, 2, 4);
    CHECK(Wording(QLocale(QLocale::English, QLocale::UnitedKingdom)).longDate(day) ==
          QStringLiteral("Thursday 4 February 2027"));
    CHECK(Wording(QLocale(QLocale::English, QLocale::UnitedStates)).shortDate(day) ==
          QStringLiteral("Feb 4"));
    CHECK(Wording(QLocale(QLocale::English, QLocale::UnitedKingdom)).shortDate(day) ==
          QStringLiteral("4 Feb"));
    CHECK(Wording(QLocale(QLocale::German, QLocale::Germany)).shortDate(day) == QStringLiteral("4. Feb"));
    CHECK(dayOf(qDate(day)) == day);
}

TEST_CASE("Days in a text of the program's own are written as the locale does, and nothing else is touched") {
    const QLocale british(QLocale::English, QLocale::UnitedKingdom);
    const QLocale american(QLocale::English, QLocale::UnitedStates);
    const QLocale german(QLocale::German, QLocale::Germany);
    const QString words =
        QStringLiteral("27-048-A is taken from 2027-03-02 to 2027-12-31; 2027-13-01 is no day");
    CHECK(withLocalDates(words, british).toStdString() ==
          "27-048-A is taken from 2 Mar 2027 to 31 Dec 2027; 2027-13-01 is no day");
    CHECK(withLocalDates(words, american).contains(QStringLiteral("from Mar 2, 2027 to Dec 31, 2027;")));
    CHECK(withLocalDates(words, german).contains(QStringLiteral("31. Dez 2027")));
    CHECK(withLocalDates(QString(), british).isEmpty());
    CHECK(withLocalDates(QStringLiteral("72027-03-02"), british) == QStringLiteral("72027-03-02"));
}

TEST_CASE("Numbers are told as ranges") {
    const Wording wording(QLocale(QLocale::English, QLocale::UnitedKingdom));
    CHECK(numberRanges({}, wording).isEmpty());
    CHECK(numberRanges({7, 2, 1, 3}, wording) == QStringLiteral("1 to 3, 7"));
    CHECK(numberRanges({5}, wording) == QStringLiteral("5"));
}
