#include "app/storage/book_file.h"
#include "app/window/file_session.h"
#include "app/window/password_keeper.h"
#include "core/book/query.h"
#include "core/book/whereabouts.h"
#include "tests/support/small_nursery.h"
#include "ui/form/form_style.h"
#include "ui/map/bench_map.h"
#include "ui/shell/main_window.h"

#include <QAction>
#include <QApplication>
#include <QElapsedTimer>
#include <QFile>
#include <QLabel>
#include <QLineEdit>
#include <QListWidget>
#include <QProcess>
#include <QPushButton>

#include <cstdio>
#include <functional>

/// Works in the window with a real pointer and real keys, through the X server that by_hand.sh has started:
/// strikes a new batch, moves it, splits it, takes all back and does all again; a second run of the program
/// sees whether all is still there. Every wait has an end.
namespace warmbench::tests {
namespace {

constexpr int patience = 6000; ///< milliseconds for one thing to come about
constexpr const char* taxon = "Ribes sanguineum";

struct Failed {
    QString what;
};

/// Files need no password.
class NoKeys : public app::PasswordKeeper {
public:
    std::string find(const std::string&) override { return {}; }
    Outcome keep(const std::string&, const std::string&) override { return std::nullopt; }
};

void expect(bool so, const QString& what) {
    if (!so) throw Failed{what};
}

void xdo(const QStringList& arguments) {
    QProcess process;
    process.start(QStringLiteral("xdotool"), arguments);
    QElapsedTimer timer;
    timer.start();
    // The window goes on working while xdotool waits for the X server.
    while (process.state() != QProcess::NotRunning && timer.elapsed() < patience)
        QApplication::processEvents(QEventLoop::AllEvents, 5);
    if (process.state() != QProcess::NotRunning) process.kill();
    process.waitForFinished(patience);
    expect(process.exitCode() == 0, QStringLiteral("xdotool ") + arguments.join(u' '));
}

void waitFor(const std::function<bool()>& so, const QString& what) {
    QElapsedTimer timer;
    timer.start();
    while (!so() && timer.elapsed() < patience) QApplication::processEvents(QEventLoop::AllEvents, 20);
    expect(so(), what);
}

/// The stays of a batch, line by line, as they are to be found again.
QString standing(const HouseBook& book, BatchId batch) {
    QStringList lines{
        QString::fromLatin1(batchStateNames[static_cast<std::size_t>(book.get<Batch>(batch).state)])};
    for (const Stay* stay : staysInOrder(book, batch)) {
        QStringList places;
        for (const Place& place : stay->places)
            places +=
                QStringLiteral("%1@%2,%3").arg(place.container).arg(place.slots.row).arg(place.slots.col);
        lines += QStringLiteral("%1 %2 %3: %4")
                     .arg(QString::fromStdString(zoneTitle(book, stay->zone)),
                          QString::fromStdString(stay->from.iso()), QString::fromStdString(stay->to.iso()),
                          places.join(u' '));
    }
    return lines.join(u'\n');
}

class Hands {
public:
    explicit Hands(const QString& file) : m_window(m_opener, smallNurseryToday()) {
        m_window.setTheme(ui::Theme::Light);
        expect(!m_window.openBook(file), QStringLiteral("the book opens"));
        m_window.setGeometry(0, 0, 1260, 780);
        m_window.show();
        m_window.activateWindow();
        for (const auto& [id, batch] : book().all<Batch>())
            if (book().get<Taxon>(batch.taxon).name == taxon) m_batch = id;
        waitFor([&] { return m_window.isActiveWindow(); }, QStringLiteral("the window has the keys"));
    }

    void byMouse() {
        // From the tray onto the first zone that suits.
        dragOver(cardOfBatch());
        putDownInFirstSuitable({});
        waitFor([&] { return !staysNow().empty(); }, QStringLiteral("it stands where it was dropped"));
        key("ctrl+t");
        waitForStruck();
        // Dragged by one of its pots to another zone; that asks.
        const ZoneId first = staysNow().front()->zone;
        dragOver(potOfBatch(1));
        putDownInFirstSuitable(first);
        answerYes();
        waitFor([&] { return staysNow().size() == 1 && staysNow().front()->zone != first; },
                QStringLiteral("it has been moved"));
        // Part of it back.
        click(potOfBatch(1));
        key("ctrl+m");
        waitFor([&] { return bar().isVisible(); }, QStringLiteral("it is taken up"));
        click(globalOf(containers(), containers().rect().center()));
        chooseContainers();
        const ZoneId second = staysNow().front()->zone;
        clickInFirstSuitable(second);
        answerYes();
        finish();
    }

