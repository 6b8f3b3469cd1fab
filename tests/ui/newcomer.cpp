#include "tests/support/process.h"
#include "tests/support/temporary_folder.h"
#include "tests/ui/season_window.h"

#include <QCheckBox>
#include <QComboBox>
#include <QDateEdit>
#include <QDialogButtonBox>
#include <QDir>
#include <QFile>
#include <QFileDialog>
#include <QLineEdit>
#include <QSpinBox>
#include <QTextStream>

/// A newcomer's way from an empty book to a printed strike list, each action of it told in the user guide.
using namespace warmbench;
using namespace warmbench::ui;
using warmbench::testing::on;
using warmbench::tests::in;

namespace {

constexpr int mostActions = 39;

/// What a button, an action or a title is called, without the marks of keys and dialogs.
QString called(QString words) {
    return words.remove(QLatin1Char('&')).remove(QStringLiteral("…"));
}

/// Does what a newcomer does, and writes down each action as the guide tells it.
class Newcomer {
public:
    explicit Newcomer(tests::SeasonWindow& shown) : m_shown(shown) {}

    [[nodiscard]] const QStringList& actions() const { return m_actions; }

    void press(QPushButton* button) {
        REQUIRE(button);
        REQUIRE(button->isVisible());
        REQUIRE(button->isEnabled());
        tell(QStringLiteral("Press **%1**.").arg(called(button->text())));
        QTest::mouseClick(button, Qt::LeftButton);
    }
    void press(const char* button) { press(m_shown.child<QPushButton>(button)); }
    void go(const char* place) {
        auto* action = m_shown.child<QAction>(place);
        tell(QStringLiteral("Go to **%1**.").arg(called(action->text())));
        action->trigger();
    }
    void set(const QString& field, const QString& value) {
        tell(QStringLiteral("%1: **%2**.").arg(field, value));
    }
    void tell(const QString& action) { m_actions << action; }

