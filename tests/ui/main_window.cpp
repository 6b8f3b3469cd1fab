#include "tests/ui/window.h"

#include "core/book/query.h"
#include "ui/dayline/day_line.h"
#include "ui/shell/find_entries.h"

#include <catch2/catch.hpp>

#include <QAbstractItemView>
#include <QAction>
#include <QApplication>
#include <QCompleter>
#include <QDialog>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QMessageBox>
#include <QPushButton>
#include <QStatusBar>
#include <QTest>
#include <QTextBrowser>
#include <QTimer>

using namespace warmbench;
using namespace warmbench::tests;
using namespace warmbench::ui;

namespace {

BatchId plannedBatch(const HouseBook& book) {
    for (const auto& [id, batch] : book.all<Batch>())
        if (batch.state == BatchState::Planned) return id;
    throw std::logic_error("nothing is planned");
}

/// All the text that a label needs, against the room that it has.
bool isCut(const QLabel& label) {
    if (label.text().isEmpty() || !label.isVisible()) return false;
    if (label.wordWrap()) return label.heightForWidth(label.width()) > label.height();
    return label.sizeHint().width() > label.width() || label.sizeHint().height() > label.height();
}

QStringList cutTexts(const QWidget& window) {
    QStringList cut;
    for (const QLabel* label : window.findChildren<QLabel*>())
        if (isCut(*label)) cut += label->text();
    for (const QPushButton* button : window.findChildren<QPushButton*>())
        if (button->isVisible() && button->sizeHint().width() > button->width()) cut += button->text();
    return cut;
}

} // namespace

TEST_CASE("A message moves nothing in the window") {
    OpenWindow open;
    auto* map = open.child<BenchMap>("benchMap");
    const QRect before = map->geometry();
    open.window.statusBar()->showMessage(QStringLiteral("Done"));
    QApplication::processEvents();
    CHECK(open.window.statusBar()->isVisible());
    CHECK(map->geometry() == before);
}

TEST_CASE("The row of places bears the nursery's name, and the file's while it has none") {
    OpenWindow open;
    Nursery nursery = open.window.session()->book().nursery();
    const auto shown = [&] { return open.child<QLabel>("bookName")->text(); };
    nursery.name = "Hillside";
    REQUIRE(!open.window.session()->perform({Put<Nursery>{nursery}}));
    CHECK(shown() == "Hillside");
    nursery.name.clear();
    REQUIRE(!open.window.session()->perform({Put<Nursery>{nursery}}));
    CHECK(shown() == open.window.session()->name());
}

TEST_CASE("What is chosen on the map is shown in the panel and marked in the tray, and the other way round") {
    OpenWindow open;
    const HouseBook& book = open.window.session()->book();
    auto* map = open.child<BenchMap>("benchMap");
    auto* tray = open.child<QListWidget>("strikeTray");
    const BatchId planned = plannedBatch(book);
    for (int row = 0; row < tray->count(); ++row)
        if (tray->item(row)->data(Qt::UserRole).toLongLong() == planned.number) tray->setCurrentRow(row);
    CHECK(map->selection() == Selection{planned});
    CHECK(open.window.selection() == Selection{planned});
    CHECK(open.child<QPushButton>("strikeToday"));
    open.window.choose(map->scene().zones[2].id);
    CHECK(tray->currentRow() == -1);
    CHECK(!open.child<QPushButton>("strikeToday"));
}

TEST_CASE("Choosing a batch that does not stand on this day goes to the day on which it does") {
    OpenWindow open;
    const HouseBook& book = open.window.session()->book();
    for (const auto& [id, batch] : book.all<Batch>()) {
        if (book.staysOf(id).empty()) continue;
        open.window.choose(id);
        CHECK(stayOn(book, id, open.window.day()));
        CHECK(open.child<BenchMap>("benchMap")->scene().find(id));
    }
}