    void byKeys() {
        key("ctrl+f");
        type("Ribes");
        waitFor([&] { return QApplication::activePopupWidget() != nullptr; }, QStringLiteral("it is found"));
        key("Down");
        key("Return");
        waitFor([&] { return m_window.selection() == ui::Selection{m_batch} && map().hasFocus(); },
                QStringLiteral("it is chosen"));
        takeUpByKey();
        key("Tab");
        waitForWords("suits");
        key("Return");
        waitFor([&] { return !staysNow().empty(); }, QStringLiteral("it stands where it was put"));
        key("ctrl+t");
        waitForStruck();
        const ZoneId first = staysNow().front()->zone;
        takeUpByKey();
        tabToAnotherZone(first);
        key("Return");
        waitForWords("have been struck");
        key("Return");
        waitFor([&] { return staysNow().size() == 1 && staysNow().front()->zone != first; },
                QStringLiteral("it has been moved"));
        takeUpByKey();
        key("alt+c");
        waitFor([&] { return containers().hasFocus(); }, QStringLiteral("the numbers have the keys"));
        chooseContainers();
        tabToAnotherZone(staysNow().front()->zone);
        key("Return");
        waitForWords("have been struck");
        key("Return");
        finish();
    }

    /// All taken back, all done again; what is to be found after a restart.
    [[nodiscard]] QString undoAndRedo(const HouseBook& before) {
        const HouseBook after = book();
        for (int i = 0; i < 20 && undo().isEnabled(); ++i) {
            const QString words = undo().text();
            key("ctrl+z");
            waitFor([&] { return undo().text() != words; }, QStringLiteral("taken back: ") + words);
        }
        expect(book() == before, QStringLiteral("all taken back, the book is as it was"));
        auto& redo = *m_window.findChild<QAction*>(QStringLiteral("redo"));
        for (int i = 0; i < 20 && redo.isEnabled(); ++i) {
            const QString words = redo.text();
            key("ctrl+shift+z");
            waitFor([&] { return redo.text() != words; }, QStringLiteral("done again: ") + words);
        }
        expect(book() == after, QStringLiteral("all done again, the book is as it was after it"));
        return standing(book(), m_batch);
    }

    [[nodiscard]] const HouseBook& book() const { return m_window.session()->book(); }
    [[nodiscard]] BatchId batch() const { return m_batch; }

private:
    ui::BenchMap& map() { return *m_window.findChild<ui::BenchMap*>(QStringLiteral("benchMap")); }
    QWidget& bar() { return *m_window.findChild<QWidget*>(QStringLiteral("placingBar")); }
    QLineEdit& containers() { return *m_window.findChild<QLineEdit*>(QStringLiteral("placingContainers")); }
    QString words() { return m_window.findChild<QLabel*>(QStringLiteral("placingWords"))->text(); }
    QAction& undo() { return *m_window.findChild<QAction*>(QStringLiteral("undo")); }
    [[nodiscard]] std::vector<const Stay*> staysNow() const {
        return staysOn(book(), m_batch, std::max(m_window.day(), book().get<Batch>(m_batch).strikeDay));
    }

    static QPoint globalOf(QWidget& widget, QPoint at) { return widget.mapToGlobal(at); }
    static void moveTo(QPoint at) {
        xdo({QStringLiteral("mousemove"), QStringLiteral("--sync"), QString::number(at.x()),
             QString::number(at.y())});
    }
    static void press() { xdo({QStringLiteral("mousedown"), QStringLiteral("1")}); }
    static void release() { xdo({QStringLiteral("mouseup"), QStringLiteral("1")}); }
    static void key(const char* name) { xdo({QStringLiteral("key"), QString::fromLatin1(name)}); }
    static void type(const char* text) { xdo({QStringLiteral("type"), QString::fromLatin1(text)}); }
    static void click(QPoint at) {
        // xdotool waits for a move that does not come where the pointer is there already.
        xdo({QStringLiteral("mousemove"), QString::number(at.x() + 3), QString::number(at.y())});
        xdo({QStringLiteral("mousemove"), QString::number(at.x()), QString::number(at.y())});
        press();
        release();
    }

    QPoint cardOfBatch() {
        auto& tray = *m_window.findChild<QListWidget*>(QStringLiteral("strikeTray"));
        for (int row = 0; row < tray.count(); ++row)
            if (tray.item(row)->data(Qt::UserRole).toLongLong() == m_batch.number) {
                tray.scrollToItem(tray.item(row));
                return globalOf(*tray.viewport(), tray.visualItemRect(tray.item(row)).center());
            }
        throw Failed{QStringLiteral("its card is in the tray")};
    }
    QPoint potOfBatch(int number) {
        const ui::MapScene& scene = map().scene();
        for (const ui::ScenePot& pot : scene.pots) {
            const ui::SceneStay& stay = scene.stays[ui::nth(pot.stay)];
            if (stay.batch == m_batch && pot.number == number)
                return globalOf(*map().viewport(),
                                map().mapLayout().slots(scene, stay.zone, pot.slots).center() +
                                    map().origin());
        }
        throw Failed{QStringLiteral("its pot is on the map")};
    }
    QPoint slotOf(int zone, int row, int col) {
        const ui::MapScene& scene = map().scene();
        return globalOf(*map().viewport(),
                        map().mapLayout().slots(scene, zone, {row, col, 1, 1}).center() + map().origin());
    }