    /// Does `open`, and `work` in the dialog that it opens.
    template <class Open, class Work>
    void inDialog(Open open, Work work) {
        bool worked = false;
        QTimer::singleShot(0, [&] {
            auto* dialog = qobject_cast<QDialog*>(QApplication::activeModalWidget());
            if (!dialog) return;
            worked = true;
            work(*dialog);
            if (dialog->isVisible()) dialog->reject();
        });
        open();
        REQUIRE(worked);
    }
    /// Presses a button, and saves in the dialog for files that it opens.
    void saveAs(QPushButton* button, const QString& path, const QString& words) {
        inDialog([&] { press(button); },
                 [&](QDialog& dialog) {
                     auto* files = qobject_cast<QFileDialog*>(&dialog);
                     REQUIRE(files);
                     tell(words);
                     files->setDirectory(QFileInfo(path).path());
                     files->findChild<QLineEdit*>(QStringLiteral("fileNameEdit"))
                         ->setText(QFileInfo(path).fileName());
                     QTest::keyClick(files->findChild<QLineEdit*>(QStringLiteral("fileNameEdit")),
                                     Qt::Key_Enter);
                 });
    }
    void keep(QDialog& dialog) {
        auto* box = dialog.findChild<QDialogButtonBox*>();
        REQUIRE(box);
        press(box->button(QDialogButtonBox::Ok));
    }
    /// A picture for the guide, where the environment asks for one.
    static void picture(QWidget& widget, const char* name) {
        const QString folder = qEnvironmentVariable("WARMBENCH_GUIDE_PICTURES");
        if (folder.isEmpty()) return;
        if (!qobject_cast<QDialog*>(&widget)) widget.resize(1360, 860); // of any screen
        for (int i = 0; i < 3; ++i) QApplication::processEvents();      // until all is laid out
        CHECK(widget.grab().save(QDir(folder).filePath(QLatin1String(name))));
    }

private:
    tests::SeasonWindow& m_shown;
    QStringList m_actions;
};

void putInHouse(Newcomer& newcomer, tests::SeasonWindow& shown) {
    newcomer.go("setup");
    newcomer.press("addHouse");
    newcomer.press("keepThing");
    newcomer.press("addBench");
    newcomer.press("keepThing");
    newcomer.press("addZone");
    newcomer.set("Cover", "tent");
    shown.child<QComboBox>("zoneCover")->setCurrentIndex(static_cast<int>(Cover::Tent));
    newcomer.tell("Tick **It lies on a heated mat**.");
    shown.child<QCheckBox>("zoneHasMat")->setChecked(true);
    Newcomer::picture(shown.window, "guide-nursery.png");
    newcomer.press("keepThing");
    newcomer.press("addZone");
    newcomer.press("keepThing");
    newcomer.press("addUsualContainers");
}

void putInTarget(Newcomer& newcomer) {
    newcomer.go("targets");
    newcomer.inDialog([&] { newcomer.press("targetsNew"); },
                      [&](QDialog& dialog) {
                          newcomer.set("Taxon", "Ceanothus thyrsiflorus");
                          QTest::keyClicks(in<QLineEdit>(dialog, "taxonName"), "Ceanothus thyrsiflorus");
                          newcomer.set("Plants wanted, potted on", "40");
                          in<QSpinBox>(dialog, "targetPlants")->setValue(40);
                          newcomer.set("By", "1 April 2028");
                          in<QDateEdit>(dialog, "targetDue")->setDate(QDate(2028, 4, 1));
                          Newcomer::picture(dialog, "guide-target.png");
                          newcomer.keep(dialog);
                      });
}

void putInStock(Newcomer& newcomer) {
    newcomer.go("stocks");
    newcomer.inDialog(
        [&] { newcomer.press("stocksNew"); },
        [&](QDialog& dialog) {
            newcomer.set("Taxon", "Ceanothus thyrsiflorus");
            QTest::keyClicks(in<QLineEdit>(dialog, "taxonName"), "Ceanothus thyrsiflorus");
            newcomer.set("Wood", "semi-ripe");
            in<QComboBox>(dialog, "flushWood1")->setCurrentIndex(static_cast<int>(Wood::SemiRipe));
            newcomer.set("from", "15 July");
            in<QDateEdit>(dialog, "flushFrom1")->setDate(QDate(2024, 7, 15));
            newcomer.set("to", "15 September");
            in<QDateEdit>(dialog, "flushTo1")->setDate(QDate(2024, 9, 15));
            newcomer.set("from a plant", "30");
            in<QSpinBox>(dialog, "flushCuttings1")->setValue(30);
            newcomer.keep(dialog);
        });
}

void plan(Newcomer& newcomer, tests::SeasonWindow& shown) {
    newcomer.go("planDays");
    auto* dialog = shown.child<QDialog>("planDialog");
    auto* start = in<QPushButton>(*dialog, "planStart");
    newcomer.press(start);
    REQUIRE(QTest::qWaitFor([&] { return start->isEnabled(); }, 120'000));
    Newcomer::picture(*dialog, "guide-plan.png");
    newcomer.press(in<QPushButton>(*dialog, "planAccept"));
    shown.go("house");
    shown.window.choose(shown.book().all<Batch>().begin()->first);
    Newcomer::picture(shown.window, "guide-planned.png");
}

/// The numbered lines of the guide's chapter.
QStringList actionsOfGuide() {
    QFile guide(QStringLiteral(WARMBENCH_SOURCE "/resources/doc/guide.md"));
    REQUIRE(guide.open(QFile::ReadOnly | QFile::Text));
    QTextStream text(&guide);
    QStringList actions;
    bool inChapter = false;
    while (!text.atEnd()) {
        const QString line = text.readLine();
        if (line.startsWith(QLatin1String("## "))) inChapter = line.contains("first strike list");
        const qsizetype dot = line.indexOf(QLatin1String(". "));
        bool isNumber = false;
        const int number = line.left(dot).toInt(&isNumber);
        if (!inChapter || dot < 1 || !isNumber) continue;
        CHECK(number == actions.size() + 1);
        actions << line.mid(dot + 2);
    }
    return actions;
}

} // namespace

TEST_CASE("The guide's way from an empty book to a printed strike list is the window's, and is short") {
    const tests::TemporaryFolder folder;
    const QString place = QString::fromStdString(folder.path().string());
    tests::SeasonWindow shown(on(7, 20));
    shown.window.setSession(nullptr);
    Newcomer newcomer(shown);
    newcomer.saveAs(shown.child<QPushButton>("startNew"), place + "/nursery.warmbench",
                    QStringLiteral("Name the book, such as **nursery**, and save it."));
    REQUIRE(shown.window.session());
    putInHouse(newcomer, shown);
    putInTarget(newcomer);
    putInStock(newcomer);
    plan(newcomer, shown);
    REQUIRE_FALSE(shown.book().all<Batch>().empty());
    const QString list = place + "/strike-list.pdf";
    newcomer.inDialog([&] { newcomer.go("print"); },
                      [&](QDialog& dialog) {
                          Newcomer::picture(dialog, "guide-strike-list.png");
                          newcomer.saveAs(in<QPushButton>(dialog, "printToPdf"), list,
                                          QStringLiteral("Name the file, such as **strike-list**, and save "
                                                         "it; or print it at once."));
                      });
    const auto words = tests::runProcess("/usr/bin/pdftotext", {list.toStdString(), "-"}).out;
    CHECK(words.find("Ceanothus") != std::string::npos);
    CHECK(words.find(shown.book().all<Batch>().begin()->second.code) != std::string::npos);

    CHECK(newcomer.actions().size() <= mostActions);
    const QStringList told = actionsOfGuide();
    for (qsizetype i = 0; i < std::max(told.size(), newcomer.actions().size()); ++i)
        CHECK(newcomer.actions().value(i).toStdString() == told.value(i).toStdString());
}
