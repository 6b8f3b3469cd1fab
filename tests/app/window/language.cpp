#include "app/window/one_window.h"
#include "tests/app/storage/book_folder.h"
#include "tests/ui/window.h"

#include <catch2/catch.hpp>

#include <QApplication>
#include <QDialogButtonBox>
#include <QMenuBar>
#include <QPushButton>
#include <QSettings>

using namespace warmbench;
using namespace warmbench::tests;
using namespace warmbench::ui;

namespace {

QStringList menus(const MainWindow& window) {
    QStringList names;
    for (const QAction* action : window.menuBar()->actions()) names += action->text();
    return names;
}

void choose(const MainWindow& window, const char* name) {
    auto* action = window.findChild<QAction*>(QLatin1String(name));
    REQUIRE(action);
    action->trigger();
    QCoreApplication::processEvents();
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
}

/// English again, whatever a test has chosen.
struct BackToEnglish {
    const QLocale before;
    BackToEnglish() { QSettings(QStringLiteral("Warmbench"), QStringLiteral("Warmbench")).clear(); }
    ~BackToEnglish() {
        QSettings(QStringLiteral("Warmbench"), QStringLiteral("Warmbench")).clear();
        QLocale::setDefault(before);
    }
};

} // namespace

TEST_CASE("What is spoken is what was chosen, else the desktop's language where it is there, else English") {
    const QLocale austrian(QLocale::German, QLocale::Austria);
    CHECK(Language::spoken({}, austrian) == QStringLiteral("de"));
    CHECK(Language::spoken(QStringLiteral("en"), austrian) == QStringLiteral("en"));
    CHECK(Language::spoken(QStringLiteral("de"), QLocale::c()) == QStringLiteral("de"));
    CHECK(Language::spoken({}, QLocale(QLocale::French)) == QStringLiteral("en"));
    CHECK(Language::spoken({}, QLocale::c()) == QStringLiteral("en"));
    CHECK(Language::spoken(QStringLiteral("none"), austrian) == QStringLiteral("de"));
}

TEST_CASE("Numbers and dates go with the language that is chosen, in the desktop's country") {
    const BackToEnglish after;
    Language language;
    language.use(QStringLiteral("en"), QLocale(QLocale::German, QLocale::Germany));
    CHECK(QLocale().language() == QLocale::English);
    CHECK(QLocale().territory() == QLocale::Germany);
    language.use({}, QLocale(QLocale::German, QLocale::Austria));
    CHECK(QLocale() == QLocale(QLocale::German, QLocale::Austria));
}

TEST_CASE("A language chosen in the menu makes the window anew, with its book and what can be taken back") {
    const BackToEnglish after;
    SmallNurseryOpener opener;
    app::OneWindow one(opener, smallNurseryToday());
    one.window().show();
    REQUIRE(!one.window().openBook(QStringLiteral("sample")));
    CHECK(menus(one.window()).contains(QStringLiteral("&House")));
    const BookSession* session = one.window().session();
    REQUIRE(!one.window().session()->perform(handsOf(1)));

    choose(one.window(), "language_de");
    CHECK(menus(one.window()).contains(QStringLiteral("&Haus")));
    CHECK(one.window().session() == session);
    CHECK(one.window().isVisible());
    CHECK_FALSE(one.window().session()->undoWords().isEmpty());
    CHECK(one.window()
              .findChild<QAction*>(QStringLiteral("undo"))
              ->text()
              .startsWith(QStringLiteral("&Rückgängig: ")));
    CHECK(one.window().findChild<QAction*>(QStringLiteral("language_de"))->isChecked());
    CHECK(QLocale().language() == QLocale::German);
    // Qt's own buttons as well.
    CHECK(QDialogButtonBox(QDialogButtonBox::Cancel).button(QDialogButtonBox::Cancel)->text() ==
          QStringLiteral("Abbrechen"));

    choose(one.window(), "language_en");
    CHECK(menus(one.window()).contains(QStringLiteral("&House")));
    CHECK(one.window().session() == session);
}

TEST_CASE("The language that was chosen is there at the next start") {
    const BackToEnglish after;
    SmallNurseryOpener opener;
    {
        app::OneWindow first(opener, smallNurseryToday());
        first.window().setLanguage(QStringLiteral("de"));
    }
    app::OneWindow second(opener, smallNurseryToday());
    CHECK(menus(second.window()).contains(QStringLiteral("&Haus")));
}