    void dragOver(QPoint from) {
        xdo({QStringLiteral("mousemove"), QString::number(from.x()), QString::number(from.y())});
        press();
        xdo({QStringLiteral("mousemove_relative"), QStringLiteral("--"), QStringLiteral("15"),
             QStringLiteral("5")});
        xdo({QStringLiteral("mousemove_relative"), QStringLiteral("--"), QStringLiteral("5"),
             QStringLiteral("3")});
        waitFor([&] { return bar().isVisible(); }, QStringLiteral("it is carried"));
    }
    /// Goes over the zones until one suits; the pointer stays there.
    void goToSuitable(std::optional<ZoneId> except) {
        const ui::MapScene& scene = map().scene();
        for (int zone = 0; zone < static_cast<int>(scene.zones.size()); ++zone) {
            const ui::SceneZone& one = scene.zones[ui::nth(zone)];
            if (except == one.id) continue;
            const QPoint at = slotOf(zone, one.rows / 2, one.cols / 2);
            xdo({QStringLiteral("mousemove"), QString::number(at.x()), QString::number(at.y())});
            waitFor([&] { return words().contains(one.title + QStringLiteral(" ")); },
                    QStringLiteral("aimed at ") + one.title + QStringLiteral(", told: ") + words());
            if (words().contains(QStringLiteral(" suits."))) return;
        }
        throw Failed{QStringLiteral("a zone suits")};
    }
    void putDownInFirstSuitable(std::optional<ZoneId> except) {
        goToSuitable(except);
        release();
    }
    void clickInFirstSuitable(std::optional<ZoneId> except) {
        goToSuitable(except);
        press();
        release();
    }
    void answerYes() {
        waitForWords("have been struck");
        auto& yes = *m_window.findChild<QPushButton*>(QStringLiteral("placingPlace"));
        click(globalOf(yes, yes.rect().center()));
    }
    void waitForWords(const char* part) {
        waitFor([&] { return words().contains(QString::fromLatin1(part)); },
                QStringLiteral("told that it ") + QString::fromLatin1(part) + QStringLiteral(", not: ") +
                    words());
    }
    void waitForStruck() {
        waitFor([&] { return book().get<Batch>(m_batch).state == BatchState::Struck; },
                QStringLiteral("it is struck"));
    }
    void takeUpByKey() {
        map().setFocus();
        key("space");
        waitFor([&] { return bar().isVisible(); }, QStringLiteral("it is taken up"));
    }
    void tabToAnotherZone(ZoneId home) {
        const QString title = QString::fromStdString(zoneTitle(book(), home));
        for (int i = 0; i < 10; ++i) {
            const QString before = words();
            key("Tab");
            waitFor([&] { return words() != before; }, QStringLiteral("Tab goes on"));
            if (!words().startsWith(title)) return;
        }
        throw Failed{QStringLiteral("another zone suits")};
    }
    void chooseContainers() {
        key("ctrl+a");
        type("1-10");
        key("Return");
        waitFor(
            [&] {
                return m_window.findChild<QLabel*>(QStringLiteral("placingTitle"))
                    ->text()
                    .contains(QStringLiteral("1-10"));
            },
            QStringLiteral("ten of them are carried"));
    }
    void finish() {
        waitFor([&] { return staysNow().size() == 2; }, QStringLiteral("it is split"));
    }

    NoKeys m_keys;
    app::FileOpener m_opener{m_keys};
    ui::MainWindow m_window;
    BatchId m_batch;
};

int run(const QString& how, const QString& file) {
    if (how == QStringLiteral("check")) {
        Hands again(file);
        QFile kept(file + QStringLiteral(".stands"));
        expect(kept.open(QIODevice::ReadOnly), QStringLiteral("the first run has written what it left"));
        const QString stands = QString::fromUtf8(kept.readAll());
        expect(stands == standing(again.book(), again.batch()), QStringLiteral("all is still there"));
        expect(stands.contains(QStringLiteral("struck")), QStringLiteral("it has been struck"));
        return 0;
    }
    const auto refusal = app::BookFile::create(file.toStdString(), smallNursery());
    expect(!refusal, QStringLiteral("a book is made"));
    QString stands;
    {
        Hands hands(file);
        const HouseBook before = hands.book();
        if (how == QStringLiteral("mouse"))
            hands.byMouse();
        else
            hands.byKeys();
        stands = hands.undoAndRedo(before);
    }
    QFile kept(file + QStringLiteral(".stands"));
    expect(kept.open(QIODevice::WriteOnly) && kept.write(stands.toUtf8()) > 0,
           QStringLiteral("what it left is written down"));
    return 0;
}

} // namespace
} // namespace warmbench::tests

int main(int argc, char** argv) {
    QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedKingdom));
    QApplication::setStyle(new warmbench::ui::FormStyle);
    const QApplication application(argc, argv);
    if (argc != 3) {
        std::fputs("ui_by_hand: expected `mouse`, `keys` or `check`, and a file\n", stderr);
        return 2;
    }
    try {
        return warmbench::tests::run(QString::fromLocal8Bit(argv[1]), QString::fromLocal8Bit(argv[2]));
    } catch (const warmbench::tests::Failed& failed) {
        std::fprintf(stderr, "ui_by_hand %s: it was expected that: %s\n", argv[1], qPrintable(failed.what));
        return 1;
    }
}