TEST_CASE("Striking from the window changes the book, says so, and can be undone and done again") {
    OpenWindow open;
    const HouseBook& book = open.window.session()->book();
    const BatchId planned = plannedBatch(book);
    auto* undo = open.child<QAction>("undo");
    CHECK(!undo->isEnabled());
    open.window.choose(planned);
    open.child<QAction>("strike")->trigger();
    CHECK(book.get<Batch>(planned).state == BatchState::Struck);
    CHECK(book.get<Batch>(planned).strikeDay == smallNurseryToday());
    CHECK(!open.child<QAction>("strike")->isEnabled());
    CHECK(undo->text().contains(QStringLiteral("Strike")));
    undo->trigger();
    CHECK(book.get<Batch>(planned).state == BatchState::Planned);
    CHECK(open.child<QAction>("strike")->isEnabled());
    open.child<QAction>("redo")->trigger();
    CHECK(book.get<Batch>(planned).state == BatchState::Struck);
}

TEST_CASE(
    "The panel foretells what becomes of a struck batch, and offers to plan again where it falls short") {
    OpenWindow open;
    open.window.setDay(smallNurseryToday());
    for (const auto& [id, batch] : open.window.session()->book().all<Batch>()) {
        if (batch.state != BatchState::Struck ||
            !stayOn(open.window.session()->book(), id, open.window.day()))
            continue;
        open.window.choose(id);
        INFO(batch.code);
        CHECK(open.child<QWidget>("forecastCard")->isVisible());
        CHECK(open.child<QLabel>("forecastWords")->text().contains(QStringLiteral("Plants in the end")));
    }
    open.window.choose(plannedBatch(open.window.session()->book()));
    CHECK(!open.child<QWidget>("forecastCard")->isVisible());
    CHECK(!open.child<QDialog>("planDialog"));
    open.child<QPushButton>("forecastReplan")->click();
    CHECK(open.child<QDialog>("planDialog"));
}

TEST_CASE("A refusal is told in the window and changes nothing") {
    OpenWindow open;
    const HouseBook before = open.window.session()->book();
    BatchId later = plannedBatch(before);
    for (const auto& [id, batch] : before.all<Batch>())
        if (batch.state == BatchState::Planned && !before.staysOf(id).empty()) later = id;
    // Its slots are taken on the days to which its stay would move.
    const Batch& moved = before.get<Batch>(later);
    const Stay& stay = *stayOn(before, later, moved.strikeDay);
    HouseBook crowded = before;
    Batch other = moved;
    other.id = {};
    other.code.clear();
    other.state = BatchState::Struck;
    other.strikeDay = smallNurseryToday();
    Stay blocking = stay;
    blocking.id = {};
    blocking.from = smallNurseryToday();
    blocking.to = stay.from;
    REQUIRE(crowded.perform({AddBatch{other, {blocking}}}));
    open.window.setSession(std::make_unique<MemorySession>(crowded, QStringLiteral("crowded")));
    open.window.choose(later);
    open.child<QAction>("strike")->trigger();
    CHECK(open.window.session()->book() == crowded);
    CHECK(open.child<QLabel>("refusal")->isVisible());
    CHECK(open.child<QLabel>("refusal")->text().contains(QStringLiteral("is taken by")));
}

TEST_CASE("Why something can't be undone is told in whatever place it was asked for") {
    /// A session in which nothing can be taken back any more.
    class Stuck : public MemorySession {
    public:
        using MemorySession::MemorySession;
        Outcome undo() override { return Refusal{"Bench 1 · A", "something stands there by now"}; }
        [[nodiscard]] QString undoWords() const override { return QStringLiteral("Add a zone"); }
    };
    OpenWindow open;
    open.window.setSession(std::make_unique<Stuck>(smallNursery(), QStringLiteral("stuck")));
    open.child<QAction>("targets")->trigger();
    open.child<QAction>("undo")->trigger();
    CHECK(
        open.window.statusBar()->currentMessage().contains(QStringLiteral("something stands there by now")));
}

