#include "app/window/file_session.h"
#include "tests/app/window/comes.h"
#include "tests/support/small_nursery.h"
#include "ui/shell/main_window.h"

#include <QApplication>
#include <QComboBox>
#include <QDir>
#include <QFile>
#include <QLineEdit>
#include <QPlainTextEdit>
#include <QPushButton>
#include <QSpinBox>
#include <QTest>

#include <cstdio>

using namespace warmbench;

namespace {

/// Types into fields as a person would, by their names.
struct Typist {
    QWidget& in;

    template <class Widget>
    Widget* field(const char* name) const {
        return in.findChild<Widget*>(QLatin1String(name));
    }
    void type(const char* name, const char* text) const {
        auto* widget = field<QWidget>(name);
        if (auto* line = qobject_cast<QLineEdit*>(widget)) line->selectAll();
        if (auto* box = qobject_cast<QAbstractSpinBox*>(widget)) box->selectAll();
        QTest::keyClicks(widget, QLatin1String(text));
    }
};

/// What each kind of form is typed into, and what of it must stand in the file of drafts before it is said.
void typeInDialog(const QString& form) {
    const Typist dialog{*QApplication::activeModalWidget()};
    if (form == QStringLiteral("target")) {
        dialog.type("taxonName", "Olearia x haastii");
        dialog.type("targetPlants", "77");
        dialog.type("targetNote", "for the hedge");
    } else if (form == QStringLiteral("list")) {
        auto* lines = dialog.field<QPlainTextEdit>("listText");
        lines->setPlainText(QStringLiteral("daisy bush\t60\t1/12/2027\t-\t"));
        lines->moveCursor(QTextCursor::End);
        QTest::keyClicks(lines, QStringLiteral("for the bank"));
        dialog.field<QComboBox>("listOrder")->setCurrentIndex(2);
        dialog.field<QComboBox>("listColumn4")->setCurrentIndex(0);
    } else {
        dialog.type("stockPlace", "behind the frames");
        dialog.field<QPushButton>("addFlush")->click();
        dialog.type("flushCuttings2", "9");
    }
}

void typeInWindow(ui::MainWindow& window, const QString& form) {
    const Typist typist{window};
    if (form == QStringLiteral("round")) {
        window.findChild<QAction*>(QStringLiteral("round"))->trigger();
        typist.type("checkRooted", "3");
        typist.type("checkNote", "half a line");
    } else if (form == QStringLiteral("nursery")) {
        window.findChild<QAction*>(QStringLiteral("setup"))->trigger();
        typist.type("hands2", "417");
    } else {
        window.findChild<QAction*>(QStringLiteral("setup"))->trigger();
        typist.field<QPushButton>("addHouse")->click();
        typist.type("houseName", "Tunnel 9");
    }
}

/// In whichever file is this program's own.
bool isKept(const QString& file, const char* what) {
    const QFileInfo book(file);
    for (const QFileInfo& one : book.dir().entryInfoList({book.fileName() + QStringLiteral(".unsaved*")})) {
        QFile drafts(one.filePath());
        if (drafts.open(QIODevice::ReadOnly) && drafts.readAll().contains(what)) return true;
    }
    return false;
}

} // namespace

/// faults_typing BOOK target|list|stock|round|house|nursery: opens a book in a window, types into a form
/// without putting it in, says `typed` once that is beside the book, and waits to be killed.
int main(int argc, char** argv) {
    if (argc != 3) return 2;
    const QApplication application(argc, argv);
    const QString book = QString::fromLocal8Bit(argv[1]);
    const QString form = QString::fromLocal8Bit(argv[2]);
    tests::NoKeys keys;
    app::FileOpener opener(keys);
    ui::MainWindow window(opener, tests::smallNurseryToday());
    if (window.openBook(book)) return 3;
    window.show();
    const auto done = [&, form] {
        const char* last = form == QStringLiteral("target")    ? "for the hedge"
                           : form == QStringLiteral("list")    ? "\"listColumn4\": 0"
                           : form == QStringLiteral("stock")   ? "\"flushCuttings2\": 9"
                           : form == QStringLiteral("round")   ? "half a line"
                           : form == QStringLiteral("nursery") ? "\"hands2\": 417"
                                                               : "Tunnel 9";
        if (!tests::comes([&] { return isKept(book, last); })) std::exit(4);
        std::puts("typed");
        std::fflush(stdout);
    };
    const bool list = form == QStringLiteral("list");
    if (list || form == QStringLiteral("target") || form == QStringLiteral("stock")) {
        const QString place = list ? QStringLiteral("targets") : form + QStringLiteral("s");
        window.findChild<QAction*>(place)->trigger();
        QTimer::singleShot(0, [&] {
            typeInDialog(form);
            done();
        });
        window.findChild<QPushButton*>(place + (list ? QStringLiteral("List") : QStringLiteral("New")))
            ->click();
    } else {
        typeInWindow(window, form);
        done();
    }
    return QApplication::exec();
}
