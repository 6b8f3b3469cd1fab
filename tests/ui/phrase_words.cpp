#include "ui/words/phrase_words.h"

#include "core/book/command.h"
#include "core/exchange/file/file.h"
#include "tests/support/small_nursery.h"
#include "tests/ui/german.h"
#include "ui/words/kept_words.h"

#include <catch2/catch.hpp>

using namespace warmbench;
using namespace warmbench::tests;
using namespace warmbench::ui;
using namespace warmbench::literals;

namespace {

const Day fourthOfFebruary = *Day::make(2027, 2, 4);

Wording british() {
    return Wording(QLocale(QLocale::English, QLocale::UnitedKingdom));
}

std::string said(const QString& words) {
    return words.toStdString();
}

} // namespace

TEST_CASE("A phrase is told with days, numbers and temperatures as the locale writes them") {
    const Phrase phrase{"%1 stood there since %2 at %3, %4 of it",
                        {std::string("A"), fourthOfFebruary, 18.5_degC, std::int64_t{1200}}};
    CHECK(said(told(phrase, british())) == "A stood there since 4 Feb 2027 at 18.5\u00A0°C, 1,200 of it");
    const Wording fahrenheit(QLocale(QLocale::English, QLocale::UnitedStates), true);
    CHECK(said(told(phrase, fahrenheit)) == "A stood there since Feb 4, 2027 at 65.3\u00A0°F, 1,200 of it");
    CHECK(told(Phrase(), british()).isEmpty());
}

TEST_CASE("A phrase is told in the language that is set, with the phrases in it") {
    const InGerman german;
    CHECK(said(told(phrase("not looked at for %1 days", 1200))) == "seit 1.200 Tagen nicht angesehen");
    CHECK(said(told(
              phrase("stock is short by %1 %2 cuttings by %3", 12, Phrase("semi-ripe"), fourthOfFebruary))) ==
          "den Mutterpflanzen fehlen bis 4. Feb 2027 12 Stecklinge (halbreif)");
    CHECK(said(told(Refusal{"zone", phrase("it needs a name")})) == "Zone: braucht einen Namen");
    CHECK(said(told(Refusal{"27-048-A/07", phrase("it would be in two places on %1", fourthOfFebruary)})) ==
          "27-048-A/07: stünde am 4. Feb 2027 an zwei Orten");
}

TEST_CASE("Words kept in English are told by their pattern, others as they are") {
    const InGerman german;
    CHECK(said(told("Strike 24 cuttings of Abelia × grandiflora")) ==
          "24 Stecklinge von Abelia × grandiflora stecken");
    CHECK(said(told("Undo: Add zone A")) == "Rückgängig: Zone A hinzufügen");
    CHECK(said(told("Redo: Move 27-048-A to Bench 1 · B from 2027-02-04 on, and set its mat")) ==
          "Wiederholt: 27-048-A ab 4. Feb 2027 nach Bench 1 · B umstellen und Heizmatte stellen");
    CHECK(said(told("Mend a root check of 27-011-A/03")) == "Wurzelkontrolle von 27-011-A/03 berichtigen");
    CHECK(said(told("Bring home the round in laptop.warmbench")) ==
          "Rundgang in laptop.warmbench heimbringen");
    CHECK(said(told("Enter the round of 2027-02-04")) == "Den Rundgang vom 4. Feb 2027 eintragen");
    CHECK(said(told("Make the book")) == "Das Buch anlegen");
    CHECK(said(told("Kennt niemand, 2027-02-04")) == "Kennt niemand, 4. Feb 2027");
}

TEST_CASE("What is read back says the same in English") {
    HouseBook book = smallNursery();
    std::vector<Command> commands;
    for (const auto& [id, zone] : book.all<Zone>()) {
        commands.push_back({Put<Zone>{zone}});
        commands.push_back({Remove<Zone>{id}});
        commands.push_back({SetMatRuns{id, fourthOfFebruary, fourthOfFebruary + 1, {}}});
        commands.push_back({ClearAway{fourthOfFebruary, id}});
    }
    for (const auto& [id, batch] : book.all<Batch>()) {
        commands.push_back({StrikeBatch{id, fourthOfFebruary}});
        commands.push_back({RemoveBatch{id}});
        commands.push_back({PlanBatch{id, fourthOfFebruary, {}}});
        commands.push_back({Discard{id, fourthOfFebruary, {}, "rot"}});
    }
    for (const auto& [id, stay] : book.all<Stay>())
        commands.push_back({MoveStay{id, stay.zone, stay.from + 1, stay.to, {}}});
    for (const Command& command : commands) {
        const std::string kept = words(book, command).text();
        INFO(kept);
        const Phrase read = readKeptWords(kept);
        CHECK(read.text() == kept);
        CHECK_FALSE(read.arguments().empty());
    }
}

TEST_CASE("What a file or a logger's line refuses is told in German, kept in English or not") {
    const InGerman german;
    const Wording wording(QLocale(QLocale::German, QLocale::Germany));
    const auto missing = exchange::readFile("nowhere.csv", 10);
    REQUIRE_FALSE(missing);
    CHECK(said(told(missing.refusal(), wording)).starts_with("nowhere.csv: lässt sich nicht öffnen: "));
    CHECK(said(told(std::string("line 8: found 'error', expected a temperature"), wording)) ==
          "Zeile 8: „error“ gefunden, erwartet eine Temperatur");
    CHECK(said(told(phrase("the file is damaged: %1",
                           phrase("%1: %2", "27-046-A", phrase("it was weaned on %1", fourthOfFebruary))),
                    wording))
              .starts_with("die Datei ist beschädigt: 27-046-A: wurde am 4. Feb"));
    CHECK(said(told(std::string("Plan 1 cutting of Abelia"), wording)) == "1 Steckling von Abelia planen");
}

TEST_CASE("Days of a plan that count from its first are told as dates, the first day too") {
    const auto told = [](const char* words) {
        return withDates(readKeptWords(words), fourthOfFebruary).text();
    };
    const std::string first = fourthOfFebruary.iso();
    CHECK(
        told(
            "there is no room for its 2 containers: it would take 1 more mist slot in A / B on days 0 to 27, "
            "and for a later stay 3 more open slots in C on day 60") ==
        "there is no room for its 2 containers: it would take 1 more mist slot in A / B on " + first +
            " to " + (fourthOfFebruary + 27).iso() + ", and for a later stay 3 more open slots in C on " +
            (fourthOfFebruary + 60).iso());
    CHECK(told("each of 3 batches: hands are short by 4 cuttings on day 0, when they lack least") ==
          "each of 3 batches: hands are short by 4 cuttings on " + first + ", when they lack least");
}