TEST_CASE("Typing a part of a name, code or target finds the batch") {
    OpenWindow open;
    const HouseBook& book = open.window.session()->book();
    auto* find = open.child<QLineEdit>("find");
    find->setFocus();
    QTest::keyClicks(find, QStringLiteral("concha"));
    QCompleter* completer = find->completer();
    REQUIRE(completer->model()->rowCount() == 1);
    Q_EMIT completer->activated(completer->model()->index(0, 0).data().toString());
    const auto* batch = std::get_if<BatchId>(&open.window.selection());
    REQUIRE(batch);
    CHECK(book.get<Taxon>(book.get<Batch>(*batch).taxon).name == "Ceanothus 'Concha'");
    const auto holding = [&](const QString& typed) {
        return findEntries(book, smallNurseryToday(), typed).size();
    };
    CHECK(holding(QStringLiteral("zone ")) == 8);
    CHECK(holding(QStringLiteral("target t4")) == 1);
    CHECK(holding(QStringLiteral("27-")) + holding(QStringLiteral("26-")) ==
          static_cast<qsizetype>(book.all<Batch>().size()));
    CHECK(holding(QStringLiteral("")) == 0);
    CHECK(holding(QStringLiteral("concha t4")) == 0);
}

TEST_CASE("Where nothing has the words typed, the list says so and is gone nowhere") {
    OpenWindow open;
    auto* find = open.child<QLineEdit>("find");
    QFocusEvent in(QEvent::FocusIn);
    QApplication::sendEvent(find, &in);
    find->setFocus();
    QTest::keyClicks(find, QStringLiteral("conchx"));
    QAbstractItemView* list = find->completer()->popup();
    REQUIRE(list->isVisible());
    const QString words = list->model()->index(0, 0).data().toString();
    CHECK(words.toStdString() == "Nothing in this book is called “conchx”.");
    CHECK(find->accessibleDescription() == words);
    QTest::keyClick(list, Qt::Key_Down);
    QTest::keyClick(list, Qt::Key_Return);
    QTest::mouseClick(list->viewport(), Qt::LeftButton, {},
                      list->visualRect(list->model()->index(0, 0)).center());
    CHECK(find->text() == QStringLiteral("conchx"));
    CHECK(std::holds_alternative<std::monostate>(open.window.selection()));
    find->setFocus();
    QTest::keyClick(find, Qt::Key_Backspace);
    QTest::keyClicks(find, QStringLiteral("a"));
    CHECK(find->accessibleDescription().isEmpty());
    CHECK(list->model()->rowCount() == 1);
    find->clear();
    QTest::keyClicks(find, QStringLiteral("  "));
    CHECK(find->completer()->completionModel()->rowCount() == 0);
}

TEST_CASE("What is found is gone to by Enter, by the list's own keys and by a click in it, again and again") {
    OpenWindow open;
    auto* find = open.child<QLineEdit>("find");
    for (const int way : {0, 1, 2, 0, 1, 2}) {
        open.window.choose({});
        QFocusEvent in(QEvent::FocusIn);
        QApplication::sendEvent(find, &in);
        find->setFocus();
        find->clear();
        QTest::keyClicks(find, QStringLiteral("concha"));
        QAbstractItemView* list = find->completer()->popup();
        REQUIRE(list->isVisible());
        if (way == 0) {
            QTest::keyClick(list, Qt::Key_Return);
        } else if (way == 1) {
            QTest::keyClick(list, Qt::Key_Down);
            QTest::keyClick(list, Qt::Key_Return);
        } else {
            QTest::mouseClick(list->viewport(), Qt::LeftButton, {},
                              list->visualRect(list->model()->index(0, 0)).center());
        }
        INFO(way);
        CHECK(std::holds_alternative<BatchId>(open.window.selection()));
        CHECK(!list->isVisible());
        QFocusEvent out(QEvent::FocusOut);
        QApplication::sendEvent(find, &out);
    }
}

TEST_CASE("A zone with a row and a column finds the slot, and what stands on it that day") {
    const HouseBook book = smallNursery();
    const Day today = smallNurseryToday();
    int taken = 0;
    int free = 0;
    for (const auto& [id, zone] : book.all<Zone>())
        for (int row = 0; row < zone.rows; ++row)
            for (int col = 0; col < zone.cols; ++col) {
                const QString typed = QStringLiteral("zone %1 %2 %3 %4")
                                          .arg(text(zone.name), text(book.get<Bench>(zone.bench).name))
                                          .arg(row + 1)
                                          .arg(col + 1);
                const QList<FindEntry> entries = findEntries(book, today, typed);
                const auto it = std::find_if(entries.begin(), entries.end(), [&](const FindEntry& one) {
                    return one.words.contains(text(book.get<Bench>(zone.bench).name)) &&
                           one.words.contains(QStringLiteral("Zone ") + text(zone.name) + u' ');
                });
                REQUIRE(it != entries.end());
                if (std::holds_alternative<BatchId>(it->target))
                    ++taken;
                else
                    ++free;
            }
    int stands = 0;
    for (const auto& [id, zone] : book.all<Zone>()) stands += slotsTaken(book, id, today);
    CHECK(taken == stands);
    CHECK(free > 0);
}

TEST_CASE("A synonym and a common name find a batch of the taxon") {
    HouseBook book = smallNursery();
    Taxon taxon = *findTaxon(book, "Myrtus communis");
    taxon.commonNames = {"myrtle"};
    taxon.synonyms = {"Myrtus acuta"};
    REQUIRE(book.perform({Put<Taxon>{taxon}}));
    int found = 0;
    for (const char* typed : {"myrtle", "ACUTA", "my acuta"})
        for (const FindEntry& entry : findEntries(book, smallNurseryToday(), QLatin1String(typed)))
            if (entry.words.contains(QStringLiteral("Myrtus communis"))) ++found;
    CHECK(found == 3);
}

TEST_CASE("The strike list names every planned batch with its medium, hormone and place") {
    OpenWindow open;
    const HouseBook& book = open.window.session()->book();
    open.child<QAction>("strikeList")->trigger();
    const QString list = open.child<QTextBrowser>("strikeSheet")->toPlainText();
    for (const auto& [id, batch] : book.all<Batch>()) {
        const bool named = list.contains(QString::fromStdString(book.get<Taxon>(batch.taxon).genus()));
        CHECK(named == (batch.state == BatchState::Planned));
    }
    CHECK(list.contains(QStringLiteral("Bench 2, middle · D")));
    CHECK(list.contains(QStringLiteral("IBA 3000 ppm, powder")));
    CHECK(list.contains(QStringLiteral("no place yet")));
    // What a plant on the list can do to people stands under it.
    Taxon taxon = book.get<Taxon>(book.get<Batch>(plannedBatch(book)).taxon);
    taxon.caution = "all parts are poisonous";
    REQUIRE(!open.window.session()->perform({Put<Taxon>{taxon}}));
    CHECK(open.child<QTextBrowser>("strikeSheet")
              ->toPlainText()
              .contains(text(taxon.name) + QStringLiteral(": all parts are poisonous")));
}

TEST_CASE("A book that cannot be opened leaves the window as it was") {
    OpenWindow open;
    BookSession* before = open.window.session();
    QTimer::singleShot(0, [] {
        if (QWidget* box = QApplication::activeModalWidget()) box->close();
    });
    const auto refusal = open.window.openBook(QStringLiteral("none"));
    REQUIRE(refusal);
    CHECK(open.window.session() == before);
}

TEST_CASE("No text is cut at 1280 by 720, whatever is selected") {
    OpenWindow open({1280, 720});
    REQUIRE(open.window.size() == QSize(1280, 720));
    const HouseBook& book = open.window.session()->book();
    const MapScene scene = open.child<BenchMap>("benchMap")->scene();
    std::vector<Selection> selections{Selection{}, plannedBatch(book)};
    for (const SceneZone& zone : scene.zones) selections.emplace_back(zone.id);
    for (const SceneStay& stay : scene.stays) selections.emplace_back(stay.batch);
    for (const Selection& selection : selections) {
        open.window.choose(selection);
        QApplication::processEvents();
        CHECK(cutTexts(open.window).join(QStringLiteral(" | ")).toStdString() == "");
    }
}

TEST_CASE("A new house book opens empty, and one of a name that is taken is refused") {
    OpenWindow open;
    CHECK_FALSE(open.window.createBook(QStringLiteral("mine")));
    CHECK(open.window.session()->name() == QStringLiteral("mine"));
    CHECK(open.window.session()->book().all<House>().empty());
    CHECK(cutTexts(open.window).isEmpty());

    QTimer::singleShot(0, [] {
        if (auto* box = qobject_cast<QMessageBox*>(QApplication::activeModalWidget())) box->accept();
    });
    CHECK(open.window.createBook(QStringLiteral("taken")));
    CHECK(open.window.session()->name() == QStringLiteral("mine"));
}
